import { millingBanders } from '../../shop/pre-milling.js';
import type { Shop } from '../../shop/model.js';
import type { Reader } from '../../length/reader.js';
import { tell } from '../../words/message.js';
import { paragraph, type Paragraph } from '../paper.js';
import { say } from './messages.js';

/** A sentence for each edge bander that mills edges, since cut sizes follow from it; most shops have none. */
export function milledWords(shop: Shop, reader: Reader): readonly Paragraph[] {
  return millingBanders(shop).map(({ name, preMilling }) =>
    paragraph(tell(say.milled({ bander: name, milled: preMilling }), reader)),
  );
}
