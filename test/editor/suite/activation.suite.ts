import assert from 'node:assert/strict';
import * as vscode from 'vscode';
import { openFile, until } from '../driver.js';
import { suite, test } from '../harness.js';

suite('activation', () => {
  test('a job file has its language and wakes the extension', async () => {
    const editor = await openFile('pantry.carcass.yaml');
    assert.equal(editor.document.languageId, 'borewright-job');
    const extension = vscode.extensions.getExtension('borewright.borewright');
    assert.ok(extension, 'the extension is known to the editor');
    await until('the extension to be active', () => extension.isActive);
  });

  test('a shop file has its language', async () => {
    const editor = await openFile('pantry.shop.yaml');
    assert.equal(editor.document.languageId, 'borewright-shop');
  });

  test('other YAML is left alone', async () => {
    const editor = await openFile('notes.yaml');
    assert.equal(editor.document.languageId, 'yaml');
  });

  test('every command of the manifest is there', async () => {
    const extension = vscode.extensions.getExtension('borewright.borewright');
    assert.ok(extension);
    const manifest = extension.packageJSON as { contributes: { commands: { command: string }[] } };
    const known = new Set(await vscode.commands.getCommands(true));
    const missing = manifest.contributes.commands.map(({ command }) => command).filter((name) => !known.has(name));
    assert.deepEqual(missing, []);
  });
});
