import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import * as vscode from 'vscode';
import { violations } from '../audit.js';
import { driverAvailable, evaluateInWebview, openFile, resizeWindow, screenshot, setTheme, until } from '../driver.js';
import { suite, test } from '../harness.js';
import { pageOfWidth, WINDOW } from '../page-size.js';
import { closePreview } from '../preview-page.js';

const PAGE = '.set-ups';
const WIDTHS = [350, 720, 1200] as const;
const THEMES = ['light', 'dark', 'high-contrast', 'high-contrast-light'] as const;

interface Look {
  readonly tooWide: number;
  /** Lettering on the page, in CSS pixels. */
  readonly smallest: number;
  /** Words that run out of what they stand in. */
  readonly cutOff: readonly string[];
}
const look = (): Promise<Look> =>
  evaluateInWebview(PAGE, () => {
    // What is only read out is a pixel wide.
    const seen = (one: Element): boolean =>
      one.getBoundingClientRect().width > 2 && (one.textContent ?? '').trim() !== '';
    const spoken = [...document.querySelectorAll<HTMLElement>('body *:not(svg *)')].filter(
      (one) =>
        seen(one) && [...one.childNodes].some(({ nodeType, textContent }) => nodeType === 3 && textContent?.trim()),
    );
    const sizes = spoken.map((one) => parseFloat(getComputedStyle(one).fontSize));
    return {
      tooWide: document.documentElement.scrollWidth - innerWidth,
      smallest: Math.min(...sizes),
      cutOff: spoken
        .filter((one) => one.scrollWidth > one.clientWidth + 1 && getComputedStyle(one).overflowX === 'hidden')
        .map((one) => one.textContent ?? ''),
    };
  });

/** Whether the cautions stand in full where a machine is begun, and how much of the drawing they hide once it is scrolled to. */
const cautioned = (): Promise<{ readonly inFull: boolean; readonly covered: number }> =>
  evaluateInWebview(PAGE, () => {
    const side = document.querySelector('.machine-side')!;
    const inFull = document.querySelectorAll('.first-cautions:not([hidden]) li').length >= 5;
    const scrolled = side.scrollTop;
    document.querySelector('.board')!.scrollIntoView({ block: 'end' });
    const drawing = document.querySelector('.board')!.getBoundingClientRect();
    const line = document.querySelector('.cautions')!.getBoundingClientRect();
    const covered = Math.max(0, Math.round(Math.min(drawing.bottom, innerHeight) - Math.max(drawing.top, line.top)));
    side.scrollTop = scrolled;
    return { inFull, covered };
  });

/** Takes a picture in every theme at every width, and fails where something does not fit, or is too small to be read. */
async function fitsEverywhere(name: string): Promise<void> {
  for (const width of WIDTHS) {
    await pageOfWidth(PAGE, width, width === 350 ? 800 : 900);
    for (const theme of THEMES) {
      await setTheme(theme);
      await new Promise((done) => setTimeout(done, 150));
      await screenshot(`${name}-${width}-${theme}`, 'body');
    }
    const seen = await look();
    assert.ok(seen.tooWide <= 0, `${name}: ${seen.tooWide} pixels too wide at ${width}`);
    assert.ok(seen.smallest >= 11, `${name}: lettering of ${seen.smallest} pixels at ${width}`);
    assert.deepEqual(seen.cutOff, [], `${name} at ${width}`);
    assert.deepEqual(await violations(PAGE), []);
    if (name === 'machine') assert.deepEqual(await cautioned(), { inFull: true, covered: 0 }, `cautions at ${width}`);
  }
}

if (driverAvailable) {
  suite('the pages of the machines', () => {
    test('fit and can be read at 350, 720 and 1,200 pixels', async () => {
      try {
        const fixtures = join(process.env.BOREWRIGHT_EDITOR_REPOSITORY!, 'test', 'fixtures');
        const folder = vscode.workspace.workspaceFolders![0]!.uri;
        for (const [name, from] of [
          ['looks.carcass.yaml', 'kitchen.carcass.yaml'],
          ['shed.shop.yaml', 'shed.shop.yaml'],
        ] as const)
          await vscode.workspace.fs.writeFile(vscode.Uri.joinPath(folder, name), readFileSync(join(fixtures, from)));
        const editor = await openFile('looks.carcass.yaml');
        await vscode.commands.executeCommand('borewright.showMachineView', editor.document.uri.toString(), 'plates');
        await until('the first step', () => evaluateInWebview(PAGE, () => (document.body.dataset.step ?? '') !== ''));
        await fitsEverywhere('machine');
        await resizeWindow(WINDOW.width, WINDOW.height);
        await vscode.commands.executeCommand('borewright.showSetupList', editor.document.uri.toString(), 'plates');
        await fitsEverywhere('list');
      } finally {
        await resizeWindow(WINDOW.width, WINDOW.height);
        await setTheme('dark');
        await closePreview();
      }
    });
  });
}
