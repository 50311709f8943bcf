import { describe, expect, test } from 'vitest';
import { repairEdits } from '../../../../shared-core/engine/repairs.js';
import type { JobAnalysis } from '../../../../shared-core/engine.js';
import { inWords } from '../../../in-words.js';
import { applied } from '../after-repair.js';
import { analyse } from '../jobs.js';
import { rule } from './rule-tests.js';

const A = '  a:\n    kind: wall\n    width: 600\n';
const jobOf = (...carcasses: readonly string[]): JobAnalysis => analyse(`carcasses:\n${carcasses.join('')}`);

/** Of a rule the words that are blamed, and what is said. */
const told = (job: JobAnalysis, name: string) =>
  job
    .findings()
    .filter(({ finding }) => finding.rule === name)
    .map(({ finding, carcass }) => {
      const { start, end } = job.locate(finding.place, carcass);
      return [job.text.slice(start, end), inWords(finding.message)];
    });

describe('carcass-unknown', () => {
  test('names the one that was meant, or some that there are', () => {
    const job = jobOf(A, '  tower:\n    like: a\n', '  b:\n    like: towr\n', '  c:\n    like: elsewhere\n');
    expect(told(job, 'carcass-unknown')).toEqual([
      ['towr', 'No carcass of this file is named ‘towr’. Use ‘tower’.'],
      ['elsewhere', 'No carcass of this file is named ‘elsewhere’. Use another one, such as a, tower or b.'],
    ]);
  });

  test('never names the carcass itself, nor one without a name', () => {
    const job = jobOf(A, '  sinks:\n    like: sinkz\n', '  "":\n    kind: wall\n    width: 600\n');
    expect(told(job, 'carcass-unknown')).toEqual([
      ['sinkz', 'No carcass of this file is named ‘sinkz’. Use another one, such as a.'],
    ]);
  });

  test('is mended by the name that was meant', () => {
    const job = jobOf(A, '  b:\n    like: aa # as on the left\n');
    const { finding, carcass } = job.findings().find((one) => one.finding.rule === 'carcass-unknown')!;
    const [repair] = finding.repairs;
    expect(inWords(repair!.title)).toBe('Use ‘a’');
    expect(applied(job.text, repairEdits(job, { carcass, repair: repair! })!)).toContain('like: a # as on the left');
  });
});

describe('like-circular', () => {
  test('is told of every carcass of the circle, and of those alone', () => {
    const job = jobOf(A, '  b:\n    like: c\n', '  c:\n    like: b\n', '  d:\n    like: c\n', '  e:\n    like: e\n');
    expect(told(job, 'like-circular')).toEqual([
      [
        'c',
        '‘b’ is like ‘c’, which is like ‘b’ again, so nothing says what they are. Take `like` out of one of them, and write its kind and width.',
      ],
      [
        'b',
        '‘c’ is like ‘b’, which is like ‘c’ again, so nothing says what they are. Take `like` out of one of them, and write its kind and width.',
      ],
      ['e', 'The carcass is like itself, so nothing says what it is. Name another one, or write its kind and width.'],
    ]);
    expect(told(job, 'like-unread')).toEqual([
      ['c', '‘c’, which this carcass is like, has faults of its own. Correct them first.'],
    ]);
  });

  test.each([
    ['kind: wall\n    width: 600', 1],
    ['kind: wall', 0],
    ['width: 600', 0],
    ['kind: wall\n    width: 600\n    mirrored: yes', 0],
  ])('%j stands alone where that says all that a carcass must, and is no mirror image', (lines, offers) => {
    const job = jobOf(`  b:\n    like: b\n    ${lines}\n`);
    const found = job.findings().find(({ finding }) => finding.rule === 'like-circular')!;
    expect(found.finding.repairs).toHaveLength(offers);
  });

  test('a row may be long, but not endless', () => {
    const row = (count: number): JobAnalysis =>
      jobOf(A, ...Array.from({ length: count }, (_, i) => `  b${i}:\n    like: ${i === 0 ? 'a' : `b${i - 1}`}\n`));
    expect(row(20).carcasses.at(-1)!.spec?.width.value).toBe(600_000);
    expect(told(row(21), 'like-circular')).toEqual([
      ['b19', 'More than 20 carcasses are like one another in a row. Name one that comes earlier in the row.'],
    ]);
  });
});

