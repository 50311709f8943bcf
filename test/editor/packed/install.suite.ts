import assert from 'node:assert/strict';
import { relative } from 'node:path';
import * as vscode from 'vscode';
import { evaluateInWebview, openFile, pageProblems, until } from '../driver.js';
import { suite, test } from '../harness.js';

// The package as an owner gets it, installed; the repository is not the extension here.
suite('installed package', () => {
  test('the extension comes from the package and wakes for a job', async () => {
    const editor = await openFile('pantry.carcass.yaml');
    assert.equal(editor.document.languageId, 'borewright-job');
    const extension = vscode.extensions.getExtension('borewright.borewright');
    assert.ok(extension, 'the package is installed');
    const repository = process.env.BOREWRIGHT_EDITOR_REPOSITORY ?? '';
    assert.ok(relative(repository, extension.extensionPath).startsWith('..'), extension.extensionPath);
    await until('the extension to be active', () => extension.isActive);
  });

  test('its server and its page are in the package', async () => {
    const editor = await openFile('pantry.carcass.yaml');
    const symbols = await until('the outline', async () => {
      const found = await vscode.commands.executeCommand<vscode.DocumentSymbol[] | undefined>(
        'vscode.executeDocumentSymbolProvider',
        editor.document.uri,
      );
      return found !== undefined && found.length > 0 && found;
    });
    assert.ok(symbols.length > 0);
    editor.selection = new vscode.Selection(new vscode.Position(5, 2), new vscode.Position(5, 2));
    await vscode.commands.executeCommand('borewright.showBoreMap');
    // The page draws a moment after its frame is there.
    await until('a bore map with its bores', async () => {
      const bores = await evaluateInWebview(
        'svg.drawing',
        () => document.querySelectorAll('.shapes [data-bore]').length,
      );
      return bores > 10;
    });
    assert.deepEqual(await pageProblems(), []);
  });
});
