import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { mapsToLookAt } from '../../shared-core/service.js';
import { reason } from '../disk.js';
import { baseName } from '../files.js';
import { findingLine, findingsOf } from './check.js';
import { fileName, freeName } from './file-names.js';
import { openJob } from './files.js';
import { CouldNotRun, readArguments, type Outcome } from './run.js';
import { troubles } from './troubles.js';

/** `borewright draw FILE --out DIR`: an SVG for every panel, and index.html with all of them. */
export function draw(args: readonly string[]): Outcome {
  const { options, rest } = readArguments(args, ['out']);
  const [path, ...more] = rest;
  if (path === undefined || more.length > 0 || options.out === undefined) {
    throw new CouldNotRun('Name one job file and a folder: borewright draw FILE --out DIR.');
  }
  const folder = options.out;
  const job = openJob(path);
  const file = baseName(job.analysis.uri);
  const findings = findingsOf(job).map((finding) => findingLine(file, finding));
  const taken = new Set<string>();
  const fileOf = (carcass: string, panel: string): string =>
    `${freeName(`${fileName(carcass)}-${fileName(panel)}`, taken)}.svg`;
  const { page, drawings } = mapsToLookAt(job.analysis, file, findings, fileOf);
  try {
    mkdirSync(folder, { recursive: true });
    for (const { file: name, svg } of drawings) writeFileSync(join(folder, name), svg);
    writeFileSync(join(folder, 'index.html'), page);
  } catch (error) {
    throw new CouldNotRun(`${folder}: ${reason(error)}.`);
  }
  const output = `${drawings.length} bore maps in ${folder}; look at ${join(folder, 'index.html')}\n`;
  return { output, ...troubles(path, job) };
}
