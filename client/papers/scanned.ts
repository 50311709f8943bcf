import * as vscode from 'vscode';
import type { ScannedMethod, ScannedReply } from '../../shared-core/papers/asked.js';
import { list, object, text, variants, type Shape } from '../webview/shape.js';
import { isRange } from '../webview/messages/common.js';
import { goTo } from '../panels/text.js';
import { LABELS } from './messages.js';

const METHOD: ScannedMethod = 'borewright/scanned';

const isReply: Shape<ScannedReply> = variants('kind', {
  found: { carcass: text, panel: text, places: list(object({ uri: text, range: isRange })) },
  nothing: { reason: text },
});

/**
 * Leads from the code of a label to the line that makes its panel. A reader of codes types the text and Enter, as a keyboard does.
 * @param given the text, where a command brings it along
 * @param showMap shows the bore map of the panel beside its text
 */
export async function openScanned(
  ask: (method: string, params: object) => Promise<unknown>,
  given: unknown,
  showMap: (uri: string, carcass: string, panel: string) => void,
): Promise<void> {
  const code =
    typeof given === 'string'
      ? given
      : await vscode.window.showInputBox({ prompt: LABELS.codeAsked, placeHolder: LABELS.codeExample });
  if (code === undefined || code.trim() === '') return;
  const reply = await ask(METHOD, { text: code });
  if (!isReply(reply)) return;
  if (reply.kind === 'nothing') {
    void vscode.window.showWarningMessage(reply.reason);
    return;
  }
  const place = await oneOf(reply.places);
  if (place === undefined) return;
  await goTo(place.uri, place.range.start);
  showMap(place.uri, reply.carcass, reply.panel);
}

async function oneOf<P extends { readonly uri: string }>(places: readonly P[]): Promise<P | undefined> {
  if (places.length < 2) return places[0];
  const items = places.map((place) => ({ label: vscode.workspace.asRelativePath(vscode.Uri.parse(place.uri)), place }));
  return (await vscode.window.showQuickPick(items, { placeHolder: LABELS.whichJob }))?.place;
}
