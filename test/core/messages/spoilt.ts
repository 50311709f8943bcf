import { matings } from '../../../shared-core/boring/matings.js';
import { Derived } from '../../../shared-core/derived/derived.js';
import type { JobAnalysis } from '../../../shared-core/engine.js';
import { Alone } from '../../../shared-core/findings/alone.js';
import type { CarcassContext, Found } from '../../../shared-core/findings/rule.js';
import { boreWithoutMate } from '../../../shared-core/findings/rules/bore-without-mate.js';
import { planReplayMessages } from '../../../shared-core/findings/rules/plan-replay-differs.js';
import { rowsNotOpposite } from '../../../shared-core/findings/rules/rows-not-opposite.js';
import type { Message } from '../../../shared-core/words/message.js';
import { buildCarcass } from '../../../shared-core/carcass/build.js';
import { jobMessages } from '../../../shared-core/engine/messages.js';
import { analyse } from '../findings/jobs.js';
import { differences } from './sheets.js';

/** What the rules about faults of our own would say, each of a carcass spoilt for it. */
export function faultsOfOurs(): ReadonlyMap<string, readonly Message[]> {
  const job = analyse('carcasses:\n  sink: { kind: base, width: 600 }\n');
  const sound = contextOf(job);
  const { bores, rows } = sound.boring;
  const joined = bores.find(({ fitting }) => fitting !== null)!;
  const without = { ...sound, boring: { ...sound.boring, bores: bores.filter(({ id }) => id !== joined.id) } };
  const moved = rows.map((row) => (row.panel === 'left' ? { ...row, offset: row.offset + 1000 } : row));
  const askew = { ...sound, boring: { ...sound.boring, rows: moved } };
  const said = (found: readonly Found[]): readonly Message[] => found.map(({ message }) => message);
  const noShop = { ...job.shop, boards: new Map(), fittings: new Map() };
  return new Map([
    ['size-impossible', buildCarcass(sound.spec, noShop).problems.map(({ message }) => message)],
    ['internal-fault', [jobMessages.internalFault({ words: 'a value is missing' })]],
    ['bore-without-mate', said(boreWithoutMate.check(without, new Set()))],
    ['rows-not-opposite', said(rowsNotOpposite.check(askew, new Set()))],
    ['plan-replay-differs', [planReplayMessages.differs({ panel: 'left', fault: differences()[0]! })]],
  ]);
}

function contextOf(job: JobAnalysis): CarcassContext {
  const { spec, carcass, boring, operations } = job.carcasses[0]!;
  if (spec === null || carcass === null || boring === null || operations === null)
    throw new Error('the job is not sound');
  const derived = new Derived();
  return {
    spec,
    carcass,
    boring,
    matings: matings(carcass, boring),
    operations,
    alone: new Alone(spec, carcass, operations, derived),
    shop: job.shop,
    unit: job.unit,
    inches: 'fractions',
    derived,
    written: [],
  };
}
