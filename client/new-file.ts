import * as vscode from 'vscode';

const TEMPLATE = 'borewright/template';

type Ask = (method: string, params: object) => Promise<unknown>;

/** Opens a new job or shop file, not saved yet, with a template whose places are to be filled in. */
export async function newFile(kind: 'job' | 'shop', ask: Ask): Promise<void> {
  const units = [
    { label: 'Millimetres', unit: 'mm' },
    { label: 'Inches', unit: 'in' },
  ] as const;
  const chosen = await vscode.window.showQuickPick(units, { placeHolder: 'Unit of the bare numbers in the file' });
  if (chosen === undefined) return;
  const template = await ask(TEMPLATE, { kind, unit: chosen.unit });
  const document = await vscode.workspace.openTextDocument({ language: `borewright-${kind}` });
  const editor = await vscode.window.showTextDocument(document);
  if (typeof template === 'string') await editor.insertSnippet(new vscode.SnippetString(template));
}
