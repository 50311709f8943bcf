import fc from 'fast-check';
import { expect, test } from 'vitest';
import { parse } from 'yaml';
import { applyEdits } from '../../../shared-core/document/pieces.js';
import { namesOfText, writtenInPlace } from '../../../shared-core/service/names.js';

/** Names as owners write them, also such as mean something else without quotes. */
const NAMES = [
  'sink',
  'sink unit',
  'it’s',
  "it's",
  'a: b',
  '12',
  'yes',
  'null',
  '#1',
  'x #1',
  '[a]',
  '- a',
  'näh',
  '🔩',
  '"q"',
];

const quoted = (name: string, how: number): string => {
  if (how % 3 === 1) return JSON.stringify(name);
  if (how % 3 === 2) return `'${name.replaceAll("'", "''")}'`;
  return /^[a-z]+( [a-z]+)*$/.test(name) && !['yes', 'null'].includes(name) ? name : JSON.stringify(name);
};

/** A job in which some carcasses are like an earlier one, as a block or in braces, with remarks that say their names too. */
const jobs = fc
  .record({
    names: fc.uniqueArray(fc.constantFrom(...NAMES), { minLength: 2, maxLength: 4 }),
    like: fc.array(fc.nat(), { minLength: 4, maxLength: 4 }),
    how: fc.array(fc.nat(5), { minLength: 8, maxLength: 8 }),
    eol: fc.constantFrom('\n', '\r\n'),
  })
  .map(({ names, like, how, eol }) => {
    const blocks = names.map((name, index) => {
      const key = quoted(name, how[index]!);
      const of = index > 0 && like[index]! % 3 > 0 ? names[like[index]! % index]! : null;
      const said = of === null ? 'kind: base' : `like: ${quoted(of, how[index + 4]!)}`;
      return how[index]! > 2
        ? `  ${key}: { ${said}, width: 600 } # as ${name}\n`
        : `  ${key}: # ${name}\n    ${said}   # ${of ?? 'its own'}\n    width: 600\n    note: ${JSON.stringify(name)}\n`;
    });
    return { names, text: `# ${names.join()}\ncarcasses:\n${blocks.join('\n')}`.replaceAll('\n', eol) };
  });

/** What a file says of its carcasses, by a parser of its own; every value is text, as names are. */
const entries = (text: string): readonly (readonly [string, ReadonlyMap<string, string>])[] => [
  ...(parse(text, { schema: 'failsafe', mapAsMap: true }) as ReadonlyMap<string, ReadonlyMap<string, never>>).get(
    'carcasses',
  )!,
];

/** The same when one carcass is called otherwise. */
const calledOtherwise = (text: string, from: string, to: string): unknown => {
  const other = (name: string): string => (name === from ? to : name);
  return entries(text).map(([name, said]) => [
    other(name),
    new Map([...said].map(([key, value]) => [key, key === 'like' ? other(value) : value])),
  ]);
};

test('a carcass that is renamed is called so wherever it is meant, and nothing else of the file changes', () => {
  let likes = 0;
  fc.assert(
    fc.property(jobs, fc.nat(), fc.constantFrom(...NAMES, 'new', 'a, b', '}'), ({ names, text }, pick, to) => {
      const from = names[pick % names.length]!;
      if (names.includes(to)) return;
      const rename = (before: string, old: string, now: string): string => {
        const found = namesOfText('job', before, undefined).mentions.filter(
          ({ of, name }) => of === 'carcass' && name === old,
        );
        likes += found.length - 1;
        return applyEdits(
          before,
          found.map((mention) => ({
            start: mention.start,
            end: mention.end,
            text: writtenInPlace(now, mention, before),
          })),
        );
      };
      const changed = rename(text, from, to);
      expect(entries(changed), changed).toEqual(calledOtherwise(text, from, to));
      // Back again, nothing is left of it but quotes that the other name needed: remarks and notes never changed.
      const back = rename(changed, to, from);
      expect(entries(back), back).toEqual(entries(text));
      expect(back.replace(/["']/g, '')).toBe(text.replace(/["']/g, ''));
    }),
    { numRuns: 400 },
  );
  expect(likes).toBeGreaterThan(200);
});
