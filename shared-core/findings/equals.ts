import type { CarcassSpec } from '../carcass/spec.js';
import { Derived } from '../derived/derived.js';
import type { Steps } from '../derived/steps.js';
import type { Shop } from '../shop/model.js';
import { unwatched } from '../shop/watched.js';
import type { CarcassContext } from './rule.js';

/**
 * What the work finds out about a carcass, as it did before about one in the same shop that is equal but for its name: a job
 * repeats itself.
 * @param work must depend on nothing of the context but panels, bores, operations and shop, which follow from its spec, and
 * give nothing that holds the carcass's name or places of its text; what it asks of the shop beside that, its rule notes
 */
export function onceForEquals<R>(work: (context: CarcassContext) => Steps<R>, context: CarcassContext): Steps<R> {
  const { derived, shop, spec } = context;
  return keptForShop(derived, shop).answerInSteps(work, context, derived.get(askedFor, spec));
}

/** A store of what holds in one shop. */
export function keptForShop(derived: Derived, shop: Shop): Derived {
  return derived.get(storeOf, unwatched(shop));
}

const storeOf = (): Derived => new Derived();

/** Equal for carcasses that ask for the same, wherever it stands in their texts. */
function askedFor(spec: CarcassSpec): string {
  return JSON.stringify({ ...spec, name: null }, (key, value: unknown) =>
    key === 'place' || key === 'path'
      ? undefined
      : value instanceof Map
        ? [...(value as ReadonlyMap<unknown, unknown>)]
        : value,
  );
}
