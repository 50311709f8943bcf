import { tell, type Words } from '../../shared-core/words/message.js';
import { say, type USAGES } from './messages.js';
import { parseArgs } from 'node:util';
import type { Answer } from '../../shared-core/service.js';

/** What a command leaves: texts for the two streams, and the exit code. */
export interface Outcome {
  readonly output: string;
  readonly errors: string;
  /** 0: no errors; 1: errors were found; 2: something that was asked for could not be done. */
  readonly code: 0 | 1 | 2;
}

/** The command could not do its work; the message says why and what to do. */
export class CouldNotRun extends Error {
  constructor(why: Words) {
    super(tell(why, 'mm'));
  }
}

/** Does some work, or something else with the reason why it could not be done. Faults of ours are thrown. */
export function orElse<R>(work: () => R, otherwise: (why: string) => R): R {
  try {
    return work();
  } catch (error) {
    if (error instanceof CouldNotRun) return otherwise(error.message);
    throw error;
  }
}

/** Whether whoever read the output has gone, as `head` does: no fault of ours. */
export function isBrokenPipe(error: Error): boolean {
  return 'code' in error && error.code === 'EPIPE';
}

/** Splits arguments into options with values, of the names given, and the rest. */
export function readArguments<K extends string>(
  args: readonly string[],
  names: readonly K[],
): { readonly options: Partial<Readonly<Record<K, string>>>; readonly rest: readonly string[] } {
  try {
    const options = Object.fromEntries(names.map((name) => [name, { type: 'string' as const }]));
    const { values, positionals } = parseArgs({ args: [...args], options, allowPositionals: true });
    const given: Partial<Record<K, string>> = {};
    for (const name of names) if (typeof values[name] === 'string') given[name] = values[name];
    return { options: given, rest: positionals };
  } catch (error) {
    const words = error instanceof Error ? error.message : String(error);
    throw new CouldNotRun(say.arguments({ words }));
  }
}

/** The value of `--format`; text where it is not given. Throws `CouldNotRun` for any other. */
export function readFormat(format: string | undefined): 'text' | 'json' {
  if (format === undefined || format === 'text') return 'text';
  if (format === 'json') return 'json';
  throw new CouldNotRun(say.format({ given: format }));
}

/** The one job file that a command is of. Throws `CouldNotRun` for none or more. */
export function oneFile([path, ...more]: readonly string[], command: keyof typeof USAGES): string {
  if (path === undefined || more.length > 0) throw new CouldNotRun(say.oneJob({ command }));
  return path;
}

export function formed(answer: Answer, format: 'text' | 'json'): string {
  return format === 'json' ? asJson(answer.asData()) : answer.inWords();
}

/** Exactly one value, as JSON that people can read; no character in it that a terminal would obey. */
export function asJson(value: unknown): string {
  const escaped = (letter: string): string => `\\u00${letter.codePointAt(0)!.toString(16)}`;
  return `${JSON.stringify(value, null, 2).replace(/[\u007F-\u009F]/g, escaped)}\n`;
}
