import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { job, some, together, whole, written, type Said } from '../like/texts.js';
import { after, carcassOf, comments, made, offered } from './moves.js';

const TOWER = `  tower: # by the window
    kind: tall
    width: 600
    plinth: 80
    doors: left # toward the window
    loose-shelves: 4
`;
const HEAD = 'unit: mm\ncarcasses:\n';

describe('a carcass that repeats another', () => {
  test('is written as its variant: what it says as well goes, comments stay', () => {
    const other = `  far:\n    kind: tall # too\n    width: 450\n    plinth: 80\n    doors: left\n    loose-shelves: 4\n`;
    expect(after(`${HEAD}${TOWER}${other}`, 'far', 'Write it as a variant of ‘tower’')).toBe(
      `${HEAD}${TOWER}  far:\n    like: tower # too\n    width: 450\n`,
    );
  });

  test('is written as its mirrored variant where it is its mirror image', () => {
    const other = `  far:\n    kind: tall\n    width: 600\n    plinth: 80\n    doors: right\n    loose-shelves: 4\n`;
    expect(after(`${HEAD}${TOWER}${other}`, 'far', 'Write it as a mirrored variant of ‘tower’')).toBe(
      `${HEAD}${TOWER}  far:\n    like: tower\n    mirrored: yes\n`,
    );
  });

  test('keeps a line that has a comment', () => {
    const other = `  far:\n    kind: tall\n    width: 600 # measured\n    plinth: 80\n    doors: left\n    loose-shelves: 4\n`;
    expect(after(`${HEAD}${TOWER}${other}`, 'far', 'Write it as a variant')).toBe(
      `${HEAD}${TOWER}  far:\n    like: tower\n    width: 600 # measured\n`,
    );
  });

  test.each([
    ['the other one says more', '  far:\n    kind: tall\n    width: 600\n    plinth: 80\n'],
    [
      'it has less than half in common',
      '  far:\n    kind: tall\n    width: 500\n    plinth: 100\n    doors: pair\n    loose-shelves: 4\n',
    ],
    [
      'it is of another kind',
      '  far:\n    kind: base\n    width: 600\n    plinth: 80\n    doors: left\n    loose-shelves: 4\n',
    ],
    [
      'it is a variant already',
      '  far:\n    like: tower\n    kind: tall\n    width: 600\n    plinth: 80\n    doors: left\n    loose-shelves: 4\n',
    ],
  ])('is left as it is where %s', (_, other) => {
    expect(offered(`${HEAD}${TOWER}${other}`, 'far').filter((title) => /variant/.test(title))).toEqual([]);
  });

  test('is made just as before, bore by bore', () => {
    let count = 0;
    fc.assert(
      fc.property(whole, some, (base, own) => {
        const text = job(written('a', base), written('b', together(own, base)).replace('\n', ' # mine\n'));
        const changed = after(text, '  b:', 'Write it as a', 3);
        if (changed === null) return;
        count += 1;
        expect(made(carcassOf(changed, 'b')), changed).toEqual(made(carcassOf(text, 'b')));
        expect(comments(changed)).toEqual(comments(text));
        expect(changed).toMatch(/ {4}like: "?a"?\n/);
      }),
      { numRuns: 60 },
    );
    expect(count).toBeGreaterThan(8);
  });
});

describe('a variant', () => {
  test('is written out in full, in the places of `like` and `mirrored`', () => {
    const text = `${HEAD}${TOWER}  far:\n    like: tower # as it is\n    mirrored: yes\n    plinth: 100 # the pipes\n`;
    expect(after(text, 'like: tower', 'Write it out in full, without ‘tower’')).toBe(
      `${HEAD}${TOWER}  far:\n    kind: tall # as it is\n    width: 600\n    plinth: 100 # the pipes\n    doors: right\n    loose-shelves: 4\n`,
    );
  });

  test('has its own keys of a map beside those of the other', () => {
    const base = `  a:\n    kind: wall\n    width: 600\n    doors: { hung: left, gap: 4 }\n    panels:\n      left: { rows: none }\n`;
    const own = `  b:\n    like: a\n    doors: { gap: 2 } # closer\n    panels:\n      right: { rows: front } # seen\n`;
    expect(after(`${HEAD}${base}${own}`, '  b:', 'Write it out in full', 3)).toBe(
      `${HEAD}${base}  b:\n    kind: wall\n    doors: { gap: 2, hung: left } # closer\n    panels:\n      right: { rows: front } # seen\n      left: { rows: none }\n    width: 600\n`,
    );
  });

  test('says the height that followed from the side that leads', () => {
    const base = `  a:\n    kind: base\n    width: 600\n    panels: { left: { board: board-19 } }\n`;
    const changed = after(`${HEAD}${base}  b:\n    like: a\n    mirrored: yes\n`, '  b:', 'Write it out in full', 3)!;
    expect(changed).toContain('    height: 723\n');
  });

  test.each(['no', 'yes'])('is made just as before when it is written out, mirrored: %s', (mirrored) => {
    let count = 0;
    fc.assert(
      fc.property(whole, some, some, (base, middle, own) => {
        const like = (name: string, said: Said): Said => ({ like: name, mirrored, ...said });
        const text = job(
          written('a', base),
          written('b', like('a', middle)),
          written('c', like('b', own)).replace('\n', ' # mine\n'),
        );
        const before = carcassOf(text, 'c');
        const changed = after(text, '  c:', 'Write it out in full', 3);
        if (changed === null || before.spec === null) return;
        count += 1;
        const then = carcassOf(changed, 'c');
        // A key of a panel that only the other one has is no fault there.
        if (then.spec === null) return;
        expect(made(then), changed).toEqual(made(before));
        expect(comments(changed)).toEqual(comments(text));
      }),
      { numRuns: 40 },
    );
    expect(count).toBeGreaterThan(15);
  });
});
