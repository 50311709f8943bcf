import * as vscode from 'vscode';
import type { View } from '../../../shared-core/drawing/messages/drawing.js';
import { isSubject, type Subject } from '../../webview/messages/preview.js';
import { OnePanel } from '../one-panel.js';
import { ListShare } from './list-share.js';
import { Preview, type AskForDrawing } from './preview.js';

export type OnePreview = OnePanel<Subject, Preview>;

/** The panel of the bore maps. */
export function previewPanel(extension: vscode.Uri, state: vscode.Memento, ask: AskForDrawing): OnePreview {
  const share = new ListShare(state);
  return new OnePanel(extension, {
    type: 'borewright.preview',
    title: 'Bore map',
    takesFocus: false,
    isSubject,
    make: (panel, subject, onClosed) => new Preview(panel, extension, ask, share, subject, onClosed),
  });
}

/** Shows the bores of the job in the active editor beside it. */
export function showPreview(one: OnePreview, view: View): void {
  const uri = one.job();
  if (uri === null) {
    void vscode.window.showInformationMessage('Open a job file (NAME.carcass.yaml) to see its bores.');
    return;
  }
  one.show({ uri, view, follow: true, carcass: null, panel: null });
}
