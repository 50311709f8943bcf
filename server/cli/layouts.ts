import { say } from './messages.js';
import { cutListOf, layoutsOf, tell } from '../../shared-core/service.js';
import { coverSolver } from '../cover-solver.js';
import { openJob } from './files.js';
import { formed, oneFile, readArguments, readFormat, type Outcome } from './run.js';
import { troubles } from './troubles.js';

/** `borewright layouts FILE [--format text|json]`: the cut list of a job, and how its panels are cut from sheets. */
export async function layouts(args: readonly string[]): Promise<Outcome> {
  const { options, rest } = readArguments(args, ['format']);
  const format = readFormat(options.format);
  const path = oneFile(rest, 'layouts');
  const job = openJob(path);
  const made = await layoutsOf(job.analysis, coverSolver);
  if (made === null) {
    const { errors } = troubles(path, job);
    return {
      output: formed(cutListOf(job.analysis), format),
      errors: `${errors}${tell(say.refused({ why: tell(say.noSaw(), 'mm') }), 'mm')}\n`,
      code: 2,
    };
  }
  return { output: formed(made, format), ...troubles(path, job) };
}