describe('like-unread', () => {
  test('leads to the carcass whose faults keep it from being made, and repeats none of them', () => {
    const job = jobOf('  a:\n    kind: wall\n    width: 60000\n', '  b:\n    like: a\n', '  c:\n    like: b\n');
    expect(job.findings().map(({ finding }) => finding.rule)).toEqual([
      'shop-neutral',
      'length-impossible',
      'like-unread',
      'like-unread',
    ]);
    const { finding } = job.findings()[2]!;
    expect(finding.related.map(({ carcass }) => carcass)).toEqual([0]);
  });

  test('is not told where the carcass takes the place of what is wrong', () => {
    const shelves = '    fixed-shelves: 30\n';
    const job = jobOf(`${A}${shelves}`, '  b:\n    like: a\n    fixed-shelves: 1\n', '  c:\n    like: a\n');
    expect(job.carcasses.map(({ carcass }) => carcass !== null)).toEqual([false, true, false]);
    expect(told(job, 'like-unread').map(([word]) => word)).toEqual(['a']);
  });
});

describe('findings of a variant', () => {
  test('are blamed on the line that counts, in the other carcass, and say whose they are', () => {
    const job = jobOf(
      '  low:\n    kind: base\n    width: 600\n    height: 1104\n    fixed-shelves: [900]\n',
      '  high:\n    like: low\n    height: 720\n',
      '  too:\n    like: high\n    width: 700\n',
    );
    const [[words, says]] = told(job, 'size-impossible') as [[string, string]];
    expect(words).toBe('900');
    expect(says).toMatch(/^In ‘high’ and ‘too’, which are like this one: /);
    expect(told(job, 'size-impossible')).toHaveLength(1);
  });

  test('are not told again where they are so of the other carcass too', () => {
    const job = jobOf(
      '  a:\n    kind: base\n    width: 600\n    board: bord-16\n',
      '  b:\n    like: a\n',
      '  c:\n    like: a\n    board: board-19\n',
    );
    expect(told(job, 'board-unknown').map(([word]) => word)).toEqual(['bord-16']);
  });

  test('what the other carcass says of panels that the variant has not is no fault', () => {
    const job = jobOf(
      '  a:\n    kind: base\n    width: 600\n    fixed-shelves: 1\n    panels:\n      shelf-1: { board: board-19 }\n',
      '  b:\n    like: a\n    fixed-shelves: 0\n',
    );
    expect(told(job, 'panel-unknown')).toEqual([]);
    expect(job.carcasses[1]!.carcass).not.toBeNull();
  });

  test('no repair takes a single item of a list that another carcass has', () => {
    const job = jobOf(
      '  a:\n    kind: base\n    width: 600\n    loose-shelves: [200, 424]\n',
      '  b:\n    like: a\n    row-offset: 20\n',
    );
    const off = job.findings().filter(({ finding }) => finding.rule === 'shelf-off-grid');
    expect(off.length).toBeGreaterThan(0);
    for (const { finding } of off)
      for (const { changes } of finding.repairs) expect(changes.map(({ path }) => path)).toEqual([]);
  });
});

rule('like-circular', {
  tells: [],
  repairs: [
    [
      'Take `like` out: this carcass has a kind and a width of its own',
      'carcasses:\n  sink:\n    like: sink # as before\n    kind: base\n    width: 600\n',
      'carcasses:\n  sink:\n    kind: base\n    width: 600\n',
    ],
  ],
});
