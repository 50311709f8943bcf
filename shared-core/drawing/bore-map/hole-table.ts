import type { Bore, BoreMap, Surface } from '../../boring/model.js';
import type { Carcass, Panel } from '../../carcass/model.js';
import { isRow } from '../../fittings/purposes.js';
import { inOneNotation, nominalFigure } from '../../length/show.js';
import type { Reader } from '../../length/reader.js';
import type { Micrometres } from '../../length/units.js';
import type { HoleLine, PrintedScene } from '../scene/scene.js';
import { sourceKey } from '../scene/source.js';
import { useOf } from '../about-bore.js';
import { tell, tellerTo } from '../../words/message.js';
import { asItIs, type Told } from '../../words/told.js';
import { faceWord } from '../words.js';
import { say, TABLE } from './messages.js';

const FACE_ORDER: readonly Surface[] = ['inside', 'outside', 'reference-end', 'far-end'];

type Write = (length: Micrometres) => string;

/** How the figures of each column are written. */
interface Columns {
  readonly reader: Reader;
  readonly u: Write;
  readonly v: Write;
  readonly depth: Write;
}

/** Bores of one panel that are alike and belong together, in the order of v, then u. */
export interface HoleGroup {
  readonly line: HoleLine;
  readonly bores: readonly Bore[];
}

/**
 * The bores of a panel, grouped into the lines of its hole table: by joint or row, face, diameter, depth and purpose.
 * Independent of the order in which the bore map lists them. Every bore is in exactly one group.
 */
export function holeGroups(carcass: Carcass, boring: BoreMap, panel: Panel, reader: Reader): readonly HoleGroup[] {
  const groups = new Map<string, Bore[]>();
  for (const bore of boring.bores) {
    if (bore.panel !== panel.key) continue;
    const key = [bore.group, bore.face, bore.diameter, bore.depth, bore.through, bore.purpose].join('|');
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [bore]);
    else group.push(bore);
  }
  const sorted = [...groups.entries()].map(([key, bores]) => ({ key, bores: bores.sort(byPlace) }));
  sorted.sort((a, b) => compareGroups(a.bores[0]!, b.bores[0]!) || (a.key < b.key ? -1 : 1));
  const all = sorted.flatMap(({ bores }) => bores);
  const columns: Columns = {
    reader,
    u: inOneNotation(
      all.map(({ u }) => u),
      reader,
    ),
    v: inOneNotation(
      all.map(({ v }) => v),
      reader,
    ),
    depth: inOneNotation(
      all.filter(({ through }) => !through).map(({ depth }) => depth),
      reader,
    ),
  };
  return sorted.map(({ bores }, index) => {
    const first = bores[0]!;
    const [u, v] = placesOf(bores, columns);
    return {
      bores,
      line: {
        number: index + 1,
        panel: panel.key,
        count: bores.length,
        face: faceWord(panel, first.face),
        u,
        v,
        diameter: asItIs(nominalFigure(first.diameter, reader)),
        depth: first.through ? TABLE.through : asItIs(columns.depth(first.depth)),
        purpose: first.purpose,
        use: useOf(carcass, boring, panel, first),
        bores: bores.map(({ id }) => id),
        source: sourceKey(first.place),
      },
    };
  });
}

function byPlace(a: Bore, b: Bore): number {
  return a.v - b.v || a.u - b.u || (a.id < b.id ? -1 : 1);
}

/** Joints before rows, face by face, from the reference end. */
function compareGroups(a: Bore, b: Bore): number {
  return (
    Number(isRow(a)) - Number(isRow(b)) || FACE_ORDER.indexOf(a.face) - FACE_ORDER.indexOf(b.face) || byPlaceOnly(a, b)
  );
}
function byPlaceOnly(a: Bore, b: Bore): number {
  return a.v - b.v || a.u - b.u;
}

/** The u and the v of a group: one figure where all share it, else a list. */
function placesOf(bores: readonly Bore[], columns: Columns): [Told, Told] {
  const us = ascending(bores.map(({ u }) => u));
  const vs = ascending(bores.map(({ v }) => v));
  if (us.length * vs.length === bores.length)
    return [listFigures(us, columns.reader, columns.u), listFigures(vs, columns.reader, columns.v)];
  // Not a full grid: place by place, so that the two lists can be read in pairs.
  return [asItIs(bores.map(({ u }) => columns.u(u)).join('; ')), asItIs(bores.map(({ v }) => columns.v(v)).join('; '))];
}

/** Each value once. */
export function ascending(values: readonly Micrometres[]): Micrometres[] {
  return [...new Set(values)].sort((a, b) => a - b);
}

/** '53, 213, 373' or, for four and more at one distance, '8 to 680 by 32'. `values` ascending. */
export function listFigures(
  values: readonly Micrometres[],
  reader: Reader,
  write: Write = inOneNotation(values, reader),
): Told {
  const step = values.length > 3 ? values[1]! - values[0]! : 0;
  if (step > 0 && values.every((value, index) => value === values[0]! + index * step)) {
    const run = say.run({ first: write(values[0]!), last: write(values.at(-1)!), by: nominalFigure(step, reader) });
    return tell(run, reader);
  }
  return asItIs(values.map(write).join(', '));
}

/** What a reader who cannot see the drawing gets: what it shows, in sentences. The hole table goes with it. */
export function describe({ title, caption, facts, table, findings, reader }: PrintedScene): Told {
  const bores = table.reduce((sum, { count }) => sum + count, 0);
  return tell(
    say.described({ title, caption, facts, bores, findings: findings.map(({ message }) => message) }),
    reader,
  );
}

/**
 * Heads of the hole table's columns; figures are in the unit named.
 * @param edge the edge that the first figure counts from, in words
 * @param end the reference end in words
 * @param ends whether there are bores in ends, where the second figure counts from the outside face
 */
export function tableHeads(reader: Reader, edges: readonly Told[], end: Told, ends: boolean): readonly Told[] {
  const told = tellerTo(reader);
  return [
    TABLE.number,
    TABLE.count,
    TABLE.face,
    told(say.fromEdge({ edges })),
    told((ends ? say.fromEndOrOutside : say.fromEnd)({ end })),
    told(say.diameter()),
    told(say.depth()),
    TABLE.for,
  ];
}

/** A line of the hole table, column by column as in `tableHeads`. */
export function tableCells(line: HoleLine): readonly Told[] {
  const { number, count, face, u, v, diameter, depth, use } = line;
  return [asItIs(String(number)), asItIs(String(count)), face, u, v, diameter, depth, use];
}
