import type { Bore } from '../../boring/model.js';
import { edgesWithBand, type EdgeWithBand } from '../../carcass/banded.js';
import type { Panel } from '../../carcass/model.js';
import type { Micrometres } from '../../length/units.js';
import { groupBy } from '../../machining/plan/numbers.js';
import type { EdgeBander } from '../../shop/model.js';
import { listed, quoted } from '../../words/english.js';
import { messages, type Message } from '../../words/message.js';
import type { Show } from '../../words/show.js';
import { boresOfPanel, grouped, machineThatBores } from '../lookups.js';
import type { Finding } from '../finding.js';
import type { CarcassContext, CarcassRule, Found } from '../rule.js';
import { sizeCause, type PanelSide } from '../size-cause.js';

export const panelOutOfRange: CarcassRule = {
  name: 'panel-out-of-range',
  severity: 'error',
  about: {
    what: 'A panel is too small or too large for a machine that it must go to.',
    why: 'Below the minimum, the clamps do not hold the panel and hands come near the bits; a small part that slips under a running bit is thrown. Above the maximum, the panel does not lie on the table. The ranges are given in the shop file; the machine’s manual decides.',
    remedy: 'Change the size, bore small parts before they are cut apart, or send the carcass to another machine.',
    example: 'kind: base\nwidth: 130',
  },
  check(context) {
    const misfits = context.carcass.panels.flatMap((panel) =>
      misfitsOf(context, panel).map((misfit) => ({ panel, ...misfit })),
    );
    return grouped(
      misfits,
      (one) => `${one.machine} ${one.what} ${one.size} ${sizeCause(context, one.panel, one.side).place.start}`,
    ).map((same): Found => {
      const { panel, machine, what, side, size, range } = same[0]!;
      // Two edges of one panel may have the same misfit.
      const panels = [...new Set(same.map((one) => one.panel.key))];
      const figures = { panels, size, machine, range };
      return {
        place: sizeCause(context, panel, side).place,
        panel: panel.key,
        message: tellerFor(same[0]!)({ ...figures, what }),
        bores: same.flatMap((one) => one.bores.map((bore) => bore.id)),
      };
    });
  },
};

type Measure = 'length' | 'width' | 'thickness' | 'edge' | 'across' | 'band';
const NAMES: Readonly<Record<Measure, string>> = {
  length: 'length',
  width: 'width',
  thickness: 'thickness',
  edge: 'length of a banded edge',
  across: 'width across a banded edge',
  band: 'thickness of a band',
};

interface OutOfRange {
  readonly panels: readonly string[];
  readonly size: Micrometres;
  readonly what: Measure;
  readonly machine: string;
  readonly range: Misfit['range'];
}

export const say = messages('panel-out-of-range', {
  notToBore: (out: OutOfRange, show) => `${outOfRange(out, show)} ${ELSEWHERE}`,
  notToBand: (out: OutOfRange, show) => `${outOfRange(out, show)} ${ELSEWHERE}`,
  tooSmallToBore: (out: OutOfRange, show) =>
    `${outOfRange(out, show)} Do not force it: bore it before it is cut to size, or choose another machine.`,
  tooSmallToBand: (out: OutOfRange, show) =>
    `${outOfRange(out, show)} Do not force it: band it before it is cut to size, or choose another machine.`,
});

const ELSEWHERE = 'Change the size, or choose another machine.';

function tellerFor({ what, size, range, bores }: Misfit): (out: OutOfRange) => Message {
  const isTooSmall = size <= range.max && what !== 'thickness' && what !== 'band';
  if (bores.length === 0) return isTooSmall ? say.tooSmallToBand : say.notToBand;
  return isTooSmall ? say.tooSmallToBore : say.notToBore;
}

/** Whether a finding says that a panel cannot be banded. */
export function keepsFromBander({ message }: Finding): boolean {
  return typeof message !== 'string' && [say.notToBand.id, say.tooSmallToBand.id].includes(message.id);
}

/** What is out of the range, as a whole sentence; every remedy is one more. */
function outOfRange({ panels, size, what, machine, range: { min, max } }: OutOfRange, show: Show): string {
  const subject = `The ${NAMES[what]} of ${listed(panels)} is ${show.length(size)}`;
  return max === Infinity
    ? `${subject}; the minimum of ${quoted(machine)} is ${show.length(min)}.`
    : `${subject}; ${quoted(machine)} takes ${show.length(min)} to ${show.length(max)}.`;
}

interface Misfit {
  /** What it is to bore in the panel; nothing on a bander. */
  readonly bores: readonly Bore[];
  readonly machine: string;
  readonly what: Measure;
  /** Which side of the panel is to blame. */
  readonly side: PanelSide;
  readonly size: Micrometres;
  readonly range: { readonly min: Micrometres; readonly max: Micrometres };
}

function misfitsOf(context: CarcassContext, panel: Panel): readonly Misfit[] {
  const visits = groupBy(boresOfPanel(context, panel.key), (bore) => machineThatBores(context, bore));
  const onBorers = [...visits].flatMap(([machine, bores]) =>
    machine === null
      ? []
      : (['length', 'width', 'thickness'] as const).flatMap((what) =>
          outside({ machine: machine.name, what, side: what, size: panel[what], range: machine.panel[what], bores }),
        ),
  );
  return [...onBorers, ...onBanders(context, panel)];
}

/** What keeps the panel from the bander that suits it best; nothing where one bander takes all its edges. */
function onBanders(context: CarcassContext, panel: Panel): readonly Misfit[] {
  const edges = edgesWithBand(panel);
  if (edges.length === 0) return [];
  const tries = [...context.shop.machines.values()]
    .filter((machine) => machine.kind === 'bander')
    .map((bander) => edges.flatMap((one) => onBander(bander, panel, one)));
  return tries.toSorted((a, b) => a.length - b.length)[0] ?? [];
}

function onBander(bander: EdgeBander, panel: Panel, { edge, band, long, across }: EdgeWithBand): readonly Misfit[] {
  const isEnd = edge === 'reference-end' || edge === 'far-end';
  const least = (min: Micrometres | null): Misfit['range'] | null => (min === null ? null : { min, max: Infinity });
  const sizes: readonly (Omit<Misfit, 'machine' | 'bores' | 'range'> & { readonly range: Misfit['range'] | null })[] = [
    { what: 'edge', side: isEnd ? 'width' : 'length', size: long, range: least(bander.shortestEdge) },
    { what: 'across', side: isEnd ? 'length' : 'width', size: across, range: least(bander.narrowestPanel) },
    { what: 'thickness', side: 'thickness', size: panel.thickness, range: bander.thickness },
    { what: 'band', side: 'band', size: band.thickness, range: bander.band },
  ];
  return sizes.flatMap((one) => outside({ machine: bander.name, bores: [], ...one }));
}

function outside(misfit: Omit<Misfit, 'range'> & { readonly range: Misfit['range'] | null }): readonly Misfit[] {
  const { range, size } = misfit;
  return range === null || (size >= range.min && size <= range.max) ? [] : [{ ...misfit, range }];
}
