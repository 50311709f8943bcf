import { inShort } from '../../machining/caution.js';
import type { Bore } from '../../boring/model.js';
import type { Panel } from '../../carcass/model.js';
import { isUpright } from '../../carcass/roles.js';
import { showSizes } from '../../length/show.js';
import type { Reader } from '../../length/reader.js';
import { grow } from '../scene/boxes.js';
import { boresOf, faceToShow, findingsFor, Sources, type Drawn } from '../drawn.js';
import { holeGroups, tableHeads, type HoleGroup } from './hole-table.js';
import { liesInPane, scaleInPane, type Draft } from './pane.js';
import { drawLooseShelves } from './loose-shelves.js';
import { placeNumbers } from './numbers.js';
import { drawDimensions } from './panel-dimensions.js';
import { drawEdgeNames, drawEndNames, drawFaceName, drawReferenceEnd } from './panel-names.js';
import { drawPanel, shownEnds } from './panel-shapes.js';
import { Pen } from '../scene/pen.js';
import type { Fact, Medium, Scene, SceneFinding } from '../scene/scene.js';
import { frameOf, isLegible } from '../scene/extent.js';
import { mm, scaleFor } from '../scene/scale.js';
import { PanelView } from './panel-view.js';
import { tell, type Message } from '../../words/message.js';
import { asItIs, type Told } from '../../words/told.js';
import { CUT_EDGE, FACES } from '../../words/names.js';
import { sawnAt } from '../../carcass/footprint.js';
import { FACTS, say } from './messages.js';
import { edgeWord, endWord, surfaceWord } from '../words.js';

/** The longest side of a panel on paper, in millimetres; chosen so that a bore map with its dimensions goes on an A4 page. */
const LARGEST = 220;
/** Room between a panel and the views of its ends, in millimetres of paper. */
const GAP = 9;

/**
 * The bore map of one panel; null where the carcass has no such panel. The panel itself always lies in the same place, its
 * face's top left corner at (0, 0).
 */
export function boreMapScene(drawn: Drawn, panelKey: string, medium: Medium = 'paper'): Scene | null {
  const panel = drawn.carcass.panels.find(({ key }) => key === panelKey);
  if (panel === undefined) return null;
  const content = contentOf(drawn, panel, medium !== 'paper');
  const { bores, groups, findings, sources } = content;
  const { scale, view, shapes, frame, shelves } = laidFor(content, medium);
  return {
    view: 'panel',
    carcass: drawn.name,
    panel: panel.key,
    title: tell(say.title({ carcass: drawn.name, panel: panel.key }), drawn.reader),
    facts: factsOf(panel, drawn),
    caption: captionOf(view),
    reader: drawn.reader,
    scale,
    frame,
    shapes,
    heads: tableHeads(
      drawn.reader,
      [edgeWord(panel, 'front')],
      endWord(panel, 'reference-end'),
      shownEnds(bores).length > 0,
    ),
    table: groups.map(({ line }) => line),
    findings,
    shelves,
    notes: notesOf(view, drawn, bores),
    sources: sources.record(),
  };
}

/** What a bore map shows, at whatever scale. */
interface Content {
  readonly drawn: Drawn;
  readonly panel: Panel;
  readonly bores: readonly Bore[];
  readonly groups: readonly HoleGroup[];
  readonly findings: readonly SceneFinding[];
  readonly sources: Sources;
  /** Whether what may be moved is shown. */
  readonly moves: boolean;
}

function contentOf(drawn: Drawn, panel: Panel, moves: boolean): Content {
  const sources = new Sources();
  return {
    drawn,
    panel,
    bores: boresOf(drawn, panel),
    groups: holeGroups(drawn.carcass, drawn.boring, panel, drawn.reader),
    findings: findingsFor(drawn, [panel], sources),
    sources,
    moves,
  };
}

/** A panel drawn for a medium, at the scale and on the side that are right for it. */
function laidFor(content: Content, medium: Medium): ReturnType<typeof drawAt> & { readonly scale: number } {
  const [length, width] = [mm(content.panel.length), mm(content.panel.width)];
  const upright = isUpright(content.panel);
  if (medium === 'paper') {
    const scale = scaleFor(Math.max(length, width), LARGEST);
    return { scale, ...drawAt(content, scale, upright) };
  }
  const { pane, nearer } = medium;
  const standing = upright && !liesInPane(length, width, pane);
  const size = standing ? { width, height: length } : { width: length, height: width };
  // The draft that fits is the drawing itself.
  const drafts = new Map<number, ReturnType<typeof drawAt>>();
  const drawnAt = (scale: number): ReturnType<typeof drawAt> => {
    const drawn = drafts.get(scale) ?? drawAt(content, scale, standing);
    drafts.set(scale, drawn);
    return drawn;
  };
  const draftAt = (scale: number): Draft => {
    const { frame, shapes } = drawnAt(scale);
    return { frame, isLegible: isLegible(shapes, scale) };
  };
  const scale = scaleInPane(draftAt, size, pane) / nearer;
  return { scale, ...drawnAt(scale) };
}

