import { TextDocument } from 'vscode-languageserver-textdocument';
import {
  laidOutOnce,
  panelDrawings,
  PAPER_NAMES,
  papersOf,
  usualEffort,
  writePaper,
  type EffortOn,
  type FileForm,
  type JobAnalysis,
  type LayOut,
  type PageName,
  type PaperName,
} from '../../shared-core/service.js';
import { speak, type Spoken } from '../../shared-core/words/spoken.js';
import { coverSolver } from '../cover-solver.js';
import { Disk } from '../disk.js';
import { ProgramNotWhole } from '../beside.js';
import { cutterIfBeside, facesBeside } from '../face-cutter.js';
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

/** Forms that programs read: in English always, so that what they look for stays where it is. */
const FOR_PROGRAMS: readonly FileForm[] = ['csv', 'json', 'dxf'];

/** Readers of one language, and the forms that they get. */
interface Readers {
  readonly spoken: Spoken | null;
  readonly forms: readonly FileForm[];
}

/** The same, with the job as it is read for them: what is worked out once is partly in words, so each language has its own. */
interface Told extends Readers {
  readonly analysis: JobAnalysis;
  readonly paperOf: ReturnType<typeof papersOf>;
}

/**
 * Makes the files of papers; what the forms have nothing of is left out. Throws `CannotWrite` where the program is not whole.
 * @param spoken the words of the task's language; null for English. They are spoken when it is done, too.
 */
export async function makePapers(
  task: PapersTask,
  meanwhile: Meanwhile,
  spoken: Spoken | null = null,
): Promise<readonly NamedFile[]> {
  const { only, page } = task.wanted;
  const wanted = PAPER_NAMES.filter((name) => only.includes(name));
  const files: NamedFile[] = [];
  try {
    const readers = readersOf(task, spoken, meanwhile);
    // The search takes longest, so it comes first.
    if (wanted.includes('sheet-layouts') || wanted.includes('cost')) await readers[0]?.paperOf('sheet-layouts');
    for (const [index, name] of wanted.entries()) {
      meanwhile.tell({ kind: 'paper', name, index, papers: wanted.length });
      for (const one of readers) files.push(...(await written(one, name, stemOf(task.uri), page)));
    }
    return files;
  } finally {
    speak(spoken);
  }
}

function readersOf(task: PapersTask, spoken: Spoken | null, meanwhile: Meanwhile): readonly Told[] {
  const { as: forms, seconds } = task.wanted;
  const groups: readonly Readers[] =
    spoken === null
      ? [{ spoken, forms }]
      : [
          { spoken, forms: forms.filter((form) => !FOR_PROGRAMS.includes(form)) },
          { spoken: null, forms: forms.filter((form) => FOR_PROGRAMS.includes(form)) },
        ];
  const told: Told[] = [];
  let layouts: LayOut | undefined;
  for (const one of groups.filter((group) => group.forms.length > 0)) {
    const analysis = analysisFor(task, one.spoken);
    if (analysis === undefined) return [];
    layouts ??= laidOutOnce(analysis, coverSolver, effortOf(seconds, meanwhile));
    told.push({ ...one, analysis, paperOf: papersOf(analysis, coverSolver, undefined, layouts) });
  }
  return told;
}

/** The job, with the decimal comma of a language that has one. */
function analysisFor({ uri, texts, wishes }: PapersTask, spoken: Spoken | null): JobAnalysis | undefined {
  const workspace = new Workspace(new Disk());
  const lengths = wishes.lengths ?? { unit: null, inches: 'fractions' };
  workspace.takeWishes(spoken === null ? wishes : { ...wishes, lengths: { ...lengths, comma: true } });
  for (const { uri: own, language, text } of texts) workspace.open(TextDocument.create(own, language, 0, text));
  return workspace.job(uri)?.analysis;
}

const stemOf = (uri: string): string =>
  baseName(uri)
    .replace(/\.ya?ml$/i, '')
    .replace(/\.carcass$/i, '');

/** One paper in the forms that these readers get. */
async function written(
  { spoken, forms, analysis, paperOf }: Told,
  name: PaperName,
  stem: string,
  page: PageName,
): Promise<readonly NamedFile[]> {
  speak(spoken);
  const paper = await paperOf(name);
  if (paper === null) return [];
  const files: NamedFile[] = [];
  for (const form of forms) {
    if (form === 'svg' || form === 'dxf') {
      if (name === 'bore-maps') files.push(...(await panelFiles(analysis, stem, form)));
      continue;
    }
    const content = await writePaper(paper, name, form, {
      print: () => ({ page, fonts: whole(facesBeside) }),
      face: cutterIfBeside,
    });
    if (content !== null) files.push({ name: fileOf(stem, name, form), content });
  }
  return files;
}

const fileOf = (stem: string, name: PaperName, form: FileForm): string => `${stem}-${name}${ENDINGS[form]}`;

/** With a time to keep, each board gets its part of what is left; without, all the same rounds. */
function effortOf(seconds: number | null, { tell, mayImprove }: Meanwhile): EffortOn {
  const end = performance.now() + (seconds ?? 0) * 1000;
  return (board, index, boards, priced) => {
    const stage = { kind: 'layouts', board, index, boards, priced } as const;
    tell({ ...stage, found: null });
    const now = performance.now();
    const until = now + (end - now) / (boards - index);
    const usual = usualEffort(board, index, boards, priced);
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
  return (await panelDrawings(analysis, form, cutterIfBeside)).map(({ carcass, panel, content }) => ({
    name: `${freeName(`${stem}-${fileName(carcass)}-${fileName(panel)}`, taken)}${ENDINGS[form]}`,
    content,
  }));
}

/** Whatever stands beside the program, or why nothing can be written without. */
function whole<T>(read: () => T): T {
  try {
    return read();
  } catch (fault) {
    throw fault instanceof ProgramNotWhole ? new CannotWrite(say.noFont({ font: baseName(fault.file) })) : fault;
  }
}
