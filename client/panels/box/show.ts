import * as vscode from 'vscode';
import { isBoxSubject, type BoxSubject } from '../../webview/messages/box.js';
import { say, TITLES } from '../messages.js';
import { Panels } from '../panels.js';
import { BoxPanel, type AskForBox } from './box-panel.js';

type BoxPanels = Panels<BoxSubject, BoxPanel>;

/** The panel of the cabinets of a job. */
export function boxPanels(extension: vscode.Uri, ask: AskForBox): BoxPanels {
  return new Panels(extension, {
    type: 'borewright.box',
    title: TITLES.boxView,
    language: 'borewright-job',
    takesFocus: false,
    isSubject: isBoxSubject,
    make: (panel, subject, onClosed) => new BoxPanel(panel, extension, ask, subject, onClosed),
  });
}

/** Shows the cabinet at the cursor of the job in the active editor beside it. */
export function showBox(panels: BoxPanels): void {
  const uri = panels.file();
  if (uri === null) {
    void vscode.window.showInformationMessage(say.openJobForBox());
    return;
  }
  panels.show({ uri, what: 'carcass', carcass: null });
}
