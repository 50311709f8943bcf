import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { boreMapScene } from '../../shared-core/drawing/bore-map/bore-map.js';
import { toSvg } from '../../shared-core/drawing/render/svg.js';
import { boreMapsPaper, type DrawnPanel } from '../../shared-core/papers/bore-maps/paper.js';
import { asHtml } from '../../shared-core/papers/render/html.js';
import { reason } from '../disk.js';
import { baseName } from '../files.js';
import { findingLine, findingsOf } from './check.js';
import { fileName, freeName } from './file-names.js';
import { openJob } from './files.js';
import { troubles } from './panels.js';
import type { Outcome } from './run.js';
import { CouldNotRun, readArguments } from './run.js';

/** `borewright draw FILE --out DIR`: an SVG for every panel, and index.html with all of them. */
export function draw(args: readonly string[]): Outcome {
  const { options, rest } = readArguments(args, ['out']);
  const [path, ...more] = rest;
  if (path === undefined || more.length > 0 || options.out === undefined) {
    throw new CouldNotRun('Name one job file and a folder: borewright draw FILE --out DIR.');
  }
  const folder = options.out;
  const job = openJob(path);
  const { analysis } = job;
  const taken = new Set<string>();
  const carcasses = analysis.carcasses.map(({ name, spec, carcass, boring, findings }) => ({
    name,
    panels: (carcass?.panels ?? []).flatMap((panel): DrawnPanel[] => {
      if (carcass === null || boring === null) return [];
      const scene = boreMapScene(
        { name, carcass, boring, findings, note: spec?.note ?? '', unit: analysis.unit },
        panel.key,
      );
      if (scene === null) return [];
      return [{ name: panel.key, file: `${freeName(`${fileName(name)}-${fileName(panel.key)}`, taken)}.svg`, scene }];
    }),
  }));
  const file = baseName(analysis.uri);
  const findings = findingsOf(job).map((finding) => findingLine(file, finding));
  const drawings = carcasses.flatMap(({ panels }) => panels);
  try {
    mkdirSync(folder, { recursive: true });
    for (const { file: svg, scene } of drawings) writeFileSync(join(folder, svg), toSvg(scene));
    writeFileSync(join(folder, 'index.html'), asHtml(boreMapsPaper([{ file, findings, carcasses }])));
  } catch (error) {
    throw new CouldNotRun(`${folder}: ${reason(error)}.`);
  }
  const output = `${drawings.length} bore maps in ${folder}; look at ${join(folder, 'index.html')}\n`;
  return { output, ...troubles(path, job) };
}
