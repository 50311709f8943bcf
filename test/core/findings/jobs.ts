import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { Engine, type JobAnalysis } from '../../../shared-core/engine.js';
import { asMessage } from '../../in-words.js';

const DEMO = join(import.meta.dirname, '../../fixtures');

/** Rules about faults of the program itself: no text may ever show one. */
export const NEVER_SHOWN: ReadonlySet<string> = new Set([
  'plan-replay-differs',
  'internal-fault',
  'analysis-stopped',
  'bore-without-mate',
  'rows-not-opposite',
]);

export function demoText(name: string): string {
  return readFileSync(join(DEMO, name), 'utf8');
}

/** Analyses texts of one job, each as an edit of the last; shop files are taken from `shops`, then from the fixtures. */
export function opened(shops: Readonly<Record<string, string>> = {}): (text: string) => JobAnalysis {
  const engine = new Engine({
    readShop: (_uri, reference) => {
      const given = shops[reference];
      if (given !== undefined) return { ok: true, uri: `file:///${reference}`, text: given };
      try {
        return { ok: true, uri: `file:///${reference}`, text: demoText(reference) };
      } catch {
        return { ok: false, message: asMessage(`There is no file ${reference} beside this job.`) };
      }
    },
  });
  return (text) => engine.analyse('file:///job.carcass.yaml', text);
}

/** Analyses one text of a job that was never seen before. */
export function analyse(text: string, shops: Readonly<Record<string, string>> = {}): JobAnalysis {
  return opened(shops)(text);
}
