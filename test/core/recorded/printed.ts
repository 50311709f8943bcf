import { coverSolver } from '../../../server/cover-solver.js';
import type { JobAnalysis } from '../../../shared-core/engine.js';
import type { PaperName } from '../../../shared-core/papers/asked.js';
import { PAPER_NAMES, papersOf, writePaper } from '../../../shared-core/service.js';
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { print } from '../papers/read-pdf.js';
import { digest } from './flat.js';

const LETTERING = {
  print: () => {
    throw new Error('no PDF is made here');
  },
  face: () => null,
};

/** Some are kept as they are read. */
const IN_FULL: ReadonlySet<PaperName> = new Set(['cut-list', 'hardware-list', 'assembly']);

/** These wait for the order to run. */
export const IN_ORDER: readonly PaperName[] = ['set-ups', 'panel-labels', 'cost'];
export const AT_ONCE: readonly PaperName[] = PAPER_NAMES.filter((name) => !IN_ORDER.includes(name));

/** A few rounds find layouts that are not the best; they are the same each time all the same. */
const FEW_ROUNDS = () => ({ rounds: 3, mayGoOn: () => true });

/** Papers, as text or as digests, with digests of each as a page and as data. */
export async function printed(job: JobAnalysis, names: readonly PaperName[]): Promise<readonly string[]> {
  const paperOf = papersOf(job, coverSolver, FEW_ROUNDS);
  const lines: string[] = [];
  for (const name of names) {
    const paper = await paperOf(name);
    if (paper === null) {
      lines.push(`== ${name}: none`);
      continue;
    }
    const write = async (form: 'text' | 'html' | 'csv' | 'json') =>
      String(await writePaper(paper, name, form, LETTERING));
    const text = await write('text');
    const forms = await Promise.all((['html', 'csv', 'json'] as const).map(write));
    lines.push(`== ${name}: ${[text, ...forms].map(digest).join(' ')}`);
    if (IN_FULL.has(name)) lines.push(text);
  }
  return lines;
}

/** Every paper as PDF: what is drawn on each of its pages, read back. */
export async function pages(job: JobAnalysis): Promise<readonly string[]> {
  const paperOf = papersOf(job, coverSolver, FEW_ROUNDS);
  const lines: string[] = [];
  for (const name of PAPER_NAMES) {
    const paper = await paperOf(name);
    if (paper === null) continue;
    const { promise } = getDocument({ data: Uint8Array.from(await print(paper)), verbosity: 0 });
    const document = await promise;
    for (let number = 1; number <= document.numPages; number += 1) {
      const { fnArray, argsArray } = await (await document.getPage(number)).getOperatorList();
      // The reader numbers the documents that it has opened, and names their faces by that.
      const drawn = JSON.stringify([fnArray, argsArray]).replaceAll(/g_d\d+_/g, 'g_');
      lines.push(`${name} ${number}: ${fnArray.length} ${digest(drawn)}`);
    }
  }
  return lines;
}
