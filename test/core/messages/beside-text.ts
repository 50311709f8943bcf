import { NEUTRAL_SHOP_TEXT } from '../../../shared-core/shop/neutral-text.js';
import { Engine } from '../../../shared-core/engine.js';
import { boreMapScene } from '../../../shared-core/drawing/bore-map/bore-map.js';
import { toSvg } from '../../../shared-core/drawing/render/svg.js';
import { SCREEN } from '../../../shared-core/drawing/scene/scene.js';
import { say as sayCutList } from '../../../shared-core/papers/cut-list/messages.js';
import { say as sayPrint } from '../../../shared-core/papers/render/messages.js';
import { offersAt } from '../../../shared-core/service/completion.js';
import { hintsIn } from '../../../shared-core/service/hints.js';
import { explain } from '../../../shared-core/service/hover.js';
import { outlineOf } from '../../../shared-core/service/outline.js';
import { tell } from '../../../shared-core/words/message.js';
import { asMessage } from '../../in-words.js';
import { handMade } from '../drawing/panels.js';
import { analyse } from '../findings/jobs.js';
import { OFFERED, SHEETLESS } from './texts.js';

/** What completion, hints, outline and hovers say. */
export function sayBesideText(): void {
  for (const text of OFFERED) {
    const file = { kind: 'job', analysis: analyse(text) } as const;
    for (let offset = 0; offset <= text.length; offset += 1) offersAt(file, offset, () => []);
    hintsIn(file, 0, text.length, 'all');
    outlineOf(file);
  }
  const engine = new Engine({ readShop: () => ({ ok: false, message: asMessage('none') }) });
  const shop = { kind: 'shop', analysis: engine.analyseShop('file:///x.shop.yaml', NEUTRAL_SHOP_TEXT) } as const;
  for (let offset = 0; offset <= NEUTRAL_SHOP_TEXT.length; offset += 2) explain(shop, offset);
  for (let offset = 0; offset <= NEUTRAL_SHOP_TEXT.length; offset += 40) offersAt(shop, offset, () => []);
  const faulty = NEUTRAL_SHOP_TEXT.replace('thickness: 16', 'thickness: wide');
  const job = {
    kind: 'job',
    analysis: analyse(`shop: own.shop.yaml\n${OFFERED[0]!.replace('count: 2', 'board: ')}`, {
      'own.shop.yaml': faulty,
    }),
  } as const;
  for (let offset = 0; offset <= job.analysis.text.length; offset += 1) offersAt(job, offset, () => []);
  const pulls = OFFERED.at(-1)!;
  const inShopOfPulls = {
    kind: 'job',
    analysis: analyse(`shop: own.shop.yaml\n${pulls}`, { 'own.shop.yaml': SHEETLESS }),
  } as const;
  for (let offset = 0; offset <= inShopOfPulls.analysis.text.length; offset += 1) explain(inShopOfPulls, offset);
  toSvg(boreMapScene(handMade(), 'left', SCREEN)!);
  // Said under a picture of a PDF, which is not printed here.
  // Told of few shops.
  tell(sayCutList.milled({ bander: 'edge-bander', milled: 1000 }), 'mm');
  tell(sayPrint.contents(), 'mm');
  tell(sayPrint.toScale({ name: 'left', scale: 5 }), 'mm');
  tell(sayPrint.notToScale({ name: 'left' }), 'mm');
}
