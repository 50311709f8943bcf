import assert from 'node:assert/strict';
import * as vscode from 'vscode';
import { openFile, until } from '../driver.js';
import { suite, test } from '../harness.js';

const tabs = (): readonly string[] =>
  vscode.window.tabGroups.all.flatMap((group) => group.tabs.map(({ label }) => label));

suite('reference', () => {
  test('a hover leads to the page of its key, which opens as the editor shows Markdown', async () => {
    const editor = await openFile('pantry.carcass.yaml');
    const at = editor.document.positionAt(editor.document.getText().indexOf('width') + 1);
    const link = await until('a link in the hover', async () => {
      const hovers = await vscode.commands.executeCommand<vscode.Hover[]>(
        'vscode.executeHoverProvider',
        editor.document.uri,
        at,
      );
      const words = hovers.flatMap(({ contents }) => contents as vscode.MarkdownString[]);
      return words.map(({ value }) => /\((command:borewright\.openReference[^)]*)\)/.exec(value)?.[1]).find(Boolean);
    });
    const { path, query } = vscode.Uri.parse(link);
    assert.deepEqual(JSON.parse(query), ['job-files', 'carcass-width']);
    await vscode.commands.executeCommand(path, ...(JSON.parse(query) as string[]));
    await until('the page', () => tabs().some((label) => /job-files\.md/.test(label)));
    await vscode.commands.executeCommand('workbench.action.closeActiveEditor');
  });
});
