import { alongFrom, edgeWord, surfaceWord } from '../../drawing/words.js';
import type { Panel } from '../../carcass/model.js';
import { figure, fine } from '../../length/show.js';
import { unitFor, type Reader } from '../../length/reader.js';
import type { BoredWithin } from '../../tolerance/bores.js';
import { tell } from '../../words/message.js';
import { asItIs, type Told } from '../../words/told.js';
import { BLANK, column, figuresColumn, TICK, type Cell, type Table } from '../paper.js';
import { CHECK_HEADS, say } from './messages.js';

type Measure = keyof BoredWithin['within'];

/** One thing to measure: what of a face, its value as drawn, and how far it may be off. */
interface Check {
  readonly name: Told;
  readonly drawn: number;
  readonly within: number;
}

/**
 * What is measured on the first piece of a set-up before all others are bored alike: of each face that is bored the nearest and the
 * furthest holes, each with the least and greatest that the shop's tolerances allow, and how deep they are.
 */
export function checkTable(bored: readonly BoredWithin[], panel: Panel, reader: Reader): Table {
  const faces = [...new Set(bored.map(({ hole }) => hole.face))];
  const checks = faces.flatMap((face) => {
    const own = bored.filter(({ hole }) => hole.face === face);
    return faceChecks(own, panel, faces.length > 1 ? surfaceWord(panel, face) : null);
  });
  return {
    kind: 'table',
    columns: [
      column(tell(say.firstPiece({ unit: unitFor(reader) }), reader)),
      figuresColumn(CHECK_HEADS.drawn),
      figuresColumn(CHECK_HEADS.from),
      figuresColumn(CHECK_HEADS.to),
      column(CHECK_HEADS.found),
      column(CHECK_HEADS.right),
    ],
    rows: checks.map(({ name, drawn, within }): readonly Cell[] => [
      name,
      asItIs(figure(drawn, reader)),
      // Where nothing that the shop has a bound for can stray, there is no limit to tell.
      ...[drawn - within, drawn + within].map((length) => (within === 0 ? '' : asItIs(fine(length, reader)))),
      BLANK,
      TICK,
    ]),
  };
}

function faceChecks(own: readonly BoredWithin[], panel: Panel, face: Told | null): readonly Check[] {
  const from = (edge: Told, measure: Measure): readonly Check[] =>
    extremes(own, measure).map(({ which, ...rest }) => ({
      name: tell(say.toHole({ face, edge, which }), 'mm'),
      ...rest,
    }));
  const blind = own.filter(({ hole }) => !hole.through);
  return [
    ...from(edgeWord(panel, 'front'), 'u'),
    ...from(alongFrom(panel, own[0]!.hole.face), 'v'),
    ...extremes(blind, 'depth').map(({ which: _, ...rest }) => ({ name: tell(say.depthOf({ face }), 'mm'), ...rest })),
  ];
}

/** The nearest and the furthest; one where all are alike. Of several at one place, what may be off furthest. */
function extremes(
  bored: readonly BoredWithin[],
  measure: Measure,
): readonly (Omit<Check, 'name'> & { readonly which: 'nearest' | 'furthest' | 'every' })[] {
  const values = bored.map(({ hole }) => hole[measure]);
  const at = (value: number, which: 'nearest' | 'furthest' | 'every') => ({
    which,
    drawn: value,
    within: Math.max(...bored.filter(({ hole }) => hole[measure] === value).map(({ within }) => within[measure])),
  });
  if (values.length === 0) return [];
  const [least, most] = [Math.min(...values), Math.max(...values)];
  return least === most ? [at(least, 'every')] : [at(least, 'nearest'), at(most, 'furthest')];
}