/** @param scale millimetres of panel for one of lettering */
function drawAt({ drawn, panel, bores, groups, findings, sources, moves }: Content, scale: number, standing: boolean) {
  const pen = new Pen(panel.key, scale);
  const view = new PanelView(panel, faceToShow(bores), pen.paper(GAP), standing);
  drawPanel(pen, view, drawn, groups, findings, sources);
  const shelves = moves ? drawLooseShelves(pen, view, drawn, sources) : [];
  drawDimensions(pen, view, drawn, bores);
  drawEdgeNames(pen, view, bores.length > 0);
  drawEndNames(pen, view, bores);
  placeNumbers(pen, view, groups);
  if (bores.length > 0) drawReferenceEnd(pen, view, shownEnds(bores).includes('reference-end'));
  drawFaceName(pen, view);
  const shapes = pen.painted();
  return { view, shapes, shelves, frame: grow(frameOf(shapes, scale), pen.paper(4)) };
}

/** '720 × 560 × 16 mm': finished length, width and thickness. */
export function sizeText(panel: Panel, drawn: Drawn): Told {
  const { reader } = drawn;
  return asItIs(showSizes([panel.length, panel.width, panel.thickness], reader));
}

function factsOf(panel: Panel, drawn: Drawn): Fact[] {
  const { reader } = drawn;
  const cut = asItIs(showSizes([panel.cutLength, panel.cutWidth], reader));
  const banded = bandedEdges(panel);
  const { count } = drawn.carcass;
  return [
    ...(count === 1 ? [] : [{ word: FACTS.pieces, value: asItIs(String(count)) }]),
    { word: FACTS.finished, value: sizeText(panel, drawn) },
    { word: FACTS.cut, value: cut },
    { word: FACTS.board, value: asItIs(panel.board.name) },
    { word: FACTS.banded, value: banded ?? FACTS.noEdge },
  ];
}

/** 'front edge with band-1', edges of one band together; null where none is banded. */
export function bandedEdges(panel: Panel): Told | null {
  const byBand = new Map<string, string[]>();
  for (const edge of ['front', 'back', 'reference-end', 'far-end'] as const) {
    const band = panel.bands[edge];
    if (band !== null) byBand.set(band.name, [...(byBand.get(band.name) ?? []), edgeWord(panel, edge)]);
  }
  const cut = panel.corner?.band ?? null;
  if (cut !== null) byBand.set(cut.name, [...(byBand.get(cut.name) ?? []), CUT_EDGE]);
  if (byBand.size === 0) return null;
  return tell(say.banded({ bands: [...byBand].map(([band, edges]) => ({ band, edges })) }), 'mm');
}

function captionOf(view: PanelView): Told {
  const side = (sign: 1 | -1): 'left' | 'right' => (sign > 0 ? 'right' : 'left');
  const { panel, seen } = view;
  const lies = {
    face: surfaceWord(panel, seen),
    edge: edgeWord(panel, 'front'),
    end: endWord(panel, 'reference-end'),
  };
  const told = view.standing
    ? say.standing({ ...lies, edgeOn: side(view.frontward) })
    : say.lying({ ...lies, endOn: side(view.referenceward) });
  return tell(told, 'mm');
}

function notesOf(view: PanelView, drawn: Drawn, bores: readonly Bore[]): Told[] {
  const { panel, seen } = view;
  const { reader } = drawn;
  const other = seen === 'inside' ? 'outside' : 'inside';
  const notes: readonly Message[] = [
    ...(bores.some(({ face, through }) => face === other && !through) ? [say.dashed({ face: FACES[other] })] : []),
    ...(shownEnds(bores).length > 0 ? [say.folded({ face: surfaceWord(panel, 'outside') })] : []),
    say.figures({ edge: edgeWord(panel, 'front'), end: endWord(panel, 'reference-end') }),
  ];
  return [
    ...ownNote(drawn),
    ...grooveNotes(panel, reader),
    ...cornerNotes(panel, bores.length > 0, reader),
    ...notes.map((note) => tell(note, reader)),
    ...(bores.length > 0 ? [inShort()] : []),
  ];
}

/** Where each groove or rebate of a panel runs, one sentence each. */
export function grooveNotes(panel: Panel, reader: Reader): readonly Told[] {
  return panel.grooves.map((groove) => tell(say.groove({ ...groove, edge: edgeWord(panel, 'front') }), reader));
}

/** What is sawn off a panel, once it is bored where it has bores; nothing where it stays whole. */
export function cornerNotes(panel: Panel, bored: boolean, reader: Reader): readonly Told[] {
  const { corner } = panel;
  if (corner === undefined) return [];
  const sawn = sawnAt(corner);
  const told = say.corner({
    edge: edgeWord(panel, 'front'),
    end: endWord(panel, corner.end),
    bored,
    along: sawn.v,
    across: sawn.u,
    finished: [corner.v, corner.u],
    band: corner.band?.name ?? null,
  });
  return [tell(told, reader)];
}

/** The remark that the job has for the carcass. */
export const ownNote = ({ note = '' }: Pick<Drawn, 'note'>): readonly Told[] =>
  note === '' ? [] : [tell(say.note({ note }), 'mm')];
