import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import * as vscode from 'vscode';
import {
  clickInWebview,
  driverAvailable,
  evaluateInWebview,
  openFile,
  pageProblems,
  pressKey,
  resizeWindow,
  screenshot,
  setTheme,
  until,
} from '../driver.js';
import { suite, test } from '../harness.js';
import { pageOfWidth, WINDOW } from '../page-size.js';

const PAGE = '.floor';

interface Seen {
  readonly task: string;
  readonly kind: string;
  readonly count: string;
  readonly figures: readonly string[];
  readonly cautions: number;
  readonly smallestFigure: number;
  readonly smallestTarget: number;
  readonly tooWide: number;
  readonly isOpen: boolean;
}
const look = (): Promise<Seen> =>
  evaluateInWebview(PAGE, () => {
    const page = document.querySelector<HTMLElement>('.floor')!;
    const words = (selector: string): string => page.querySelector(selector)?.textContent ?? '';
    const figures = [...page.querySelectorAll<HTMLElement>('.floor-figures dd')];
    const buttons = [...page.querySelectorAll('button')].filter((one) => one.closest('.zoom') === null);
    return {
      task: words('.floor-task'),
      kind: page.dataset.kind ?? '',
      count: words('.floor-count'),
      figures: figures.map((one) => one.textContent ?? ''),
      cautions: page.querySelectorAll('.floor-caution li').length,
      smallestFigure: Math.min(...figures.map((one) => parseFloat(getComputedStyle(one).fontSize))),
      smallestTarget: Math.min(
        ...buttons.map((one) => one.getBoundingClientRect()).map(({ width, height }) => Math.min(width, height)),
      ),
      tooWide: document.documentElement.scrollWidth - innerWidth,
      isOpen: !page.hidden,
    };
  });
const sees = (what: string, wanted: (seen: Seen) => boolean): Promise<Seen> =>
  until(what, async () => {
    const seen = await look();
    return wanted(seen) ? seen : null;
  });

if (driverAvailable) {
  suite('at the machine', () => {
    test('one thing after the other, large, ticked off with Space, and gone on with where it was left', async () => {
      try {
        const demo = join(process.env.BOREWRIGHT_EDITOR_REPOSITORY!, 'test', 'fixtures');
        const folder = vscode.workspace.workspaceFolders![0]!.uri;
        // A job of its own, so that other suites find no ticks.
        for (const [name, from] of [
          ['floor.carcass.yaml', 'kitchen.carcass.yaml'],
          ['shed.shop.yaml', 'shed.shop.yaml'],
        ] as const)
          await vscode.workspace.fs.writeFile(vscode.Uri.joinPath(folder, name), readFileSync(join(demo, from)));
        const editor = await openFile('floor.carcass.yaml');
        await vscode.commands.executeCommand('borewright.showMachineView', editor.document.uri.toString(), 'plates');
        await until('the first step', () =>
          evaluateInWebview(
            PAGE,
            () => (document.body.dataset.step ?? '') !== '' && document.querySelector('.set-ups')!.scrollTop === 0,
          ),
        );
        await clickInWebview('.floor-open');
        const first = await sees('the machine to be set', ({ kind, isOpen }) => isOpen && kind === 'set');
        assert.match(first.task, /^Set /);
        assert.ok(first.cautions >= 5, 'the cautions in full where a machine is begun');
        for (const width of [350, 720, 1200]) {
          await pageOfWidth(PAGE, width, width === 350 ? 800 : 900);
          for (const theme of ['light', 'dark', 'high-contrast', 'high-contrast-light'] as const) {
            await setTheme(theme);
            await screenshot(`floor-set-${width}-${theme}`, 'body');
          }
          const seen = await look();
          assert.ok(seen.smallestFigure >= 40, `figures of ${seen.smallestFigure} pixels`);
          assert.ok(seen.smallestTarget >= 48, `targets of ${seen.smallestTarget} pixels`);
          assert.ok(seen.tooWide <= 0, `${seen.tooWide} pixels too wide at ${width}`);
        }
        await clickInWebview('.floor-done');
        const stroke = await sees('the first panel', ({ kind }) => kind === 'stroke');
        assert.match(stroke.task, /^Bore /);
        assert.equal(stroke.cautions, 0, 'the caution in short after that');
        await new Promise((done) => setTimeout(done, 500));
        await setTheme('dark');
        await screenshot('floor-stroke-1200-dark', 'body');
        while ((await look()).kind === 'stroke') {
          const { count } = await look();
          await pressKey('Space');
          await sees('the next', (seen) => seen.count !== count);
        }
        const check = await look();
        assert.match(check.task, /^Check the first piece: /);
        assert.ok(
          check.figures.length >= 4 && check.figures.every((figure) => /\d|through/.test(figure)),
          check.figures.join(' | '),
        );
        await screenshot('floor-check-1200-dark', 'body');
        await pageOfWidth(PAGE, 350, 800);
        await screenshot('floor-check-350-dark', 'body');
        await pressKey('ArrowLeft');
        await sees('the stroke before', ({ kind }) => kind === 'stroke');
        await vscode.commands.executeCommand('workbench.action.webview.reloadWebviewAction');
        await sees(
          'the same after a reload',
          ({ isOpen, kind, count }) => isOpen && kind === 'stroke' && count !== check.count,
        );
        await screenshot('floor-stroke-350-dark', 'body');
        await clickInWebview('.floor-leave');
        await sees('to be out', ({ isOpen }) => !isOpen);
        await clickInWebview('.floor-open');
        await sees('to go on at what is not ticked off', ({ isOpen, count }) => isOpen && count === check.count);
        await until('the keys to go to the page', () => evaluateInWebview(PAGE, () => document.hasFocus()));
        // The page has the focus a moment before its window sends it keys, so the first press may go nowhere.
        await until('to be out again', async () => {
          await pressKey('Escape');
          await new Promise((done) => setTimeout(done, 300));
          return !(await look()).isOpen;
        });
        assert.deepEqual(
          (await pageProblems()).filter((text) => !text.includes('probe-went-wrong')),
          [],
        );
      } finally {
        // A failure here must not leave the suites after it a narrow window.
        await resizeWindow(WINDOW.width, WINDOW.height);
        const tabs = vscode.window.tabGroups.all.flatMap((group) => group.tabs);
        await vscode.window.tabGroups.close(tabs.filter(({ input }) => input instanceof vscode.TabInputWebview));
      }
    });

    test('the list opens at its head also where the first panel has no room in sight', async () => {
      try {
        await resizeWindow(700, 500);
        const editor = await openFile('pantry.carcass.yaml');
        await vscode.commands.executeCommand('borewright.showSetupList', editor.document.uri.toString());
        const stands = (): Promise<{ readonly top: number; readonly row: number; readonly foot: number } | null> =>
          evaluateInWebview('.set-ups', () => {
            const list = document.querySelector<HTMLElement>('.set-ups')!;
            const row = list.querySelector('[aria-current]')?.getBoundingClientRect();
            if (row === undefined) return null;
            return { top: list.scrollTop, row: row.top, foot: list.getBoundingClientRect().bottom };
          });
        const { top, row, foot } = await until('the list', stands);
        assert.ok(row > foot, 'the panel is further down than there is room for');
        assert.equal(top, 0);
      } finally {
        await resizeWindow(WINDOW.width, WINDOW.height);
        const tabs = vscode.window.tabGroups.all.flatMap((group) => group.tabs);
        await vscode.window.tabGroups.close(tabs.filter(({ input }) => input instanceof vscode.TabInputWebview));
      }
    });
  });
}
