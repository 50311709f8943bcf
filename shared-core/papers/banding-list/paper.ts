import { BANDING_ORDER } from '../../carcass/banded.js';
import { grouped } from '../../findings/lookups.js';
import { figure } from '../../length/show.js';
import type { Reader } from '../../length/reader.js';
import type { Micrometres } from '../../length/units.js';
import { groupBy } from '../../machining/plan/numbers.js';
import type { Band } from '../../shop/model.js';
import { tellerTo } from '../../words/message.js';
import { asItIs, worded, type Told } from '../../words/told.js';
import type { BuiltCarcass } from '../built.js';
import { panelsNamed, piecesIn } from '../pieces.js';
import { column, figuresColumn, heading, list, paragraph, type Block, type Paper } from '../paper.js';
import { CUT_EDGE } from '../../words/names.js';
import { edgeWord } from '../../drawing/words.js';
import { edgesOf, type BandedEdge } from './edges.js';
import { HEADS, say } from './messages.js';

/**
 * What goes on which edges, band by band, with the length to have ready.
 * @param allowance what is bought beyond the length of each edge: it hangs over at both ends and is trimmed
 * @param troubles what the bander cannot take, in the words of the findings
 */
export function bandingPaper(
  carcasses: readonly BuiltCarcass[],
  allowance: Micrometres,
  troubles: readonly Told[],
  title: Told,
  reader: Reader,
): Paper {
  const edges = groupBy(edgesOf(carcasses), ({ band }) => band);
  const told = tellerTo(reader);
  return {
    title,
    blocks: [
      { kind: 'cautions', items: [told(say.caution())] },
      paragraph(told(say.order())),
      ...([...edges.values()].some((of) => of.some(({ edge }) => edge === 'cut'))
        ? [paragraph(told(say.cutLast()))]
        : []),
      ...list(troubles),
      ...(edges.size === 0 ? [paragraph(told(say.nothingBanded()))] : []),
      ...[...edges].flatMap(([band, of]) => bandBlocks(band, of, allowance, reader)),
    ],
  };
}

function bandBlocks(
  band: Band,
  edges: readonly BandedEdge[],
  allowance: Micrometres,
  reader: Reader,
): readonly Block[] {
  const total = edges.reduce((sum, { length, pieces }) => sum + pieces * (length + allowance), 0);
  const told = tellerTo(reader);
  return [
    heading(
      2,
      told(say.band({ band: band.name, thickness: band.thickness })),
      told(say.tape({ edges: piecesIn(edges), length: total, allowance })),
    ),
    {
      kind: 'table',
      columns: [figuresColumn(HEADS.edges), figuresColumn(HEADS.length), column(HEADS.edge), column(HEADS.panels)],
      rows: alike(edges).map((same) => [
        asItIs(String(piecesIn(same))),
        asItIs(figure(same[0]!.length, reader)),
        worded('sides', wordOf(same[0]!)),
        panelsNamed(same.map((one) => ({ ...one, panel: one.panel.key }))),
      ]),
    },
  ];
}

const wordOf = ({ panel, edge }: BandedEdge): Told => (edge === 'cut' ? CUT_EDGE : edgeWord(panel, edge));

/** Edges of one length and kind, the ends before the fronts, the longest first. */
function alike(edges: readonly BandedEdge[]): readonly (readonly BandedEdge[])[] {
  return [...grouped(edges, (one) => `${one.length} ${wordOf(one)}`)].sort(
    ([a], [b]) => BANDING_ORDER.indexOf(a!.edge) - BANDING_ORDER.indexOf(b!.edge) || b!.length - a!.length,
  );
}
