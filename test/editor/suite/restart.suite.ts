import { execFileSync } from 'node:child_process';
import * as vscode from 'vscode';
import { driverAvailable, openFile, pressKey, readyToType, typeText, until } from '../driver.js';
import { suite, test } from '../harness.js';

/** The server is a child of the extension host. */
const serverProcess = (): number =>
  Number(execFileSync('pgrep', ['-P', String(process.pid), '-f', 'server.cjs'], { encoding: 'utf8' }).trim());

const findings = (uri: vscode.Uri): readonly string[] =>
  vscode.languages.getDiagnostics(uri).map(({ range, message }) => `${range.start.line} ${message}`);

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
      await until('the finding', () => findings(document.uri).some((one) => one.includes('6000')), 5000);
      const before = findings(document.uri);
      const killed = serverProcess();
      process.kill(killed, 'SIGKILL');
      await typeText('0');
      const isNew = (): boolean =>
        serverProcess() !== killed && findings(document.uri).some((one) => one.includes('60000'));
      await until('what a new server finds', isNew, 2000);
      await pressKey('Backspace');
      await until('the same findings', () => findings(document.uri).join('\n') === before.join('\n'), 2000);
      await editor.edit((edit) => edit.replace(new vscode.Range(0, 0, document.lineCount, 0), text));
      await document.save();
    });
  });
}
