import { expect, test } from 'vitest';
import type { FileFinding } from '../../../shared-core/engine.js';
import { otherwise, type Finding } from '../../../shared-core/findings/finding.js';
import { wantedOf } from '../../../shared-core/findings/wanted.js';
import { toldOf } from '../../../shared-core/service/findings.js';
import { analyse } from '../findings/jobs.js';

const JOB = analyse('carcasses:\n  sink: { kind: base, width: 600, depth: 440 }\n');

/** A finding that tells when its repairs are looked at, which is when they are tried. */
function watching(one: Finding): { readonly finding: Finding; readonly looks: () => number } {
  let looked = 0;
  const { repairs, ...rest } = one;
  const finding = {
    ...rest,
    get repairs() {
      looked += 1;
      return repairs;
    },
  };
  return { finding, looks: () => looked };
}

test('findings are told, and told otherwise, without a repair being tried', () => {
  const found = JOB.findings().filter(({ finding }) => finding.repairs.length > 0);
  expect(found.length).toBeGreaterThan(0);
  for (const one of found) {
    const { finding, looks } = watching(one.finding);
    const told = toldOf(JOB, [{ ...one, finding } satisfies FileFinding]);
    expect(told).toHaveLength(1);
    const quieter = wantedOf([finding], new Map([[finding.rule, 'info']]));
    const reworded = otherwise(finding, { message: finding.message.in('in') });
    expect([quieter[0]?.severity, reworded.message.unit]).toEqual(['info', 'in']);
    expect(looks()).toBe(0);
    expect(reworded.repairs).toEqual(one.finding.repairs);
    expect(looks()).toBe(1);
  }
});
