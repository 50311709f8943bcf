import assert from 'node:assert/strict';
import { statSync } from 'node:fs';
import * as vscode from 'vscode';
import {
  clickInWebview,
  driverAvailable,
  evaluateInWebview,
  focusInWebview,
  hoverInWebview,
  openFile,
  pageProblems,
  pressKey,
  screenshot,
  setTheme,
  until,
} from '../driver.js';
import { suite, test } from '../harness.js';
import {
  closePreview,
  DRAWING,
  FILE,
  findingsOf,
  JOB,
  lineOf,
  look,
  lookAtPage,
  preview,
  replace,
  setCursor,
  shows,
} from '../preview-page.js';

/** A loose shelf between two holes. */
const OFF_GRID = JOB.replace('loose-shelves: 1', 'loose-shelves: [516]');

if (driverAvailable) {
  suite('preview', () => {
    test('opens beside the text, under a strict content policy', async () => {
      const before = await pageProblems();
      await preview(JOB, 'width: 600\n    fixed');
      const shown = await shows('the bore map', ({ title }) => title === 'right-base, left');
      assert.ok(shown.bores > 40, `${shown.bores} bores`);
      const policy = await evaluateInWebview(
        DRAWING,
        () => document.querySelector('meta[http-equiv]')?.getAttribute('content') ?? '',
      );
      assert.match(policy, /^default-src 'none'; script-src 'nonce-[0-9a-f]{32}'; style-src /);
      assert.doesNotMatch(policy, /unsafe/);
      assert.deepEqual((await pageProblems()).slice(before.length), []);
    });

    test('follows the cursor from panel to panel', async () => {
      const editor = await preview(JOB, 'fixed-shelves');
      await shows('the shelf', ({ title }) => title === 'right-base, shelf-1');
      setCursor(editor, 'left-base');
      await shows('the other carcass', ({ title }) => title.startsWith('left-base, '));
    });

    test('a fault is found, repaired, and the page follows', async () => {
      const editor = await preview(OFF_GRID.replace('[516]', '[521]'), 'width: 600\n    fixed');
      await shows('a clean side', ({ title }) => title === 'right-base, left');
      await replace(editor, '[521]', '[516]');
      await until('the finding', () => findingsOf(editor).includes('shelf-off-grid'));

      const at = editor.document.positionAt(editor.document.getText().indexOf('516') + 1);
      const actions = await vscode.commands.executeCommand<vscode.CodeAction[]>(
        'vscode.executeCodeActionProvider',
        editor.document.uri,
        new vscode.Range(at, at),
      );
      const repair = actions.find(({ title }) => title.includes('521'));
      assert.ok(repair?.edit, `a repair to 521 among: ${actions.map(({ title }) => title).join(' | ')}`);
      assert.ok(await vscode.workspace.applyEdit(repair.edit));
      assert.match(editor.document.getText(), /loose-shelves: \[521\]/);
      await until('the finding to go', () => !findingsOf(editor).includes('shelf-off-grid'));
    });

    test('a click on a bore leads to the line that causes it, and the drawing stays', async () => {
      const editor = await preview(JOB, 'width: 600\n    fixed');
      await shows('the side', ({ title }) => title === 'right-base, left');
      const id = await evaluateInWebview(
        DRAWING,
        () => document.querySelector<SVGElement>('[data-group^="shelf-1"]')?.dataset.bore ?? '',
      );
      await clickInWebview(`[data-bore="${id}"]`, true);
      await until('the cursor on the shelf', () => lineOf(editor).startsWith('fixed-shelves'));
      await new Promise((done) => setTimeout(done, 300));
      assert.equal((await look()).title, 'right-base, left');
      const marked = await evaluateInWebview(DRAWING, () => document.querySelectorAll('.rings .cursor').length);
      assert.ok(marked > 0, 'what comes from the line is marked');
    });

    test('the keyboard walks the bores and leads to the text', async () => {
      const editor = await preview(JOB, 'width: 600\n    fixed');
      await shows('the side', ({ title }) => title === 'right-base, left');
      await focusInWebview(DRAWING);
      const focused = (): Promise<string> =>
        evaluateInWebview(DRAWING, () =>
          document.activeElement instanceof SVGElement ? (document.activeElement.dataset.bore ?? '') : '',
        );
      await pressKey('Tab');
      const first = await until('a bore with the focus', focused);
      await pressKey('ArrowRight');
      const second = await until('the next bore', async () => {
        const now = await focused();
        return now !== first && now;
      });
      assert.notEqual(second, '');
      await pressKey('Tab');
      await until('the next line of the table', async () => {
        const now = await focused();
        return now !== second && now;
      });
      const before = (await look()).viewBox;
      await pressKey('+');
      await until('to be nearer', async () => (await look()).viewBox !== before);
      await pressKey('0');
      await until('the whole', async () => (await look()).viewBox === before);
      setCursor(editor, 'title');
      await pressKey('Enter');
      await until('the cursor in the carcass', () => lineOf(editor) !== 'title: Pantry');
    });

    test('an edit keeps the zoom and touches only what differs', async () => {
      const editor = await preview(JOB, 'width: 600\n    fixed');
      await shows('the side', ({ title }) => title === 'right-base, left');
      const whole = (await look()).viewBox;
      for (let step = 0; step < 3; step += 1) await clickInWebview('[aria-label^="Zoom in"]');
      const near = await until('to be nearer', async () => {
        const { viewBox } = await look();
        return viewBox !== whole && viewBox;
      });
      await evaluateInWebview(DRAWING, () => {
        for (const one of document.querySelectorAll('.shapes [data-bore]')) one.setAttribute('data-seen', 'yes');
      });
      await replace(editor, '[297]', '[329]');
      const after = await shows('the moved shelf', ({ figures }) => figures.includes('329'));
      assert.equal(after.viewBox, near);
      const kept = await evaluateInWebview(DRAWING, () => document.querySelectorAll('.shapes [data-seen]').length);
      assert.equal(kept, after.bores, 'the page drew no bore anew');
    });

    test('lettering stays readable however near one goes', async () => {
      await preview(JOB, 'width: 600\n    fixed');
      await shows('the side', ({ title }) => title === 'right-base, left');
      const pixels = (): Promise<number> =>
        evaluateInWebview(
          DRAWING,
          () => document.querySelector('.shapes text.dimension')!.getBoundingClientRect().height,
        );
      // By then the last pane is laid out for.
      await new Promise((done) => setTimeout(done, 500));
      const whole = await pixels();
      for (let step = 0; step < 9; step += 1) await clickInWebview('[aria-label^="Zoom in"]');
      await until('smaller letters', async () => (await pixels()) < whole * 2);
      await screenshot('preview-near');
      await clickInWebview('.percent');
      await until('the letters of the whole', async () => Math.abs((await pixels()) - whole) < 1);
    });

    test('two fingers zoom, one drags, and neither is a click', async () => {
      const editor = await preview(JOB, 'width: 600\n    fixed');
      await shows('the side', ({ title }) => title === 'right-base, left');
      const line = editor.selection.active.line;
      const seen = await evaluateInWebview(DRAWING, () => {
        const svg = document.querySelector<SVGSVGElement>('svg.drawing')!;
        // Made-up pointers cannot be captured.
        svg.setPointerCapture = () => undefined;
        const { left, top, width, height } = svg.getBoundingClientRect();
        const [x, y] = [left + width / 2, top + height / 2];
        const send = (type: string, pointerId: number, dx: number): void => {
          const more = { bubbles: true, pointerType: 'touch', pointerId, button: 0, clientX: x + dx, clientY: y };
          svg.dispatchEvent(new PointerEvent(type, more));
        };
        const box = (): number[] => svg.getAttribute('viewBox')!.split(' ').map(Number);
        const middle = ([bx, , w]: number[]): number => bx! + w! / 2;
        const whole = box();
        send('pointerdown', 41, -50);
        send('pointerdown', 42, 50);
        send('pointermove', 42, 100);
        send('pointermove', 41, -100);
        const near = box();
        send('pointerup', 41, -100);
        send('pointermove', 42, 160);
        const dragged = box();
        send('pointerup', 42, 160);
        send('pointermove', 42, 0);
        const left0 = box();
        document.querySelector<HTMLButtonElement>('.percent')!.click();
        return {
          times: whole[2]! / near[2]!,
          moved: middle(near) - middle(whole),
          // In pixels: the finger that was left has gone 60 to the right.
          drag: ((middle(near) - middle(dragged)) * width) / near[2]!,
          still: JSON.stringify(left0) === JSON.stringify(dragged),
        };
      });
      assert.ok(Math.abs(seen.times - 2) < 0.01, JSON.stringify(seen));
      assert.ok(Math.abs(seen.moved) < 1, JSON.stringify(seen));
      assert.ok(Math.abs(seen.drag - 60) < 1, JSON.stringify(seen));
      assert.ok(seen.still);
      assert.equal(editor.selection.active.line, line);
    });

    test('zoom and subject survive a reload of the page', async () => {
      await preview(JOB, 'width: 600\n    fixed');
      await shows('the side', ({ title }) => title === 'right-base, left');
      await clickInWebview('[aria-label^="Zoom in"]');
      const near = (await look()).viewBox;
      await vscode.commands.executeCommand('workbench.action.webview.reloadWebviewAction');
      await shows(
        'the same part of the same panel',
        ({ title, viewBox }) => title === 'right-base, left' && viewBox === near,
      );
    });

    test('while the text is broken the last good drawing stays, and says so', async () => {
      const editor = await preview(JOB, 'width: 600\n    fixed');
      const good = await shows('the side', ({ title, stale }) => title === 'right-base, left' && stale === '');
      await replace(editor, 'fixed-shelves: [297]', 'fixed-shelves: [297');
      const broken = await shows('the mark', ({ stale }) => stale !== '');
      assert.match(broken.stale, /^Not up to date\. /);
      assert.equal(broken.bores, good.bores);
      await replace(editor, 'fixed-shelves: [297', 'fixed-shelves: [297]');
      await shows('the mark to go', ({ stale }) => stale === '');
    });

    test('all panels of a carcass are shown, and findings with their bores', async () => {
      const editor = await preview(OFF_GRID, 'kind: base\n    width: 600\n    fixed', 'borewright.showAllPanels');
      const shown = await shows(
        'the finding beside all panels',
        ({ title, findings }) => title === 'right-base' && findings.includes('shelf-off-grid'),
      );
      const panels = await evaluateInWebview(DRAWING, () =>
        [...document.querySelectorAll('.shapes text.panel-name')].map((one) => one.textContent ?? ''),
      );
      for (const name of ['left', 'right', 'bottom', 'rail-front', 'rail-back', 'shelf-1', 'loose-1', 'back']) {
        assert.ok(panels.includes(name), `${name} among ${panels.join(', ')}`);
      }
      assert.ok(shown.bores > 100);

      await clickInWebview('[data-opens="bottom"]', true);
      await shows('the bore map of the panel', ({ title }) => title === 'right-base, bottom');
      setCursor(editor, 'left-base');
      await shows('that it follows the cursor again', ({ title }) => title.startsWith('left-base, '));
    });

    test('an empty job says what to write', async () => {
      await preview('unit: mm\n', 'unit');
      const shown = await until('the sentence', async () => {
        const { empty } = await evaluateInWebview('body[data-version]', lookAtPage);
        return empty !== '' && empty;
      });
      assert.match(shown, /carcasses/);
    });

    test('the server can be restarted', async () => {
      const editor = await preview(OFF_GRID, 'fixed');
      await until('the finding', () => findingsOf(editor).includes('shelf-off-grid'));
      await vscode.commands.executeCommand('borewright.restartServer');
      await until('the finding to come again', () => findingsOf(editor).includes('shelf-off-grid'));
      await replace(editor, '[516]', '[521]');
      await until('the new server to answer', () => !findingsOf(editor).includes('shelf-off-grid'));
      await shows('its drawing', ({ title }) => title === 'right-base, shelf-1');
    });

    test('it can be read in every kind of theme', async () => {
      await preview(JOB.replace('[297]', '[300]'), 'width: 600\n    fixed');
      await shows('the side', ({ title }) => title === 'right-base, left');
      const id = await evaluateInWebview(
        DRAWING,
        () => document.querySelector<SVGElement>('.bore-dowel')?.dataset.bore ?? '',
      );
      for (const theme of ['light', 'dark', 'high-contrast', 'high-contrast-light'] as const) {
        await setTheme(theme);
        await hoverInWebview(`[data-bore="${id}"]`);
        const colours = await evaluateInWebview(DRAWING, () => {
          const seen = (selector: string): string => getComputedStyle(document.querySelector(selector)!).stroke;
          return {
            paper: getComputedStyle(document.body).backgroundColor,
            ink: seen('.shapes .line-outline'),
            bore: seen('.shapes .bore-dowel .rim'),
          };
        });
        assert.notEqual(colours.ink, colours.paper);
        assert.notEqual(colours.bore, colours.paper);
        assert.ok(statSync(await screenshot(`preview-${theme}`)).size > 20_000);
      }
      await vscode.commands.executeCommand('borewright.showAllPanels');
      await shows('all panels', ({ title }) => title === 'right-base');
      await screenshot('preview-all-panels');
      await setTheme('dark');
    });

    test('no page has reported an error', async () => {
      const problems = (await pageProblems()).filter((text) => !text.includes('probe-went-wrong'));
      assert.deepEqual(problems, []);
      await closePreview();
      await openFile(FILE);
      await vscode.commands.executeCommand('workbench.action.files.revert');
    });
  });
}
