import assert from 'node:assert/strict';
import * as vscode from 'vscode';
import { openFile, until } from '../driver.js';
import { suite, test } from '../harness.js';

// A folder from somebody else, not trusted: nothing in it is run, so everything works as ever.
suite('restricted window', () => {
  test('the window is restricted', () => {
    assert.equal(vscode.workspace.isTrusted, false);
  });

  test('findings come all the same', async () => {
    const editor = await openFile('pantry.carcass.yaml');
    assert.ok(await editor.edit((edit) => edit.insert(new vscode.Position(6, 0), '    widht: 600\n')));
    const finding = await until('the finding', () =>
      vscode.languages.getDiagnostics(editor.document.uri).find(({ message }) => message.includes('widht')),
    );
    assert.equal(finding.range.start.line, 6);
    await vscode.commands.executeCommand('workbench.action.files.revert');
  });
});
