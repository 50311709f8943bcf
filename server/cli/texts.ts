import { referencePage } from '../../shared-core/findings/reference-page.js';
import { reachInJob } from '../../shared-core/job/reach.js';
import { jobSchema } from '../../shared-core/job/schema.js';
import { jsonSchema } from '../../shared-core/schema/json-schema.js';
import { NEUTRAL_SHOP_TEXT } from '../../shared-core/shop/neutral-text.js';
import { unusedWords } from '../../shared-core/shop/unused.js';
import { shopSchema } from '../../shared-core/shop/schema.js';
import type { Outcome } from './run.js';
import { asJson, CouldNotRun } from './run.js';

/** `borewright reference` */
export function reference(args: readonly string[]): Outcome {
  if (args.length > 0) throw new CouldNotRun('borewright reference takes no arguments.');
  return { output: `${referencePage().trimEnd()}\n`, errors: '', code: 0 };
}

/** `borewright shop` */
export function shop(args: readonly string[]): Outcome {
  if (args.length > 0) throw new CouldNotRun('borewright shop takes no arguments; send what it prints to a file.');
  return { output: NEUTRAL_SHOP_TEXT, errors: '', code: 0 };
}

/** `borewright schema job|shop` */
export function schema(args: readonly string[]): Outcome {
  const [which, ...more] = args;
  if (more.length > 0 || (which !== 'job' && which !== 'shop'))
    throw new CouldNotRun('Say of what: borewright schema job, or borewright schema shop.');
  const made =
    which === 'job' ? jsonSchema(jobSchema, 'Carcass job', reachInJob) : jsonSchema(shopSchema, 'Shop', unusedWords);
  return { output: asJson(made), errors: '', code: 0 };
}
