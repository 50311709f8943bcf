import assert from 'node:assert/strict';
import * as vscode from 'vscode';
import {
  driverAvailable,
  evaluateInWebview,
  evaluateInWorkbench,
  pressKey,
  readyToType,
  resizeWindow,
  screenshot,
  setTheme,
  typeText,
  until,
} from '../driver.js';
import { suite, test } from '../harness.js';
import { pageOfWidth, WINDOW } from '../page-size.js';
import { closePreview, DRAWING, findingsOf, JOB, preview, replace, setCursor, shows } from '../preview-page.js';

/** Where a drawing stood in one frame that the browser painted, and what it was. */
interface Frame {
  readonly content: string;
  readonly place: string;
  readonly stale: boolean;
}

/** Notes from now on, frame by frame, where the drawing stands. */
function watchDrawing(): void {
  const frames: Frame[] = [];
  Object.assign(window, { frames_: frames });
  const note = (): void => {
    const svg = document.querySelector<SVGSVGElement>('svg.drawing')!;
    const { a, d, e, f } = svg.getScreenCTM()!;
    frames.push({
      // Where it comes from in the text moves with the text.
      content: svg.querySelector('.shapes')!.innerHTML.replace(/ data-source="[^"]*"/g, ''),
      place: [a, d, e, f].map((value) => value.toFixed(2)).join(' '),
      stale: document.querySelector('.stale:not([hidden])') !== null,
    });
    requestAnimationFrame(note);
  };
  note();
}
const seen = (): Promise<readonly Frame[]> =>
  evaluateInWebview(DRAWING, () => (window as unknown as { frames_: readonly Frame[] }).frames_);

/** Notes from now on, frame by frame, how high the line of the text that has `words` stands in the window. */
function watchText(words: string): void {
  const tops: number[] = [];
  Object.assign(window, { tops_: tops });
  const note = (): void => {
    if ((window as unknown as { tops_: readonly number[] }).tops_ !== tops) return;
    const lines = [...document.querySelectorAll('.view-line')];
    const line = lines.find((one) => one.textContent?.replace(/\u00a0/g, ' ').includes(words));
    if (line !== undefined) tops.push(Math.round(line.getBoundingClientRect().top));
    requestAnimationFrame(note);
  };
  note();
}
const tops = (): Promise<readonly number[]> =>
  evaluateInWorkbench(() => (window as unknown as { tops_: readonly number[] }).tops_);

/** Whether the text has stood where it stands for a second, asked again and again. */
function restsForASecond(): () => Promise<boolean> {
  let [since, was] = [0, NaN];
  return async () => {
    const now = (await tops()).at(-1) ?? NaN;
    if (now !== was) [since, was] = [Date.now(), now];
    return Date.now() - since >= 1000;
  };
}

const lenses = (): Promise<number> =>
  evaluateInWorkbench(() => document.querySelectorAll('.codelens-decoration a').length);

