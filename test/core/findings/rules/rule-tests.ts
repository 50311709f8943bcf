import { describe, expect, test } from 'vitest';
import type { JobAnalysis } from '../../../../shared-core/engine.js';
import type { Finding, Severity } from '../../../../shared-core/findings/finding.js';
import { repairEdits } from '../../../../shared-core/engine/repairs.js';
import { inWords } from '../../../in-words.js';
import { applied } from '../after-repair.js';
import { analyse } from '../jobs.js';
import { wholeShop } from '../../shop/whole-shop.js';

/** One carcass called `sink` and the one thing that the rule must say of it. Figures were worked by hand. */
export interface Told {
  /** Its lines, the words that must be blamed between « and ». */
  readonly carcass: string;
  /** The whole message. */
  readonly says: string;
  readonly severity?: Severity;
  readonly panel?: string;
  readonly unit?: 'mm' | 'in';
  /** What differs of a shop file from the built-in shop, list by list, or the name of one in the demo folder; the built-in shop where it is left out. */
  readonly shop?: string;
  /** The places that explain it: the words that they mark, and what is said of them. */
  readonly related?: readonly (readonly [words: string, says: string])[];
  /** What the rule says besides, of other places of the same carcass. */
  readonly also?: readonly string[];
  /** All of the repairs that it offers, in order; the preferred one begins with '> '. */
  readonly offers?: readonly string[];
  /** The groups that the bores which it marks are of, each once, with how many of it. */
  readonly marks?: Readonly<Record<string, number>>;
}

/** A carcass that just has it not: nothing is said of it, by this rule or another, but what `besides` names. */
export interface Sound {
  readonly carcass: string;
  readonly unit?: 'mm' | 'in';
  readonly shop?: string;
  readonly besides?: readonly string[];
}

/** A whole job, the title of one repair of the rule, and the job that must come of it, to the byte. */
export type Repaired = readonly [title: string, before: string, after: string];

/** A job of one carcass called `sink`, marks left out. */
export function jobOf({ carcass, unit = 'mm', shop }: Pick<Told, 'carcass' | 'unit' | 'shop'>) {
  const marked = markedJob({ carcass, unit, ...(shop !== undefined && { shop }) });
  const shops: Readonly<Record<string, string>> =
    shop === undefined || shop.endsWith('.yaml') ? {} : { 'bench.shop.yaml': wholeShop(shop) };
  return analyse(marked.replace(/[«»]/g, ''), shops);
}

function markedJob({ carcass, unit = 'mm', shop }: Pick<Told, 'carcass' | 'unit' | 'shop'>): string {
  const head = shop === undefined ? '' : `shop: ${shop.endsWith('.yaml') ? shop : 'bench.shop.yaml'}\n`;
  // A carcass without marks is blamed at its name.
  const name = carcass.includes('«') ? 'sink' : '«sink»';
  return `unit: ${unit}\n${head}carcasses:\n  ${name}:\n    ${carcass.replaceAll('\n', '\n    ')}\n`;
}

/** What holds of every finding: its bores are bores of the job, its repairs change something, and one at most is preferred. */
function expectWhole(job: JobAnalysis, { bores = [], repairs }: Finding): void {
  const known = new Set(job.carcasses.flatMap(({ boring }) => boring?.bores.map(({ id }) => id) ?? []));
  expect(bores.filter((id) => !known.has(id))).toEqual([]);
  for (const { changes } of repairs) expect(changes.length).toBeGreaterThan(0);
  expect(repairs.filter(({ preferred }) => preferred).length).toBeLessThan(2);
}

function marked(job: JobAnalysis, { bores = [] }: Finding): Readonly<Record<string, number>> {
  const groups = new Map(
    job.carcasses.flatMap(({ boring }) => boring?.bores.map(({ id, group }) => [id, group]) ?? []),
  );
  const counts: Record<string, number> = {};
  for (const id of new Set(bores)) counts[groups.get(id)!] = (counts[groups.get(id)!] ?? 0) + 1;
  return counts;
}

/** The tests of one rule: its findings with their places, carcasses that just have it not, its repairs before and after. */
export function rule(
  name: string,
  {
    tells,
    sound = [],
    repairs = [],
  }: { tells: readonly Told[]; sound?: readonly Sound[]; repairs?: readonly Repaired[] },
): void {
  const title = (carcass: string): string => carcass.replaceAll('\n', ', ');
  describe(name, () => {
    test.each(tells.map((one) => [title(one.carcass), one] as const))('tells of %s', (_title, one) => {
      const job = jobOf(one);
      const found = job.findings().filter(({ finding }) => finding.rule === name);
      const wordsAt = (place: Parameters<typeof job.locate>[0]): string => {
        const { start, end } = job.locate(place, 0);
        return job.text.slice(start, end);
      };
      expect(found.map(({ finding }) => inWords(finding.message, one.unit))).toEqual([one.says, ...(one.also ?? [])]);
      const { finding } = found[0]!;
      const { start, end } = job.locate(finding.place, 0);
      expect(`${job.text.slice(0, start)}«${job.text.slice(start, end)}»${job.text.slice(end)}`).toBe(markedJob(one));
      expectWhole(job, finding);
      if (one.severity !== undefined) expect(finding.severity).toBe(one.severity);
      if (one.panel !== undefined) expect(finding.panel).toBe(one.panel);
      if (one.offers !== undefined) {
        const offers = finding.repairs.map(
          ({ title: offer, preferred }) => `${preferred ? '> ' : ''}${inWords(offer, one.unit)}`,
        );
        expect(offers).toEqual(one.offers);
      }
      if (one.marks !== undefined) expect(marked(job, finding)).toEqual(one.marks);
      if (one.related !== undefined) {
        const related = finding.related.map(({ place, message }) => [wordsAt(place), inWords(message, one.unit)]);
        expect(related).toEqual(one.related);
      }
    });
    if (sound.length > 0)
      test.each(sound.map((one) => [title(one.carcass), one] as const))('leaves %s alone', (_title, one) => {
        const rules = jobOf(one)
          .findings()
          .map(({ finding }) => finding.rule);
        expect(rules.filter((other) => other !== 'shop-neutral')).toEqual(one.besides ?? []);
        expect(rules).not.toContain(name);
      });
    if (repairs.length > 0)
      test.each(repairs)('offers: %s', (offer, before, after) => {
        const job = analyse(before);
        const offers = job
          .findings()
          .filter(({ finding }) => finding.rule === name)
          .flatMap(({ finding, carcass }) => finding.repairs.map((repair) => ({ carcass, repair })));
        expect(offers.map(({ repair }) => inWords(repair.title))).toContain(offer);
        const chosen = offers.find(({ repair }) => inWords(repair.title) === offer)!;
        expect(applied(before, repairEdits(job, chosen)!)).toBe(after);
      });
  });
}
