import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { isPair, isScalar, parseDocument, visit } from 'yaml';
import { cutJob } from '../../shared-core/document/cut.js';
import { neutralShop } from '../../shared-core/shop/neutral.js';
import { NEUTRAL_SHOP_TEXT } from '../../shared-core/shop/neutral-text.js';
import { faultyJob } from '../core/findings/random-jobs.js';
import { jobText } from '../core/job/schema-texts.js';

// Job and shop files that went wrong: by the grammar (a value of another key, a key left out, a carcass twice) and by the byte.

export interface Damaged {
  readonly kind: 'job' | 'shop';
  readonly text: string;
}

/** A run of a text that is a whole in the grammar. */
interface Spot {
  readonly sort: 'key' | 'value' | 'pair';
  readonly start: number;
  readonly end: number;
}

interface Sound extends Damaged {
  readonly spots: readonly Spot[];
}

const fixture = (name: string): string => readFileSync(join(import.meta.dirname, '../fixtures', name), 'utf8');

/** Every carcass as a job of its own, so that ten thousand take seconds. */
function jobsOf(text: string): readonly string[] {
  const { head, carcasses, tail } = cutJob(text);
  return carcasses.map((part) => head.text + part.text + tail.text);
}

/** Every section as a shop file of its own, and the whole. */
function shopsOf(text: string): readonly string[] {
  return [text, ...text.split(/^(?=[a-z])/m).filter((section) => /^[a-z-]+:/.test(section))];
}

const SOUND: readonly Sound[] = [
  ...['every-finding', 'kitchen', 'studio']
    .flatMap((name) => jobsOf(fixture(`${name}.carcass.yaml`)))
    .map((text) => ({ kind: 'job', text, spots: spotsOf(text) }) as const),
  ...[...['faults', 'shed'].map((name) => fixture(`${name}.shop.yaml`)), NEUTRAL_SHOP_TEXT]
    .flatMap(shopsOf)
    .map((text) => ({ kind: 'shop', text, spots: spotsOf(text) }) as const),
];

/** Where keys, values and pairs stand, by a reader of YAML that is none of ours. */
function spotsOf(text: string): readonly Spot[] {
  const spots: Spot[] = [];
  visit(parseDocument(text), (at, node) => {
    if (isPair(node) && isScalar(node.key) && node.key.range) {
      const last = (node.value as { readonly range?: readonly number[] } | null)?.range ?? node.key.range;
      spots.push({ sort: 'pair', start: node.key.range[0], end: last[1]! });
    } else if (isScalar(node) && node.range)
      spots.push({ sort: at === 'key' ? 'key' : 'value', start: node.range[0], end: node.range[1] });
  });
  return spots;
}

const wordsOf = (wanted: Spot['sort']): readonly string[] =>
  SOUND.flatMap(({ text, spots }) =>
    spots.filter(({ sort }) => sort === wanted).map(({ start, end }) => text.slice(start, end)),
  );
const POOL = { key: wordsOf('key'), value: wordsOf('value'), pair: wordsOf('pair') };

/** Values that nobody means. */
const ODD = [
  ...[
    '0',
    '-1',
    '-0',
    '1e300',
    '1e-300',
    '.nan',
    '.inf',
    'NaN',
    '9007199254740993',
    '0.0001',
    '1/0 in',
    '1\' 2"',
    '600 mm',
  ],
  ...[
    '',
    '~',
    'null',
    'yes',
    '[]',
    '{}',
    '[[]]',
    '*a',
    '&a',
    '&a *a',
    '!!binary x',
    '|',
    '>-',
    '"',
    "'",
    '\\',
    '@',
    '`',
    '%',
  ],
  ...[
    '__proto__',
    'constructor',
    'toString',
    '<<',
    '---',
    '...',
    '?',
    '-',
    ':',
    '#',
    ' ',
    '\t',
    '\r',
    '\n',
    '\u2028',
    '\0',
  ],
  ...[
    '\uFEFF',
    '\uD800',
    '\uDFFF',
    '🪚',
    'e\u0301',
    '\u202E',
    '\u001B[31m',
    '</svg>',
    '${x}',
    'a'.repeat(300),
    '9'.repeat(60),
  ],
] as const;

