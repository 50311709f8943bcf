import { buildCarcass } from '../../../../shared-core/carcass/build.js';
import { layRows } from '../../../../shared-core/boring/rows.js';
import type { Bore, Row } from '../../../../shared-core/boring/model.js';
import type { Panel } from '../../../../shared-core/carcass/model.js';
import type { EndName } from '../../../../shared-core/job/model.js';
import type { LineDrill, Stop } from '../../../../shared-core/shop/model.js';
import { mm, shopOf, specOf } from '../../specs.js';
import { shed } from './jobs.js';

/*
 * A head of five spindles, 32 apart, over the left side of a carcass: with its outside face down at a far fence its reference
 * end lies left, so a stop `position` from the first spindle puts spindle k at position + 32 k from that end.
 */
const shop = shopOf();
const spec = specOf(shop, { rows: 'front' });
const { carcass } = buildCarcass(spec, shop);
export const side = carcass!.panels.find(({ key }) => key === 'left')!;
const row = layRows(spec, carcass!, shop).find(({ panel }) => panel === 'left')!;
const plain: LineDrill = {
  ...(shed.machines.get('row-drill') as LineDrill),
  spindles: 5,
  heads: 1,
  indexPins: 'row',
  indexRange: null,
};
const stopsOf =
  (hand: Stop['side']) =>
  ([min, max]: readonly [number, number], index: number): Stop => ({
    ...plain.stops[0]!,
    name: `${hand}-${index}`,
    side: hand,
    range: { min: mm(min), max: mm(max) },
  });

export interface Case {
  /** From the end to hole 0, and which holes there are, in pitches from there. */
  readonly nearest: number;
  readonly holes: readonly number[];
  /** From the last hole to the other end; none of it where nothing is said. */
  readonly behind?: number;
  /** Ranges of those on the left, and of those on the right. */
  readonly stops: readonly (readonly [number, number])[];
  readonly onRight?: readonly (readonly [number, number])[];
  readonly drill?: Partial<LineDrill>;
  readonly fence?: readonly number[];
  readonly end?: EndName;
}

export const upTo = (count: number): readonly number[] => Array.from({ length: count }, (_, k) => k);

/** The panel, its row, and the drill for it. */
export interface RowCase {
  readonly panel: Panel;
  readonly row: Row;
  /** Their ids are the numbers of the holes. */
  readonly bores: readonly Bore[];
  readonly drill: LineDrill;
}

export function rowCase({ nearest, holes, behind = nearest, stops, onRight = [], drill = {} }: Case): RowCase {
  const bores = holes.map((k): Bore => {
    const { face, u, diameter, depth, through, place } = row;
    const bore = { id: `${k}`, panel: side.key, face, u, diameter, depth, through, purpose: 'row', place } as const;
    return { ...bore, v: mm(nearest + 32 * k), group: row.id, fitting: null };
  });
  return {
    panel: { ...side, length: mm(nearest + holes.at(-1)! * 32 + behind) },
    row,
    bores,
    drill: { ...plain, stops: [...stops.map(stopsOf('left')), ...onRight.map(stopsOf('right'))], ...drill },
  };
}
