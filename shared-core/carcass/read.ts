import type { CarcassPart } from '../document/cut.js';
import type { Finding } from '../document/finding.js';
import type { Defaults } from '../job/head.js';
import { readJobCarcass, type ReadJobCarcass } from '../job/carcass.js';
import type { JobHead } from '../job/model.js';
import { nearestName } from '../schema/nearest.js';
import { errorAt, preferred } from '../schema/tell.js';
import type { Shop } from '../shop/model.js';
import { say } from './messages.js';
import { mirror } from './mirror.js';
import { panelKeys } from './roles.js';
import { settle } from './settle.js';
import type { CarcassSpec } from './spec.js';

/** See `ReadJobCarcass`. */
export interface ReadCarcass extends Omit<ReadJobCarcass, 'carcass'> {
  /** null also where a number of shelves or dividers does not find room. */
  readonly spec: CarcassSpec | null;
}

/**
 * Reads one carcass and settles all that its panels are made from. Never throws.
 * @param bases what it is like, from the nearest on; null where it names none that it can be like
 */
export function readCarcass(
  part: CarcassPart,
  head: JobHead,
  defaults: Defaults,
  shop: Shop,
  bases: readonly CarcassPart[] | null = [],
): ReadCarcass {
  const likeness = bases && { bases, mirror };
  const { carcass, findings, name, entry } = readJobCarcass(part, head, defaults, shop, likeness);
  if (carcass === null) return { spec: null, findings, name, entry };
  const { spec, problems, isWhole } = settle(carcass, shop);
  const without = problems.map(({ place, message }) => errorAt('value-wrong', place, message));
  return {
    spec: problems.length === 0 ? spec : null,
    findings: [...findings, ...without, ...(isWhole ? unknownPanels(spec) : [])],
    name,
    entry,
  };
}

/** Keys under `panels` that mean no panel of the carcass; what another says of panels that it alone has is no fault here. */
function unknownPanels(spec: CarcassSpec): readonly Finding[] {
  const keys = panelKeys(spec);
  const free = keys.filter((key) => !spec.panels.has(key));
  return [...spec.panels.values()].flatMap(({ key }) => {
    if (keys.includes(key.value) || key.place.part !== 'self') return [];
    const near = nearestName(key.value, free);
    const repairs =
      near === null
        ? []
        : [preferred(say.rename({ panel: near }), { kind: 'rename-key', part: 'self', path: key.path, text: near })];
    const message =
      near === null
        ? say.panelUnknown({ panel: key.value, panels: keys })
        : say.panelMisspelt({ panel: key.value, near });
    return [errorAt('panel-unknown', key.place, message, { repairs })];
  });
}
