import { describe, expect, test } from 'vitest';
import { after, offered } from './moves.js';

const job = (lines: string): string =>
  `defaults:\n  depth: 560\ncarcasses:\n  a:\n    kind: base\n    width: 1000\n${lines}`;
const spreads = (text: string, piece: string): boolean =>
  offered(text, piece).some((title) => /^(Spread|Let Borewright)/.test(title));

describe('a list of heights', () => {
  test.each(['loose-shelves', 'fixed-shelves'])('of %s becomes their number', (key) => {
    const text = job(`    ${key}: [232, 456] # pots\n`);
    expect(after(text, key, 'Spread the 2 shelves evenly')).toBe(text.replace('[232, 456]', '2'));
  });

  test('stays where something else is said of a shelf, or remarked beside it', () => {
    expect(spreads(job('    loose-shelves: [{ at: 232, bay: 1 }, 456]\n'), 'loose-shelves')).toBe(false);
    expect(spreads(job('    loose-shelves:\n      - 232 # the mixer\n      - 456\n'), 'loose-shelves')).toBe(false);
  });
});

test('what no shelves stand at is not to be spread', () => {
  expect(spreads(job('    dividers: [300, 700]\n'), 'dividers')).toBe(false);
  expect(spreads(job('    dowels: [40, 200, 360]\n'), 'dowels')).toBe(false);
  expect(spreads(job(''), 'depth')).toBe(false);
});
