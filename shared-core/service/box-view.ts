import type { Carcass } from '../carcass/model.js';
import type { CarcassSpec } from '../carcass/spec.js';
import { readCarcassTree } from '../document/parts.js';
import type { Path, Place } from '../document/place.js';
import type { TreeNode } from '../document/tree.js';
import { boxScene } from '../drawing/box-view/box.js';
import { say } from '../drawing/box-view/messages.js';
import type { BoxParams, BoxReply, StandingBox } from '../drawing/messages/box-view.js';
import type { TextRange } from '../drawing/messages/drawing.js';
import type { CarcassAnalysis, JobAnalysis } from '../engine.js';
import { cursorAt, namesPanels, panelsAt } from '../engine/cursor.js';
import { lineUp, type Stand } from '../wall/line-up.js';
import { tell } from '../words/message.js';
import type { Told } from '../words/told.js';
import { drawablesOf, drawnOf, reasonFor, staleReason, type Drawable, type DrawnDocument } from './drawing.js';
import { inJob, type AnalysedFile, type JobFile, type ToRange } from './file.js';

/** So many of equal carcasses are drawn side by side at most. */
const MOST_DRAWN = 12;
const ORIGIN = { x: 0, y: 0, z: 0 } as const;

/** A carcass that can stand along a wall. */
interface Standing {
  readonly drawable: Drawable;
  readonly spec: CarcassSpec;
  readonly carcass: Carcass;
}

/**
 * A carcass in three dimensions, or all that stand along its wall, of the present text or, while that is broken, of the last
 * good one.
 * @param offset the cursor; null where none is followed
 */
export function boxesOf(
  file: AnalysedFile,
  { uri, version, toRange }: DrawnDocument,
  params: BoxParams,
  offset: number | null,
): BoxReply {
  const nothing = (reason: Told): BoxReply => ({ kind: 'nothing', uri, version, reason });
  if (file.kind === 'shop') return nothing(tell(say.shopHasNoBox(), 'mm'));
  const { analysis } = file;
  const standing = standingOf(analysis);
  const chosen = choose(analysis, standing, params.carcass, offset);
  if (chosen === null) return nothing(reasonFor(analysis));
  const shown = params.what === 'wall' ? alongWall(analysis, standing, chosen) : alone(chosen);
  const boxes = shown.stands.flatMap(({ one, at }) => boxOf(file, one, at, toRange));
  const old = shown.stands.find(({ one }) => one.drawable.stale);
  const [first] = boxes;
  if (first === undefined) return nothing(reasonFor(analysis));
  return {
    kind: 'box',
    uri,
    version,
    stale: old === undefined ? null : staleReason(old.one.drawable.carcass.name, old.one.drawable.index),
    what: params.what,
    carcasses: standing.map(({ drawable: { carcass, index } }) => ({
      name: carcass.name,
      range: textOf(analysis, index, toRange),
    })),
    carcass: chosen.drawable.carcass.name,
    title: shown.title ?? first.scene.title,
    described: shown.described ?? first.scene.described,
    boxes,
    worktops: shown.worktops,
  };
}

/** The first of each name. */
function standingOf(analysis: JobAnalysis): readonly Standing[] {
  const byName = new Map<string, Standing>();
  for (const drawable of drawablesOf(analysis)) {
    const { name, spec, carcass } = drawable.carcass;
    if (spec !== null && carcass !== null && !byName.has(name)) byName.set(name, { drawable, spec, carcass });
  }
  return [...byName.values()];
}

function choose(
  analysis: JobAnalysis,
  standing: readonly Standing[],
  name: string | null,
  offset: number | null,
): Standing | null {
  const pointedAt = offset === null ? null : cursorAt(analysis, offset).carcass;
  const named = (wanted: string | null): Standing | undefined =>
    standing.find(({ drawable }) => drawable.carcass.name === wanted);
  // One that never was good cannot be drawn; another one in its place would mislead.
  if (pointedAt !== null) return named(analysis.carcasses[pointedAt]?.name ?? null) ?? null;
  return named(name) ?? standing[0] ?? null;
}

interface Shown {
  readonly stands: readonly Pick<Stand<Standing>, 'one' | 'at'>[];
  readonly worktops: Extract<BoxReply, { kind: 'box' }>['worktops'];
  /** null: as the one carcass has them. */
  readonly title: Told | null;
  readonly described: Told | null;
}

const alone = (one: Standing): Shown => ({
  stands: [{ one, at: [ORIGIN] }],
  worktops: [],
  title: null,
  described: null,
});

function alongWall({ shop, reader }: JobAnalysis, standing: readonly Standing[], chosen: Standing): Shown {
  const { stands, worktops, number } = lineUp(standing, shop.habits).find((wall) =>
    wall.stands.some(({ one }) => one === chosen),
  )!;
  const long = Math.max(...stands.map(({ run }) => run.to)) - Math.min(...stands.map(({ run }) => run.from));
  const title = tell(say.wall({ wall: number, long, carcasses: stands.length }), reader);
  const described = tell(
    say.wallDescribed({
      title,
      stands: stands
        .toSorted((a, b) => a.run.from - b.run.from)
        .map(({ one: { drawable, spec }, at, run }) => ({
          name: drawable.carcass.name,
          from: run.from,
          above: spec.place.aboveFloor.value,
          count: at.length,
          drawn: Math.min(at.length, MOST_DRAWN),
        })),
    }),
    reader,
  );
  return { stands: stands.map(({ one, at }) => ({ one, at: at.slice(0, MOST_DRAWN) })), worktops, title, described };
}

function boxOf(
  { analysis }: JobFile,
  { drawable: { carcass, index } }: Standing,
  at: StandingBox['at'],
  toRange: ToRange,
): readonly StandingBox[] {
  const drawn = drawnOf(analysis, carcass);
  if (drawn === null) return [];
  const { sources, ...scene } = boxScene(drawn);
  const range = (place: Place): TextRange | null => {
    const span = index === null ? null : inJob(analysis, place, index);
    return span === null ? null : toRange(span.start, span.end);
  };
  const ranges = Object.entries(sources).flatMap(([key, place]) => {
    const found = range(place);
    return found === null ? [] : [[key, found] as const];
  });
  return [{ at, scene, ranges: Object.fromEntries(ranges), spoken: spokenIn(analysis, carcass, index, range) }];
}

function textOf({ parts }: JobAnalysis, index: number | null, toRange: ToRange): TextRange | null {
  const part = index === null ? undefined : parts.carcasses[index];
  return part === undefined ? null : toRange(part.start, part.end);
}

/** The lines of a carcass's text that speak of some of its panels and not of all of it. */
function spokenIn(
  { parts }: JobAnalysis,
  carcass: CarcassAnalysis,
  index: number | null,
  range: (place: Place) => TextRange | null,
): StandingBox['spoken'] {
  const part = index === null ? undefined : parts.carcasses[index];
  const entry = part === undefined ? null : readCarcassTree(part).entry;
  const found: StandingBox['spoken'][number][] = [];
  const note = (path: Path, place: Place): void => {
    const at = range(place);
    if (at !== null && namesPanels(carcass, path))
      found.push({ range: at, parts: panelsAt(carcass, path).map(({ key }) => key) });
  };
  const walk = (node: TreeNode | null, path: Path): void => {
    if (node?.kind === 'list')
      node.items.forEach((item, i) => {
        note([...path, i], item.place);
      });
    if (node?.kind !== 'map' || path.length > 1) return;
    for (const { key, place, value } of node.entries) {
      note([...path, key], place);
      walk(value, [...path, key]);
    }
  };
  walk(entry?.value ?? null, []);
  return found;
}
