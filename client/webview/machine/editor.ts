import type { FromMachinePage } from '../../../shared-core/drawing/machine-view/messages.js';

interface EditorApi {
  postMessage(message: FromMachinePage): void;
  getState(): unknown;
  setState(state: unknown): void;
}
declare function acquireVsCodeApi(): EditorApi;

/** The editor's side of the page; may be asked for only once. */
export const editor: EditorApi = acquireVsCodeApi();
