import { existsSync, readFileSync } from 'node:fs';
import { basename, extname } from 'node:path';
import { boreMapScene } from '../../shared-core/drawing/bore-map/bore-map.js';
import type { JobAnalysis } from '../../shared-core/engine.js';
import { replayJob } from '../../shared-core/engine/replay-job.js';
import { assemblyPaper } from '../../shared-core/papers/assembly/paper.js';
import { bandingPaper } from '../../shared-core/papers/banding-list/paper.js';
import { printedBoreMaps } from '../../shared-core/papers/bore-maps/printed.js';
import type { BuiltCarcass } from '../../shared-core/papers/built.js';
import { checkingPaper } from '../../shared-core/papers/checking/paper.js';
import { cutListPaper } from '../../shared-core/papers/cut-list/paper.js';
import { hardwareNeeded, hardwarePaper } from '../../shared-core/papers/hardware-list/paper.js';
import type { Paper } from '../../shared-core/papers/paper.js';
import { asCsv } from '../../shared-core/papers/render/csv.js';
import { asHtml } from '../../shared-core/papers/render/html.js';
import { PAGE_SIZES, type PageName } from '../../shared-core/papers/render/page-size.js';
import { asText } from '../../shared-core/papers/render/text.js';
import { layoutsPaper } from '../../shared-core/papers/sheet-layouts/paper.js';
import { sawOf } from '../../shared-core/sheets/board-problem.js';
import { cutList } from '../../shared-core/sheets/cut-list.js';
import { toSvg } from '../../shared-core/drawing/render/svg.js';
import type { OpenJob } from '../workspace.js';
import { fileName, freeName } from './file-names.js';
import { findingLine, findingsOf } from './check.js';
import { openJob } from './files.js';
import { layoutsOf } from './layouts.js';
import { troubles } from './panels.js';
import type { Outcome } from './run.js';
import { CouldNotRun, readArguments } from './run.js';
import { setUpsPaper } from './set-ups.js';
import { writeAll, type NamedText } from './write.js';

const PAPERS = {
  'cut-list': 'Cut list',
  'sheet-layouts': 'Sheet layouts',
  'banding-list': 'Banding list',
  'set-ups': 'Set-up sheets',
  'bore-maps': 'Bore maps',
  'hardware-list': 'Hardware list',
  assembly: 'Assembly sheets',
  checking: 'Checking sheets',
} as const;
type PaperName = keyof typeof PAPERS;

const FORMS = ['pdf', 'html', 'csv', 'text', 'svg', 'dxf'] as const;
type Form = (typeof FORMS)[number];
const ENDINGS: Readonly<Record<Form, string>> = {
  pdf: '.pdf',
  html: '.html',
  csv: '.csv',
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
    throw new CouldNotRun('Name one job file and a folder: borewright papers FILE --out DIR.');
  }
  const only = readList(options.only, Object.keys(PAPERS) as PaperName[], '--only');
  const forms = options.as === undefined ? (['pdf'] as const) : readList(options.as, FORMS, '--as');
  const page = readPage(options.page);
  const job = openJob(path);
  const made = await papersOf(job, only);
  const stem = basename(path, extname(path)).replace(/\.carcass$/i, '');
  const files: NamedText[] = [];
  for (const { name, paper } of made) {
    for (const form of forms) {
      if (form === 'svg' || form === 'dxf') {
        if (name === 'bore-maps') files.push(...(await panelFiles(job.analysis, stem, form)));
        continue;
      }
      const content = await written(paper, form, page);
      if (content !== null) files.push({ name: `${stem}-${name}${ENDINGS[form]}`, content });
    }
  }
  const count = writeAll(options.out, files);
  const lines = files.map(({ name }) => `  ${name}`).join('\n');
  return { output: `${count} in ${options.out}:\n${lines}\n`, ...troubles(path, job) };
}

interface MadePaper {
  readonly name: PaperName;
  readonly paper: Paper;
}

async function papersOf(job: OpenJob, only: readonly PaperName[]): Promise<readonly MadePaper[]> {
  const made: MadePaper[] = [];
  for (const name of only) {
    const paper = await paperOf(name, job);
    if (paper !== null) made.push({ name, paper });
  }
  return made;
}

/** Null where the shop has no machine for it. */
async function paperOf(name: PaperName, job: OpenJob): Promise<Paper | null> {
  const { analysis } = job;
  const { shop, unit, head } = analysis;
  const title = head.title === '' ? PAPERS[name] : `${PAPERS[name]}: ${head.title}`;
  const built = builtOf(analysis);
  switch (name) {
    case 'cut-list':
      return cutListPaper(cutList(built), title, unit);
    case 'sheet-layouts': {
      const saw = sawOf(shop);
      return saw === null ? null : { ...layoutsPaper(await layoutsOf(analysis, saw), saw, unit), title };
    }
    case 'banding-list':
      return bandingPaper(built, shop.habits.bandAllowance, bandTroubles(job), title, unit);
    case 'set-ups':
      return { ...setUpsPaper(analysis, analysis.plan(), replayOf(analysis), () => true), title };
    case 'bore-maps':
      return printedBoreMaps(boreMapsOf(analysis), title);
    case 'hardware-list':
      return hardwarePaper(hardwareNeeded(built, shop, unit), title);
    case 'assembly':
      return assemblyPaper(built, shop, title, unit);
    case 'checking':
      return checkingPaper(built, shop.tolerances, title, unit);
  }
}

