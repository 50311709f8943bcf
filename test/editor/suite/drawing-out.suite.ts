import assert from 'node:assert/strict';
import * as vscode from 'vscode';
import {
  clickInWebview,
  dragInWebview,
  driverAvailable,
  evaluateInWebview,
  evaluateInWorkbench,
  focusInWebview,
  pageProblems,
  pressKey,
  resizeWindow,
  screenshot,
  setTheme,
  until,
} from '../driver.js';
import { suite, test } from '../harness.js';
import { pageOfWidth, WINDOW } from '../page-size.js';
import { closePreview, DRAWING, JOB, preview, setCursor, shows } from '../preview-page.js';

const measured = (): Promise<string> =>
  evaluateInWebview(DRAWING, () => document.querySelector('.between-bores:not([hidden])')?.textContent ?? '');
const titles = (): string[] =>
  vscode.window.tabGroups.all
    .flatMap(({ tabs }) => tabs)
    .flatMap(({ label, input }) => (input instanceof vscode.TabInputWebview ? [label] : []));
/** Chooses from what stands behind the button. */
async function more(name: string): Promise<void> {
  await clickInWebview('.more > button');
  await clickInWebview(`[data-more="${name}"]`);
}
/** Takes the name that the save dialog proposes. */
async function takeProposedName(): Promise<void> {
  await until('the dialog', () =>
    evaluateInWorkbench(() => {
      const input = document.querySelector<HTMLInputElement>('.quick-input-widget:not([style*="display: none"]) input');
      return input !== null && /\.(svg|png)$/.test(input.value);
    }),
  );
  await pressKey('Enter');
}
const written = (name: string): Promise<Uint8Array> => {
  const folder = vscode.workspace.workspaceFolders![0]!.uri;
  return until(name, () => vscode.workspace.fs.readFile(vscode.Uri.joinPath(folder, name)));
};

