import { writeFileSync } from 'node:fs';
import * as vscode from 'vscode';
import {
  clickInWebview,
  evaluateInWebview,
  evaluateInWorkbench,
  focusInWebview,
  openFile,
  pressKey,
  until,
} from '../driver.js';
import { suite, test } from '../harness.js';
import { FILE, lookAtPanels, MACHINE, notePath } from '../window-left.js';

suite('a window that is left', () => {
  test('shows a bore map zoomed in and a machine view stepped on, its panel ticked', async () => {
    const editor = await openFile(FILE);
    await vscode.commands.executeCommand('borewright.showBoreMap');
    const heading = (page: string): Promise<string> =>
      evaluateInWebview(page, () => document.querySelector('h1')?.textContent ?? '');
    await until('the bore map', async () => (await heading('svg.drawing')).startsWith('left-base, '));
    await clickInWebview('[aria-label^="Zoom in"]');

    // Beside the bore map, so that both are seen at once.
    await vscode.commands.executeCommand('workbench.action.focusSecondEditorGroup');
    const at = [editor.document.uri.toString(), 'right-base', 'left'] as const;
    await vscode.commands.executeCommand('borewright.showMachineView', ...at);
    await until('the first step of the side', async () => {
      const { machine, step } = await lookAtPanels();
      return machine === 'right-base, left' && step !== '';
    });
    const first = await lookAtPanels();
    await focusInWebview(`${MACHINE} svg.drawing`);
    await pressKey('ArrowRight');
    await until('the next step', async () => (await lookAtPanels()).step !== first.step);
    await pressKey(' ');
    await until('the tick', async () => (await lookAtPanels()).bored);
    const left = await lookAtPanels();
    writeFileSync(notePath(), JSON.stringify(left));
    await until('the editor to keep the step', () => evaluateInWorkbench(isKept, left.step), 30_000);
  });
});

/** Whether the workbench in a browser has written down a step; it does so every few seconds, and not when it is left. */
async function isKept(step: string): Promise<boolean> {
  const [setUp, , , number] = step.split('/');
  const kept = new RegExp(`setUp\\W+${setUp}\\W.{0,200}step\\W+${number}\\W`);
  for (const { name } of await indexedDB.databases()) {
    if (name === undefined || !name.includes('state')) continue;
    const database = await new Promise<IDBDatabase>((done, fail) => {
      const opening = indexedDB.open(name);
      opening.onsuccess = () => done(opening.result);
      opening.onerror = () => fail(opening.error ?? new Error(name));
    });
    const stores = [...database.objectStoreNames];
    const values = await Promise.all(
      stores.map(
        (store) =>
          new Promise<unknown[]>((done, fail) => {
            const reading = database.transaction(store).objectStore(store).getAll();
            reading.onsuccess = () => done(reading.result);
            reading.onerror = () => fail(reading.error ?? new Error(store));
          }),
      ),
    );
    database.close();
    if (kept.test(JSON.stringify(values))) return true;
  }
  return false;
}
