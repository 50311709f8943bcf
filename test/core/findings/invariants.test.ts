import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { BoreMap } from '../../../shared-core/boring/model.js';
import { isFace } from '../../../shared-core/boring/surface.js';
import type { CarcassContext } from '../../../shared-core/findings/rule.js';
import { boreWithoutMate } from '../../../shared-core/findings/rules/bore-without-mate.js';
import { dowelsUnmatched } from '../../../shared-core/findings/rules/dowels-unmatched.js';
import { rowsNotOpposite } from '../../../shared-core/findings/rules/rows-not-opposite.js';
import { reaches } from '../../../shared-core/fittings/purposes.js';
import { jobArbitrary } from '../arbitraries.js';
import { contextOf } from './contexts.js';

const withBoring = (context: CarcassContext, boring: BoreMap): CarcassContext => ({ ...context, boring });
const saidOf = (context: CarcassContext): Set<string> =>
  new Set(dowelsUnmatched.check(context, new Set()).flatMap(({ bores }) => bores ?? []));

describe('what no job may show', () => {
  test('on random jobs every bore of a joint has one opposite it or a finding, and facing rows stand opposite', () => {
    fc.assert(
      fc.property(jobArbitrary, (job) => {
        const context = contextOf(job);
        if (context === null) return;
        expect(boreWithoutMate.check(context, saidOf(context))).toEqual([]);
        expect(rowsNotOpposite.check(context, new Set())).toEqual([]);
      }),
    );
  });

  test('a bore that is left out, or moved by a micrometre, leaves another one without its mate', () => {
    fc.assert(
      fc.property(jobArbitrary, fc.nat(), fc.boolean(), (job, pick, moved) => {
        const context = contextOf(job);
        const candidates = context?.boring.bores.filter((bore) => reaches(bore) && isFace(bore.face)) ?? [];
        if (context === null || candidates.length === 0) return;
        const spoilt = candidates[pick % candidates.length]!;
        const bores = context.boring.bores.flatMap((bore) =>
          bore.id !== spoilt.id ? [bore] : moved ? [{ ...bore, u: bore.u + 1 }] : [],
        );
        const found = boreWithoutMate.check(withBoring(context, { ...context.boring, bores }), saidOf(context));
        expect(found.length).toBeGreaterThan(0);
      }),
      { numRuns: 60 },
    );
  });

  test('a row that is moved by a micrometre does not stand opposite', () => {
    let tried = 0;
    fc.assert(
      fc.property(jobArbitrary, fc.boolean(), (job, up) => {
        const context = contextOf(job);
        const row = context?.boring.rows.find(({ panel }) => panel === 'left');
        if (
          context === null ||
          row === undefined ||
          !context.boring.rows.some((one) => one.panel === 'right' && one.line === row.line)
        )
          return;
        // Between the sides stands nothing whose rows could be missing.
        if (context.carcass.bays.length > 1) return;
        tried += 1;
        const rows = context.boring.rows.map((one) =>
          one.id !== row.id ? one : up ? { ...one, offset: one.offset + 1 } : { ...one, u: one.u + 1 },
        );
        expect(rowsNotOpposite.check(withBoring(context, { ...context.boring, rows }), new Set())).toHaveLength(1);
      }),
    );
    expect(tried).toBeGreaterThan(5);
  });
});
