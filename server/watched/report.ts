/** What the server in its thread tells whoever watches it, among the messages of the protocol. */
export type Report =
  /** It is awake. */
  | { readonly watch: 'beat' }
  /** It begins to work on a document: the one to blame if nothing more is heard. */
  | { readonly watch: 'begins'; readonly uri: string };

export function isReport(message: unknown): message is Report {
  return typeof message === 'object' && message !== null && 'watch' in message;
}

/** How often a thread tells that it is awake. */
export const BEAT_MS = 250;
