import { say } from './messages.js';
import type { Told } from '../words/told.js';
import { boreMapScene } from '../drawing/bore-map/bore-map.js';
import type { DrawableCarcass, DrawingParams, DrawingReply, TextRange } from '../drawing/messages/drawing.js';
import { SCREEN, type Medium, type Pane, type Scene, type SourceKey } from '../drawing/scene/scene.js';
import type { Drawn } from '../drawing/drawn.js';
import { allPanelsScene } from '../drawing/bore-map/all-panels.js';
import type { CarcassAnalysis, JobAnalysis } from '../engine.js';
import { cursorAt, namesPanels, panelsAt } from '../engine/cursor.js';
import { inJob, type AnalysedFile, type JobFile, type ToRange } from './file.js';
import { wantedOf } from '../findings/wanted.js';
import { tell } from '../words/message.js';

/** A carcass that can be drawn. `index` is null where the present text no longer has it. */
export interface Drawable {
  readonly index: number | null;
  readonly carcass: CarcassAnalysis;
  readonly stale: boolean;
}

/** Which document is drawn, as whoever asks knows it. */
export interface DrawnDocument {
  readonly uri: string;
  readonly version: number;
  readonly toRange: ToRange;
}

/**
 * The drawing that the preview asks for, of the present text or, while that is broken, of the last good one.
 * @param offset the cursor; null where none is followed
 */
export function drawingOf(
  file: AnalysedFile,
  { uri, version, toRange }: DrawnDocument,
  params: DrawingParams,
  offset: number | null,
): DrawingReply {
  if (file.kind === 'shop') {
    return {
      kind: 'nothing',
      uri,
      version,
      carcasses: [],
      reason: tell(say.shopHasNoBores(), 'mm'),
    };
  }
  const drawables = drawablesOf(file.analysis);
  const carcasses = drawables.map(({ carcass }): DrawableCarcass => ({
    name: carcass.name,
    panels: carcass.carcass?.panels.map(({ key }) => key) ?? [],
  }));
  const chosen = choose(file, drawables, params, offset);
  if (chosen === null) return { kind: 'nothing', uri, version, carcasses, reason: reasonFor(file.analysis) };

  const { carcass, index, stale } = chosen.drawable;
  const scene = sceneOf(file.analysis, carcass, chosen.panel, params);
  if (scene === null) return { kind: 'nothing', uri, version, carcasses, reason: reasonFor(file.analysis) };
  return {
    kind: 'drawing',
    uri,
    version,
    stale: stale ? staleReason(carcass.name, index) : null,
    carcasses,
    carcass: carcass.name,
    panel: chosen.panel,
    scene,
    ranges: rangesOf(file, scene, index, toRange),
  };
}

export function drawablesOf(analysis: JobAnalysis): readonly Drawable[] {
  const present = analysis.carcasses.flatMap((_, index): Drawable[] => {
    const drawable = analysis.drawable(index);
    return drawable === null ? [] : [{ index, ...drawable }];
  });
  const names = new Set(analysis.carcasses.map(({ name }) => name));
  const hidden = [...analysis.lastGood()].filter(([name]) => !names.has(name));
  return [...present, ...hidden.map(([, carcass]) => ({ index: null, carcass, stale: true }))];
}

function choose(
  { analysis }: JobFile,
  drawables: readonly Drawable[],
  { carcass: name, panel: key, view }: DrawingParams,
  offset: number | null,
): { readonly drawable: Drawable; readonly panel: string | null } | null {
  const cursor = offset === null ? null : cursorAt(analysis, offset);
  const pointedAt = cursor?.carcass ?? null;
  const under = pointedAt === null ? undefined : drawables.find(({ index }) => index === pointedAt);
  // A carcass that never was good cannot be drawn; another one in its place would mislead.
  if (pointedAt !== null && under === undefined) return null;
  const drawable = under ?? drawables.find(({ carcass }) => carcass.name === name) ?? drawables[0];
  if (drawable === undefined) return null;
  const { carcass } = drawable;
  const pointed = cursor !== null && under !== undefined && namesPanels(carcass, cursor.path);
  if (pointed) return { drawable, panel: panelsAt(carcass, cursor.path)[0]!.key };
  // Text about the carcass as a whole leaves the panel that is shown.
  const same = under === undefined || carcass.name === name;
  const asked = same && carcass.carcass?.panels.some((panel) => panel.key === key) === true ? key : null;
  return { drawable, panel: asked ?? (view === 'all-panels' ? null : (carcass.carcass?.panels[0]?.key ?? null)) };
}

function sceneOf(
  analysis: JobAnalysis,
  carcass: CarcassAnalysis,
  panel: string | null,
  params: DrawingParams,
): Scene | null {
  const drawn = drawnOf(analysis, carcass);
  if (drawn === null) return null;
  const medium = mediumOf(params);
  if (params.view === 'all-panels') return allPanelsScene(drawn, medium);
  return panel === null ? null : boreMapScene(drawn, panel, medium);
}

/** What a drawing of a carcass is made of; null where its panels cannot be worked out. */
export function drawnOf(
  { reader, wishes }: JobAnalysis,
  { name, carcass, boring, known, spec }: CarcassAnalysis,
): Drawn | null {
  if (carcass === null || boring === null) return null;
  return { name, carcass, boring, findings: wantedOf(known, wishes.findings), note: spec?.note ?? '', reader };
}

/** What the client says of its pane is not trusted. */
function mediumOf({ medium = 'paper', pane, nearer }: DrawingParams): Medium {
  if (medium === 'paper') return 'paper';
  return { pane: soundPane(pane) ?? SCREEN.pane, nearer: isBetween(nearer, 1, 64) ? nearer : SCREEN.nearer };
}

/** A pane that a person could look at; null where it is none. */
function soundPane(pane: Pane | undefined): Pane | null {
  return isBetween(pane?.width, 20, 4000) && isBetween(pane?.height, 20, 4000) ? pane : null;
}

function isBetween(value: unknown, least: number, most: number): value is number {
  return typeof value === 'number' && value >= least && value <= most;
}

function rangesOf(
  { analysis }: JobFile,
  scene: Scene,
  index: number | null,
  toRange: ToRange,
): Record<SourceKey, TextRange> {
  const ranges: Record<SourceKey, TextRange> = {};
  if (index === null) return ranges;
  for (const [key, place] of Object.entries(scene.sources)) {
    const span = inJob(analysis, place, index);
    if (span !== null) ranges[key] = toRange(span.start, span.end);
  }
  return ranges;
}

export function staleReason(name: string, index: number | null): Told {
  return tell((index === null ? say.placeBroken : say.carcassBroken)({ name }), 'mm');
}

export function reasonFor(analysis: JobAnalysis): Told {
  const first = analysis.known().find(({ finding }) => finding.severity === 'error');
  const why = first === undefined ? say.noCarcasses() : say.notDrawnYet({ fault: first.finding.message });
  return tell(why, analysis.reader);
}
