import { expect, test } from 'vitest';
import { readingRules } from '../../../shared-core/findings/reading-rules.js';
import { referencePage } from '../../../shared-core/findings/reference-page.js';
import { rules } from '../../../shared-core/findings/registry.js';
import { analyse, NEVER_SHOWN } from './jobs.js';

const all = [...rules, ...readingRules];

test('the page in the package is what the rules say of themselves', async () => {
  // `vitest -u` writes it anew.
  await expect(referencePage()).toMatchFileSnapshot('../../../server/reference/findings.md');
});

test('every rule has a name of its own, in plain kebab-case, and says what, why and what to do', () => {
  const names = all.map(({ name }) => name);
  expect(new Set(names).size).toBe(names.length);
  for (const { name, about } of all) {
    expect(name).toMatch(/^[a-z]+(-[a-z]+)*$/);
    for (const sentence of [about.what, about.why, about.remedy]) expect(sentence, name).toMatch(/^\p{Lu}.*\.$/su);
  }
});

const shown = all.filter(({ name }) => !NEVER_SHOWN.has(name));
test.each(shown.map((rule) => [rule.name, rule] as const))(
  'the example of %s shows it',
  (name, { about, severity }) => {
    const whole = /^(carcasses|shop|unit):/.test(about.example);
    const body = about.example.replaceAll('\n', '\n    ');
    const job = whole
      ? about.example
      : `${about.shop === undefined ? '' : 'shop: bench.shop.yaml\n'}carcasses:\n  sink:\n    ${body}\n`;
    const shops: Record<string, string> = about.shop === undefined ? {} : { 'bench.shop.yaml': about.shop };
    const severities = analyse(job, shops)
      .findings()
      .filter(({ finding }) => finding.rule === name)
      .map(({ finding }) => finding.severity);
    expect(severities, job).not.toEqual([]);
    // A rule may be milder in a case of its own, never graver than it says.
    const grave = ['info', 'warning', 'error'];
    for (const one of severities) expect(grave.indexOf(one)).toBeLessThanOrEqual(grave.indexOf(severity));
  },
);
