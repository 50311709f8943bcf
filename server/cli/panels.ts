import type { Bore } from '../../shared-core/boring/model.js';
import type { Panel, Point3 } from '../../shared-core/carcass/model.js';
import { grooveNotes } from '../../shared-core/drawing/bore-map/bore-map.js';
import { holeGroups, tableCells, tableHeads } from '../../shared-core/drawing/bore-map/hole-table.js';
import { endWord } from '../../shared-core/drawing/words.js';
import type { CarcassAnalysis } from '../../shared-core/engine.js';
import type { Micrometres } from '../../shared-core/length/units.js';
import { MICROMETRES_PER_MM } from '../../shared-core/length/units.js';
import { figure, showLength } from '../../shared-core/length/show.js';
import type { OpenJob } from '../workspace.js';
import { findingLine, findingsOf } from './check.js';
import { columns } from './columns.js';
import { openJob } from './files.js';
import type { Outcome } from './run.js';
import { asJson, CouldNotRun, readArguments, readFormat } from './run.js';

const mm = (length: Micrometres): number => length / MICROMETRES_PER_MM;

/** `borewright panels FILE [--format text|json]`. Carcasses that cannot be worked out are left out, and told on stderr. */
export function panels(args: readonly string[]): Outcome {
  const { options, rest } = readArguments(args, ['format']);
  const format = readFormat(options.format);
  const [path, ...more] = rest;
  if (path === undefined || more.length > 0) throw new CouldNotRun('Name one job file: borewright panels FILE.');
  const job = openJob(path);
  const output = format === 'json' ? asJson({ carcasses: job.analysis.carcasses.flatMap(carcassJson) }) : asText(job);
  return { output, ...troubles(path, job) };
}

/** What keeps carcasses from being worked out, for stderr. */
export function troubles(path: string, job: OpenJob): Pick<Outcome, 'errors' | 'code'> {
  const broken = job.analysis.carcasses.filter(({ carcass }) => carcass === null);
  const whole = job.analysis.carcasses.length > 0;
  if (whole && broken.length === 0) return { errors: '', code: 0 };
  const names = new Set(broken.map(({ name }) => name));
  const about = findingsOf(job).filter(
    ({ severity, carcass }) => severity === 'error' && (carcass === undefined || names.has(carcass)),
  );
  return { errors: about.map((finding) => `${findingLine(path, finding)}\n`).join(''), code: 1 };
}

function carcassJson({ name, spec, carcass, boring }: CarcassAnalysis): readonly object[] {
  if (spec === null || carcass === null || boring === null) return [];
  return [
    {
      name,
      kind: spec.kind.value,
      width: mm(spec.width.value),
      height: mm(spec.height.value),
      depth: mm(spec.depth.value),
      ...(spec.note === '' ? {} : { note: spec.note }),
      panels: carcass.panels.map((panel) => panelJson(panel, boring.bores)),
    },
  ];
}

function panelJson(panel: Panel, bores: readonly Bore[]): object {
  const { origin, u, v, t } = panel.pose;
  const bands = Object.entries(panel.bands).flatMap(([edge, band]) => (band === null ? [] : [[edge, band.name]]));
  return {
    name: panel.key,
    role: panel.role,
    length: mm(panel.length),
    width: mm(panel.width),
    thickness: mm(panel.thickness),
    cutLength: mm(panel.cutLength),
    cutWidth: mm(panel.cutWidth),
    board: panel.board.name,
    bands: Object.fromEntries(bands) as Record<string, string>,
    grooves: panel.grooves.map(({ from, to, depth }) => ({ from: mm(from), to: mm(to), depth: mm(depth) })),
    // Where u = v = t = 0 stands in the carcass, and which way each runs; t from the outside face to the inside one.
    pose: { origin: pointJson(origin), u, v, t },
    bores: bores.filter((bore) => bore.panel === panel.key).map(boreJson),
  };
}

function pointJson({ x, y, z }: Point3): object {
  return { x: mm(x), y: mm(y), z: mm(z) };
}

function boreJson({ id, face, u, v, diameter, depth, through, purpose, group, fitting }: Bore): object {
  return { id, face, u: mm(u), v: mm(v), diameter: mm(diameter), depth: mm(depth), through, purpose, group, fitting };
}

function asText({ analysis }: OpenJob): string {
  const { unit } = analysis;
  const lines = analysis.carcasses.flatMap(({ name, spec, carcass, boring }) => {
    if (spec === null || carcass === null || boring === null) return [`${name}: cannot be worked out`, ''];
    const box = `${figure(spec.width.value, unit)} x ${figure(spec.height.value, unit)} x ${showLength(spec.depth.value, unit)}`;
    const panelLines = carcass.panels.flatMap((panel) => {
      const size = `${figure(panel.length, unit)} x ${figure(panel.width, unit)} x ${showLength(panel.thickness, unit)}`;
      const cut = `${figure(panel.cutLength, unit)} x ${showLength(panel.cutWidth, unit)}`;
      const groups = holeGroups(carcass, boring, panel, unit);
      const onEnds = groups.some(({ bores }) => bores.some(({ face }) => face.endsWith('-end')));
      const heads = tableHeads(unit, endWord(panel, 'reference-end'), onEnds);
      const holes = groups.length === 0 ? [] : [heads, ...groups.map(({ line }) => tableCells(line))];
      const grooves = grooveNotes(panel, unit).map((words) => `    ${words}`);
      return [`  ${panel.key}: ${size}, to cut ${cut}, ${panel.board.name}`, ...grooves, ...columns(holes), ''];
    });
    const note = spec.note === '' ? [] : [`Note: ${spec.note}`];
    return [`${name}: ${spec.kind.value}, ${box}`, ...note, '', ...panelLines];
  });
  return lines.join('\n');
}
