import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import * as vscode from 'vscode';
import { violations } from '../audit.js';
import { clickInWebview, driverAvailable, evaluateInWebview, openFile, setTheme, until } from '../driver.js';
import { suite, test } from '../harness.js';
import { closePreview, DRAWING, JOB, preview, shows } from '../preview-page.js';

const THEMES = ['light', 'dark', 'high-contrast', 'high-contrast-light'] as const;

/** Fails with all that is wrong with a page in any theme. */
async function cleanInEveryTheme(selector: string): Promise<void> {
  const found = new Set<string>();
  for (const theme of THEMES) {
    await setTheme(theme);
    await new Promise((done) => setTimeout(done, 200));
    for (const one of await violations(selector)) found.add(`${theme}: ${one}`);
  }
  assert.deepEqual([...found], []);
}

async function laid(name: string, from: string): Promise<void> {
  const fixtures = join(process.env.BOREWRIGHT_EDITOR_REPOSITORY!, 'test', 'fixtures');
  const folder = vscode.workspace.workspaceFolders![0]!.uri;
  await vscode.workspace.fs.writeFile(vscode.Uri.joinPath(folder, name), readFileSync(join(fixtures, from)));
}

if (driverAvailable) {
  suite('axe-core finds nothing wrong with', () => {
    test('the preview of a panel, with a loose shelf, and its menu open', async () => {
      await preview(JOB.replace('loose-shelves: 1', 'loose-shelves: [521]'), 'width: 600\n    fixed');
      await shows('the side', ({ title }) => title === 'right-base, left');
      await cleanInEveryTheme(DRAWING);
      await clickInWebview('.measure');
      await clickInWebview('.more > button');
      await cleanInEveryTheme(DRAWING);
      await closePreview();
    });

    test('the preview of all panels, with a finding', async () => {
      const text = JOB.replace('loose-shelves: 1', 'loose-shelves: [516]');
      await preview(text, 'kind: base\n    width: 600\n    fixed', 'borewright.showAllPanels');
      await shows('the finding', ({ findings }) => findings.length > 0);
      await cleanInEveryTheme(DRAWING);
      await closePreview();
    });

    test('the machine view, the set-up list and the mode at the machine', async () => {
      await laid('audited.carcass.yaml', 'kitchen.carcass.yaml');
      await laid('shed.shop.yaml', 'shed.shop.yaml');
      const editor = await openFile('audited.carcass.yaml');
      await vscode.commands.executeCommand('borewright.showMachineView', editor.document.uri.toString(), 'plates');
      await until('the first step', () =>
        evaluateInWebview('.set-ups', () => (document.body.dataset.step ?? '') !== ''),
      );
      await cleanInEveryTheme('.set-ups');
      await vscode.commands.executeCommand('borewright.showSetupList', editor.document.uri.toString(), 'plates');
      await cleanInEveryTheme('.set-ups');
      await clickInWebview('.floor-open');
      await until('the mode', () =>
        evaluateInWebview('.floor', () => !document.querySelector<HTMLElement>('.floor')!.hidden),
      );
      await cleanInEveryTheme('.floor');
      await clickInWebview('.floor-leave');
      await closePreview();
    });

    test('the machines of a shop', async () => {
      await laid('audited.shop.yaml', 'shed.shop.yaml');
      await openFile('audited.shop.yaml');
      await vscode.commands.executeCommand('borewright.showShopMachines');
      await until('the machines', () =>
        evaluateInWebview('.card-of-machine', () => document.querySelectorAll('.card-of-machine').length > 3),
      );
      await cleanInEveryTheme('.card-of-machine');
      await setTheme('dark');
      await closePreview();
    });
  });
}
