import { describe, expect, test } from 'vitest';
import type { CarcassAnalysis } from '../../../shared-core/engine.js';
import { wouldCount } from '../../../shared-core/findings/circumstances.js';
import { reachAt } from '../../../shared-core/job/reach.js';
import { neutralShop } from '../../../shared-core/shop/neutral.js';
import { sagsOf } from '../../../shared-core/loads/shelf.js';
import { lineUp } from '../../../shared-core/wall/line-up.js';
import { analysed, BASES, keysOf, plainLines, withKey, withoutKey } from './key-trials.js';

// Every key of a carcass, written beside many others, must do what the table of its reach says: change something, or nothing.

/** All that comes of a carcass, without where it stands in the text. */
function outcome({ spec, carcass, boring, operations, known }: CarcassAnalysis): string {
  const said = known.filter(({ rule }) => rule !== 'value-unused').map(({ rule, panel }) => [rule, panel]);
  const standing =
    spec &&
    carcass &&
    lineUp([{ spec, carcass }], neutralShop.habits).map(({ number, stands }) => [number, stands.map(({ at }) => at)]);
  const sags = spec && carcass && sagsOf(spec, carcass, neutralShop.habits).map(({ sag }) => sag);
  const machines = operations?.operations.map(({ machine }) => machine.name);
  return JSON.stringify(
    [carcass, boring, machines, said, spec?.note, spec?.machines.clamp?.value, standing, sags],
    (key, value: unknown) => (['place', 'path', 'measured'].includes(key) ? undefined : value),
  );
}

describe.each(BASES.map((lines) => [lines.join(', '), lines] as const))('%s', (_title, base) => {
  const before = analysed(base);
  const how = before.spec!.back.how.value;
  const plain = plainLines(base, how);
  const made = { spec: before.spec!, carcass: before.carcass!, boring: before.boring! };

  test.each(keysOf(before).map((one) => [one.path.join(' '), one] as const))('%s', (_name, tried) => {
    const { path, lines } = tried;
    const key = path[0]!;
    const without = withoutKey(plain, key);
    const reference = analysed(
      ['kind', 'width', 'back', 'doors', 'pulls', 'fillers', 'blind', 'end-panels', 'front-heights'].includes(key)
        ? plain
        : without,
    );
    const trial = (written: (typeof lines)[number]): { read: boolean; told: boolean; changes: boolean } => {
      const after = analysed(withKey(plain, tried, written, how));
      const read = after.spec !== null && after.carcass !== null;
      const told = read && after.known.some(({ rule }) => rule === 'value-unused');
      return { read, told, changes: outcome(after) !== outcome(reference) };
    };
    if (wouldCount(path, [made])) {
      // Of a rail's width and the like some value must show; the first that does is enough.
      const trials: ReturnType<typeof trial>[] = [];
      const shows = (): boolean =>
        trials.some(({ changes }) => changes) && trials.some(({ read, told }) => read && !told);
      for (const written of lines) if (!shows()) trials.push(trial(written));
      expect(trials.some(({ changes }) => changes)).toBe(true);
      expect(trials.some(({ read }) => read) && trials.every(({ read, told }) => told || !read)).toBe(false);
    } else {
      const read = lines.map(trial).filter((one) => one.read);
      expect(reachAt(path)).not.toBe('always');
      expect(read.length).toBeGreaterThan(0);
      expect(read.filter(({ told }) => !told)).toHaveLength(0);
      expect(read.filter(({ changes }) => changes)).toHaveLength(0);
    }
  });
});
