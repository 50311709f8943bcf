import assert from 'node:assert/strict';
import { statSync } from 'node:fs';
import * as vscode from 'vscode';
import {
  clickInWebview,
  driverAvailable,
  evaluateInWebview,
  openFile,
  pageProblems,
  pressKey,
  screenshot,
  setTheme,
  typeText,
  until,
} from '../driver.js';
import { suite, test } from '../harness.js';

// The reach of the driver itself: where one of these fails, a failure of the suites after it means nothing.
if (driverAvailable) {
  suite('driver', () => {
    test('keys reach the text', async () => {
      const editor = await openFile('notes.yaml');
      await until('the focus', () => vscode.window.activeTextEditor === editor);
      await pressKey('Control+Home');
      await typeText('first: yes');
      await until('the typed text', () => editor.document.getText().startsWith('first: yes'));
      await vscode.commands.executeCommand('workbench.action.files.revert');
    });

    test('a webview can be read, clicked and photographed', async () => {
      const panel = vscode.window.createWebviewPanel('probe', 'Probe', vscode.ViewColumn.Two, { enableScripts: true });
      let clicks = 0;
      panel.webview.onDidReceiveMessage(() => clicks++);
      panel.webview.html = `<!doctype html><main id="probe-page"><button id="probe-button">Press</button></main><script>
        const editor = acquireVsCodeApi();
        document.getElementById('probe-button').addEventListener('click', () => editor.postMessage('pressed'));
      </script>`;
      const label = await evaluateInWebview('#probe-page', () => document.getElementById('probe-button')?.textContent);
      assert.equal(label, 'Press');
      await clickInWebview('#probe-button');
      await until('the click to arrive', () => clicks === 1);
      const picture = await screenshot('driver-probe');
      assert.ok(statSync(picture).size > 10_000, 'the picture has something on it');
      panel.dispose();
    });

    test('all four kinds of theme can be set', async () => {
      for (const theme of ['light', 'high-contrast', 'high-contrast-light', 'dark'] as const) await setTheme(theme);
      assert.equal(vscode.window.activeColorTheme.kind, vscode.ColorThemeKind.Dark);
    });

    test('errors of pages are seen', async () => {
      const panel = vscode.window.createWebviewPanel('probe', 'Probe', vscode.ViewColumn.Two, { enableScripts: true });
      panel.webview.html = `<!doctype html><script>throw new Error('probe-went-wrong')</script>`;
      await until('the error', async () => (await pageProblems()).some((text) => text.includes('probe-went-wrong')));
      panel.dispose();
    });
  });
}
