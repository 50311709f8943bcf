import { listSetUps, type Plan, type SetUpsReply } from '../../shared-core/service.js';
import { shownIn } from '../text.js';
import type { OpenFile } from '../workspace.js';

/**
 * The set-ups of a job in the order to run, as the client lists them. `plan` is of the file's analysis; null for a shop file.
 * @param stale why the file is not of the present text; null where it is
 */
export function setUps(file: OpenFile, plan: Plan | null, stale: string | null = null): SetUpsReply {
  return listSetUps(file, shownIn(file.document), plan, stale);
}
