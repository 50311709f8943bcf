// From a key to the drawing that the browser has painted of it, in the real editor on the demo: `npm run bench`. Clocks of the
// workbench, of the page and of the extension host are of one machine.
import { writeFileSync } from 'node:fs';
import * as vscode from 'vscode';
import { driverAvailable, evaluateInWebview, evaluateInWorkbench, openFile, pressKey, until } from '../driver.js';
import { suite, test } from '../harness.js';
import { DRAWING, setCursor, shows } from '../preview-page.js';

/** A size that moves bores of the panel that is drawn. */
const LINE = 'height: 368';
const KEYS = 100;
/** At the first keys the editor loads what typing needs; they are not counted. */
const FIRST_KEYS = 6;
/** A person's pace, and so long that one key is done before the next. */
const REST_MS = 350;

/** Notes when each key came to the workbench. */
function watchKeys(): void {
  const keys: number[] = [];
  Object.assign(window, { keys_: keys });
  addEventListener('keydown', () => keys.push(performance.timeOrigin + performance.now()), true);
}
interface Painted {
  readonly version: number;
  readonly done: number;
  readonly painted: number;
  readonly changes: number;
}
/** Notes when each drawing stood in the page, and when it was painted. */
function watchPage(): void {
  const drawn: Painted[] = [];
  Object.assign(window, { drawn_: drawn });
  const now = (): number => performance.timeOrigin + performance.now();
  const channel = new MessageChannel();
  let waiting: Omit<Painted, 'painted'>[] = [];
  channel.port1.onmessage = () => {
    for (const one of waiting) drawn.push({ ...one, painted: now() });
    waiting = [];
  };
  new MutationObserver(() => {
    const changes = Number(document.querySelector<SVGElement>('svg.drawing')?.dataset.changes);
    waiting.push({ version: Number(document.body.dataset.version), done: now(), changes });
    // What is posted in a frame comes after its painting.
    requestAnimationFrame(() => channel.port2.postMessage(null));
  }).observe(document.body, { attributes: true, attributeFilter: ['data-version'] });
}

function quantile(values: readonly number[], part: number): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * part))]!;
}

if (driverAvailable) {
  suite('bench', () => {
    test('a key to its painted drawing', async () => {
      const editor = await openFile('kitchen.carcass.yaml');
      setCursor(editor, LINE);
      await vscode.commands.executeCommand('borewright.showBoreMap');
      await shows('the drawing', ({ bores }) => bores > 0);
      await vscode.window.showTextDocument(editor.document, vscode.ViewColumn.One);
      const at = editor.document.positionAt(editor.document.getText().indexOf(LINE) + LINE.length);
      await editor.edit((edit) => edit.insert(at, '.51'));
      const end = at.translate(0, 3);
      editor.selection = new vscode.Selection(end, end);
      await new Promise((done) => setTimeout(done, 3000));
      await evaluateInWorkbench(watchKeys);
      await evaluateInWebview(DRAWING, watchPage);
      const first = editor.document.version;
      const told: number[] = [];
      const changes = vscode.workspace.onDidChangeTextDocument(({ document, contentChanges }) => {
        if (document === editor.document && contentChanges.length > 0) told.push(Date.now());
      });
      for (let key = 0; key < FIRST_KEYS + KEYS; key += 1) {
        await pressKey(key % 2 === 0 ? '2' : 'Backspace');
        await new Promise((done) => setTimeout(done, REST_MS));
      }
      changes.dispose();
      const keys = await evaluateInWorkbench(() => (window as unknown as { keys_: readonly number[] }).keys_);
      const drawn = await until('the last drawing', async () => {
        const all = await evaluateInWebview(
          DRAWING,
          () => (window as unknown as { drawn_: readonly Painted[] }).drawn_,
        );
        return all.some(({ version }) => version === first + FIRST_KEYS + KEYS) ? all : null;
      });
      const parts = keys.flatMap((pressed, index) => {
        const one = drawn.find(({ version }) => version >= first + index + 1);
        return one === undefined
          ? []
          : [
              {
                'key to extension': told[index]! - pressed,
                'extension to page': one.done - told[index]!,
                'browser paints': one.painted - one.done,
                'key to painted drawing': one.painted - pressed,
              },
            ];
      });
      parts.splice(0, FIRST_KEYS);
      const lines = Object.keys(parts[0]!).map((name) => {
        const values = parts.map((one) => one[name as keyof typeof one]);
        return `${name.padEnd(24)} p50 ${quantile(values, 0.5).toFixed(0).padStart(5)} ms   p95 ${quantile(values, 0.95).toFixed(0).padStart(5)} ms`;
      });
      const changed = drawn.filter(({ changes }) => changes > 0).length;
      const replies = await evaluateInWebview(DRAWING, () => Number(document.body.dataset.replies ?? 0));
      lines.push(
        `${KEYS} keys, ${parts.length} of them drawn, ${changed} drawings other than the one before; ${replies} drawings came to the page in all`,
      );
      writeFileSync(process.env.BOREWRIGHT_EDITOR_RESULTS!.replace(/\.json$/, '.txt'), `${lines.join('\n')}\n`);
    });
  });
}
