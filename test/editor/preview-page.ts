// The preview's page as the suites see it, and the job that they open it on.
import assert from 'node:assert/strict';
import * as vscode from 'vscode';
import { evaluateInWebview, openFile, until } from './driver.js';

export const FILE = 'pantry.carcass.yaml';
export const DRAWING = 'svg.drawing';

/** What the page shows now. */
export interface Shown {
  readonly title: string;
  readonly version: number;
  readonly viewBox: string;
  readonly figures: readonly string[];
  readonly bores: number;
  readonly findings: readonly string[];
  readonly stale: string;
  readonly empty: string;
}
export function lookAtPage(): Shown {
  const words = (selector: string): string => document.querySelector(selector)?.textContent ?? '';
  const all = (selector: string): string[] =>
    [...document.querySelectorAll(selector)].map((one) => one.textContent ?? '');
  return {
    title: words('h1'),
    version: Number(document.body.dataset.version),
    viewBox: document.querySelector('svg.drawing')?.getAttribute('viewBox') ?? '',
    figures: all('.shapes text.dimension'),
    bores: document.querySelectorAll('.shapes [data-bore]').length,
    findings: all('.finding-line .rule'),
    stale: words('.stale:not([hidden])'),
    empty: words('.empty:not([hidden])'),
  };
}
export const look = (): Promise<Shown> => evaluateInWebview(DRAWING, lookAtPage);
/** Waits until the page shows what is wanted, and returns all that it shows. */
export const shows = (what: string, wanted: (shown: Shown) => boolean): Promise<Shown> =>
  until(what, async () => {
    const shown = await look();
    return wanted(shown) ? shown : null;
  });

/** Opens the job with this text and the preview beside it, the cursor on the line that has `at`. */
export async function preview(
  text: string,
  at: string,
  command = 'borewright.showBoreMap',
): Promise<vscode.TextEditor> {
  await closePreview();
  const editor = await openFile(FILE);
  await replaceAll(editor, text);
  setCursor(editor, at);
  await vscode.commands.executeCommand(command);
  return editor;
}
export async function closePreview(): Promise<void> {
  const tabs = vscode.window.tabGroups.all.flatMap((group) => group.tabs);
  await vscode.window.tabGroups.close(tabs.filter(({ input }) => input instanceof vscode.TabInputWebview));
}
export async function replaceAll(editor: vscode.TextEditor, text: string): Promise<void> {
  const { document } = editor;
  const whole = new vscode.Range(new vscode.Position(0, 0), document.lineAt(document.lineCount - 1).range.end);
  assert.ok(await editor.edit((edit) => edit.replace(whole, text)));
}
export async function replace(editor: vscode.TextEditor, from: string, to: string): Promise<void> {
  const start = editor.document.getText().indexOf(from);
  assert.notEqual(start, -1, `the text has ${from}`);
  const range = new vscode.Range(editor.document.positionAt(start), editor.document.positionAt(start + from.length));
  assert.ok(await editor.edit((edit) => edit.replace(range, to)));
}
export function setCursor(editor: vscode.TextEditor, at: string): void {
  const position = editor.document.positionAt(editor.document.getText().indexOf(at) + 1);
  editor.selection = new vscode.Selection(position, position);
}
export const lineOf = (editor: vscode.TextEditor): string =>
  editor.document.lineAt(editor.selection.active.line).text.trim();
export const findingsOf = (editor: vscode.TextEditor): string[] =>
  vscode.languages
    .getDiagnostics(editor.document.uri)
    .map(({ code }) => String(typeof code === 'object' ? code.value : code));

export const JOB = `title: Pantry
shop: pantry.shop.yaml

carcasses:
  left-base:
    kind: base
    width: 600
  right-base:
    kind: base
    width: 600
    fixed-shelves: [297] # jars
    loose-shelves: 1
`;
