import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { CarcassAnalysis, JobAnalysis } from '../../../shared-core/engine.js';
import { inWords } from '../../in-words.js';
import { opened } from '../findings/jobs.js';
import { job, some, together, whole, written, type Said } from './texts.js';

/** All that is made of a carcass; nothing of where in the text it comes from. */
function made({ carcass, boring, findings }: CarcassAnalysis): unknown {
  const without = (key: string, value: unknown): unknown =>
    ['place', 'path', 'group'].includes(key) ? undefined : value instanceof Map ? [...value] : value;
  return JSON.parse(
    JSON.stringify(
      {
        panels: carcass?.panels,
        doors: carcass?.doors,
        drawers: carcass?.drawers,
        joints: carcass?.joints,
        bores: boring?.bores,
        found: findings
          .filter(({ rule }) => rule !== 'value-unused' && rule !== 'panel-unknown')
          .map(({ rule, message }) => `${rule} ${inWords(message)}`)
          .toSorted(),
      },
      without,
    ),
  );
}

const last = ({ carcasses }: JobAnalysis): CarcassAnalysis => carcasses.at(-1)!;

test('a carcass that is like another is what it is written out in full', () => {
  const read = opened();
  let compared = 0;
  fc.assert(
    fc.property(whole, some, (base, own) => {
      const text = job(written('base', base), written('own', { like: 'base', ...own }));
      const out = job(written('base', base), written('own', together(own, base)));
      const [one, other] = [read(text), read(out)];
      // What names no panel of the variant is no fault where another carcass says it.
      const unknown = last(other).findings.some(({ rule }) => rule === 'panel-unknown');
      if (unknown || one.carcasses[0]!.carcass === null) return;
      expect(made(last(one)), text).toEqual(made(last(other)));
      compared += last(one).carcass === null ? 0 : 1;
    }),
    { numRuns: 80 },
  );
  expect(compared).toBeGreaterThan(25);
});

test('chains are followed, from whatever place in the file', () => {
  const read = opened();
  fc.assert(
    fc.property(whole, some, some, fc.shuffledSubarray([0, 1, 2], { minLength: 3 }), (base, middle, own, order) => {
      const three = [
        written('base', base),
        written('middle', { like: 'base', ...middle }),
        written('own', { like: 'middle', ...own }),
      ];
      const find = (text: string) => read(text).carcasses.find(({ name }) => name === 'own')!;
      const inOrder = find(job(...order.map((i) => three[i]!)));
      const inTwo = find(job(written('base', together(middle, base)), written('own', { like: 'base', ...own })));
      if (inTwo.spec === null || inOrder.spec === null) return;
      const named = ({ carcass, boring }: CarcassAnalysis) =>
        JSON.stringify(made({ carcass, boring, findings: [] } as never));
      expect(named(inOrder)).toBe(named(inTwo));
    }),
    { numRuns: 60 },
  );
});

describe('what is of one carcass alone', () => {
  test('place, count and note do not come from another', () => {
    const base: Said = { kind: 'wall', width: 600, count: 3, note: 'Hang it high.', place: { at: 600, wall: 2 } };
    const { spec } = last(opened()(job(written('a', base), written('b', { like: 'a' }))));
    expect([spec!.count.value, spec!.note, spec!.place.at, spec!.place.wall.value]).toEqual([1, '', null, 1]);
    expect(spec!.width.value).toBe(600_000);
  });

  test('mirrored twice is as it was, and what a variant of its own says is on the hand that it says', () => {
    const read = opened();
    const base = { kind: 'base', width: 600, doors: 'left', panels: { left: { rows: 'none' } } };
    const text = job(
      written('a', base),
      written('b', { like: 'a', mirrored: 'yes' }),
      written('c', { like: 'b', mirrored: 'yes' }),
      written('d', { like: 'a', mirrored: 'yes', doors: 'left' }),
    );
    const [a, b, c, d] = read(text).carcasses.map(({ spec }) => spec!);
    expect([a, b, c, d].map((one) => one!.doors.hung.value)).toEqual(['left', 'right', 'left', 'left']);
    expect([a, b, c, d].map((one) => [...one!.panels.keys()])).toEqual([['left'], ['right'], ['left'], ['right']]);
    expect([a, b, c, d].map((one) => one!.leading)).toEqual(['left', 'right', 'left', 'right']);
  });
});

describe('an edit', () => {
  const base = (width: number): string => written('base', { kind: 'base', width, 'loose-shelves': 1 });
  const others = [
    written('wide', { like: 'base', width: 900 }),
    written('wider', { like: 'wide', height: 752 }),
    written('alone', { kind: 'wall', width: 500 }),
  ];

  test('of a carcass makes what is like it anew, and nothing else', async () => {
    const { Engine } = await import('../../../shared-core/engine.js');
    const engine = new Engine({ readShop: () => ({ ok: false, message: null as never }) });
    const read = (text: string): JobAnalysis => engine.analyse('file:///j', text);
    const first = read(job(base(600), ...others));
    expect(engine.computed).toBe(4);
    const second = read(job(base(650), ...others));
    expect(engine.computed).toBe(7);
    expect(second.carcasses[3]).toBe(first.carcasses[3]);
    read(job(base(650), ...others.slice(0, 2), written('alone', { kind: 'wall', width: 550 })));
    expect(engine.computed).toBe(8);
    // A comment above is no edit of any of them.
    read(`# A job.\n${job(base(650), ...others.slice(0, 2), written('alone', { kind: 'wall', width: 550 }))}`);
    expect(engine.computed).toBe(8);
  });

  test('leaves no trace: what is worked out is that of a text never seen before', () => {
    const seen = (analysis: JobAnalysis): unknown => ({
      findings: analysis.findings().map(({ finding, carcass }) => ({
        rule: finding.rule,
        words: inWords(finding.message),
        where: analysis.locate(finding.place, carcass),
        related: finding.related.map((one) => analysis.locate(one.place, one.carcass ?? carcass)),
      })),
      made: analysis.carcasses.map((one) => ({ name: one.name, ...(made(one) as object) })),
    });
    const names = ['a', 'b', 'c', 'd'];
    const carcass = fc.tuple(
      fc.constantFrom(...names),
      fc.oneof(
        whole,
        fc.tuple(fc.constantFrom(...names, 'e'), some).map(([like, own]) => ({ like, ...own })),
      ),
      fc.boolean(),
    );
    const text = fc
      .array(carcass, { minLength: 2, maxLength: 5 })
      .map((all) => job(...all.map(([name, said, hand]) => written(name, hand ? { ...said, mirrored: 'yes' } : said))));
    fc.assert(
      fc.property(fc.array(text, { minLength: 2, maxLength: 4 }), (texts) => {
        const read = opened();
        for (const one of texts) expect(seen(read(one)), one).toEqual(seen(opened()(one)));
      }),
      { numRuns: 12 },
    );
  });
});

test('a carcass in whose text the word stands for something else can be what another is like', () => {
  const read = opened();
  for (const own of ['note: like the old one', 'like: [other]', 'width: 600 # like the old one']) {
    const job = read(`carcasses:\n  a:\n    ${own}\n  b: { like: a, width: 500 }\n`);
    expect(job.lineageOf(1), own).toEqual({ bases: [0], fault: null });
  }
});
