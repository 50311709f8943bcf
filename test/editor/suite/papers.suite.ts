import assert from 'node:assert/strict';
import * as vscode from 'vscode';
import {
  clickInWebview,
  driverAvailable,
  evaluateInWorkbench,
  openFile,
  pageProblems,
  pressKey,
  screenshot,
  setTheme,
  typeText,
  until,
} from '../driver.js';
import { suite, test } from '../harness.js';
import { closePreview, FILE, JOB, lineOf, preview, replaceAll, shows } from '../preview-page.js';

const here = (): vscode.Uri => vscode.workspace.workspaceFolders![0]!.uri;
/** Names in a folder of the workspace; none where there is no such folder. */
async function namesIn(folder: string): Promise<string[]> {
  try {
    return (await vscode.workspace.fs.readDirectory(vscode.Uri.joinPath(here(), folder))).map(([name]) => name);
  } catch {
    return [];
  }
}
const clear = async (folder: string): Promise<void> => {
  if ((await namesIn(folder)).length > 0)
    await vscode.workspace.fs.delete(vscode.Uri.joinPath(here(), folder), { recursive: true });
};
/** Waits for the list to choose from, and takes what is ticked in it. */
async function takeAll(): Promise<void> {
  await until('the list of papers', () =>
    evaluateInWorkbench(() => {
      const list = document.querySelector('.quick-input-widget:not([style*="display: none"])');
      return list !== null && (list.textContent ?? '').includes('Panel labels');
    }),
  );
  await pressKey('Enter');
}
const set = (key: string, value: unknown): Thenable<void> =>
  vscode.workspace.getConfiguration('borewright').update(key, value, vscode.ConfigurationTarget.Workspace);
/** What the editor tells; where it is tested it keeps its notices in their list. */
async function notices(): Promise<string> {
  await vscode.commands.executeCommand('notifications.showList');
  return evaluateInWorkbench(() =>
    [...document.querySelectorAll('.notification-list-item')].map(({ textContent }) => textContent ?? '').join('\n'),
  );
}
const dismiss = (): Thenable<unknown> => vscode.commands.executeCommand('notifications.clearAll');

if (driverAvailable) {
  suite('shop papers', () => {
    test('are written from the set-up list, as the text stands, and the button is in every theme', async () => {
      await clear('papers');
      await preview(JOB, 'width: 600\n    fixed', 'borewright.showSetupList');
      for (const theme of ['light', 'high-contrast', 'dark'] as const) {
        await setTheme(theme);
        await screenshot(`papers-button-${theme}`, 'body');
      }
      await clickInWebview('.overview .papers');
      await takeAll();
      await until('the papers', async () => (await namesIn('papers')).includes('pantry-cost.pdf'));
      const names = (await namesIn('papers')).filter((name) => !name.startsWith('.'));
      assert.equal(names.length, 10, names.join(', '));
      await until('to be told', async () => (await notices()).includes('10 files written to papers'));
      await screenshot('papers-written');
      await dismiss();
    });

    test('are written from the bore map and from the lens over the job, in the forms that are set', async () => {
      await clear('out');
      await set('papers.folder', 'out');
      await set('papers.forms', ['csv']);
      const editor = await preview(JOB, 'width: 600\n    fixed');
      await shows('the side', ({ title }) => title === 'right-base, left');
      await clickInWebview('.more > button');
      await clickInWebview('[data-more="papers"]');
      await takeAll();
      await until('the papers', async () => (await namesIn('out')).includes('pantry-cost.csv'));
      assert.ok((await namesIn('out')).every((name) => /^\.|\.csv$/.test(name)));
      const lenses = await vscode.commands.executeCommand<vscode.CodeLens[]>(
        'vscode.executeCodeLensProvider',
        editor.document.uri,
        100,
      );
      const lens = lenses.find(({ command }) => command?.command === 'borewright.writePapers');
      assert.equal(lens?.command?.title, 'Write shop papers');
      await clear('out');
      void vscode.commands.executeCommand(lens.command.command, ...(lens.command.arguments as unknown[]));
      await takeAll();
      await until('the papers again', async () => (await namesIn('out')).includes('pantry-cost.csv'));
      await dismiss();
    });

    test('are not written where that is cancelled', async () => {
      await clear('out');
      await set('papers.seconds', 600);
      const some = Array.from({ length: 24 }, (_, n) => {
        const [width, depth, height] = [417 + ((n * 97) % 401), 391 + ((n * 53) % 173), 600 + ((n * 71) % 201)];
        return `  c${n}: { kind: base, width: ${width}, depth: ${depth}, height: ${height} }\n`;
      });
      const shop = await openFile('pantry.shop.yaml');
      const before = shop.document.getText();
      await replaceAll(
        shop,
        before.replace('thickness: 18', 'thickness: 18\n    sheet-length: 1250\n    sheet-width: 1250'),
      );
      const editor = await openFile(FILE);
      await replaceAll(editor, `shop: pantry.shop.yaml\ncarcasses:\n${some.join('')}`);
      void vscode.commands.executeCommand('borewright.writePapers');
      await takeAll();
      await until('a first layout', async () => /Shop papers of pantry[\s\S]*\d m²/.test(await notices()));
      await screenshot('papers-in-the-making');
      await evaluateInWorkbench(() => {
        const buttons = [
          ...document.querySelectorAll<HTMLElement>(
            '.notification-list-item .monaco-button, .notification-list-item .action-label',
          ),
        ];
        buttons.find(({ textContent, ariaLabel }) => /^Cancel/.test(`${textContent ?? ''}${ariaLabel ?? ''}`))!.click();
      });
      await until('the notice to go', async () => !(await notices()).includes('Shop papers'));
      assert.deepEqual(await namesIn('out'), []);
      for (const key of ['papers.seconds', 'papers.folder', 'papers.forms']) await set(key, undefined);
      await vscode.window.showTextDocument(shop.document);
      await replaceAll(vscode.window.activeTextEditor!, before);
    });

    test('lead back from the code of a label to the panel and its bore map', async () => {
      await preview(JOB, 'left-base');
      await closePreview();
      void vscode.commands.executeCommand('borewright.openScanned');
      await until('the box to scan into', () =>
        evaluateInWorkbench(
          () => document.querySelector('.quick-input-widget:not([style*="display: none"]) input') !== null,
        ),
      );
      // As a reader of codes does: the text as keys, then Enter.
      await typeText('pantry.carcass.yaml#right-base/shelf-1');
      await screenshot('scanned-code');
      await pressKey('Enter');
      await shows('the panel', ({ title }) => title === 'right-base, shelf-1');
      assert.match(lineOf(vscode.window.activeTextEditor!), /^fixed-shelves/);
      await vscode.commands.executeCommand('borewright.openScanned', 'pantry.carcass.yaml#right-base/bottom');
      await shows('a panel without a line of its own', ({ title }) => title === 'right-base, bottom');
      void vscode.commands.executeCommand('borewright.openScanned', 'pantry.carcass.yaml#gone/bottom');
      await until('to be told why', async () => (await notices()).includes('The label is of an earlier text'));
      await dismiss();
      await closePreview();
      assert.deepEqual(await pageProblems(), []);
    });
  });
}
