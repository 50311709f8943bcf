import { say } from './messages.js';
import { builtInShop, findingsExplained, schemaOf, sharedLoadOf } from '../../shared-core/service.js';
import { shopText } from './files.js';
import type { Outcome } from './run.js';
import { asJson, CouldNotRun } from './run.js';

/** `borewright reference` */
export function reference(args: readonly string[]): Outcome {
  if (args.length > 0) throw new CouldNotRun(say.noArguments());
  return { output: `${findingsExplained().trimEnd()}\n`, errors: '', code: 0 };
}

/** `borewright shop [FILE [EARLIER]]` */
export function shop([file, earlier, ...more]: readonly string[]): Outcome {
  if (more.length > 0) throw new CouldNotRun(say.shopArguments());
  if (file === undefined) return { output: builtInShop(), errors: '', code: 0 };
  const output = sharedLoadOf(shopText(file), earlier === undefined ? null : shopText(earlier));
  return { output, errors: '', code: 0 };
}

/** `borewright schema job|shop` */
export function schema(args: readonly string[]): Outcome {
  const [which, ...more] = args;
  if (more.length > 0 || (which !== 'job' && which !== 'shop')) throw new CouldNotRun(say.whichSchema());
  return { output: asJson(schemaOf(which)), errors: '', code: 0 };
}
