// Gives a page in a webview the whole window, and the window the size that makes the page as wide as is wanted.
import * as vscode from 'vscode';
import { evaluateInWebview, evaluateInWorkbench, resizeWindow, until } from './driver.js';

/**
 * @param selector an element that the page has
 * @param width of the page, in CSS pixels
 */
export async function pageOfWidth(selector: string, width: number, height = 800): Promise<void> {
  await vscode.commands.executeCommand('workbench.action.closeSidebar');
  const groups = await evaluateInWorkbench(
    () =>
      [...document.querySelectorAll('.editor-group-container')].filter((one) => one.getBoundingClientRect().width > 10)
        .length,
  );
  if (groups > 1) {
    await vscode.commands.executeCommand('workbench.action.focusSecondEditorGroup');
    await vscode.commands.executeCommand('workbench.action.toggleMaximizeEditorGroup');
  }
  let window = width + 60;
  await until(`a page ${width} pixels wide`, async () => {
    await resizeWindow(window, height);
    await new Promise((done) => setTimeout(done, 250));
    const is = await evaluateInWebview(selector, () => innerWidth);
    if (is === width) return true;
    window += width - is;
    return false;
  });
}
export const WINDOW = { width: 1440, height: 900 };
