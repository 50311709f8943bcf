import { say } from './messages.js';
import { layoutsOf } from '../../shared-core/service.js';
import { coverSolver } from '../cover-solver.js';
import { openJob } from './files.js';
import { CouldNotRun, formed, oneFile, readArguments, readFormat, type Outcome } from './run.js';
import { troubles } from './troubles.js';

/** `borewright layouts FILE [--format text|json]`: the cut list of a job, and how its panels are cut from sheets. */
export async function layouts(args: readonly string[]): Promise<Outcome> {
  const { options, rest } = readArguments(args, ['format']);
  const format = readFormat(options.format);
  const path = oneFile(rest, 'layouts');
  const job = openJob(path);
  const made = await layoutsOf(job.analysis, coverSolver);
  if (made === null) throw new CouldNotRun(say.noSaw());
  return { output: formed(made, format), ...troubles(path, job) };
}
