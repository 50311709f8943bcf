import type { Bore } from '../../../shared-core/boring/model.js';
import { matings } from '../../../shared-core/boring/matings.js';
import type { Panel } from '../../../shared-core/carcass/model.js';
import type { CarcassAnalysis, JobAnalysis } from '../../../shared-core/engine.js';
import { sagsOf } from '../../../shared-core/loads/shelf.js';
import { panelsOf, unbuiltOf } from '../../../shared-core/service.js';
import { digest, flat, under } from './flat.js';

/** Panels with their bores, and all that a carcass has beside them. */
export function made(job: JobAnalysis, carcasses = job.carcasses): readonly string[] {
  return [
    `not built: ${flat(unbuiltOf(job))}`,
    `panels for programs: ${digest(panelsOf(job).asData())}`,
    ...carcasses.flatMap((one) => ['', ...carcassLines(job, one)]),
  ];
}

function carcassLines(job: JobAnalysis, one: CarcassAnalysis): readonly string[] {
  const { name, spec, carcass, boring } = one;
  if (spec === null) return [`${name}: not read`];
  if (carcass === null || boring === null) return [`${name}: ${digest(spec)}, not built`];
  const { panels, joints, ...beside } = carcass;
  const { bores, rows, ...hung } = boring;
  return [
    `${name}: ${digest(spec)}`,
    ...panels.flatMap((panel) => panelLines(panel, bores)),
    ...under(
      'joints',
      joints.map(({ fitting, faceFitting, ...joint }) =>
        flat({ ...joint, fitting: fitting.name, faceFitting: faceFitting.name }),
      ),
    ),
    ...under('rows', rows.map(flat)),
    `mates ${digest(matings(carcass, boring))}`,
    ...Object.entries({ ...beside, ...hung }).flatMap(([what, value]) => thing(what, value)),
    ...under(
      'sags',
      sagsOf(spec, carcass, job.shop.habits).map((sag) => flat({ ...sag, panel: sag.panel.key })),
    ),
  ];
}

/** What lies in a carcass, without all of the fitting that it is made of. */
function thing(what: string, value: unknown): readonly string[] {
  if (!Array.isArray(value)) return [`${what}: ${flat(value)}`];
  return under(
    what,
    value.map((one) => {
      const short = JSON.stringify(one, (key, of: unknown) => {
        if (key === 'place' || key === 'path') return undefined;
        const isNamed = typeof of === 'object' && of !== null && 'place' in of;
        if (isNamed && 'name' in of) return of.name;
        return isNamed && 'key' in of && 'role' in of ? of.key : of;
      });
      return flat(JSON.parse(short));
    }),
  );
}

function panelLines(panel: Panel, all: readonly Bore[]): readonly string[] {
  const { key, role, length, width, thickness, cutLength, cutWidth, board, bands, pose, ...rest } = panel;
  const { seen, grooves, corner, turn } = rest;
  const { origin, u, v, t } = pose;
  const banded = Object.entries(bands).flatMap(([edge, band]) => (band === null ? [] : [`${edge} ${band.name}`]));
  const head = [
    `${key} (${role}) ${length} x ${width} x ${thickness}, cut ${cutLength} x ${cutWidth}, ${board.name}`,
    `at ${flat([origin.x, origin.y, origin.z])} ${u} ${v} ${t}`,
    ...banded,
    `seen ${flat(seen)}`,
    ...grooves.map(flat),
    ...(corner === undefined ? [] : [flat({ ...corner, band: corner.band?.name ?? null })]),
    ...(turn === undefined ? [] : [flat(turn)]),
  ];
  return under(head.join('; '), inRuns(all.filter((bore) => bore.panel === key)));
}

/** Bores that differ in nothing but their place in a line, in one line: 'inside 37000, 8000; 22 x 0, 32000'. */
function inRuns(bores: readonly Bore[]): readonly string[] {
  const runs: [Bore, ...Bore[]][] = [];
  for (const bore of bores) {
    const run = runs.findLast(([first]) => kindOf(first) === kindOf(bore));
    if (run !== undefined && (run.length === 1 || stepOf(run) === stepOf([run.at(-1)!, bore]))) run.push(bore);
    else runs.push([bore]);
  }
  return runs.map((run) => {
    const [first] = run;
    const more =
      run.length === 1 ? first.id : `${run.length - 1} more by ${stepOf(run)}, ${digest(run.map(({ id }) => id))}`;
    return `${first.u}, ${first.v} ${kindOf(first)}: ${more}`;
  });
}

const stepOf = ([first, second]: readonly Bore[]): string => `${second!.u - first!.u}, ${second!.v - first!.v}`;

function kindOf({ face, diameter, depth, through, purpose, group, fitting, meets }: Bore): string {
  const words = [face, `${diameter} x ${depth}`, through ? 'through' : '', purpose, group, fitting ?? '', meets ?? ''];
  return words.filter((word) => word !== '').join(' ');
}