if (driverAvailable) {
  suite('what is done with a drawing', () => {
    test('measures between two bores, by pointer and by keys', async () => {
      await preview(JOB, 'width: 600\n    fixed');
      await shows('the side', ({ title }) => title === 'right-base, left');
      const row = await evaluateInWebview(DRAWING, () =>
        [...document.querySelectorAll<SVGElement>('.shapes .bore')]
          .map(({ dataset }) => dataset.bore!)
          .filter((id) => id.includes('row-front')),
      );
      assert.ok(row.length > 10, `${row.length} holes in the front row`);
      await clickInWebview('.measure');
      assert.match(await measured(), /Choose the first/);
      await clickInWebview(`[data-bore="${row[0]!}"]`, true);
      await until('the first', async () => (await measured()).includes('Choose the second'));
      await clickInWebview(`[data-bore="${row[3]!}"]`, true);
      // Three pitches of 32 mm up the row.
      await until('the figures', async () =>
        /hole 4 of 23\.\nFront to back 0 mm · End to end 96 mm · Straight 96 mm/.test(await measured()),
      );
      for (const theme of ['light', 'dark', 'high-contrast', 'high-contrast-light'] as const) {
        await setTheme(theme);
        await screenshot(`measure-${theme}`, 'body');
      }
      await setTheme('dark');
      await focusInWebview(DRAWING);
      await pressKey('Escape');
      await until('it to be over', async () => (await measured()) === '');
      await pressKey('Tab');
      await pressKey('m');
      await until('the first by key', async () => (await measured()).includes('Choose the second'));
      await pressKey('ArrowRight');
      await pressKey('m');
      await until('the figures by key', async () => /Straight [\d.]+ mm/.test(await measured()));
      await pressKey('Escape');
      await until('it to be over again', async () => (await measured()) === '');
    });

    test('another preview stays on its panel while the first follows the cursor', async () => {
      const editor = await preview(JOB, 'width: 600\n    fixed');
      await shows('the side', ({ title }) => title === 'right-base, left');
      await more('another');
      await until('two previews', () => titles().length === 2);
      assert.ok(titles().includes('Bore map right-base, left · pantry.carcass.yaml'), titles().join(' | '));
      await vscode.window.showTextDocument(editor.document, vscode.ViewColumn.One);
      setCursor(editor, 'left-base');
      const titleOf = (page: string): Promise<string> =>
        evaluateInWebview(page, () => document.querySelector('h1')?.textContent ?? '');
      await until('the first to follow', async () => (await titleOf('#follow:checked')).startsWith('left-base, '));
      await until('the other to stay', async () => (await titleOf('#follow:not(:checked)')) === 'right-base, left');
      await screenshot('two-previews');
      // The command shows the cursor's panel in the one that follows, and opens no third.
      await vscode.commands.executeCommand('borewright.showBoreMap');
      await new Promise((done) => setTimeout(done, 300));
      assert.equal(titles().length, 2);
      await closePreview();
    });

    test('is copied, saved under a free name, and made ready to print', async () => {
      const before = await pageProblems();
      await preview(JOB, 'width: 600\n    fixed');
      await shows('the side', ({ title }) => title === 'right-base, left');
      await clickInWebview('.more > button');
      await screenshot('more', 'body');
      await pressKey('Escape');
      await more('svg');
      await takeProposedName();
      const svg = new TextDecoder().decode(await written('right-base-left.svg'));
      assert.match(svg, /^<\?xml .*\n<svg .*width="[\d.]+mm"/);
      await until('the keys to be back', () => evaluateInWebview(DRAWING, () => document.hasFocus()));
      await more('svg');
      await takeProposedName();
      assert.equal(new TextDecoder().decode(await written('right-base-left-2.svg')), svg, 'the first is still there');
      await until('the keys to be back', () => evaluateInWebview(DRAWING, () => document.hasFocus()));
      await more('png');
      await takeProposedName();
      const png = Buffer.from(await written('right-base-left.png'));
      // PNG (ISO/IEC 15948): signature, then IHDR with width and height.
      assert.equal(png.subarray(0, 8).toString('hex'), '89504e470d0a1a0a');
      const size = /width="([\d.]+)mm" height="([\d.]+)mm"/.exec(svg)!.slice(1).map(Number);
      for (const [at, side] of size.entries())
        assert.ok(Math.abs(png.readUInt32BE(16 + 4 * at) - (side * 300) / 25.4) < 1, 'of 300 dots an inch');
      await until('the keys to be back', () => evaluateInWebview(DRAWING, () => document.hasFocus()));
      await more('copy');
      await until('the copy', () =>
        evaluateInWebview(DRAWING, () => document.querySelector('.copied:not([hidden])')?.textContent ?? ''),
      );
      await screenshot('copied', 'body');
      assert.deepEqual((await pageProblems()).slice(before.length), []);
      await closePreview();
    });

    test('its tools have room at 350, 720 and 1,200 pixels', async () => {
      await preview(JOB, 'width: 600\n    fixed');
      await shows('the side', ({ title }) => title === 'right-base, left');
      for (const width of [350, 720, 1200]) {
        await pageOfWidth(DRAWING, width, 800);
        await clickInWebview('.more > button');
        await screenshot(`more-${width}`, 'body');
        const off = await evaluateInWebview(DRAWING, () => {
          const { left, right } = document.querySelector('.more ul')!.getBoundingClientRect();
          return Math.max(-left, right - innerWidth);
        });
        assert.ok(off <= 0, `the list is ${off} pixels out of the page at ${width}`);
        await pressKey('Escape');
      }
      await resizeWindow(WINDOW.width, WINDOW.height);
      await closePreview();
    });

    test('a loose shelf is drawn along the grid, by pointer and by keys, and the editor undoes it', async () => {
      const editor = await preview(JOB.replace('loose-shelves: 1', 'loose-shelves: [521]'), 'width: 600\n    fixed');
      await shows('the side', ({ title }) => title === 'right-base, left');
      const SHELF = '[data-shelf="shelf:loose-1"]';
      const written = (): string => /loose-shelves: (.*)/.exec(editor.document.getText())![1]!;
      // The shelf's own middle is a hole of no row, so that the pointer takes the shelf.
      const pitch = await evaluateInWebview(DRAWING, () => {
        const holes = [...document.querySelectorAll('[data-bore*="row-front"]')].map((one) =>
          one.getBoundingClientRect(),
        );
        return holes[0]!.y - holes[1]!.y;
      });
      assert.ok(pitch > 5, `${pitch} pixels from hole to hole`);
      await dragInWebview(SHELF, 0, -2 * pitch);
      await until('two holes up', () => written() === '[585]');
      await shows('the drawing after it', ({ stale }) => stale === '');
      await focusInWebview(SHELF);
      await pressKey('ArrowDown');
      await until('one hole down', () => written() === '[553]');
      await until('the drawing after it', () =>
        evaluateInWebview(DRAWING, () => document.activeElement?.getAttribute('aria-valuenow') === '18'),
      );
      for (const theme of ['light', 'dark', 'high-contrast', 'high-contrast-light'] as const) {
        await setTheme(theme);
        await screenshot(`shelf-${theme}`, 'body');
      }
      await setTheme('dark');
      await vscode.window.showTextDocument(editor.document, vscode.ViewColumn.One);
      await pressKey('Control+z');
      await until('the last step undone', () => written() === '[585]');
      await pressKey('Control+z');
      await until('both undone', () => written() === '[521]');
      await closePreview();
    });

    test('a hover shows the panel in a picture', async () => {
      const editor = await preview(JOB, 'fixed-shelves');
      await vscode.window.showTextDocument(editor.document, vscode.ViewColumn.One);
      await shows('the shelf', ({ title }) => title === 'right-base, shelf-1');
      await closePreview();
      setCursor(editor, '297');
      await vscode.commands.executeCommand('editor.action.showHover');
      const size = await until('the picture', () =>
        evaluateInWorkbench(() => {
          const image = document.querySelector<HTMLImageElement>('.monaco-hover img');
          return image !== null && image.naturalWidth > 0 ? [image.naturalWidth, image.naturalHeight] : null;
        }),
      );
      assert.ok(size[0]! >= 150 && size[0]! <= 400 && size[1]! >= 60 && size[1]! <= 260, size.join(' × '));
      for (const theme of ['dark', 'light', 'high-contrast'] as const) {
        await setTheme(theme);
        await screenshot(`hover-${theme}`);
      }
      await setTheme('dark');
      await vscode.commands.executeCommand('editor.action.hideHover');
    });
  });
}
