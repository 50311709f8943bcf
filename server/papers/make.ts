import { existsSync, readFileSync } from 'node:fs';
import { TextDocument } from 'vscode-languageserver-textdocument';
import {
  panelDrawings,
  PAPER_NAMES,
  papersOf,
  usualEffort,
  writePaper,
  type EffortOn,
  type FileForm,
  type JobAnalysis,
  type PaperName,
  type Print,
} from '../../shared-core/service.js';
import { coverSolver } from '../cover-solver.js';
import { Disk } from '../disk.js';
import { baseName } from '../files.js';
import { Workspace } from '../workspace.js';
import { fileName, freeName } from './file-names.js';
import { say } from './messages.js';
import { CannotWrite, type NamedFile, type PapersTask, type Stage } from './task.js';

const ENDINGS: Readonly<Record<FileForm, string>> = {
  pdf: '.pdf',
  html: '.html',
  csv: '.csv',
  json: '.json',
  text: '.txt',
  svg: '.svg',
  dxf: '.dxf',
};

/** What goes on beside the work. */
export interface Meanwhile {
  readonly tell: (stage: Stage) => void;
  /** False ends the search for better layouts; the best so far are taken. */
  readonly mayImprove: () => boolean;
}

/** Makes the files of papers; what the forms have nothing of is left out. Throws `CannotWrite` where the program is not whole. */
export async function makePapers(task: PapersTask, meanwhile: Meanwhile): Promise<readonly NamedFile[]> {
  const workspace = new Workspace(new Disk());
  workspace.takeWishes(task.wishes);
  for (const { uri, language, text } of task.texts) workspace.open(TextDocument.create(uri, language, 0, text));
  const analysis = workspace.job(task.uri)?.analysis;
  if (analysis === undefined) return [];
  const { only, as: forms, page, seconds } = task.wanted;
  const stem = baseName(task.uri)
    .replace(/\.ya?ml$/i, '')
    .replace(/\.carcass$/i, '');
  const paperOf = papersOf(analysis, coverSolver, effortOf(seconds, meanwhile));
  const wanted = PAPER_NAMES.filter((name) => only.includes(name));
  // The search takes longest, so it comes first.
  if (wanted.includes('sheet-layouts') || wanted.includes('cost')) await paperOf('sheet-layouts');
  const files: NamedFile[] = [];
  for (const [index, name] of wanted.entries()) {
    meanwhile.tell({ kind: 'paper', name, index, papers: wanted.length });
    const paper = await paperOf(name);
    if (paper === null) continue;
    for (const form of forms) {
      if (form === 'svg' || form === 'dxf') {
        if (name === 'bore-maps') files.push(...(await panelFiles(analysis, stem, form)));
        continue;
      }
      const content = await writePaper(paper, name, form, () => ({ page, fonts: fonts() }));
      if (content !== null) files.push({ name: fileOf(stem, name, form), content });
    }
  }
  return files;
}

const fileOf = (stem: string, name: PaperName, form: FileForm): string => `${stem}-${name}${ENDINGS[form]}`;

/** With a time to keep, each board gets its part of what is left; without, all the same rounds. */
function effortOf(seconds: number | null, { tell, mayImprove }: Meanwhile): EffortOn {
  const end = performance.now() + (seconds ?? 0) * 1000;
  return (board, index, boards) => {
    const stage = { kind: 'layouts', board, index, boards } as const;
    tell({ ...stage, found: null });
    const now = performance.now();
    const until = now + (end - now) / (boards - index);
    const usual = usualEffort(board, index, boards);
    return {
      rounds: seconds === null ? usual.rounds : Infinity,
      mayGoOn: () => mayImprove() && (seconds === null || performance.now() < until),
      secondsLeft: () => (seconds === null ? null : (until - performance.now()) / 1000),
      found: (cost, bound) => tell({ ...stage, found: { cost, bound } }),
    };
  };
}

/** A file for every panel. */
async function panelFiles(analysis: JobAnalysis, stem: string, form: 'svg' | 'dxf'): Promise<readonly NamedFile[]> {
  const taken = new Set<string>();
  return (await panelDrawings(analysis, form)).map(({ carcass, panel, content }) => ({
    name: `${freeName(`${stem}-${fileName(carcass)}-${fileName(panel)}`, taken)}${ENDINGS[form]}`,
    content,
  }));
}

function fonts(): Print['fonts'] {
  const file = (name: string): Uint8Array => {
    const url = new URL(`./fonts/${name}`, import.meta.url);
    if (!existsSync(url)) throw new CannotWrite(say.noFont({ font: name }));
    return readFileSync(url);
  };
  return { regular: file('LiberationSans-Regular.ttf'), bold: file('LiberationSans-Bold.ttf') };
}
