import type { Translations } from '../tables.js';
import { et, quoted, work } from './words.js';

/** Ce qui est à dire de rangées dont des trous sont omis. */
export const findingsOfRows = {
  'partial-rows-cost': {
    costs: ({ panels, machine, more }) =>
      `Les trous que \`row-holes\` omet des rangées de ${et(panels)} n’épargnent rien : sur ${quoted(machine)}, les autres demandent ${work(more)} de plus que des rangées entières, car des mèches doivent être retirées pour eux. Percez des rangées entières, ou acceptez le coût.`,
    whole: () => 'Percer des rangées entières',
  },
} satisfies Translations;
