interface EditorApi<Message> {
  postMessage(message: Message): void;
  getState(): unknown;
  setState(state: unknown): void;
}
declare function acquireVsCodeApi<Message>(): EditorApi<Message>;

/** The editor's side of the page, which is told `Message`s; may be asked for only once. */
export function editorSide<Message>(): EditorApi<Message> {
  return acquireVsCodeApi<Message>();
}
