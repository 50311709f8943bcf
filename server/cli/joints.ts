import { jointsOf } from '../../shared-core/service.js';
import { openJob } from './files.js';
import { formed, oneFile, readArguments, readFormat, type Outcome } from './run.js';
import { troubles } from './troubles.js';

/** `borewright joints FILE [--format text|json]`: what can come out at every joint by the shop's own tolerances. */
export function joints(args: readonly string[]): Outcome {
  const { options, rest } = readArguments(args, ['format']);
  const format = readFormat(options.format);
  const path = oneFile(rest, 'joints');
  const job = openJob(path);
  return { output: formed(jointsOf(job.analysis), format), ...troubles(path, job) };
}
