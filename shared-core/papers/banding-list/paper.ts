import { endNamed } from '../../carcass/roles.js';
import type { Panel } from '../../carcass/model.js';
import type { EdgeName } from '../../job/model.js';
import { grouped } from '../../findings/lookups.js';
import { figure, showLength } from '../../length/show.js';
import type { Micrometres, Unit } from '../../length/units.js';
import type { Band } from '../../shop/model.js';
import { counted } from '../../words/english.js';
import type { BuiltCarcass } from '../built.js';
import { panelsNamed, piecesIn } from '../pieces.js';
import { column, figuresColumn, heading, list, paragraph, type Block, type Paper } from '../paper.js';

/** An edge to be banded. */
interface BandedEdge {
  readonly carcass: string;
  readonly panel: Panel;
  readonly pieces: number;
  readonly edge: EdgeName;
  readonly length: Micrometres;
}

/** Ends first and the front edge last, so that its band runs through and covers the others; common practice, no source. */
const ORDER: readonly EdgeName[] = ['reference-end', 'far-end', 'back', 'front'];

/**
 * What goes on which edges, band by band, with the length to have ready.
 * @param allowance what is bought beyond the length of each edge: it hangs over at both ends and is trimmed
 * @param troubles what the bander cannot take, in the words of the findings
 */
export function bandingPaper(
  carcasses: readonly BuiltCarcass[],
  allowance: Micrometres,
  troubles: readonly string[],
  title: string,
  unit: Unit,
): Paper {
  const edges = new Map<Band, BandedEdge[]>();
  for (const { name, carcass } of carcasses) {
    for (const panel of carcass.panels) {
      for (const edge of ORDER) {
        const band = panel.bands[edge];
        if (band === null) continue;
        edges.set(band, [
          ...(edges.get(band) ?? []),
          { carcass: name, panel, pieces: carcass.count, edge, length: lengthOf(panel, edge) },
        ]);
      }
    }
  }
  return {
    title,
    blocks: [
      { kind: 'cautions', items: [CAUTION] },
      paragraph('Band the ends of a panel first, then its back edge, its front edge last: its band covers the others.'),
      ...list(troubles),
      ...(edges.size === 0 ? [paragraph('No edge of this job is banded.')] : []),
      ...[...edges].flatMap(([band, of]) => bandBlocks(band, of, allowance, unit)),
    ],
  };
}

const CAUTION =
  'Hot glue, rollers and trimming knives burn, draw in and cut: keep hands and sleeves away from the feed, and let no piece through that is shorter or narrower than the bander takes. The machine’s manual and local rules decide.';

function bandBlocks(band: Band, edges: readonly BandedEdge[], allowance: Micrometres, unit: Unit): readonly Block[] {
  const total = edges.reduce((sum, { length, pieces }) => sum + pieces * (length + allowance), 0);
  return [
    heading(
      2,
      `${band.name}, ${showLength(band.thickness, unit)} thick`,
      `${counted(piecesIn(edges), 'edge')}, ${metres(total)} with ${showLength(allowance, unit)} over on each`,
    ),
    {
      kind: 'table',
      columns: [figuresColumn('Edges'), figuresColumn('Length'), column('Edge'), column('Panels')],
      rows: alike(edges).map((same) => [
        String(piecesIn(same)),
        figure(same[0]!.length, unit),
        wordOf(same[0]!),
        panelsNamed(same.map((one) => ({ ...one, panel: one.panel.key }))),
      ]),
    },
  ];
}

/** Edges of one length and kind, the ends before the fronts, the longest first. */
function alike(edges: readonly BandedEdge[]): readonly (readonly BandedEdge[])[] {
  return [...grouped(edges, (one) => `${one.length} ${wordOf(one)}`)].sort(
    ([a], [b]) => ORDER.indexOf(a!.edge) - ORDER.indexOf(b!.edge) || b!.length - a!.length,
  );
}

function wordOf({ panel, edge }: BandedEdge): string {
  return edge === 'front' || edge === 'back' ? `${edge} edge` : endNamed(panel, edge);
}

function lengthOf({ length, width }: Panel, edge: EdgeName): Micrometres {
  return edge === 'front' || edge === 'back' ? length : width;
}

const metres = (length: Micrometres): string => `${(length / 1e6).toFixed(2)} m`;
