import assert from 'node:assert/strict';
import { relative } from 'node:path';
import * as vscode from 'vscode';
import { openFile, until } from '../driver.js';
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
});
