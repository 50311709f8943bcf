import { builtInShop, findingsExplained, schemaOf } from '../../shared-core/service.js';
import type { Outcome } from './run.js';
import { asJson, CouldNotRun } from './run.js';

/** `borewright reference` */
export function reference(args: readonly string[]): Outcome {
  if (args.length > 0) throw new CouldNotRun('borewright reference takes no arguments.');
  return { output: `${findingsExplained().trimEnd()}\n`, errors: '', code: 0 };
}

/** `borewright shop` */
export function shop(args: readonly string[]): Outcome {
  if (args.length > 0) throw new CouldNotRun('borewright shop takes no arguments; send what it prints to a file.');
  return { output: builtInShop(), errors: '', code: 0 };
}

/** `borewright schema job|shop` */
export function schema(args: readonly string[]): Outcome {
  const [which, ...more] = args;
  if (more.length > 0 || (which !== 'job' && which !== 'shop'))
    throw new CouldNotRun('Say of what: borewright schema job, or borewright schema shop.');
  return { output: asJson(schemaOf(which)), errors: '', code: 0 };
}