function builtOf({ carcasses }: JobAnalysis): readonly BuiltCarcass[] {
  return carcasses.flatMap(({ name, spec, carcass, boring }) =>
    spec === null || carcass === null || boring === null ? [] : [{ name, spec, carcass, boring }],
  );
}

function replayOf(analysis: JobAnalysis): ReturnType<typeof replayJob> {
  return replayJob(
    analysis,
    analysis.plan().setUps.map(({ setUp }) => setUp),
  );
}

/** Findings that say what the bander cannot take. */
function bandTroubles(job: OpenJob): readonly string[] {
  const banders = [...job.analysis.shop.machines.values()].filter(({ kind }) => kind === 'bander');
  return findingsOf(job)
    .filter(
      ({ rule, message }) => rule === 'panel-out-of-range' && banders.some(({ name }) => message.includes(`‘${name}’`)),
    )
    .map((finding) => findingLine('', finding).replace(/^[\s:\d]+/, ''));
}

function boreMapsOf(analysis: JobAnalysis): Parameters<typeof printedBoreMaps>[0] {
  return analysis.carcasses.flatMap(({ name, spec, carcass, boring, findings }) => {
    if (carcass === null || boring === null) return [];
    const drawn = { name, carcass, boring, findings, note: spec?.note ?? '', unit: analysis.unit };
    return [{ name, scenes: carcass.panels.flatMap(({ key }) => boreMapScene(drawn, key) ?? []) }];
  });
}

/** A file for every panel. */
async function panelFiles(analysis: JobAnalysis, stem: string, form: 'svg' | 'dxf'): Promise<readonly NamedText[]> {
  const taken = new Set<string>();
  const named = (carcass: string, panel: string): string =>
    `${freeName(`${stem}-${fileName(carcass)}-${fileName(panel)}`, taken)}${ENDINGS[form]}`;
  if (form === 'svg') {
    return boreMapsOf(analysis).flatMap(({ scenes }) =>
      scenes.map((scene) => ({ name: named(scene.carcass, scene.panel ?? ''), content: toSvg(scene) })),
    );
  }
  const { panelDxf } = await import('../../shared-core/papers/render/dxf/panel-dxf.js');
  return builtOf(analysis).flatMap(({ name, carcass, boring }) =>
    carcass.panels.map((panel) => ({ name: named(name, panel.key), content: panelDxf(panel, boring.bores) })),
  );
}

/** Null where the form has nothing of the paper: CSV is of tables. */
async function written(
  paper: Paper,
  form: Exclude<Form, 'svg' | 'dxf'>,
  page: PageName,
): Promise<string | Uint8Array | null> {
  switch (form) {
    case 'html':
      return asHtml(paper);
    case 'text':
      return asText(paper);
    case 'csv':
      return asCsv(paper);
    case 'pdf': {
      // Loaded only for those who print.
      const { asPdf } = await import('../../shared-core/papers/render/pdf/pdf.js');
      return asPdf(paper, { page: PAGE_SIZES[page], fonts: fonts(), language: 'en' });
    }
  }
}

function fonts(): { regular: Uint8Array; bold: Uint8Array } {
  const file = (name: string): Uint8Array => {
    const url = new URL(`./fonts/${name}`, import.meta.url);
    if (!existsSync(url)) throw new CouldNotRun(`The font ${name} is missing beside the program; install it anew.`);
    return readFileSync(url);
  };
  return { regular: file('LiberationSans-Regular.ttf'), bold: file('LiberationSans-Bold.ttf') };
}

/** Names with commas between them; all where the option is not given. */
function readList<T extends string>(words: string | undefined, known: readonly T[], option: string): readonly T[] {
  if (words === undefined) return known;
  const wanted = words.split(',').map((word) => word.trim());
  const strange = wanted.find((word) => !known.some((one) => one === word));
  if (strange !== undefined) {
    throw new CouldNotRun(`${option} takes a list of ${known.join(', ')} with commas between them, not ‘${strange}’.`);
  }
  return known.filter((one) => wanted.includes(one));
}

function readPage(word: string | undefined): PageName {
  if (word === undefined) return 'a4';
  if (word in PAGE_SIZES) return word as PageName;
  throw new CouldNotRun(`--page is ${Object.keys(PAGE_SIZES).join(' or ')}, not ‘${word}’.`);
}
