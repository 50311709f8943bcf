import { describe, expect, it } from 'vitest';
import { CAUTIONS, cautionsFor } from '../../../shared-core/machining/caution.js';
import { LINE, mm, setUp, step, VERTICAL } from './replay/set-ups.js';

const names = (one: Parameters<typeof cautionsFor>[0]): string[] => cautionsFor(one).map(({ name }) => name);
const lies = { down: 'outside', edge: 'front', end: 'reference-end', stop: 'near-left' } as const;

describe('cautions', () => {
  it('say what can hurt: tool change, hands, small parts, eyes, ears and dust; and who decides', () => {
    const all = CAUTIONS.map(({ text }) => text).join(' ');
    for (const word of [
      /isolate.*lock/i,
      /hands clear of spindles and clamps/,
      /fixture/,
      /eyes and ears/,
      /dust/,
      /manual/,
      /local rules/,
    ]) {
      expect(all).toMatch(word);
    }
  });

  it('stand on every set-up, the manual last', () => {
    const plain = setUp(
      VERTICAL,
      { fence: [53], stops: { 'near-left': 8 }, depth: 12 },
      { left: [step(lies, [0], 8)] },
    );
    expect(names(plain)).toEqual(CAUTIONS.map(({ name }) => name));
    expect(names(plain).at(-1)).toBe('manual-decides');
  });

  it('add what a set-up brings: bits that come through, a panel that is moved along', () => {
    const through = setUp(
      VERTICAL,
      { fence: [53], stops: { 'near-left': 8 }, depth: 16, through: true },
      { left: [step(lies, [0], 8)] },
    );
    expect(names(through)).toEqual([
      ...CAUTIONS.slice(0, -1).map(({ name }) => name),
      'through-bits',
      'manual-decides',
    ]);
    const below = cautionsFor({ ...through, machine: { ...VERTICAL, from: 'below' } });
    const said = below.find(({ name }) => name === 'through-bits')?.text;
    expect(said).toContain('come up');
    expect(said).not.toContain('spoil board');
    const moved = setUp(
      LINE,
      { fence: [37], stops: { 'end-left': 8 }, depth: 13 },
      {
        left: [step({ ...lies, stop: 'end-left' }, [0], 5, mm(32))],
      },
    );
    expect(names(moved)).toEqual([...CAUTIONS.slice(0, -1).map(({ name }) => name), 'index-move', 'manual-decides']);
  });
});
