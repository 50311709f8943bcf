import * as vscode from 'vscode';
import type { TextPosition, TextRange } from '../../shared-core/drawing/messages/drawing.js';

/** The server answers only for open files; after a restart of the editor nothing may have opened this one yet. */
export async function openText(uri: string): Promise<vscode.TextDocument> {
  const open = vscode.workspace.textDocuments.find((document) => document.uri.toString() === uri);
  return open ?? vscode.workspace.openTextDocument(vscode.Uri.parse(uri, true));
}

/** The editor that shows a file: the active one where it does. */
export function editorOf(uri: string): vscode.TextEditor | undefined {
  const shows = (editor: vscode.TextEditor | undefined): boolean => editor?.document.uri.toString() === uri;
  const { activeTextEditor, visibleTextEditors } = vscode.window;
  return shows(activeTextEditor) ? activeTextEditor : visibleTextEditors.find(shows);
}

/** Puts the cursor, and the keys, to a place of a file. */
export async function goTo(uri: string, { line, character }: TextPosition): Promise<void> {
  const document = await openText(uri);
  const at = document.validatePosition(new vscode.Position(line, character));
  const viewColumn = editorOf(uri)?.viewColumn ?? vscode.ViewColumn.One;
  const editor = await vscode.window.showTextDocument(document, { viewColumn, preserveFocus: false });
  editor.selection = new vscode.Selection(at, at);
  editor.revealRange(new vscode.Range(at, at), vscode.TextEditorRevealType.InCenterIfOutsideViewport);
}

/** The name of a file without its folder. */
export function fileName(uri: string): string {
  return vscode.Uri.parse(uri).path.split('/').at(-1) ?? '';
}

/** The keys of those pieces of text that have a part on a line. */
export function keysOnLine(ranges: Readonly<Record<string, TextRange>>, line: number): string[] {
  return Object.entries(ranges).flatMap(([key, { start, end }]) =>
    start.line <= line && line <= end.line ? [key] : [],
  );
}
