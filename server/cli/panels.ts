import type { Bore } from '../../shared-core/boring/model.js';
import type { Panel, Point3 } from '../../shared-core/carcass/model.js';
import type { CarcassAnalysis } from '../../shared-core/engine.js';
import type { Micrometres } from '../../shared-core/length/units.js';
import { MICROMETRES_PER_MM } from '../../shared-core/length/units.js';
import { panelList } from '../../shared-core/papers/panel-list/paper.js';
import { asText } from '../../shared-core/papers/render/text.js';
import type { OpenJob } from '../workspace.js';
import { findingLine, findingsOf } from './check.js';
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
  const output =
    format === 'json'
      ? asJson({ carcasses: job.analysis.carcasses.flatMap(carcassJson) })
      : asText(panelList(job.analysis.carcasses, job.analysis.unit));
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
