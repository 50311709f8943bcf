import { unbuiltOf } from '../../shared-core/service.js';
import type { OpenJob } from '../workspace.js';
import { findingLine, findingsOf } from './found.js';
import type { Outcome } from './run.js';

/** What keeps carcasses from being worked out, for stderr. */
export function troubles(path: string, job: OpenJob): Pick<Outcome, 'errors' | 'code'> {
  const names = new Set(unbuiltOf(job.analysis));
  const whole = job.analysis.carcasses.length > 0;
  if (whole && names.size === 0) return { errors: '', code: 0 };
  const about = findingsOf(job).filter(
    ({ severity, carcass }) => severity === 'error' && (carcass === undefined || names.has(carcass)),
  );
  return { errors: about.map((finding) => `${findingLine(path, finding)}\n`).join(''), code: 1 };
}
