import { boreAxis } from '../../boring/axis.js';
import type { Bore } from '../../boring/model.js';
import type { Groove, Panel } from '../../carcass/model.js';
import { footprintOf } from '../../carcass/footprint.js';
import { extentsOf, spanning, straightExtents, toCarcass, type Extents } from '../../carcass/pose.js';
import { roleOf } from '../../carcass/roles.js';
import type { Severity } from '../../findings/finding.js';
import { purposeOf } from '../../fittings/purposes.js';
import { groupBy } from '../../machining/plan/numbers.js';
import { showSizes } from '../../length/show.js';
import { tellerTo } from '../../words/message.js';
import { asItIs } from '../../words/told.js';
import { aboutBore } from '../about-bore.js';
import { apart } from '../apart.js';
import { findingsFor, Sources, type Drawn } from '../drawn.js';
import type { SceneFinding } from '../scene/scene.js';
import { fittingsOf } from './fittings.js';
import { say } from './messages.js';
import { movesOf } from './moves.js';
import type { BoxMove, BoxPart, BoxScene } from './scene.js';

/** How far panels go apart: so many times their distance from the middle of the box. */
const APART = 0.8;
const GRAVITY: readonly Severity[] = ['info', 'warning', 'error'];

/** A carcass in three dimensions: its panels with their bores, what holds them, and how its doors open. */
export function boxScene(drawn: Drawn): BoxScene {
  const { name, carcass, boring, reader } = drawn;
  const { panels } = carcass;
  const told = tellerTo(reader);
  const sources = new Sources();
  const findings = findingsFor(drawn, panels, sources);
  const extents = around(panels.map(extentsOf));
  const { x, y, z } = extents;
  const size = asItIs(showSizes([x.to - x.from, z.to - z.from, y.to - y.from], reader));
  const moves = movesOf(carcass, boring.hung);
  const parts = partsOf(drawn, findings, moves, sources);
  const fittings = fittingsOf(drawn);
  const title = told(say.title({ carcass: name, size }));
  const described = told(
    say.described({
      title,
      parts: panels.map(({ key }) => key),
      bores: boring.bores.length,
      fittings: fittings.length,
      doors: moves.filter(({ kind }) => kind === 'turn').length,
      drawers: carcass.drawers.length,
      found: findings.map(({ severity }) => severity),
    }),
  );
  return { carcass: name, title, described, extents, parts, fittings, moves, findings, sources: sources.record() };
}

function partsOf(
  drawn: Drawn,
  findings: readonly SceneFinding[],
  moves: readonly BoxMove[],
  sources: Sources,
): readonly BoxPart[] {
  const { carcass, boring, reader } = drawn;
  const told = tellerTo(reader);
  const away = apart(carcass.panels, APART);
  const marks = gravestByBore(findings);
  const bores = groupBy(boring.bores, ({ panel }) => panel);
  return carcass.panels.map((panel): BoxPart => {
    const { key } = panel;
    const own = bores.get(key) ?? [];
    const role = roleOf(panel);
    const ids = new Set(own.map(({ id }) => id));
    const found = findings.filter((one) => one.panel === key || one.bores.some((id) => ids.has(id)));
    const called = { role: role.called, key };
    const about = {
      ...called,
      size: asItIs(showSizes([panel.length, panel.width, panel.thickness], reader)),
      board: panel.board.name,
      bores: own.length,
      found: found.map(({ severity }) => severity),
      move: moves.find(({ parts }) => parts.includes(key)) ?? null,
    };
    return {
      key,
      called: told(say.part(called)),
      described: told(say.partDescribed(about)),
      belongs: role.belongs,
      extents: straightExtents(panel),
      outline: panel.corner === undefined ? null : footprintOf(panel),
      turned: panel.turn ?? null,
      grooves: panel.grooves.map((groove) => roomOf(panel, groove)),
      bores: own.map((bore) => boreOf(drawn, panel, bore, marks.get(bore.id) ?? null, sources)),
      apart: away.get(key)!,
      severity: gravest(about.found),
      source: sources.key(panel.place),
    };
  });
}

function boreOf(
  { carcass, boring, reader }: Drawn,
  panel: Panel,
  bore: Bore,
  severity: Severity | null,
  sources: Sources,
): BoxPart['bores'][number] {
  const { entry, direction, length } = boreAxis(panel, bore);
  return {
    id: bore.id,
    described: aboutBore(carcass, boring, panel, bore, reader),
    from: entry,
    along: direction,
    depth: length,
    diameter: bore.diameter,
    ink: purposeOf(bore).ink,
    severity,
    source: sources.key(bore.place),
  };
}

/** Where a groove on the inside face lies in the carcass. */
function roomOf({ pose, length, thickness }: Panel, { from, to, depth, along }: Groove): Extents {
  const a = toCarcass(pose, { u: from, v: along?.from ?? 0, t: thickness });
  const b = toCarcass(pose, { u: to, v: along?.to ?? length, t: thickness - depth });
  return spanning(a, b);
}

function gravestByBore(findings: readonly SceneFinding[]): ReadonlyMap<string, Severity> {
  const marks = new Map<string, Severity>();
  for (const { severity, bores } of findings)
    for (const id of bores) marks.set(id, gravest([severity, ...(marks.has(id) ? [marks.get(id)!] : [])])!);
  return marks;
}

function gravest(found: readonly Severity[]): Severity | null {
  return GRAVITY.findLast((severity) => found.includes(severity)) ?? null;
}

/** The least room that holds all of these. */
export function around(boxes: readonly Extents[]): Extents {
  const run = (axis: keyof Extents) => ({
    from: Math.min(...boxes.map((box) => box[axis].from)),
    to: Math.max(...boxes.map((box) => box[axis].to)),
  });
  return { x: run('x'), y: run('y'), z: run('z') };
}
