import { say } from './messages.js';
import { replayedPlan } from '../../shared-core/service.js';
import { findingLine, findingsOf } from './found.js';
import { openJob } from './files.js';
import { CouldNotRun, formed, oneFile, readArguments, readFormat, type Outcome } from './run.js';

/**
 * `borewright setups FILE [--format text|json] [--machine NAME]`: the set-ups of a job in the order to run, or those of one
 * machine of it, which keep their numbers in the whole order. Before anything is printed the
 * whole plan is replayed; where a replay differs no set-up is written as text. Errors of the job are told on stderr.
 */
export function setUps(args: readonly string[]): Outcome {
  const { options, rest } = readArguments(args, ['format', 'machine']);
  const format = readFormat(options.format);
  const path = oneFile(rest, 'setups');
  const job = openJob(path);
  const plan = replayedPlan(job.analysis);
  const wanted = plan.on(options.machine ?? null);
  if (wanted === null)
    throw new CouldNotRun(say.otherMachine({ path, machine: options.machine ?? '', machines: plan.machines }));
  const errors = findingsOf(job).filter(({ severity }) => severity === 'error');
  const lines = [
    ...errors.map((finding) => findingLine(path, finding)),
    ...plan.refusals.map((refusal) => `${path}: ${refusal}`),
  ];
  return {
    output: formed(wanted, format),
    errors: lines.map((line) => `${line}\n`).join(''),
    code: lines.length > 0 ? 1 : 0,
  };
}
