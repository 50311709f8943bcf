import { say } from './messages.js';
import { LANGUAGES, type Language } from '../../shared-core/words/language.js';
import { tell } from '../../shared-core/words/message.js';
import { errorsOf, PAGE_NAMES, PAPER_FORMS, PAPER_NAMES, sawOf, type PageName } from '../../shared-core/service.js';
import { makeInThread, Refused, type Making } from '../papers/in-thread.js';
import { stageWords } from '../papers/stage-words.js';
import type { NamedFile, PapersTask, Stage } from '../papers/task.js';
import type { OpenJob } from '../workspace.js';
import { openJob } from './files.js';
import { CouldNotRun, readArguments, type Outcome } from './run.js';
import { troubles } from './troubles.js';
import { expectToWrite, writeMade } from './write.js';

const MOST_SECONDS = 3600;

/**
 * `borewright papers FILE --out DIR [--only LIST] [--as LIST] [--page a4|letter] [--seconds N] [--language en|de|fr]`: the shop
 * papers of a job. A file in the folder that was not written by this command is left as it is.
 */
export async function papers(args: readonly string[]): Promise<Outcome> {
  const { options, rest } = readArguments(args, ['out', 'only', 'as', 'page', 'seconds', 'language']);
  const [path, ...more] = rest;
  if (path === undefined || more.length > 0 || options.out === undefined) {
    throw new CouldNotRun(say.jobAndFolder({ command: 'papers' }));
  }
  const wanted = {
    only: readList(options.only, PAPER_NAMES, '--only'),
    as: options.as === undefined ? (['pdf'] as const) : readList(options.as, PAPER_FORMS, '--as'),
    page: readPage(options.page),
    seconds: readSeconds(options.seconds),
  };
  expectToWrite(options.out);
  const job = openJob(path);
  const { uri, languageId: language } = job.document;
  const text = job.document.getText();
  const { wishes } = job.analysis;
  const task = { uri, texts: [{ uri, language, text }], wishes, wanted, language: readLanguage(options.language) };
  const files = await made(task, options.out);
  const unlaid = wanted.only.includes('sheet-layouts') && sawOf(job.analysis.shop) === null;
  if (unlaid && files.length === 0) throw new CouldNotRun(say.noSaw());
  const done = say.written({ files: files.length, folder: options.out });
  const lines = files.map(({ name }) => `  ${name}`).join('\n');
  const missing = unlaid ? `${tell(say.noSaw(), 'mm')}\n` : '';
  return { output: `${tell(done, 'mm')}\n${lines}\n${missing}`, ...faults(path, job) };
}

/** What is left out, and that what is there is of a job with errors. */
function faults(path: string, job: OpenJob): Pick<Outcome, 'errors' | 'code'> {
  const { errors, code } = troubles(path, job);
  const count = errorsOf(job.analysis);
  return count === 0
    ? { errors, code }
    : { errors: `${errors}${tell(say.withErrors({ errors: count, path }), 'mm')}\n`, code: 1 };
}

/** Makes and writes the files. Ctrl-C takes the layouts found so far; pressed again, or past them, it ends the command. */
async function made(task: PapersTask, folder: string): Promise<readonly NamedFile[]> {
  let stage: Stage | null = null;
  const making = makeInThread(task, (next) => {
    stage = next;
    if (process.stderr.isTTY) process.stderr.write(`\r\u001b[K${stageWords(next)}`);
  });
  const interrupted = onInterrupt(making, () => stage?.kind === 'layouts');
  try {
    const files = await making.files;
    writeMade(folder, files);
    return files;
  } catch (fault) {
    if (fault instanceof Refused) throw new CouldNotRun(fault.words);
    throw fault;
  } finally {
    process.off('SIGINT', interrupted);
    if (process.stderr.isTTY) process.stderr.write('\r\u001b[K');
  }
}

function onInterrupt(making: Making, isImproving: () => boolean): () => void {
  let presses = 0;
  const interrupted = (): void => {
    presses += 1;
    if (presses > 1 || !isImproving()) {
      making.end();
      return;
    }
    making.enough();
    process.stderr.write(`\n${tell(say.enough(), 'mm')}\n`);
  };
  process.on('SIGINT', interrupted);
  return interrupted;
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

function readLanguage(word: string | undefined): Language {
  if (word === undefined) return 'en';
  const language = LANGUAGES.find((one) => one === word);
  if (language !== undefined) return language;
  throw new CouldNotRun(say.language({ given: word, known: LANGUAGES }));
}

function readSeconds(word: string | undefined): number | null {
  if (word === undefined) return null;
  const seconds = Number(word);
  if (/^\d+(\.\d+)?$/.test(word) && seconds <= MOST_SECONDS) return seconds;
  throw new CouldNotRun(say.seconds({ given: word }));
}
