import { shopView, type ShopViewParams, type ShopViewReply } from '../../shared-core/service.js';
import { shownIn } from '../text.js';
import type { OpenFile } from '../workspace.js';

/** The machines of a shop file, for the preview beside it. */
export function shopMachines(file: OpenFile, params: ShopViewParams): ShopViewReply {
  return shopView(file, shownIn(file.document), params);
}
