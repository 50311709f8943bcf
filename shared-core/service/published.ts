import { SCHEMAS } from './messages.js';
import { reachInJob } from '../job/reach.js';
import { jobSchema } from '../job/schema.js';
import type { Path } from '../document/place.js';
import { jsonSchema } from '../schema/json-schema.js';
import { NEUTRAL_SHOP_TEXT } from '../shop/neutral-text.js';
import { shopSchema } from '../shop/schema.js';
import { unusedWords } from '../shop/unused.js';
import { tell, type Message } from '../words/message.js';

/** The built-in shop as a file to begin with. */
export const builtInShop = (): string => NEUTRAL_SHOP_TEXT;

/** The JSON Schema of a job file or a shop file. */
export function schemaOf(kind: 'job' | 'shop'): object {
  return kind === 'job'
    ? jsonSchema(jobSchema, SCHEMAS.job, inWords(reachInJob))
    : jsonSchema(shopSchema, SCHEMAS.shop, inWords(unusedWords));
}

const inWords =
  (toldOf: (path: Path) => Message | null) =>
  (path: Path): string | null => {
    const told = toldOf(path);
    return told === null ? null : tell(told, 'mm');
  };
