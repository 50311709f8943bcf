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
  readyToType,
  resizeWindow,
  screenshot,
  setTheme,
  typeText,
  until,
} from '../driver.js';
import { suite, test } from '../harness.js';
import { pageOfWidth, WINDOW } from '../page-size.js';
import { closePreview, lineOf, replace, setCursor } from '../preview-page.js';

const PAGE = '.card-of-machine';

interface Card {
  readonly name: string;
  readonly current: boolean;
  readonly fault: string;
  /** The names of stops with their ranges. */
  readonly words: readonly string[];
  /** Keys of what the cursor's text makes. */
  readonly marked: readonly string[];
  readonly isDrawn: boolean;
}
const cards = (): Promise<readonly Card[]> =>
  evaluateInWebview(PAGE, () =>
    [...document.querySelectorAll<HTMLElement>('.card-of-machine')].map((card) => ({
      name: card.querySelector('h2')!.textContent,
      current: card.classList.contains('current'),
      fault: card.querySelector('.fault:not([hidden])')?.textContent ?? '',
      words: [...card.querySelectorAll('.shapes text')].map((one) => one.textContent),
      marked: [...card.querySelectorAll<SVGElement>('.at-cursor')].map((one) => one.dataset.source!),
      isDrawn: card.querySelector('svg:not([hidden]) .fence') !== null,
    })),
  );
/** Waits until a machine is shown as is wanted. */
const shows = (what: string, name: string, wanted: (card: Card) => boolean): Promise<Card> =>
  until(what, async () => {
    const card = (await cards()).find((one) => one.name === name);
    return card !== undefined && wanted(card) ? card : null;
  });

if (driverAvailable) {
  suite('shop preview', () => {
    test('each machine stands beside its text, live and linked both ways', async () => {
      const before = await pageProblems();
      try {
        const folder = vscode.workspace.workspaceFolders![0]!.uri;
        const text = readFileSync(join(process.env.BOREWRIGHT_EDITOR_REPOSITORY!, 'test/fixtures/shed.shop.yaml'));
        await vscode.workspace.fs.writeFile(vscode.Uri.joinPath(folder, 'looked-at.shop.yaml'), text);
        const editor = await openFile('looked-at.shop.yaml');
        await pressKey('Control+k');
        await pressKey('b');
        await shows('the machines', 'borer-up', ({ isDrawn }) => isDrawn);
        assert.ok((await cards()).length >= 4);

        // From the text to the drawing.
        setCursor(editor, 'square-right');
        const level = await shows('the machine of the cursor', 'borer-level', ({ current }) => current);
        assert.ok(
          level.marked.length >= 2 && level.marked.every((source) => source.includes('square-right')),
          level.marked.join(' '),
        );
        assert.equal((await cards()).filter(({ current }) => current).length, 1);

        // From the drawing to the text.
        await clickInWebview(`text[data-source*='"long-left"']`, true);
        await until('the cursor on the stop', () => lineOf(editor).startsWith('long-left:'));
        await shows('its machine', 'borer-up', ({ current, marked }) => current && marked.length > 0);

        // Key by key.
        const range = 'range: 60 to 1300';
        await readyToType(editor, editor.document.positionAt(editor.document.getText().indexOf(range) + range.length));
        await pressKey('Backspace');
        await shows('the shorter range', 'borer-up', ({ words }) =>
          words.some((one) => /^long-left: 60 to 130$/.test(one)),
        );
        await typeText('5', 60);
        await shows('a longer one', 'borer-up', ({ words }) =>
          words.some((one) => /^long-left: 60 to 1305$/.test(one)),
        );
        await replace(editor, 'spindles: 21', 'spindles: many');
        const faulty = await shows('the fault', 'borer-up', ({ fault }) => fault !== '');
        assert.match(faulty.fault, /^Not up to date\. .*many/);
        assert.ok(faulty.isDrawn, 'the last good drawing');
        await screenshot('shop-fault');
        await replace(editor, 'spindles: many', 'spindles: 21');
        await shows('it mended', 'borer-up', ({ fault }) => fault === '');

        setCursor(editor, 'near-left');
        for (const width of [350, 720, 1200]) {
          await pageOfWidth(PAGE, width, 900);
          for (const theme of ['light', 'dark', 'high-contrast', 'high-contrast-light'] as const) {
            await setTheme(theme);
            await new Promise((done) => setTimeout(done, 250));
            await screenshot(`shop-${width}-${theme}`, 'body');
          }
          const wide = await evaluateInWebview(PAGE, () => document.documentElement.scrollWidth - innerWidth);
          assert.ok(wide <= 0, `${wide} pixels too wide at ${width}`);
        }
        assert.deepEqual((await pageProblems()).slice(before.length), []);
      } finally {
        await resizeWindow(WINDOW.width, WINDOW.height);
        await setTheme('dark');
        await closePreview();
      }
    });
  });
}
