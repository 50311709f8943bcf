import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { EngineHost, JobAnalysis } from '../../../shared-core/engine.js';
import { Engine } from '../../../shared-core/engine.js';
import { asMessage } from '../../in-words.js';

const demo = (file: string): string => readFileSync(join(import.meta.dirname, '..', '..', 'fixtures', file), 'utf8');
const URI = 'file:///jobs/demo.carcass.yaml';

/** Everything that a reader of an analysis can see, with the places in the whole file. */
function seen(analysis: JobAnalysis): unknown {
  return {
    findings: analysis.findings().map(({ finding, carcass }) => ({
      ...finding,
      carcass,
      place: analysis.locate(finding.place, carcass),
      related: finding.related.map((one) => analysis.locate(one.place, one.carcass ?? carcass)),
    })),
    carcasses: analysis.carcasses,
    unit: analysis.unit,
    shop: analysis.shop,
  };
}

interface Edit {
  readonly at: number;
  readonly length: number;
  readonly text: string;
}

/** Pieces that break, mend and move things: what is typed, pasted and taken out. */
const pieces = fc.oneof(
  {
    weight: 4,
    arbitrary: fc.constantFrom(
      '',
      ' ',
      '\n',
      '    ',
      ':',
      '- ',
      '#',
      '0',
      '12',
      '1/2 in',
      '\t',
      '"',
      '{',
      '}',
      '[',
      ']',
      '\r\n',
    ),
  },
  {
    weight: 2,
    arbitrary: fc.constantFrom(
      '\n    loose-shelves: 1',
      '\n    height: 730',
      '\n  more:\n    kind: wall\n    width: 500',
      'unit: in\n',
    ),
  },
  {
    weight: 1,
    arbitrary: fc.constantFrom(
      '&a ',
      '*a',
      '---\n',
      'carcasses:\n',
      'defaults:\n  depth: 500\n',
      'shop: other.shop.yaml\n',
      '\u{1F6AA}',
    ),
  },
);
const edits = fc.array(
  fc.record({ at: fc.nat(5000), length: fc.oneof(fc.constant(0), fc.nat(3), fc.nat(80)), text: pieces }),
  { minLength: 1, maxLength: 6 },
);

function applied(text: string, { at, length, text: piece }: Edit): string {
  const start = at % (text.length + 1);
  return `${text.slice(0, start)}${piece}${text.slice(start + length)}`;
}

const shops: EngineHost = {
  readShop: (_, reference) =>
    reference === 'shed.shop.yaml'
      ? { ok: true, uri: 'file:///jobs/shed.shop.yaml', text: demo('shed.shop.yaml') }
      : { ok: false, message: asMessage('There is no such file.') },
};

// A text full of faults takes longest: each of its repairs is tried.
const RUNS = { 'kitchen.carcass.yaml': 20, 'studio.carcass.yaml': 30, 'every-finding.carcass.yaml': 4 };

for (const [file, numRuns] of Object.entries(RUNS)) {
  test(`after any edits of ${file} the result is that of a cold analysis`, () => {
    const text = demo(file);
    fc.assert(
      fc.property(edits, (run) => {
        const warm = new Engine(shops);
        let now = text;
        warm.analyse(URI, now);
        for (const edit of run) {
          now = applied(now, edit);
          warm.analyse(URI, now);
        }
        // The last text again, after a detour, comes from memory in part.
        expect(seen(warm.analyse(URI, now))).toEqual(seen(new Engine(shops).analyse(URI, now)));
      }),
      { numRuns },
    );
  });
}
