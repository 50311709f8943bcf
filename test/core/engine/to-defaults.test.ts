import fc from 'fast-check';
import { expect, test } from 'vitest';
import { applyEdits } from '../../../shared-core/document/pieces.js';
import { Engine } from '../../../shared-core/engine.js';
import { refactorsAt } from '../../../shared-core/engine/refactors.js';
import { asMessage, inWords } from '../../in-words.js';
import { comments } from '../findings/after-repair.js';
import { job, writeJob } from '../job/job-texts.js';

const engine = new Engine({ readShop: () => ({ ok: false, message: asMessage('There is no such file.') }) });
const analysed = (text: string) => engine.analyse('file:///job.carcass.yaml', text);

/** The text after the move of what stands at a piece of it; null where it is not offered. */
function after(text: string, piece: string): string | null {
  const found = refactorsAt(analysed(text), text.lastIndexOf(piece) + 1).find(({ title }) =>
    /to the defaults|the defaults say/.test(inWords(title)),
  );
  return found === undefined ? null : applyEdits(text, found.edits);
}

const two = (head: string, first: string, second: string): string =>
  `${head}# the boxes\ncarcasses:\n  sink:\n    kind: base\n    width: 600\n${first}  hob: # with gas\n    kind: base\n    width: 800\n${second}`;

test('a value of several carcasses is written once, below what stands before the carcasses', () => {
  const depth = '    depth: 560\n';
  expect(after(two('unit: mm\n', depth, depth), 'depth')).toBe(two('unit: mm\ndefaults:\n  depth: 560\n', '', ''));
  expect(after(two('', depth, depth), '560')).toBe(
    two('', '', '').replace('carcasses:', 'defaults:\n  depth: 560\ncarcasses:'),
  );
  const defaults = 'defaults: # ours\n  board: board-18 # oak\n';
  expect(after(two(defaults, depth, depth), 'depth')).toBe(two(`${defaults}  depth: 560\n`, '', ''));
});

test('a value deep in a carcass keeps its place, and leaves nothing empty behind', () => {
  const back = '    back: { how: none }\n';
  expect(after(two('unit: mm\n', back, back), 'none')).toBe(
    two('unit: mm\ndefaults:\n  back:\n    how: none\n', '', ''),
  );
});

test('what the defaults say too is taken out', () => {
  const head = 'defaults:\n  depth: 560\n';
  const depth = '    depth: 560\n';
  expect(after(two(head, depth, '    depth: 300\n'), 'depth: 560')).toBe(two(head, '', '    depth: 300\n'));
  expect(after(two(head, '    depth: 300\n', '    depth: 300\n'), 'depth: 300')).toBeNull();
});

test('a comment beside the value keeps it where it is', () => {
  const third = '  tall:\n    kind: tall\n    width: 600\n    depth: 560\n';
  const text = two('unit: mm\n', '    depth: 560 # the pipes\n', `    depth: 560\n${third}`);
  expect(after(text, 'depth')).toBe(
    two('unit: mm\ndefaults:\n  depth: 560\n', '    depth: 560 # the pipes\n', third.replace('    depth: 560\n', '')),
  );
});

test('a plinth of what hangs keeps its place, as that has none from the defaults', () => {
  const plinth = '    plinth: 100\n';
  const third = `  over:\n    kind: wall\n    width: 600\n${plinth}`;
  expect(after(two('unit: mm\n', plinth, `${plinth}${third}`), 'base\n    width: 800\n    plinth')).toBeNull();
  expect(after(two('unit: mm\n', plinth, `${plinth}${third}`), 'plinth: 100\n  hob')).toBe(
    two('unit: mm\ndefaults:\n  plinth: 100\n', '', third),
  );
});

test.each([
  ['a carcass does not say it, so that the default would change it', two('', '    depth: 560\n', ''), 'depth'],
  ['only one says it so', two('', '    depth: 560\n', '    depth: 300\n'), 'depth'],
  ['it is no default', two('', '    note: mind\n', '    note: mind\n'), 'note'],
  ['another lays a map over it', two('', '    back: { how: none }\n', '    back: none\n'), 'how: none'],
])('is not offered where %s', (_, text, piece) => {
  expect(after(text, piece)).toBeNull();
});

test('bores stay the same and comments are kept, whatever is moved', () => {
  let moves = 0;
  fc.assert(
    fc.property(job, fc.constantFrom('mm', 'in'), fc.boolean(), (one, unit, flow) => {
      // Each carcass once more, so that there is something to share.
      const doubled = {
        ...one,
        carcasses: one.carcasses.flatMap(([name, map]) => [
          [name, map],
          [`${name}-b`, map],
        ]),
      };
      const text = writeJob(doubled as typeof one, unit, flow).replace('carcasses:', '# here they are\ncarcasses:');
      const before = analysed(text);
      const made = makesOf(before);
      const offsets = [...text.matchAll(/[\w-]+(?=:)/g)].map(({ index }) => index + 1);
      for (const offset of offsets) {
        for (const { title, edits } of refactorsAt(before, offset)) {
          if (!/to the defaults|the defaults say/.test(inWords(title))) continue;
          moves += 1;
          const changed = applyEdits(text, edits);
          expect(makesOf(analysed(changed)), changed).toEqual(made);
          expect(comments(changed), changed).toEqual(comments(text));
        }
      }
    }),
    { numRuns: 12 },
  );
  expect(moves).toBeGreaterThan(12);
});

/** Panels and bores of every carcass, without the places in the text that they come from. */
function makesOf({ carcasses }: ReturnType<typeof analysed>): unknown {
  return carcasses.map(({ name, carcass, boring }) => [
    name,
    carcass?.panels.map(({ key, length, width, thickness, pose }) => [key, length, width, thickness, pose]),
    boring?.bores.map(({ panel, u, v, face, diameter, depth }) => [panel, u, v, face, diameter, depth]),
  ]);
}
