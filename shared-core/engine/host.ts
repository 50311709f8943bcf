import type { Message } from '../words/message.js';

/** A shop file's text, or why there is none, in a sentence for the owner of the job; `instead`: the file that was likely meant. */
export type ShopReading =
  | { readonly ok: true; readonly uri: string; readonly text: string }
  | { readonly ok: false; readonly message: Message; readonly instead?: string };

/** What the engine asks of its surroundings. */
export interface EngineHost {
  /** Reads the shop file that the job at `jobUri` names as `reference`. Must not throw. */
  readShop(jobUri: string, reference: string): ShopReading;
}
