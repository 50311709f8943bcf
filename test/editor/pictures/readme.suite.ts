import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import * as vscode from 'vscode';
import {
  evaluateInWebview,
  hoverInWorkbench,
  openFile,
  pressKey,
  resizeWindow,
  screenshot,
  setTheme,
  until,
} from '../driver.js';
import { suite, test } from '../harness.js';

// The pictures of the README, made anew by `npm run pictures`. The workspace is a copy of the demo jobs.

/** Puts the cursor on the first place that has the text, in the middle of the window. */
async function cursorAt(file: string, text: string): Promise<vscode.TextEditor> {
  const editor = await openFile(file);
  const start = editor.document.getText().indexOf(text);
  if (start < 0) throw new Error(`${file} has no ‘${text}’`);
  const position = editor.document.positionAt(start + 1);
  editor.selection = new vscode.Selection(position, position);
  editor.revealRange(editor.selection, vscode.TextEditorRevealType.InCenter);
  return editor;
}

/** Waits until the page shows a drawing whose title starts so, and a little more for it to come to rest. */
async function drawn(title: string): Promise<void> {
  await until(`the drawing of ${title}`, async () => {
    const shown = await evaluateInWebview('body[data-version]', () => document.querySelector('h1')?.textContent ?? '');
    return shown.startsWith(title);
  });
  await rest(600);
}
const rest = (ms: number): Promise<void> => new Promise((done) => setTimeout(done, ms));

suite('pictures', () => {
  test('bore map', async () => {
    await resizeWindow(1440, 860);
    await vscode.commands.executeCommand('workbench.action.closeSidebar');
    await cursorAt('kitchen.carcass.yaml', 'corner-base:');
    await vscode.commands.executeCommand('borewright.showBoreMap');
    await setTheme('light');
    await drawn('corner-base');
    await screenshot('bore-map-light');
  });

  test('a hover with the figures', async () => {
    await cursorAt('kitchen.carcass.yaml', 'corner-base:');
    await vscode.commands.executeCommand('editor.action.showHover');
    await hoverInWorkbench('.monaco-hover:not(.hidden) .monaco-hover-content');
    await screenshot('hover');
    await pressKey('Escape');
  });

  test('every panel of a carcass', async () => {
    await cursorAt('kitchen.carcass.yaml', 'bench-drawers:');
    await vscode.commands.executeCommand('borewright.showAllPanels');
    await drawn('bench-drawers');
    await screenshot('all-panels');
  });

  test('a finding and its repairs', async () => {
    const fixtures = join(process.env.BOREWRIGHT_EDITOR_REPOSITORY!, 'test', 'fixtures');
    const folder = vscode.workspace.workspaceFolders![0]!.uri;
    for (const name of ['every-finding.carcass.yaml', 'faults.shop.yaml'])
      await vscode.workspace.fs.writeFile(vscode.Uri.joinPath(folder, name), readFileSync(join(fixtures, name)));
    const editor = await cursorAt('every-finding.carcass.yaml', '330 # two over');
    await until('the findings', () => vscode.languages.getDiagnostics(editor.document.uri).length > 0);
    await vscode.commands.executeCommand('borewright.showBoreMap');
    await cursorAt('every-finding.carcass.yaml', '330 # two over');
    await drawn('shelf-off-grid');
    await vscode.commands.executeCommand('editor.action.quickFix');
    await rest(1500);
    await screenshot('finding-and-repairs');
    await pressKey('Escape');
  });
});
