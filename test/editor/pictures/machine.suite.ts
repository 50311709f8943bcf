import * as vscode from 'vscode';
import {
  evaluateInWebview,
  focusInWebview,
  openFile,
  pressKey,
  resizeWindow,
  screenshot,
  setTheme,
  until,
} from '../driver.js';
import { suite, test } from '../harness.js';

// The pictures of the README that show the machines. The workspace is a copy of the demo jobs.

const rest = (ms: number): Promise<void> => new Promise((done) => setTimeout(done, ms));
/** Waits until a stroke is drawn whose machine and panel these are, stepping forward as long as it is another. */
async function stepTo(step: RegExp): Promise<void> {
  await until(`a step like ${step.source}`, async () => {
    const shown = await evaluateInWebview('.machine-side', () => document.body.dataset.step ?? '');
    if (step.test(shown)) return true;
    if (shown !== '') await pressKey('ArrowRight');
    await rest(60);
    return false;
  });
  await rest(600);
}

suite('machine pictures', () => {
  test('the machine view and the set-up list', async () => {
    await resizeWindow(1440, 860);
    await vscode.commands.executeCommand('workbench.action.closeSidebar');
    const editor = await openFile('kitchen.carcass.yaml');
    const uri = editor.document.uri.toString();
    await setTheme('light');
    await vscode.commands.executeCommand('borewright.showMachineView', uri, 'pan-drawers', 'left');
    await focusInWebview('svg.drawing');
    await stepTo(/^pillar-[A-Z]+\/pan-drawers\/left\//);
    await focusInWebview('.steps .go-after');
    await screenshot('machine-view-light');
    await vscode.commands.executeCommand('borewright.showSetupList', uri);
    await rest(1000);
    await screenshot('set-up-list');
  });
});
