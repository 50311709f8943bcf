import type { AnalysedFile } from '../../../shared-core/service/file.js';
import {
  allFindings,
  editsOfBatch,
  editsWithoutChoice,
  findingTotals,
  findingWords,
  repairsFor,
  type TextEdit,
} from '../../../shared-core/service.js';
import { digest, edited, flat, lineAndColumn, under } from './flat.js';

/** Findings where they stand, with what is beside them and the edits of every repair; to try these takes long in a long job. */
export function told(file: AnalysedFile, how: 'whole' | 'without repairs' = 'whole'): readonly string[] {
  // Repairs are offered for what is known.
  if (file.kind === 'job') file.analysis.complete();
  const found = allFindings(file);
  const repairs = new Map(repairsFor(file, () => how === 'whole').map((one) => [one.finding, one.repairs]));
  const { text } = file.analysis;
  const span = (start: number, end: number): string => `${lineAndColumn(text, start)}-${lineAndColumn(text, end)}`;
  return [
    findingTotals(1, found),
    ...found.flatMap((one, index) => {
      const { at, related, bores } = one;
      const blamed = JSON.stringify(text.slice(at.start, Math.min(at.end, at.start + 60)));
      return under(`${span(at.start, at.end)} ${blamed} ${findingWords(one).replaceAll('\n', '⏎')}`, [
        ...(bores.length === 0 ? [] : [`${bores.length} bores ${bores.length < 5 ? flat(bores) : digest(bores)}`]),
        ...related.map(({ where, message }) => `see ${where.file} ${span(where.start, where.end)}: ${message}`),
        ...(repairs.get(index) ?? []).map((repair) => {
          const edits = 'edits' in repair ? repair.edits : editsOfBatch(jobOf(file), repair.batch);
          const sort = 'edits' in repair ? (repair.preferred ? 'best' : 'or') : 'all';
          return `${sort}: ${repair.title}: ${editWords(file, edits)}`;
        }),
      ]);
    }),
    ...(how === 'whole' ? [`without asking: ${editWords(file, editsWithoutChoice(file))}`] : []),
  ];
}

function jobOf(file: AnalysedFile) {
  if (file.kind === 'shop') throw new Error('only findings of a job are mended together');
  return file.analysis;
}

function editWords(file: AnalysedFile, edits: readonly TextEdit[]): string {
  const words = edited(file.analysis.text, edits).trim();
  return file.kind === 'shop' && edits.length > 0 ? `in the shop ${words}` : words;
}