if (driverAvailable) {
  suite('steady', () => {
    test('while one types, the drawing does not move', async () => {
      const editor = await preview(JOB.replace('    loose-shelves: 1\n', ''), 'fixed-shelves');
      await shows('the shelf', ({ title }) => title === 'right-base, shelf-1');
      await vscode.window.showTextDocument(editor.document, vscode.ViewColumn.One);
      await until('the lenses', async () => (await lenses()) >= 3);
      await pressKey('End');
      await evaluateInWorkbench(watchText, 'fixed-shelves');
      await until('the text to be at rest under its lenses', restsForASecond());
      await evaluateInWebview(DRAWING, watchDrawing);
      await evaluateInWorkbench(watchText, 'fixed-shelves');

      await pressKey('Enter');
      await typeText('nonsense: 1', 120);
      await pressKey('Escape');
      await until('the finding', () => findingsOf(editor).length > 0);
      await pressKey('Control+Shift+K');
      await until('the line to go', () => !editor.document.getText().includes('nonsense'));
      await until('the finding to go', () => findingsOf(editor).length === 0);
      await readyToType(editor, editor.document.positionAt(editor.document.getText().indexOf('] # jars') + 1));
      await pressKey('Backspace');
      await until('the bracket to go', () => editor.document.getText().includes('[297 #'));
      await shows('the band', ({ stale }) => stale !== '');
      await typeText(']');
      await shows('the band to go', ({ stale }) => stale === '');
      setCursor(editor, 'jars');
      await pressKey('End');
      await typeText(' and tins', 120);
      await new Promise((done) => setTimeout(done, 600));

      const frames = await seen();
      assert.ok(frames.length > 60, `${frames.length} frames`);
      assert.ok(
        frames.some(({ stale }) => stale),
        'the drawing was out of date meanwhile',
      );
      const [first] = frames;
      const places = new Set(frames.filter(({ content }) => content === first!.content).map(({ place }) => place));
      assert.deepEqual([...places], [first!.place]);
      assert.ok(frames.filter(({ content }) => content === first!.content).length > 0.9 * frames.length);
      assert.equal(new Set(await tops()).size, 1, `the text stood at ${[...new Set(await tops())].join(', ')}`);
    });

    test('a drawing is lettered alike in a pane of any size, and laid out for it', async () => {
      const editor = await preview(
        JOB.replace(
          'kind: base\n    width: 600\n    fixed',
          'kind: wall\n    depth: 250\n    height: 1100\n    width: 600\n    fixed',
        ),
        'width: 600\n    fixed',
      );
      // The side had this name before the edit too.
      const typed = editor.document.version;
      await shows('the side', ({ title, version }) => title === 'right-base, left' && version === typed);
      const lettering = async (width: number, height: number): Promise<{ px: number; lies: boolean }> => {
        await pageOfWidth(DRAWING, width, height);
        // A pane that has not been told of its new size yet has the drawing of its old one.
        await new Promise((done) => setTimeout(done, 700));
        await until('the drawing laid out for its pane', () =>
          evaluateInWebview(DRAWING, () => {
            // 3.6 pixels for a millimetre of lettering.
            const { clientWidth, clientHeight } = document.querySelector('svg.drawing')!;
            const pane = [clientWidth, clientHeight].map((side) => Math.round(side / 3.6)).join(' ');
            return document.body.dataset.laidFor === pane;
          }),
        );
        return evaluateInWebview(DRAWING, () => {
          const size = (one: Element): number => {
            const { width: w, height: h } = one.getBoundingClientRect();
            return Math.min(w, h);
          };
          const face = document.querySelector('.shapes .panel')!.getBoundingClientRect();
          return {
            px: Math.max(...[...document.querySelectorAll('.shapes text.dimension')].map(size)),
            lies: face.width > face.height,
          };
        });
      };
      const all = [];
      for (const [width, height] of [
        [720, 900],
        [1200, 800],
        [1200, 500],
      ] as const)
        all.push({ width, ...(await lettering(width, height)) });
      await resizeWindow(WINDOW.width, WINDOW.height);
      for (const { px, width } of all)
        assert.ok(px >= 10 && px <= 17, `${px} pixels at ${width}: ${JSON.stringify(all)}`);
      assert.deepEqual(
        all.map(({ lies }) => lies),
        [true, true, true],
      );
      await replace(editor, 'kind: wall', 'kind: base');
    });

    test('the page can be read at 350, 720 and 1,200 pixels', async () => {
      const editor = await preview(
        JOB.replace('loose-shelves: 1', 'loose-shelves: [516]').replace('kind: base', 'kind: base\n    row-offset: 9'),
        'width: 600\n    fixed',
      );
      await shows('the side', ({ title }) => title === 'right-base, left');
      await until('findings', () => findingsOf(editor).length > 0);
      for (const width of [350, 720, 1200]) {
        await pageOfWidth(DRAWING, width, width === 350 ? 800 : 900);
        for (const theme of ['light', 'dark', 'high-contrast', 'high-contrast-light'] as const) {
          await setTheme(theme);
          await new Promise((done) => setTimeout(done, 300));
          await screenshot(`preview-${width}-${theme}`, 'body');
        }
        const wide = await evaluateInWebview(DRAWING, () => document.documentElement.scrollWidth - innerWidth);
        assert.ok(wide <= 0, `${wide} pixels too wide at ${width}`);
      }
      await resizeWindow(WINDOW.width, WINDOW.height);
      await setTheme('dark');
      await closePreview();
    });
  });
}
