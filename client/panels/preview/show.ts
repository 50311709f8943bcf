import * as vscode from 'vscode';
import type { View } from '../../../shared-core/drawing/messages/drawing.js';
import { isSubject, type Subject } from '../../webview/messages/preview.js';
import { say, TITLES } from '../messages.js';
import { Panels } from '../panels.js';
import { ListShare } from './list-share.js';
import { Preview, type AskForDrawings } from './preview.js';

export type Previews = Panels<Subject, Preview>;

/** The panels of the bore maps. */
export function previewPanels(context: vscode.ExtensionContext, ask: AskForDrawings): Previews {
  const { extensionUri, globalState, globalStorageUri } = context;
  const share = new ListShare(globalState);
  const previews: Previews = new Panels(extensionUri, {
    type: 'borewright.preview',
    title: TITLES.boreMap,
    language: 'borewright-job',
    takesFocus: false,
    isSubject,
    make: (panel, subject, onClosed) =>
      new Preview(panel, extensionUri, subject, {
        ask,
        share,
        printStore: globalStorageUri,
        another: (kept, column) => previews.open(kept, column),
        onClosed,
      }),
  });
  return previews;
}

/** Shows the bores of the job in the active editor beside it. */
export function showPreview(previews: Previews, view: View): void {
  const uri = previews.file();
  if (uri === null) {
    void vscode.window.showInformationMessage(say.openJobForBores());
    return;
  }
  previews.show({ uri, view, follow: true, carcass: null, panel: null });
}

/** Shows one panel, and stays on it until the cursor moves to another line. */
export function showPanel(previews: Previews, uri: string, carcass: string, panel: string): void {
  previews.show({ uri, view: 'panel', follow: true, carcass, panel }).hold(carcass, panel);
}

/** Does something with the drawing that the keys go to. */
export function withPreview(previews: Previews, act: (preview: Preview) => void | Promise<void>): void {
  const { active } = previews;
  if (active === null) void vscode.window.showInformationMessage(say.noBoreMap());
  else void act(active);
}
