import * as vscode from 'vscode';

/** Pages of the reference that links name; the first where nothing is named. */
const PAGES = ['job-files', 'shop-files', 'findings'];

/** Opens a page of the reference at a place, as the editor shows Markdown; as a text where it does not. */
export async function openReference(extension: vscode.Uri, page: unknown, anchor: unknown): Promise<void> {
  const name = PAGES.find((one) => one === page) ?? PAGES[0]!;
  const file = vscode.Uri.joinPath(extension, 'dist', 'reference', `${name}.md`);
  const fragment = typeof anchor === 'string' ? anchor : '';
  try {
    await vscode.commands.executeCommand('markdown.showPreview', file.with({ fragment }));
  } catch {
    await vscode.window.showTextDocument(file);
  }
}
