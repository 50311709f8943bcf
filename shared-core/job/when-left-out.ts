import type { Path } from '../document/place.js';
import { CARCASS_KINDS } from '../shop/habits.js';
import type { CarcassKind, Habits } from '../shop/model.js';
import { identityOf, type Message } from '../words/message.js';
import { LEFT_OUT, leftOutMessages, type LeftOut, type LeftOutTable, type Usage } from './left-out.js';

/**
 * What a carcass has where nobody writes the key at the path, counted from the carcass's root; null where there is nothing to
 * say. `kind`: null in the job's defaults, where it may be any.
 */
export function whenLeftOut(path: Path, kind: CarcassKind | null, habits: Habits): Message | null {
  const steps = path.filter((step) => typeof step === 'string');
  if (steps[0] === 'panels') return steps.length > 2 ? leftOutMessages.asCarcass() : null;
  const leftOut = leftOutAt(LEFT_OUT, steps);
  if (leftOut === null) return null;
  const [first, ...more] = (kind === null ? CARCASS_KINDS : [kind]).map((one) => toldOf(leftOut, habits, one));
  const differs = more.some((one) => same(one) !== same(first ?? null));
  return differs ? leftOutMessages.byKind() : (first ?? null);
}

function leftOutAt(table: LeftOutTable, [key, ...inner]: readonly string[]): LeftOut | null {
  const here = key !== undefined && Object.hasOwn(table, key) ? table[key]! : null;
  if (inner.length === 0 || here === null) return here;
  if (here.as === 'each') return leftOutAt(here.fields, inner);
  return here.as === 'items' ? leftOutAt(here.item, inner) : null;
}

function toldOf(leftOut: LeftOut, habits: Habits, kind: CarcassKind): Message | null {
  switch (leftOut.as) {
    case 'must':
    case 'parts':
      return null;
    case 'items':
      return leftOutMessages.none();
    case 'each':
      return leftOut.told({ habits, kind, hasLooseShelves: false, isDiagonal: false });
    default: {
      const usage: Usage = { habits, kind, hasLooseShelves: false, isDiagonal: false };
      return leftOut.told(leftOut.value(usage) as never, usage);
    }
  }
}

const same = (message: Message | null): string => (message === null ? '' : identityOf(message));
