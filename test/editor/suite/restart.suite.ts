import assert from 'node:assert/strict';
import { execFileSync } from 'node:child_process';
import * as vscode from 'vscode';
import { driverAvailable, openFile, pressKey, readyToType, typeText, until } from '../driver.js';
import { suite, test } from '../harness.js';

/** The server is a child of the extension host. */
const serverProcess = (): number =>
  Number(execFileSync('pgrep', ['-P', String(process.pid), '-f', 'server.cjs'], { encoding: 'utf8' }).trim());

const findings = (uri: vscode.Uri): readonly string[] =>
  vscode.languages.getDiagnostics(uri).map(({ range, message }) => `${range.start.line} ${message}`);

/** What is found once nothing comes any more: slow rules are told after the quick ones. */
async function settled(uri: vscode.Uri): Promise<readonly string[]> {
  let last = findings(uri);
  let since = Date.now();
  await until('findings that stay', () => {
    const now = findings(uri);
    if (now.join('\n') !== last.join('\n')) [last, since] = [now, Date.now()];
    return Date.now() - since > 1500;
  });
  return last;
}

if (driverAvailable) {
  suite('a server that is killed', () => {
    test('is back within two seconds, with the findings of what was typed meanwhile', async () => {
      const editor = await openFile('pantry.carcass.yaml');
      const { document } = editor;
      const text = document.getText();
      const at = document.positionAt(text.indexOf('width: 600') + 'width: 600'.length);
      await readyToType(editor, at);
      await typeText('0000');
      await pressKey('Control+s');
      try {
        await until('the finding', () => findings(document.uri).some((one) => one.includes('6000')), 5000);
        const before = await settled(document.uri);
        const killed = serverProcess();
        process.kill(killed, 'SIGKILL');
        await typeText('0');
        const isNew = (): boolean =>
          serverProcess() !== killed && findings(document.uri).some((one) => one.includes('60000'));
        await until('what a new server finds', isNew, 2000);
        await pressKey('Backspace');
        await until('the same findings', () => findings(document.uri).join('\n') === before.join('\n'), 2000);
      } finally {
        await editor.edit((edit) => edit.replace(new vscode.Range(0, 0, document.lineCount, 0), text));
        await document.save();
      }
    });
  });
}

suite('a report to send', () => {
  test('opens as a text that is not saved, with versions and findings by rule, and nothing out of the files', async () => {
    const { document } = await openFile('pantry.carcass.yaml');
    const extension = vscode.extensions.getExtension('borewright.borewright')!;
    const { version } = extension.packageJSON as { version: string };
    await vscode.commands.executeCommand('borewright.writeReport');
    const shown = vscode.window.activeTextEditor!.document;
    assert.ok(shown.isUntitled);
    const report = shown.getText();
    assert.match(report, /nothing was sent/);
    assert.ok(report.includes(`Borewright ${version}`), report);
    assert.match(report, /job files: [1-9]/);
    const { fsPath } = document.uri;
    for (const word of ['pantry', fsPath.slice(0, fsPath.lastIndexOf('/')), 'width'])
      assert.ok(!report.includes(word), `${word} in\n${report}`);
    await vscode.commands.executeCommand('workbench.action.revertAndCloseActiveEditor');
  });
});
