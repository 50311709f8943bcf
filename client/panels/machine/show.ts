import * as vscode from 'vscode';
import { isMachineSubject, type MachineSide, type MachineSubject } from '../../webview/messages/machine.js';
import { say, TITLES } from '../messages.js';
import { Panels } from '../panels.js';
import { MachinePanel, type AskForSetUps } from './machine-panel.js';
import { Ticks } from './ticks.js';

export type MachinePanels = Panels<MachineSubject, MachinePanel>;

/** The panel of the machine view and the set-up list. */
export function machinePanels(extension: vscode.Uri, state: vscode.Memento, ask: AskForSetUps): MachinePanels {
  const ticks = new Ticks(state);
  return new Panels(extension, {
    type: 'borewright.machine',
    title: TITLES.machineView,
    language: 'borewright-job',
    takesFocus: true,
    isSubject: isMachineSubject,
    make: (panel, subject, onClosed) => new MachinePanel(panel, extension, ask, ticks, subject, onClosed),
  });
}

/**
 * Shows the set-ups of a file, or of the active editor, beside it.
 * @param named arguments of the command, not to be trusted: URI, carcass, panel
 */
export function showMachines(panels: MachinePanels, side: MachineSide, named: readonly unknown[]): void {
  const text = (given: unknown): string | null =>
    typeof given === 'string' ? given : given instanceof vscode.Uri ? given.toString() : null;
  const [file = null, carcass = null, panel = null] = named.map(text);
  const uri = file ?? panels.file();
  if (uri === null) {
    void vscode.window.showInformationMessage(say.openJobForSetUps());
    return;
  }
  panels.show({ uri, side, carcass, panel });
}
