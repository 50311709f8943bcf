import { stepsOf } from '../../steps.js'; // First, so that it counts in all that follows.
import { describe, expect, test } from 'vitest';
import { applyEdits } from '../../../shared-core/document/pieces.js';
import { Engine, type JobAnalysis } from '../../../shared-core/engine.js';
import { batchEdits, preferredRepairs } from '../../../shared-core/engine/repairs.js';
import { HOSTILE } from '../../hostile-texts.js';
import { inWords } from '../../in-words.js';

const JOB = 'file:///hostile.carcass.yaml';
const SHOP = 'file:///hostile.shop.yaml';
const engine = (shop = ''): Engine => new Engine({ readShop: () => ({ ok: true, uri: SHOP, text: shop }) });
const analysed = (text: string): JobAnalysis => engine().analyse(JOB, text);

const SIZE = 400;
/** Double the text may cost double the work, and a little for what is sorted; of what grows with the square it would be four times. */
const MOST_GROWTH = 2.4;

describe.each(HOSTILE)('$name', ({ text }) => {
  test('in a job file each fault is told where it stands', () => {
    const whole = text(SIZE);
    const analysis = analysed(whole);
    const findings = analysis.findings();
    expect(findings).not.toEqual([]);
    for (const { finding, carcass } of findings) {
      const { file, start, end } = analysis.locate(finding.place, carcass);
      expect(file).toBe('job');
      expect([start >= 0, end >= start, end <= whole.length]).toEqual([true, true, true]);
      expect(inWords(finding.message)).not.toBe('');
    }
    expect(findings.map(({ finding }) => finding.rule)).not.toContain('internal-fault');
  });

  test('in a shop file each fault is told where it stands, and the job that names it says so', () => {
    const whole = text(SIZE);
    for (const { place, message } of engine().analyseShop(SHOP, whole).findings) {
      expect([place.start >= 0, place.end >= place.start, place.end <= whole.length]).toEqual([true, true, true]);
      expect(inWords(message)).not.toBe('');
    }
    const job = 'shop: hostile.shop.yaml\ncarcasses:\n  a: { kind: base, width: 600 }\n';
    const analysis = engine(whole).analyse(JOB, job);
    const told = analysis.findings().filter(({ finding }) => finding.rule === 'shop-broken');
    const stands = told.map(({ finding, carcass }) => analysis.locate(finding.place, carcass));
    const isBuilt = analysis.carcasses.every(({ carcass }) => carcass !== null);
    // A carcass is built by what can be read of the shop, or the job says at its `shop:` why not.
    if (!isBuilt) expect(stands).toContainEqual({ file: 'job', start: 6, end: 23 });
  });

  test('double the text costs no more than double the work', () => {
    const cost = (size: number): number =>
      stepsOf(() => {
        analysed(text(size)).findings();
        engine().analyseShop(SHOP, text(size));
      });
    cost(SIZE);
    const [once, twice] = [cost(8 * SIZE), cost(16 * SIZE)];
    expect(twice / once).toBeLessThan(MOST_GROWTH);
  });

  test('taking every repair that needs no choice comes to an end', () => {
    let now = text(40);
    for (let round = 0; ; round += 1) {
      const analysis = analysed(now);
      const after = applyEdits(now, batchEdits(analysis, preferredRepairs(analysis)));
      if (after === now) break;
      now = after;
      expect(round).toBeLessThan(6);
    }
  });
});
