import type { Micrometres } from '../length/units.js';
import type { Machine } from '../shop/model.js';
import type { CarcassContext } from './rule.js';
import { show, showSpan } from './words.js';
import { counted } from '../words/english.js';

/** What to try first in the job, by the key of the shop file that stands in the way. */
const FIRST: Readonly<Record<string, string>> = {
  'fence-offset': 'move the bores to places under the spindles (`dowels`)',
  spindles:
    'look whether the fence (for ends, a squaring stop) can be set farther off than the shop file says; if not, move the bores nearer to the front (`dowels`), or send the carcass to a head with more spindles (`machines`)',
  stops: 'look whether the machine has a stop there that the shop file does not list; if not, move the bores',
  height: 'take a board of another thickness, or send the carcass to another head (`machines: ends`)',
  depth:
    'change the depth of the bores to one within that range (`face-depth`, `end-depth`, the fitting, or for rows the shop’s `row-depth`)',
  pitch: 'send the carcass to a machine whose spindles stand on that pitch (`machines`)',
  throat: 'bring the row nearer to the front (`rear-row`)',
  heads: 'leave the rear row out (`rows: front`), or send the carcass to a drill with more heads (`machines: rows`)',
  setback: 'set the row within that range (`row-setback`)',
  'head-distance': 'bring the rear row within that range of the front row (`rear-row`)',
  'index-pins':
    'look whether the drill has index pins that the shop file does not list; if not, send the carcass to one that has them (`machines: rows`)',
  'index-range': 'make the row shorter (a lower carcass, or a greater `row-offset`)',
  lowers: 'look whether that stop can be lowered on the machine; if so, write `lowers: yes` beside it',
  distance: 'set the cups to a distance that the machine takes',
  panel: 'send the carcass to a machine that takes the panel (`machines`), or change its size',
  bits: 'take another fitting, or get the bit',
  machines: 'enter the machine in the shop file, if the shop has it',
};

/** What is there or is not, so no figure to be raised. */
const NO_FIGURE: ReadonlySet<string> = new Set([
  'index-pins',
  'lowers',
  'machines',
  'pitch',
  'bits',
  'stops',
  'panel',
  'spindles',
  'heads',
]);

/**
 * What to do about bores that a machine cannot make: what the shop file says now and what it would have to allow, what to
 * try first, and when that figure may be changed.
 */
export function firstStep(
  context: CarcassContext,
  machine: string | null,
  parameter: string | null,
  needed: Micrometres | null,
): string {
  if (parameter === null) return 'Change the bores.';
  const named = machine === null ? undefined : context.shop.machines.get(machine);
  const now = named === undefined ? null : allowed(context, named, parameter);
  const figure = [
    ...(now === null ? [] : [`it allows ${now}`]),
    ...(needed === null ? [] : [`${show(context, needed)} is needed`]),
  ].join(', ');
  const whose = `What stands in the way is \`${parameter}\` in the shop file${figure === '' ? '' : `: ${figure}`}. `;
  const first = FIRST[parameter] ?? 'change the bores, or send the carcass to another machine (`machines`)';
  const last = NO_FIGURE.has(parameter) ? '' : ` Change \`${parameter}\` only if the machine’s manual allows it.`;
  return `${whose}First ${first}.${last}`;
}

/** What the shop file allows under a key, where it is a figure; null where it is not. */
function allowed(context: CarcassContext, machine: Machine, parameter: string): string | null {
  if (parameter === 'fence-offset' && 'fenceOffset' in machine) return showSpan(context, machine.fenceOffset);
  if (parameter === 'height' && machine.kind === 'horizontal') return showSpan(context, machine.height);
  if (parameter === 'depth' && 'depth' in machine && machine.kind !== 'clamp') return showSpan(context, machine.depth);
  if (parameter === 'spindles' && (machine.kind === 'vertical' || machine.kind === 'horizontal')) {
    const first =
      machine.kind === 'vertical'
        ? machine.fenceOffset.max
        : Math.max(0, ...machine.stops.map(({ range }) => range.max));
    return `${show(context, first + (machine.spindles - 1) * machine.pitch)} with ${counted(machine.spindles, 'spindle')}`;
  }
  if (parameter === 'spindles' && 'spindles' in machine) return counted(machine.spindles, 'spindle');
  if (parameter === 'pitch' && 'pitch' in machine) return show(context, machine.pitch);
  if (parameter === 'distance' && machine.kind === 'cup') return showSpan(context, machine.distance);
  if (machine.kind !== 'line') return null;
  switch (parameter) {
    case 'setback':
      return showSpan(context, machine.setback);
    case 'head-distance':
      return machine.headDistance === null ? null : showSpan(context, machine.headDistance);
    case 'throat':
      return show(context, machine.throat);
    case 'heads':
      return counted(machine.heads, 'head');
    case 'index-range':
      return machine.indexRange === null ? null : show(context, machine.indexRange);
    default:
      return null;
  }
}
