import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { Engine, type JobAnalysis } from '../../../shared-core/engine.js';

export const DEMO = join(import.meta.dirname, '../../demo');

export function demoText(name: string): string {
  return readFileSync(join(DEMO, name), 'utf8');
}

/** Analyses a job text; shop files are taken from `shops` by name, then from the demo folder. */
export function analyse(text: string, shops: Readonly<Record<string, string>> = {}): JobAnalysis {
  const engine = new Engine({
    readShop: (_uri, reference) => {
      const given = shops[reference];
      if (given !== undefined) return { ok: true, uri: `file:///${reference}`, text: given };
      try {
        return { ok: true, uri: `file:///${reference}`, text: demoText(reference) };
      } catch {
        return { ok: false, message: `There is no file ${reference} beside this job.` };
      }
    },
  });
  return engine.analyse('file:///job.carcass.yaml', text);
}
