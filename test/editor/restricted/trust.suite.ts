import assert from 'node:assert/strict';
import * as vscode from 'vscode';
import { openFile, until } from '../driver.js';
import { suite, test } from '../harness.js';

// A folder from somebody else, not trusted: nothing in it is run, so everything works as ever.
suite('restricted window', () => {
  test('the window is restricted', () => {
    assert.equal(vscode.workspace.isTrusted, false);
  });

  test('the extension is awake all the same', async () => {
    await openFile('pantry.carcass.yaml');
    const extension = vscode.extensions.getExtension('borewright.borewright');
    assert.ok(extension);
    await until('the extension to be active', () => extension.isActive);
  });
});
