import * as vscode from 'vscode';
import { NAMES } from './messages.js';

const TEMPLATE = 'borewright/template';

type Ask = (method: string, params: object) => Promise<unknown>;

/** Opens a new job or shop file, not saved yet, with a template whose places are to be filled in. */
export async function newFile(kind: 'job' | 'shop', ask: Ask): Promise<void> {
  const units = [
    { label: NAMES.millimetres, unit: 'mm' },
    { label: NAMES.inches, unit: 'in' },
  ] as const;
  const chosen = await vscode.window.showQuickPick(units, { placeHolder: NAMES.unitAsked });
  if (chosen === undefined) return;
  const template = await ask(TEMPLATE, { kind, unit: chosen.unit });
  const document = await vscode.workspace.openTextDocument({ language: `borewright-${kind}` });
  const editor = await vscode.window.showTextDocument(document);
  if (typeof template === 'string') await editor.insertSnippet(new vscode.SnippetString(template));
}
