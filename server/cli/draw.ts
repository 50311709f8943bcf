import { say } from './messages.js';
import { tell } from '../../shared-core/words/message.js';
import { join } from 'node:path';
import { mapsToLookAt } from '../../shared-core/service.js';
import { cutterIfBeside } from '../face-cutter.js';
import { baseName } from '../files.js';
import { findingLine, findingsOf } from './found.js';
import { fileName, freeName } from '../papers/file-names.js';
import { openJob } from './files.js';
import { CouldNotRun, readArguments, type Outcome } from './run.js';
import { troubles } from './troubles.js';
import { writeMade } from './write.js';

/** `borewright draw FILE --out DIR`: an SVG for every panel, and index.html with all of them. */
export function draw(args: readonly string[]): Outcome {
  const { options, rest } = readArguments(args, ['out']);
  const [path, ...more] = rest;
  if (path === undefined || more.length > 0 || options.out === undefined) {
    throw new CouldNotRun(say.jobAndFolder({ command: 'draw' }));
  }
  const folder = options.out;
  const job = openJob(path);
  const file = baseName(job.analysis.uri);
  const findings = findingsOf(job).map((finding) => findingLine(file, finding));
  const taken = new Set<string>();
  const fileOf = (carcass: string, panel: string): string =>
    `${freeName(`${fileName(carcass)}-${fileName(panel)}`, taken)}.svg`;
  const { page, drawings } = mapsToLookAt(job.analysis, file, findings, fileOf, cutterIfBeside());
  writeMade(folder, [
    ...drawings.map(({ file: name, svg }) => ({ name, content: svg })),
    { name: 'index.html', content: page },
  ]);
  const done = say.drawn({ maps: drawings.length, folder, page: join(folder, 'index.html') });
  const output = `${tell(done, 'mm')}\n`;
  return { output, ...troubles(path, job) };
}
