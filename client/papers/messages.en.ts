import { counted, listed } from '../../shared-core/words/english.js';
import { labels, phrases } from '../../shared-core/words/told.js';

/** What is asked for before papers are written or a panel is found. */
export const LABELS = labels({
  whichPapers: 'Papers to write',
  codeAsked: 'Scan the code of a panel label, or paste its text',
  codeExample: 'kitchen.carcass.yaml#sink/left',
  whichJob: 'Job files of this name',
  showFolder: 'Show Folder',
});

/** What is said of papers and scanned codes. */
export const say = phrases({
  openJob: () => 'Open a job file (NAME.carcass.yaml) to write its papers.',
  saveFirst: () => 'Save the job first. Its papers are written into a folder beside it.',
  writing: (file: string) => `Shop papers of ${file}`,
  written: (files: number, folder: string) => `Borewright: ${counted(files, 'file')} written to ${folder}.`,
  without: (files: number, folder: string, broken: readonly string[]) =>
    `Borewright: ${counted(files, 'file')} written to ${folder}, without ${listed(broken)}. The text has errors there.`,
  withErrors: (files: number, folder: string, errors: number) =>
    `Borewright: ${counted(files, 'file')} written to ${folder}. The job has ${counted(errors, 'error')}: do not cut or bore before ${errors === 1 ? 'it is' : 'they are'} mended.`,
  failed: (why: string) => `The papers could not be written: ${why}`,
});
