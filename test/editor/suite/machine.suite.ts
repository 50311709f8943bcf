import assert from 'node:assert/strict';
import { readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import * as vscode from 'vscode';
import {
  clickInWebview,
  driverAvailable,
  evaluateInWebview,
  focusInWebview,
  openFile,
  pageProblems,
  pressKey,
  resizeWindow,
  screenshot,
  setTheme,
  until,
} from '../driver.js';
import { suite, test } from '../harness.js';

const FILE = 'kitchen.carcass.yaml';
const PAGE = '.machine-side';

/** What the page shows now. */
interface Shown {
  /** 'set-up/carcass/panel/step' of the drawing. */
  readonly step: string;
  readonly title: string;
  readonly count: string;
  readonly where: string;
  readonly lie: string;
  readonly move: string;
  readonly bored: boolean;
  readonly ticked: readonly string[];
  readonly done: string;
  readonly current: string;
  readonly loaded: number;
  readonly cautions: readonly string[];
  readonly described: string;
  readonly stale: string;
  readonly side: string;
  readonly setUps: number;
}
function lookAtPage(): Shown {
  const words = (selector: string): string => document.querySelector(selector)?.textContent ?? '';
  const all = (selector: string): string[] =>
    [...document.querySelectorAll(selector)].map((one) => one.textContent ?? '');
  return {
    step: document.body.dataset.step ?? '',
    title: words('h1'),
    count: words('.count'),
    where: words('.where'),
    lie: words('.lie'),
    move: words('.move:not([hidden])'),
    bored: document.querySelector<HTMLInputElement>('#tick-bored')?.checked ?? false,
    ticked: [...document.querySelectorAll<HTMLElement>('.runs li.bored')].map((row) => row.dataset.run ?? ''),
    done: words('.done'),
    current: document.querySelector<HTMLElement>('.runs li.current')?.dataset.run ?? '',
    loaded: document.querySelectorAll('svg.drawing .spindle-loaded').length,
    cautions: all('.cautions li'),
    described: words('#described'),
    stale: words('.stale:not([hidden])'),
    side: document.body.dataset.side ?? '',
    setUps: document.querySelectorAll('.card-set-up').length,
  };
}
const look = (): Promise<Shown> => evaluateInWebview(PAGE, lookAtPage);
/** Waits until the page shows what is wanted, and returns all that it shows. */
const shows = (what: string, wanted: (shown: Shown) => boolean): Promise<Shown> =>
  until(
    what,
    async () => {
      const shown = await look();
      return wanted(shown) ? shown : null;
    },
    30_000,
  );

/** Lays the demo job into the workspace and opens it. */
async function openKitchen(): Promise<vscode.TextEditor> {
  const [folder] = vscode.workspace.workspaceFolders ?? [];
  const repository = process.env.BOREWRIGHT_EDITOR_REPOSITORY;
  assert.ok(folder && repository);
  for (const name of [FILE, 'shed.shop.yaml']) {
    const bytes = readFileSync(join(repository, 'test', 'fixtures', name));
    await vscode.workspace.fs.writeFile(vscode.Uri.joinPath(folder.uri, name), bytes);
  }
  return openFile(FILE);
}
async function closePanels(): Promise<void> {
  const tabs = vscode.window.tabGroups.all.flatMap((group) => group.tabs);
  await vscode.window.tabGroups.close(tabs.filter(({ input }) => input instanceof vscode.TabInputWebview));
}
/** Opens the machine view afresh on one carcass, or one panel of it. */
async function open(command: string, ...named: readonly string[]): Promise<vscode.TextEditor> {
  await closePanels();
  const editor = await openKitchen();
  await vscode.commands.executeCommand(command, editor.document.uri.toString(), ...named);
  return editor;
}
const openMachine = (...named: readonly string[]): Promise<vscode.TextEditor> =>
  open('borewright.showMachineView', ...named);
async function replace(editor: vscode.TextEditor, from: string, to: string): Promise<void> {
  const start = editor.document.getText().indexOf(from);
  assert.ok(start >= 0, `${from} in the text`);
  const range = new vscode.Range(editor.document.positionAt(start), editor.document.positionAt(start + from.length));
  assert.ok(await editor.edit((edit) => edit.replace(range, to)));
}
const lineOf = ({ document, selection }: vscode.TextEditor): string =>
  document.lineAt(selection.active.line).text.trim();

if (driverAvailable) {
  suite('machine view', () => {
    test('opens on the panel that a command names, under a strict content policy', async () => {
      const before = await pageProblems();
      await openMachine('larder', 'left');
      const shown = await shows(
        'the first step of the side',
        ({ title, step }) => title === 'larder, left' && step !== '',
      );
      assert.match(shown.lie, /^Inside face up, front edge at the fence, bottom end against (near|row)-left\.$/);
      assert.ok(shown.loaded > 0);
      assert.match(shown.count, /^1 \/ \d+$/);
      assert.match(shown.described, /Stops: .*-left on the left at 8 mm, used/);
      assert.ok(shown.cautions.some((words) => words.includes('isolate')));
      assert.ok(shown.cautions.some((words) => words.includes('hands clear')));
      const policy = await evaluateInWebview(
        PAGE,
        () => document.querySelector('meta[http-equiv]')?.getAttribute('content') ?? '',
      );
      assert.match(policy, /^default-src 'none'; script-src 'nonce-[0-9a-f]{32}'; style-src /);
      assert.doesNotMatch(policy, /unsafe/);
      assert.deepEqual((await pageProblems()).slice(before.length), []);
    });

    test('steps forward and back with the keyboard, and from set-up to set-up', async () => {
      await openMachine();
      await shows('the first step of the job', ({ count, step }) => count.startsWith('1 / ') && step !== '');
      await focusInWebview('svg.drawing');
      const press = async (key: string, wanted: (shown: Shown) => boolean): Promise<Shown> => {
        await pressKey(key);
        return shows(`what ${key} leads to`, wanted);
      };
      const first = await look();
      await press('ArrowRight', ({ count, step }) => count.startsWith('2 / ') && step !== first.step);
      await press('ArrowLeft', ({ count, step }) => count.startsWith('1 / ') && step === first.step);
      const next = await press('PageDown', ({ where }) => where.startsWith('Set-up 2 of '));
      assert.ok(!next.count.startsWith('1 / '));
      await press('PageUp', ({ where }) => where.startsWith('Set-up 1 of '));
      const last = await press('End', ({ count }) => /^(\d+) \/ \1$/.test(count));
      assert.equal(last.where.replace(/^Set-up (\d+) of (\d+).*$/, '$1=$2').split('=')[0], String(last.setUps));
      await press('Home', ({ count }) => count.startsWith('1 / '));
    });

    test('says how a panel is turned between two strokes', async () => {
      await openMachine('plates', 'bottom');
      await shows(
        'the first stroke',
        ({ title, step, move }) => title === 'plates, bottom' && step !== '' && move === '',
      );
      await focusInWebview('svg.drawing');
      const moves: string[] = [];
      let last = await look();
      for (const all = Number(last.count.split(' / ')[1]); moves.length < all - 1;) {
        await pressKey('ArrowRight');
        const before = last.step;
        last = await shows('the next step', ({ step }) => step !== before);
        const { lie, move } = last;
        moves.push(move);
        // On the upright head it is slid from stop to stop, its front edge at the fence; on the level one it is turned.
        if (move !== '')
          assert.match(move, lie.includes('at the fence') ? /^Slide it along, do not turn it/ : /180 degrees/);
      }
      assert.ok(moves.some((move) => move.includes('180 degrees on the table')));
      assert.ok(moves.some((move) => move.startsWith('Slide it along')));
    });

    test('space ticks the panel off, in the workspace and not in the job', async () => {
      const editor = await openMachine('tins', 'left');
      const first = await shows('a step of the panel', ({ title, step }) => title === 'tins, left' && step !== '');
      assert.equal(first.bored, false);
      await focusInWebview('svg.drawing');
      await pressKey(' ');
      const ticked = await shows('the tick', ({ bored }) => bored);
      assert.deepEqual(ticked.ticked, [ticked.current]);
      assert.match(ticked.done, /^1 of \d+ /);
      assert.equal(editor.document.isDirty, false);

      await vscode.commands.executeCommand('workbench.action.webview.reloadWebviewAction');
      const again = await shows('the tick after a reload', ({ bored, step }) => bored && step === ticked.step);
      assert.equal(again.title, 'tins, left');
      await openMachine('tins', 'left');
      await shows('the tick in a new panel', ({ bored, step }) => bored && step === ticked.step);
    });

    test('a tick goes with what it was for, and comes back when the edit is undone', async () => {
      const editor = await openMachine('tins', 'left');
      const before = await shows('the tick', ({ bored }) => bored);
      const shelves = 'fixed-shelves: [265.5, 489.5]';
      await replace(editor, shelves, `${shelves}\n    height: 691`);
      const moved = await shows('the other work', ({ done }) => done !== before.done);
      assert.match(moved.done, /^0 of /);
      await replace(editor, `${shelves}\n    height: 691`, shelves);
      await shows('the tick again', ({ done }) => done === before.done);
      await focusInWebview('svg.drawing');
      await pressKey(' ');
      await shows('no tick', ({ bored }) => !bored);
    });

    test('has the figures that are set, the stop in use first, and says what comes next', async () => {
      await openMachine('larder', 'left');
      await shows('the side', ({ title, step }) => title === 'larder, left' && step !== '');
      await focusInWebview('svg.drawing');
      let used: string[] = [];
      for (let index = 0; index < 3; index += 1) {
        const seen = await evaluateInWebview(PAGE, () => ({
          figures: [...document.querySelectorAll('.figures > div')].map((one) => one.textContent ?? ''),
          used: document.querySelector('.figures .used dt')?.textContent ?? '',
          next: document.querySelector('.next:not([hidden])')?.textContent ?? '',
          lie: document.querySelector('.lie')?.textContent ?? '',
        }));
        assert.ok(seen.figures[0]!.startsWith(seen.used) && seen.lie.includes(seen.used), JSON.stringify(seen));
        for (const name of ['depth', 'bits'])
          assert.ok(
            seen.figures.some((words) => words.startsWith(name)),
            name,
          );
        assert.match(seen.next, /^Next: ./);
        used = [...used, seen.used];
        const { step: before } = await look();
        await pressKey('ArrowRight');
        await shows('the next step', ({ step }) => step !== before);
      }
      assert.equal(used.length, 3);
    });

    test('shows what a command asks for also where another tab has hidden it', async () => {
      const editor = await openMachine('larder', 'left');
      await shows('the side', ({ title, step }) => title === 'larder, left' && step !== '');
      await vscode.window.showTextDocument(editor.document, vscode.ViewColumn.One);
      await vscode.commands.executeCommand('borewright.showBoreMap', editor.document.uri.toString());
      await until('the machine view hidden', () => {
        const tabs = vscode.window.tabGroups.all.flatMap((group) => group.tabs);
        return tabs.some(({ label, isActive }) => label.startsWith('Machine view') && !isActive);
      });
      await vscode.commands.executeCommand(
        'borewright.showMachineView',
        editor.document.uri.toString(),
        'tins',
        'right',
      );
      await shows('the other panel', ({ title, step }) => title === 'tins, right' && step !== '');
    });

    test('leads to the line that makes the panel', async () => {
      const editor = await openMachine('larder', 'shelf-1');
      await shows('the shelf', ({ title, step }) => title === 'larder, shelf-1' && step !== '');
      await clickInWebview('.to-text');
      await until('the cursor on the shelf', () => lineOf(editor).startsWith('fixed-shelves: [712]'));
    });

    test('while the text is broken the last good plan stays, and says so', async () => {
      const editor = await openMachine('larder', 'left');
      const good = await shows(
        'the side',
        ({ title, stale, step }) => title === 'larder, left' && stale === '' && step !== '',
      );
      await replace(editor, 'fixed-shelves: [712]', 'fixed-shelves: [712');
      const broken = await shows('the mark', ({ stale }) => stale !== '');
      assert.match(broken.stale, /^Not up to date\. .*last good plan/);
      assert.equal(broken.setUps, good.setUps);
      await focusInWebview('svg.drawing');
      await pressKey('ArrowRight');
      await shows('the next step of the last good plan', ({ count }) => count.startsWith('2 / '));
      await replace(editor, 'fixed-shelves: [712', 'fixed-shelves: [712]');
      await shows('the mark to go', ({ stale }) => stale === '');
    });

    test('the list shows the job in order; a panel in it leads to its steps', async () => {
      await open('borewright.showSetupList');
      const shown = await shows('the list', ({ setUps, side }) => setUps > 20 && side === 'list');
      const totals = await evaluateInWebview('.set-ups', () => document.querySelector('.totals')?.textContent ?? '');
      assert.match(totals, /^\d+ set-ups, \d+ strokes; .+ Changeovers take \d+ h .*No order that .* takes less/);
      assert.ok(shown.cautions.length >= 5);
      // Every panel says how it is laid, stroke by stroke; where faces differ in a set-up, which one lies down.
      const lays = await evaluateInWebview('.set-ups', () =>
        [...document.querySelectorAll('.card-set-up')].map((card) => ({
          rule: card.querySelector('.lay')?.textContent ?? '',
          runs: [...card.querySelectorAll('.runs li')].map((row) => row.querySelector('.run-lay')?.textContent ?? ''),
        })),
      );
      assert.ok(lays.some(({ rule }) => rule.includes('The list says which')));
      for (const { rule, runs } of lays) {
        for (const words of runs) assert.match(words, rule.includes('The list says which') ? / face down, / : / end /);
      }
      const run = await evaluateInWebview('.set-ups', () => {
        const rows = [...document.querySelectorAll<HTMLElement>('.runs li')];
        return rows[30]?.dataset.run ?? '';
      });
      await clickInWebview(`[data-run="${run}"] .run-open`);
      await shows('its first step', ({ step, side }) => step === `${run}/0` && side === 'machine');
    });

    test('all panels of a set-up are ticked at once, and unticked one by one', async () => {
      await open('borewright.showSetupList');
      const before = await shows('the list', ({ setUps, done }) => setUps > 20 && done !== '');
      const setUp = await evaluateInWebview('.set-ups', () => {
        const cards = [...document.querySelectorAll<HTMLElement>('.card-set-up')];
        return cards.find((card) => card.querySelectorAll('.runs li').length > 2)?.dataset.setUp ?? '';
      });
      await clickInWebview(`[data-set-up="${setUp}"] .tick-all`);
      const all = await shows('the ticks', ({ done }) => done !== before.done);
      assert.ok(all.ticked.length >= 2);
      for (const name of all.ticked) {
        const left = (await look()).ticked.length;
        await clickInWebview(`[data-run="${name}"] input`);
        await shows('one tick less', ({ ticked }) => ticked.length === left - 1);
      }
    });

    test('it can be read in every kind of theme, narrow and wide', async () => {
      await vscode.commands.executeCommand('workbench.action.closeSidebar');
      await resizeWindow(1500, 900);
      for (const theme of ['light', 'dark', 'high-contrast', 'high-contrast-light'] as const) {
        await openMachine('larder', 'left');
        await shows('the side', ({ title, step }) => title === 'larder, left' && step !== '');
        await focusInWebview('svg.drawing');
        await pressKey('ArrowRight');
        await shows('its second step', ({ count }) => count.startsWith('2 / '));
        await setTheme(theme);
        const colours = await evaluateInWebview(PAGE, () => {
          const stroke = (selector: string): string => getComputedStyle(document.querySelector(selector)!).stroke;
          return {
            paper: getComputedStyle(document.body).backgroundColor,
            ink: stroke('.shapes .panel'),
            loaded: stroke('.shapes .spindle-loaded'),
            stop: stroke('.shapes .stop-used'),
          };
        });
        for (const part of ['ink', 'loaded', 'stop'] as const) assert.notEqual(colours[part], colours.paper);
        assert.ok(statSync(await screenshot(`machine-${theme}`)).size > 20_000);
      }
      await setTheme('light');
      await open('borewright.showSetupList');
      await shows('the list', ({ setUps }) => setUps > 20);
      const seen = await evaluateInWebview('.set-ups', () => {
        const box = document.querySelector('.runs li.current')!.getBoundingClientRect();
        const pane = document.querySelector('.set-ups')!.getBoundingClientRect();
        return box.top >= pane.top && box.bottom <= pane.bottom;
      });
      assert.ok(seen, 'the panel whose step was shown is in sight in the list');
      await screenshot('machine-list-light');
      await setTheme('dark');
      await vscode.commands.executeCommand('workbench.action.toggleMaximizeEditorGroup');
      await shows('both sides', ({ step }) => step !== '');
      await screenshot('machine-wide-dark');
      await vscode.commands.executeCommand('workbench.action.toggleMaximizeEditorGroup');
    });

    test('no page has reported an error', async () => {
      const problems = (await pageProblems()).filter((text) => !text.includes('probe-went-wrong'));
      assert.deepEqual(problems, []);
      await closePanels();
      await resizeWindow(1440, 900);
      await vscode.commands.executeCommand('workbench.action.toggleSidebarVisibility');
    });
  });
}
