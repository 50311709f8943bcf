import * as vscode from 'vscode';
import { isMachineSubject, type MachineSide, type MachineSubject } from '../../webview/messages/machine.js';
import { OnePanel } from '../one-panel.js';
import { MachinePanel, type AskForSetUps } from './machine-panel.js';
import { Ticks } from './ticks.js';

export type OneMachinePanel = OnePanel<MachineSubject, MachinePanel>;

/** The panel of the machine view and the set-up list. */
export function machinePanel(extension: vscode.Uri, state: vscode.Memento, ask: AskForSetUps): OneMachinePanel {
  const ticks = new Ticks(state);
  return new OnePanel(extension, {
    type: 'borewright.machine',
    title: 'Machine view',
    takesFocus: true,
    isSubject: isMachineSubject,
    make: (panel, subject, onClosed) => new MachinePanel(panel, extension, ask, ticks, subject, onClosed),
  });
}

/**
 * Shows the set-ups of a file, or of the active editor, beside it.
 * @param named arguments of the command, not to be trusted: URI, carcass, panel
 */
export function showMachines(one: OneMachinePanel, side: MachineSide, named: readonly unknown[]): void {
  const text = (given: unknown): string | null =>
    typeof given === 'string' ? given : given instanceof vscode.Uri ? given.toString() : null;
  const [file = null, carcass = null, panel = null] = named.map(text);
  const uri = file ?? one.job();
  if (uri === null) {
    void vscode.window.showInformationMessage('Open a job file (NAME.carcass.yaml) to see its set-ups.');
    return;
  }
  one.show({ uri, side, carcass, panel });
}
