import type { ShopMachineView, ShopViewReply } from '../../../shared-core/drawing/messages/shop-view.js';
import { dictionary, list, number, object, orNull, outline, text, variants, type Of, type Shape } from '../shape.js';
import { isRange } from './common.js';

// What the extension and the page of the machines of a shop say to each other.

/** What the page shows, kept by it so that it comes back after a restart of the editor. */
export const isShopSubject = object({ uri: text });
export type ShopSubject = Of<typeof isShopSubject>;

const isMachine: Shape<ShopMachineView> = object({
  name: text,
  kindWords: text,
  facts: list(object({ word: text, value: text })),
  scene: orNull(outline<NonNullable<ShopMachineView['scene']>>(['shapes'], ['frame'])),
  trouble: orNull(text),
  source: text,
});

/** What the server answers. */
export const isShopReply: Shape<ShopViewReply> = variants('kind', {
  shop: { uri: text, version: number, title: text, machines: list(isMachine), ranges: dictionary(isRange) },
  nothing: { uri: text, version: number, reason: text },
});

/** From the extension to the page. */
export const isToShopPage = variants('type', {
  reply: { reply: isShopReply },
  /** The cursor stands in the text of these sources. */
  cursor: { sources: list(text) },
  /** Something failed outside the drawing, in words. */
  trouble: { message: text },
});
export type ToShopPage = Of<typeof isToShopPage>;

/** From the page to the extension; widths in millimetres of lettering. */
export const isFromShopPage = variants('type', {
  ready: { width: number },
  width: { width: number },
  reveal: { source: text },
});
export type FromShopPage = Of<typeof isFromShopPage>;
