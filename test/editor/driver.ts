// What a suite in the extension host may ask of the browser that shows the editor, and the waiting that it needs.
import * as vscode from 'vscode';
import type { DriverReply, DriverRequest } from './driver-protocol.js';

/** False in a desktop editor, which has no driver: tests that need one are then skipped. */
export const driverAvailable = process.env.BOREWRIGHT_EDITOR_DRIVER !== undefined;

async function ask(request: DriverRequest): Promise<unknown> {
  const url = process.env.BOREWRIGHT_EDITOR_DRIVER;
  if (url === undefined) throw new Error('this editor has no driver');
  const response = await fetch(url, { method: 'POST', body: JSON.stringify(request) });
  const reply = (await response.json()) as DriverReply;
  if (!reply.ok) throw new Error(`${request.action}: ${reply.error}`);
  return reply.value;
}

/**
 * Takes a picture of the whole window, or of one element of a webview, and returns its path.
 * @param name file name without ending
 * @param element CSS selector inside a webview
 */
export async function screenshot(name: string, element?: string): Promise<string> {
  const taken = (): Promise<unknown> =>
    ask({ action: 'screenshot', name, ...(element === undefined ? {} : { webview: element }) });
  // A page that is laid out anew is another frame for a moment.
  return String(await taken().catch(() => new Promise((done) => setTimeout(done, 1000)).then(taken)));
}

/**
 * Runs a function in the page of the webview that has `selector`. The function is sent as its source, so it sees only
 * its argument and the page.
 */
export async function evaluateInWebview<A, R>(selector: string, fn: (argument: A) => R, argument?: A): Promise<R> {
  return (await ask({ action: 'evaluate-in-webview', webview: selector, source: fn.toString(), argument })) as R;
}

/** The same for a function that is given as its source, with all that it needs. */
export function evaluateSourceInWebview(selector: string, source: string): Promise<unknown> {
  return ask({ action: 'evaluate-in-webview', webview: selector, source });
}

/** Runs a function in the page of the workbench itself; for what no editor interface tells. */
export async function evaluateInWorkbench<A, R>(fn: (argument: A) => R, argument?: A): Promise<R> {
  return (await ask({ action: 'evaluate-in-workbench', source: fn.toString(), argument })) as R;
}

/** Clicks the first element that the selector finds; `force` for shapes covered by another shape. */
export async function clickInWebview(selector: string, force = false): Promise<void> {
  await ask({ action: 'click-in-webview', selector, force });
}
export async function hoverInWebview(selector: string): Promise<void> {
  await ask({ action: 'hover-in-webview', selector });
}
/** Draws the middle of an element by so many pixels, with the pointer held down. */
export async function dragInWebview(selector: string, x: number, y: number): Promise<void> {
  await ask({ action: 'drag-in-webview', selector, x, y });
}
export async function focusInWebview(selector: string): Promise<void> {
  await ask({ action: 'focus-webview', selector });
}
export async function hoverInWorkbench(selector: string): Promise<void> {
  await ask({ action: 'hover-in-workbench', selector });
}
/** Presses a key or a chord such as `Control+.`, where the focus is. */
export async function pressKey(key: string): Promise<void> {
  await ask({ action: 'press-key', key });
}
/** Types as a person would, where the focus is: a key so often, or as often as the window takes them. */
export async function typeText(text: string, everyMs = 0): Promise<void> {
  await ask({ action: 'type-text', text, everyMs });
}
export async function resizeWindow(width: number, height: number): Promise<void> {
  await ask({ action: 'resize-window', width, height });
}
/** Errors that pages in webviews have reported so far, content policy included. */
export async function pageProblems(): Promise<readonly string[]> {
  return (await ask({ action: 'problems' })) as readonly string[];
}

const THEMES = {
  light: { name: 'Light Modern', kind: vscode.ColorThemeKind.Light },
  dark: { name: 'Dark Modern', kind: vscode.ColorThemeKind.Dark },
  'high-contrast': { name: 'Default High Contrast', kind: vscode.ColorThemeKind.HighContrast },
  'high-contrast-light': { name: 'Default High Contrast Light', kind: vscode.ColorThemeKind.HighContrastLight },
} as const;
export type ThemeName = keyof typeof THEMES;

/** Changes the colour theme of the window and waits until it is in force. */
export async function setTheme(theme: ThemeName): Promise<void> {
  const { name, kind } = THEMES[theme];
  await vscode.workspace.getConfiguration('workbench').update('colorTheme', name, vscode.ConfigurationTarget.Global);
  await until(`the ${theme} theme`, () => vscode.window.activeColorTheme.kind === kind);
}

/**
 * Waits until `look` gives something other than false, null or undefined, and returns it.
 * @param what named in the error when it does not come in time
 */
export async function until<T>(
  what: string,
  look: () => T | PromiseLike<T>,
  limitMs = 15_000,
): Promise<Exclude<T, false | null | undefined>> {
  const end = Date.now() + limitMs;
  let last: unknown;
  do {
    try {
      const value = await look();
      if (value !== false && value !== null && value !== undefined)
        return value as Exclude<T, false | null | undefined>;
      last = value;
    } catch (error) {
      last = error;
    }
    await new Promise((done) => setTimeout(done, 30));
  } while (Date.now() < end);
  throw new Error(
    `waited ${limitMs} ms for ${what}; last seen: ${last instanceof Error ? last.message : String(last)}`,
  );
}

/** Opens a file of the workspace folder in the first column, with the keyboard focus in its text. */
export async function openFile(name: string): Promise<vscode.TextEditor> {
  const folder = vscode.workspace.workspaceFolders?.[0];
  if (folder === undefined) throw new Error('no folder is open');
  const document = await vscode.workspace.openTextDocument(vscode.Uri.joinPath(folder.uri, name));
  return vscode.window.showTextDocument(document, { viewColumn: vscode.ViewColumn.One, preview: false });
}

/**
 * Puts the cursor and the keyboard focus there, and returns when the window itself shows the cursor in place: the
 * extension host believes so at once, and a key pressed meanwhile would go to where the cursor was.
 */
export async function readyToType(editor: vscode.TextEditor, position: vscode.Position): Promise<void> {
  await vscode.window.showTextDocument(editor.document, vscode.ViewColumn.One);
  editor.selection = new vscode.Selection(position, position);
  const wanted = `Ln ${position.line + 1}, Col ${position.character + 1}`;
  await until(`the window to have its cursor at ${wanted}`, () =>
    evaluateInWorkbench(
      (place) =>
        document.activeElement?.closest('.monaco-editor') !== null &&
        document.getElementById('status.editor.selection')?.textContent.trim() === place,
      wanted,
    ),
  );
}
