// What the tests before and after a restart of the window have to agree on.
import { join } from 'node:path';
import * as vscode from 'vscode';
import { evaluateInWebview } from './driver.js';

export const FILE = 'pantry.carcass.yaml';
export const MACHINE = '.machine-side';

/** What both panels of the extension show. */
export interface Panels {
  readonly map: string;
  readonly viewBox: string;
  readonly machine: string;
  readonly step: string;
  readonly bored: boolean;
}

export async function lookAtPanels(): Promise<Panels> {
  const { map, viewBox } = await evaluateInWebview(`body:not(:has(${MACHINE})) svg.drawing`, () => ({
    map: document.querySelector('h1')?.textContent ?? '',
    viewBox: document.querySelector('svg.drawing')?.getAttribute('viewBox') ?? '',
  }));
  const { machine, step, bored } = await evaluateInWebview(MACHINE, () => ({
    machine: document.querySelector('h1')?.textContent ?? '',
    step: document.body.dataset.step ?? '',
    bored: document.querySelector<HTMLInputElement>('#tick-bored')?.checked ?? false,
  }));
  return { map, viewBox, machine, step, bored };
}

/** Where what was seen before is left for those who come after. */
export function notePath(): string {
  const [folder] = vscode.workspace.workspaceFolders ?? [];
  if (folder === undefined) throw new Error('no folder is open');
  return join(folder.uri.fsPath, 'left.json');
}
