import type { Translation } from '../../shared-core/words/language.js';
import type { NAMES, say } from './messages.en.js';

/** A fault of the server as it told of it, and how long before the report. */
export interface HeardFault {
  readonly how: 'ended' | 'stuck' | 'failed';
  readonly kind: string | null;
  readonly frames: readonly string[];
  readonly secondsAgo: number;
}

/** Of the open files of one sort. */
export interface OpenFiles {
  readonly sort: 'jobs' | 'shops';
  readonly lines: readonly number[];
}

/** All that a report holds. Nothing of it comes from the text of a file, nor from its name. */
export interface Facts {
  /** Such as ['0.1.0'] of the program. */
  readonly versions: Readonly<Record<'program' | 'editor' | 'system', string>>;
  readonly trusted: boolean;
  /** Settings that were changed; null where a value could name something of the owner's. */
  readonly settings: readonly (readonly [key: string, value: string | null])[];
  readonly files: readonly OpenFiles[];
  /** By the name of the rule. */
  readonly findings: ReadonlyMap<string, number>;
  /** From a key to all findings, in milliseconds. */
  readonly waits: readonly number[];
  readonly starts: number;
  readonly faults: readonly HeardFault[];
}

/** What the report is told with. */
export interface Wording {
  readonly NAMES: Translation<typeof NAMES>;
  readonly say: Translation<typeof say>;
}

/** The report as its reader sees it before he sends it. */
export function reportText(facts: Facts, { NAMES: names, say: told }: Wording): string {
  const { versions, trusted, settings, files, findings, waits, starts, faults } = facts;
  const sections: readonly (readonly [string, readonly string[]])[] = [
    [names.versions, [`${names.program} ${versions.program}`, `${names.editor} ${versions.editor}`, versions.system]],
    [names.window, [trusted ? names.trusted : names.restricted]],
    [names.settings, settings.map(([key, value]) => `${key}: ${value ?? names.notShown}`)],
    [names.files, files.map(({ sort, lines }) => told.files(names[sort], lines.length, lines.join(', ')))],
    [
      names.findings,
      [...findings].toSorted(([a], [b]) => (a < b ? -1 : 1)).map(([rule, count]) => `${rule}: ${count}`),
    ],
    [names.waits, waits.length === 0 ? [] : [told.waits(waits.length, middle(waits), Math.max(...waits))]],
    [names.server, [told.starts(starts), ...faults.flatMap((fault) => faultLines(fault, { NAMES: names, say: told }))]],
  ];
  const body = sections.map(([title, lines]) =>
    [title, ...(lines.length === 0 ? [names.none] : lines).map((line) => `  ${line}`)].join('\n'),
  );
  return `${[names.title, names.readFirst, ...body].join('\n\n')}\n`;
}

function faultLines(
  { how, kind, frames, secondsAgo }: HeardFault,
  { NAMES: names, say: told }: Wording,
): readonly string[] {
  const what = kind === null ? names[how] : `${names[how]} (${kind})`;
  return [told.fault(what, secondsAgo), ...frames.map((frame) => `  ${frame}`)];
}

const middle = (all: readonly number[]): number => all.toSorted((a, b) => a - b)[Math.floor(all.length / 2)]!;
