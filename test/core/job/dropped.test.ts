import fc from 'fast-check';
import { expect, test, vi } from 'vitest';
import type { Located } from '../../../shared-core/document/place.js';
import type * as JobCarcasses from '../../../shared-core/job/carcass.js';
import { means } from '../../../shared-core/job/panel-key.js';
import { neutralShop } from '../../../shared-core/shop/neutral.js';
import { sagsOf } from '../../../shared-core/loads/shelf.js';
import { lineUp } from '../../../shared-core/wall/line-up.js';
import type { CarcassAnalysis } from '../../../shared-core/engine.js';
import { analyse } from '../findings/jobs.js';
import { jobText } from './schema-texts.js';

// A value that is read and that nobody then asks for is dropped. Every value of the job as it was read gets an ear.

/** Values of the carcass's own text, and those that somebody asked for, by their paths. */
const heard = vi.hoisted(() => ({ written: new Map<string, readonly unknown[]>(), asked: new Set<string>() }));

vi.mock('../../../shared-core/job/carcass.js', async (original) => {
  const module = await original<typeof JobCarcasses>();
  const readJobCarcass: typeof module.readJobCarcass = (...given) => {
    const read = module.readJobCarcass(...given);
    return { ...read, carcass: withEars(read.carcass) as typeof read.carcass };
  };
  return { ...module, readJobCarcass };
});

function withEars(thing: unknown): unknown {
  if (typeof thing === 'function')
    return (...given: readonly unknown[]) => withEars((thing as (...all: readonly unknown[]) => unknown)(...given));
  if (typeof thing !== 'object' || thing === null) return thing;
  if (Array.isArray(thing)) return thing.map(withEars);
  if (thing instanceof Map)
    return new Map([...(thing as ReadonlyMap<unknown, unknown>)].map(([k, v]) => [k, withEars(v)]));
  if (!isLocated(thing)) return Object.fromEntries(Object.entries(thing).map(([key, one]) => [key, withEars(one)]));
  const { value, place, path, written } = thing;
  const id = JSON.stringify(path);
  // A map or a list holds values of its own; the name of the carcass or of a panel is none.
  const isValue = written && place.part === 'self' && typeof value !== 'object' && !isName(path);
  if (isValue) heard.written.set(id, path);
  const inner = withEars(value);
  return {
    get value() {
      heard.asked.add(id);
      return inner;
    },
    place,
    path,
    written,
  };
}

function isLocated(thing: object): thing is Located<unknown> {
  return 'value' in thing && 'place' in thing && 'path' in thing && 'written' in thing;
}

const isName = (path: Located<unknown>['path']): boolean =>
  path.length === 0 || (path[0] === 'panels' && path.length === 2);

/** Whether the value is for a panel that the job does not make, which is told at the panel's key. */
function isForNoPanel(path: readonly unknown[], { carcass }: CarcassAnalysis): boolean {
  return path[0] === 'panels' && carcass?.panels.some(({ key }) => means(String(path[1]), key)) === false;
}

/** Paths of the values that are told to do nothing, or refused. */
function toldPaths({ known }: CarcassAnalysis): readonly string[] {
  return known
    .filter(({ rule }) => rule === 'value-unused' || rule === 'not-in-diagonal')
    .flatMap(({ repairs }) => repairs.flatMap(({ changes }) => changes.map((change) => JSON.stringify(change.path))));
}

test('on random jobs whatever is written is asked for, or told to do nothing', () => {
  let written = 0;
  let told = 0;
  fc.assert(
    fc.property(jobText(neutralShop, 1), (text) => {
      heard.written.clear();
      heard.asked.clear();
      const box = analyse(text).carcasses[0]!;
      const { spec, carcass } = box;
      if (spec !== null && carcass !== null) {
        lineUp([{ spec, carcass }], neutralShop.habits);
        sagsOf(spec, carcass, neutralShop.habits);
      }
      // What finds no room is left out and told; nobody then asks what it would have been.
      if (box.boring === null || box.known.some(({ rule }) => rule === 'size-impossible')) return;
      // The slow rules tell equal carcasses by all that is written: they would ask for every value.
      const unasked = [...heard.written].filter(([id, path]) => !heard.asked.has(id) && !isForNoPanel(path, box));
      const silent = toldPaths(box);
      // An item of a list is told with its list.
      const isTold = ([, path]: (typeof unasked)[number]): boolean =>
        path.some((_, i) => silent.includes(JSON.stringify(path.slice(0, i + 1))));
      expect(
        unasked.filter((one) => !isTold(one)).map(([id]) => id),
        text,
      ).toEqual([]);
      written += heard.written.size;
      told += unasked.length;
    }),
    { numRuns: 300 },
  );
  expect(written).toBeGreaterThan(300);
  // The ears can tell: some values are asked for by nobody.
  expect(told).toBeGreaterThan(5);
});
