import { withBuiltInList } from '../../../shared-core/shop/built-in-list.js';
import { readShop } from '../../../shared-core/shop/read.js';

/** A shop file with every list that it leaves out written as the built-in shop has it; what it writes stays where it is. */
export function wholeShop(text: string): string {
  return readShop(text).leftOut.reduce(
    (all, list) => all + (withBuiltInList(all, readShop(all), list)?.text ?? ''),
    text,
  );
}
