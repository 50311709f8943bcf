import { say } from './messages.js';
import { tell } from '../../shared-core/words/message.js';
import { existsSync, readFileSync } from 'node:fs';
import { basename, extname } from 'node:path';
import {
  PAGE_NAMES,
  panelDrawings,
  PAPER_NAMES,
  paperOf,
  writePaper,
  type PageName,
  type Print,
} from '../../shared-core/service.js';
import { coverSolver } from '../cover-solver.js';
import type { OpenJob } from '../workspace.js';
import { fileName, freeName } from './file-names.js';
import { openJob } from './files.js';
import { CouldNotRun, readArguments, type Outcome } from './run.js';
import { troubles } from './troubles.js';
import { writeAll, type NamedText } from './write.js';

const FORMS = ['pdf', 'html', 'csv', 'json', 'text', 'svg', 'dxf'] as const;
type Form = (typeof FORMS)[number];
const ENDINGS: Readonly<Record<Form, string>> = {
  pdf: '.pdf',
  html: '.html',
  csv: '.csv',
  json: '.json',
  text: '.txt',
  svg: '.svg',
  dxf: '.dxf',
};

/**
 * `borewright papers FILE --out DIR [--only LIST] [--as LIST] [--page a4|letter]`: the shop papers of a job. A file in the
 * folder that was not written by this command is left as it is.
 */
export async function papers(args: readonly string[]): Promise<Outcome> {
  const { options, rest } = readArguments(args, ['out', 'only', 'as', 'page']);
  const [path, ...more] = rest;
  if (path === undefined || more.length > 0 || options.out === undefined) {
    throw new CouldNotRun(say.jobAndFolder({ command: 'papers' }));
  }
  const only = readList(options.only, PAPER_NAMES, '--only');
  const forms = options.as === undefined ? (['pdf'] as const) : readList(options.as, FORMS, '--as');
  const page = readPage(options.page);
  const job = openJob(path);
  const stem = basename(path, extname(path)).replace(/\.carcass$/i, '');
  const files: NamedText[] = [];
  for (const name of only) {
    const paper = await paperOf(name, job.analysis, coverSolver);
    if (paper === null) continue;
    for (const form of forms) {
      if (form === 'svg' || form === 'dxf') {
        if (name === 'bore-maps') files.push(...(await panelFiles(job, stem, form)));
        continue;
      }
      const content = await writePaper(paper, name, form, () => ({ page, fonts: fonts() }));
      if (content !== null) files.push({ name: `${stem}-${name}${ENDINGS[form]}`, content });
    }
  }
  writeAll(options.out, files);
  const done = say.written({ files: files.length, folder: options.out });
  const lines = files.map(({ name }) => `  ${name}`).join('\n');
  return { output: `${tell(done, 'mm')}\n${lines}\n`, ...troubles(path, job) };
}

/** A file for every panel. */
async function panelFiles({ analysis }: OpenJob, stem: string, form: 'svg' | 'dxf'): Promise<readonly NamedText[]> {
  const taken = new Set<string>();
  return (await panelDrawings(analysis, form)).map(({ carcass, panel, content }) => ({
    name: `${freeName(`${stem}-${fileName(carcass)}-${fileName(panel)}`, taken)}${ENDINGS[form]}`,
    content,
  }));
}

function fonts(): Print['fonts'] {
  const file = (name: string): Uint8Array => {
    const url = new URL(`./fonts/${name}`, import.meta.url);
    if (!existsSync(url)) throw new CouldNotRun(say.noFont({ font: name }));
    return readFileSync(url);
  };
  return { regular: file('LiberationSans-Regular.ttf'), bold: file('LiberationSans-Bold.ttf') };
}

/** Names with commas between them; all where the option is not given. */
function readList<T extends string>(
  words: string | undefined,
  known: readonly T[],
  option: '--only' | '--as',
): readonly T[] {
  if (words === undefined) return known;
  const wanted = words.split(',').map((word) => word.trim());
  const strange = wanted.find((word) => !known.some((one) => one === word));
  if (strange !== undefined) {
    throw new CouldNotRun(say.list({ option, given: strange, known }));
  }
  return known.filter((one) => wanted.includes(one));
}

function readPage(word: string | undefined): PageName {
  if (word === undefined) return 'a4';
  const page = PAGE_NAMES.find((name) => name === word);
  if (page !== undefined) return page;
  throw new CouldNotRun(say.page({ given: word, known: PAGE_NAMES }));
}