const EDITS: readonly ((text: string, other: string, n: number) => string)[] = [
  (_, other) => other,
  (_, other) => other,
  (_text, _other, n) => ODD[n % ODD.length]!,
  () => '',
  (text) => `${text}\n${text}`,
  (text, other) => `${text}, ${other}`,
  (text, other) => `${text}: ${other}`,
  (text) => `[${text}]`,
  (text) => `[${text}`,
  (text) => `{ ${text} }`,
  (text) => `"${text}"`,
  (text) => `'${text}`,
  (text) => `&a ${text}`,
  (text) => `!t ${text}`,
  (text) => `# ${text}`,
  (text, _other, n) => `\n${' '.repeat(n % 9)}${text}`,
  (text, _other, n) => text.slice(0, n % (text.length + 1)),
  (text) => `- ${text}`,
];

interface ByGrammar {
  readonly spot: number;
  readonly other: number;
  readonly edit: number;
  readonly n: number;
}

/** Edits of spots that lie in one another are left out, the first counts. */
function byGrammar({ text, spots }: Sound, all: readonly ByGrammar[]): string {
  const taken: (Spot & { readonly put: string })[] = [];
  for (const { spot, other, edit, n } of all) {
    const at = spots[spot % spots.length]!;
    if (taken.some(({ start, end }) => at.start <= end && start <= at.end)) continue;
    const from = POOL[at.sort];
    const put = EDITS[edit % EDITS.length]!(text.slice(at.start, at.end), from[other % from.length]!, n);
    taken.push({ ...at, put });
  }
  return taken
    .toSorted((a, b) => b.start - a.start)
    .reduce((now, { start, end, put }) => now.slice(0, start) + put + now.slice(end), text);
}

interface ByByte {
  readonly at: number;
  readonly length: number;
  readonly how: number;
  readonly byte: number;
}

/** What is no UTF-8 any more is read as an editor reads it. */
function byByte(text: string, all: readonly ByByte[]): string {
  if (all.length === 0) return text;
  let bytes = Buffer.from(text);
  for (const { at, length, how, byte } of all) {
    const start = at % (bytes.length + 1);
    const [before, run, after] = [
      bytes.subarray(0, start),
      bytes.subarray(start, start + length),
      bytes.subarray(start + length),
    ];
    const put = [
      () => Buffer.from(run.map((one) => one ^ (1 << (byte % 8)))),
      () => Buffer.alloc(0),
      () => Buffer.concat([run, run]),
      () => Buffer.concat([Buffer.from([byte]), run]),
      () => Buffer.alloc(length, byte),
      () => Buffer.from(run).reverse(),
    ][how % 6]!();
    bytes = Buffer.concat(how === 6 ? [before] : [before, put, after]);
  }
  return bytes.toString();
}

const grammar: fc.Arbitrary<readonly ByGrammar[]> = fc.array(
  fc.record({ spot: fc.nat(), other: fc.nat(), edit: fc.nat(), n: fc.nat(400) }),
  { minLength: 1, maxLength: 4 },
);
const bytes: fc.Arbitrary<readonly ByByte[]> = fc.array(
  fc.record({ at: fc.nat(), length: fc.oneof(fc.nat(3), fc.nat(60)), how: fc.nat(6), byte: fc.nat(255) }),
  { minLength: 1, maxLength: 3 },
);

const sound = fc.nat(SOUND.length - 1).map((index) => SOUND[index]!);
const written = fc.oneof(jobText(neutralShop, 2), faultyJob);

/** A file that went wrong. */
export const damaged: fc.Arbitrary<Damaged> = fc.oneof(
  {
    weight: 24,
    arbitrary: fc.tuple(sound, grammar).map(([one, how]) => ({ kind: one.kind, text: byGrammar(one, how) })),
  },
  {
    weight: 14,
    arbitrary: fc.tuple(sound, bytes).map(([one, how]) => ({ kind: one.kind, text: byByte(one.text, how) })),
  },
  {
    weight: 10,
    arbitrary: fc
      .tuple(sound, grammar, bytes)
      .map(([one, how, damage]) => ({ kind: one.kind, text: byByte(byGrammar(one, how), damage) })),
  },
  {
    weight: 1,
    arbitrary: fc.tuple(written, bytes).map(([text, how]) => ({ kind: 'job' as const, text: byByte(text, how) })),
  },
  {
    weight: 1,
    arbitrary: fc
      .tuple(fc.constantFrom('job' as const, 'shop' as const), fc.string({ unit: 'binary', maxLength: 80 }))
      .map(([kind, text]) => ({ kind, text })),
  },
);
