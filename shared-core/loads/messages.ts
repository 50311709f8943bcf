import type { Micrometres } from '../length/units.js';
import { listed } from '../words/english.js';
import { messages } from '../words/message.js';

/** '12.3 kg', '0.85 kg': three figures at most. */
export function kilograms(weight: number): string {
  return `${Number(weight.toPrecision(3))} kg`;
}

const NO_APPROVAL =
  'This is an estimate from published figures, no structural approval: wall, fixing and load are for someone competent to judge.';

/** What everything that is reckoned of strength says with it. */
export const say = messages('loads', {
  weighs: ({
    weight,
    load,
    doors,
  }: {
    readonly weight: number;
    readonly load: number;
    readonly doors: readonly { readonly name: string; readonly weight: number }[];
  }) =>
    [
      `It weighs ${kilograms(weight)}, fittings not counted`,
      ...(doors.length === 0
        ? []
        : [`of which ${listed(doors.map((door) => `${door.name} ${kilograms(door.weight)}`))}`]),
      ...(load === 0 ? [] : [`and ${kilograms(load)} stand in it`]),
    ].join('; ') + '.',
  sags: (
    {
      panel,
      sag,
      limit,
      weight,
    }: { readonly panel: string; readonly sag: Micrometres; readonly limit: Micrometres; readonly weight: number },
    show,
  ) =>
    `${panel} sags ${show.length(sag)} under ${kilograms(weight)}, its own weight counted; the limit is ${show.length(limit)}.`,
  reckoned: ({ creep }: { readonly creep: number }) =>
    `Creep of ${creep} times the first sag is counted. ${NO_APPROVAL}`,
  noApproval: () => NO_APPROVAL,
});
