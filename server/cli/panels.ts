import { panelsOf } from '../../shared-core/service.js';
import { openJob } from './files.js';
import { formed, oneFile, readArguments, readFormat, type Outcome } from './run.js';
import { troubles } from './troubles.js';

/** `borewright panels FILE [--format text|json]`. Carcasses that cannot be worked out are left out, and told on stderr. */
export function panels(args: readonly string[]): Outcome {
  const { options, rest } = readArguments(args, ['format']);
  const format = readFormat(options.format);
  const path = oneFile(rest, 'panels');
  const job = openJob(path);
  return { output: formed(panelsOf(job.analysis), format), ...troubles(path, job) };
}
