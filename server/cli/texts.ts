import { say } from './messages.js';
import { join } from 'node:path';
import {
  builtInShop,
  REFERENCE_PAGES,
  referenceSite,
  referenceText,
  schemaOf,
  schemaOfPapers,
  sharedLoadOf,
  tell,
} from '../../shared-core/service.js';
import { openShop } from './files.js';
import { findingLine, findingsOf } from './found.js';
import type { Outcome } from './run.js';
import { asJson, CouldNotRun, readArguments } from './run.js';
import { writeMade } from './write.js';

/** `borewright reference [PAGE]`, `borewright reference --out DIR` */
export function reference(args: readonly string[]): Outcome {
  const { options, rest } = readArguments(args, ['out']);
  const [page = 'findings', ...more] = rest;
  const known = REFERENCE_PAGES.find((one) => one === page);
  if (known === undefined || more.length > 0 || (options.out !== undefined && rest.length > 0))
    throw new CouldNotRun(say.referenceArguments({ pages: REFERENCE_PAGES }));
  if (options.out === undefined) return { output: referenceText(known), errors: '', code: 0 };
  const files = referenceSite();
  writeMade(options.out, files);
  const done = say.referenceWritten({
    files: files.length,
    folder: options.out,
    page: join(options.out, 'index.html'),
  });
  return { output: `${tell(done, 'mm')}\n`, errors: '', code: 0 };
}

/** `borewright shop [FILE [EARLIER]]` */
export function shop([file, earlier, ...more]: readonly string[]): Outcome {
  if (more.length > 0) throw new CouldNotRun(say.shopArguments());
  if (file === undefined) return { output: builtInShop(), errors: '', code: 0 };
  const shops = [file, ...(earlier === undefined ? [] : [earlier])].map((path) => ({ path, shop: openShop(path) }));
  // A load of machines that stand in for those of the owner would be none of his.
  const errors = shops.flatMap(({ path, shop }) =>
    findingsOf(shop).flatMap((finding) => (finding.severity === 'error' ? [`${findingLine(path, finding)}\n`] : [])),
  );
  if (errors.length > 0) return { output: '', errors: errors.join(''), code: 1 };
  const [now, then = null] = shops.map(({ shop }) => shop.document.getText());
  return { output: sharedLoadOf(now!, then), errors: '', code: 0 };
}

/** `borewright schema job|shop|paper` */
export function schema(args: readonly string[]): Outcome {
  const [which, ...more] = args;
  if (more.length > 0 || (which !== 'job' && which !== 'shop' && which !== 'paper'))
    throw new CouldNotRun(say.whichSchema());
  return { output: asJson(which === 'paper' ? schemaOfPapers() : schemaOf(which)), errors: '', code: 0 };
}
