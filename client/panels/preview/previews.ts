import * as vscode from 'vscode';
import type { View } from '../../../shared-core/drawing/messages/drawing.js';
import { pageOptions } from '../page.js';
import { Preview, type AskForDrawing } from './preview.js';
import { type Subject, isSubject } from '../../webview/messages/preview.js';

/** By this name the editor knows the panel when it opens a window anew. */
export const VIEW_TYPE = 'borewright.preview';

/** Opens the preview, one for the window, and brings it back after a restart of the editor. */
export class Previews implements vscode.WebviewPanelSerializer {
  private current: Preview | null = null;

  constructor(
    private readonly extension: vscode.Uri,
    private readonly ask: AskForDrawing,
  ) {}

  /** Shows the job of the active editor beside it. */
  show(view: View): void {
    const document = vscode.window.activeTextEditor?.document;
    const job = document?.languageId === 'borewright-job' ? document.uri.toString() : (this.current?.uri ?? null);
    if (job === null) {
      void vscode.window.showInformationMessage('Open a job file (NAME.carcass.yaml) to see its bores.');
      return;
    }
    if (this.current !== null) {
      this.current.show({ uri: job, view, follow: true });
      this.current.reveal();
      return;
    }
    const column = { viewColumn: vscode.ViewColumn.Beside, preserveFocus: true };
    const panel = vscode.window.createWebviewPanel(VIEW_TYPE, 'Bore map', column, {
      ...pageOptions(this.extension),
      enableFindWidget: true,
    });
    this.attach(panel, { uri: job, view, follow: true, carcass: null, panel: null });
  }

  /** The page's own state says what it showed; a state that is not sound closes the panel. */
  deserializeWebviewPanel(panel: vscode.WebviewPanel, state: unknown): Promise<void> {
    const subject: unknown = typeof state === 'object' && state !== null && 'subject' in state ? state.subject : null;
    if (this.current !== null || !isSubject(subject)) panel.dispose();
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

  private attach(panel: vscode.WebviewPanel, subject: Subject): void {
    const preview = new Preview(panel, this.extension, this.ask, subject, () => {
      if (this.current === preview) this.current = null;
    });
    this.current = preview;
  }
}
