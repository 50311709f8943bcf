import type { Bore } from '../../boring/model.js';
import type { Severity } from '../../findings/finding.js';
import { isRow } from '../../fittings/purposes.js';
import { boxOf, grow } from '../scene/boxes.js';
import type { Pen } from '../scene/pen.js';
import type { Point, SceneFinding } from '../scene/scene.js';
import { mm } from '../scene/scale.js';
import type { PanelView } from './panel-view.js';

const GRAVITY: readonly Severity[] = ['info', 'warning', 'error'];
/** Between a bore and what marks it, and the arms of a bracket, in millimetres of paper. */
const OFF = 1;
const ARM = 1;
/** So many neighbours in a row are marked together. */
const TOGETHER = 3;

/**
 * Marks the bores that findings concern: a bracket along neighbours of a row, a ring about any other. Where several findings
 * concern a bore, the gravest shows.
 */
export function drawMarks(pen: Pen, view: PanelView, bores: readonly Bore[], findings: readonly SceneFinding[]): void {
  const gravest = new Map<string, SceneFinding>();
  for (const finding of findings) {
    for (const id of finding.bores) {
      const before = gravest.get(id);
      if (before === undefined || GRAVITY.indexOf(finding.severity) > GRAVITY.indexOf(before.severity))
        gravest.set(id, finding);
    }
  }
  const bracketed = new Set<string>();
  for (const run of runsOf(bores, gravest)) {
    drawBracket(pen, view, run, gravest.get(run[0]!.id)!);
    for (const { id } of run) bracketed.add(id);
  }
  const flagged = new Set<string>();
  for (const bore of bores) {
    const finding = gravest.get(bore.id);
    if (finding === undefined || bracketed.has(bore.id)) continue;
    const line = `${finding.key} ${bore.group}`;
    drawRing(pen, view, bore, finding, !flagged.has(line));
    flagged.add(line);
  }
}

/** Neighbours of a row that one finding concerns, from the reference end. */
function runsOf(bores: readonly Bore[], gravest: ReadonlyMap<string, SceneFinding>): readonly (readonly Bore[])[] {
  const lines = new Map<string, Bore[]>();
  for (const bore of bores) {
    if (!isRow(bore)) continue;
    const key = `${bore.group}|${bore.face}|${bore.u}`;
    const line = lines.get(key);
    if (line === undefined) lines.set(key, [bore]);
    else line.push(bore);
  }
  return [...lines.values()].flatMap((line) => {
    const runs: Bore[][] = [];
    let last: SceneFinding | undefined;
    for (const bore of line.sort((a, b) => a.v - b.v)) {
      const finding = gravest.get(bore.id);
      if (finding !== undefined && finding === last) runs.at(-1)!.push(bore);
      else if (finding !== undefined) runs.push([bore]);
      last = finding;
    }
    return runs.filter(({ length }) => length >= TOGETHER);
  });
}

/** Beside the row on the side of the panel's middle, where there is more room. */
function drawBracket(pen: Pen, view: PanelView, run: readonly Bore[], finding: SceneFinding): void {
  const [first, last] = [run[0]!, run.at(-1)!];
  const inward = mm(first.u) * 2 < view.width ? 1 : -1;
  const off = mm(first.diameter) / 2 + pen.paper(OFF);
  const arm = mm(first.u) + inward * off;
  const spine = arm + inward * pen.paper(ARM);
  const [from, to] = [mm(first.v) - off, mm(last.v) + off];
  const points = [view.at(arm, from), view.at(spine, from), view.at(spine, to), view.at(arm, to)];
  pen.takeSolid(boxOf(points, pen.paper(0.3)));
  pen.add({
    key: `bracket:${first.id}`,
    class: 'finding',
    kind: 'bracket',
    panel: view.panel.key,
    source: finding.source,
    severity: finding.severity,
    bores: run.map(({ id }) => id),
    points,
    flag: flagAt(points),
  });
}

/** The upper end of the bracket's spine, and of one that lies, the left. */
function flagAt(points: readonly Point[]): Point {
  const [, a, b] = points;
  return a!.y < b!.y || (a!.y === b!.y && a!.x < b!.x) ? a! : b!;
}

function drawRing(pen: Pen, view: PanelView, bore: Bore, finding: SceneFinding, flagged: boolean): void {
  const { x, y } = view.entry(bore);
  const r = mm(bore.diameter) / 2 + pen.paper(OFF);
  pen.takeSolid(grow({ x: x - r, y: y - r, width: 2 * r, height: 2 * r }, pen.paper(0.3)));
  pen.add({
    key: `mark:${bore.id}`,
    class: 'finding',
    kind: 'mark',
    panel: view.panel.key,
    source: finding.source,
    severity: finding.severity,
    flagged,
    bore: bore.id,
    cx: x,
    cy: y,
    r,
  });
}
