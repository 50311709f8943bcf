import type { Located } from '../../document/place.js';
import { wholeOf } from '../../job/panel-key.js';
import { NO_PULL } from '../../shop/habits.js';
import type { Pull, Shop } from '../../shop/model.js';
import { chosen } from '../choices.js';
import type { Panel } from '../model.js';
import type { CarcassSpec } from '../spec.js';
import { pullsGiven } from './asked.js';

/** Whether a panel is one that a pull may be on. */
export const mayHavePull = ({ role }: Pick<Panel, 'role'>): boolean =>
  role === 'door' || role === 'drawer-front' || role === 'fixed-front';

/**
 * What names the pull of each front: its own choice, else its item of `fronts`, else what is said of all pulls. A fixed front has
 * one only where it is given one.
 */
export function pullNames(spec: CarcassSpec): (front: Pick<Panel, 'key' | 'role'>) => Located<string> | null {
  const given = pullsGiven(spec);
  const { pull, onDrawers } = spec.pulls;
  return ({ key, role }) => {
    const own = chosen(spec, key, 'pull') ?? given.get(wholeOf(key));
    if (own !== undefined) return own;
    return role === 'fixed-front' ? null : role === 'drawer-front' ? (onDrawers ?? pull) : pull;
  };
}

/** The pull of a name, the usual one where the shop has none of it; null for none. */
export function pullNamed({ pulls, habits }: Shop, name: string): Pull | null {
  return pulls.get(name) ?? (name === NO_PULL ? null : (pulls.get(habits.pull) ?? null));
}
