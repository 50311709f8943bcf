import * as vscode from 'vscode';
import { pageOptions } from '../page.js';
import { MachinePanel, type AskForSetUps } from './machine-panel.js';
import { Ticks } from './ticks.js';
import { type MachineSide, type MachineSubject, isMachineSubject } from '../../webview/messages/machine.js';

/** By this name the editor knows the panel when it opens a window anew. */
export const MACHINE_VIEW_TYPE = 'borewright.machine';

/** Opens the machine view and the set-up list, one panel for the window, and brings it back after a restart. */
export class MachinePanels implements vscode.WebviewPanelSerializer {
  private current: MachinePanel | null = null;
  private readonly ticks: Ticks;

  constructor(
    private readonly extension: vscode.Uri,
    state: vscode.Memento,
    private readonly ask: AskForSetUps,
  ) {
    this.ticks = new Ticks(state);
  }

  /**
   * Shows the job of a file, or of the active editor, beside it.
   * @param named arguments of the command, not to be trusted: URI, carcass, panel
   */
  show(side: MachineSide, ...named: readonly unknown[]): void {
    const text = (one: unknown): string | null =>
      typeof one === 'string' ? one : one instanceof vscode.Uri ? one.toString() : null;
    const [given, carcass, panel] = named.map(text);
    const document = vscode.window.activeTextEditor?.document;
    const active = document?.languageId === 'borewright-job' ? document.uri.toString() : null;
    const uri = given ?? active ?? this.current?.uri ?? null;
    if (uri === null) {
      void vscode.window.showInformationMessage('Open a job file (NAME.carcass.yaml) to see its set-ups.');
      return;
    }
    const subject: MachineSubject = { uri, side, carcass: carcass ?? null, panel: panel ?? null };
    if (this.current !== null) {
      this.current.show(subject);
      this.current.reveal();
      return;
    }
    const column = { viewColumn: vscode.ViewColumn.Beside, preserveFocus: false };
    const view = vscode.window.createWebviewPanel(MACHINE_VIEW_TYPE, 'Machine view', column, {
      ...pageOptions(this.extension),
      enableFindWidget: true,
    });
    this.attach(view, subject);
  }

  /** The page's own state says what it showed; a state that is not sound closes the panel. */
  deserializeWebviewPanel(panel: vscode.WebviewPanel, state: unknown): Promise<void> {
    const subject: unknown = typeof state === 'object' && state !== null && 'subject' in state ? state.subject : null;
    if (this.current !== null || !isMachineSubject(subject)) panel.dispose();
    else this.attach(panel, subject);
    return Promise.resolve();
  }

  changed(uri: string): void {
    this.current?.changed(uri);
  }

  trouble(message: string): void {
    this.current?.trouble(message);
  }

  refresh(): void {
    void this.current?.refresh();
  }

  private attach(panel: vscode.WebviewPanel, subject: MachineSubject): void {
    const machine = new MachinePanel(panel, this.extension, this.ask, this.ticks, subject, () => {
      if (this.current === machine) this.current = null;
    });
    this.current = machine;
  }
}
