import fc from 'fast-check';
import { expect, test } from 'vitest';
import { boreCarcass } from '../../../shared-core/boring/bores.js';
import type { Bore } from '../../../shared-core/boring/model.js';
import { buildCarcass } from '../../../shared-core/carcass/build.js';
import { cutJob } from '../../../shared-core/document/cut.js';
import { readCarcass } from '../../../shared-core/carcass/read.js';
import { readHead } from '../../../shared-core/job/head.js';
import type { CarcassSpec } from '../../../shared-core/carcass/spec.js';
import type { Micrometres, Unit } from '../../../shared-core/length/units.js';
import { writeLength } from '../../../shared-core/length/write.js';
import type { Shop } from '../../../shared-core/shop/model.js';
import { jobArbitrary, type Job } from '../arbitraries.js';

/** The job file that says what a wish says, with every length in `unit`. */
function textOf(wish: Job['wish'], unit: Unit): string {
  const length = (value: Micrometres): string => writeLength(value, unit);
  const standing = (list: Job['wish']['fixedShelves']): string =>
    (list ?? [])
      .map(({ at, bay, board, setback }) => {
        const more = [
          bay === undefined ? '' : `, bay: ${bay}`,
          board === undefined ? '' : `, board: ${board}`,
          setback === undefined ? '' : `, setback: ${length(setback)}`,
        ];
        return `\n      - { at: ${length(at)}${more.join('')} }`;
      })
      .join('') || ' []';
  const panels = Object.entries(wish.panels ?? {}).map(([key, { board, bands }]) => {
    const edges = Object.entries(bands ?? {}).map(([edge, name]) => `${edge}: ${name}`);
    const parts = [
      ...(board === undefined ? [] : [`board: ${board}`]),
      ...(bands ? [`bands: { ${edges.join(', ')} }`] : []),
    ];
    return `\n      ${key}: { ${parts.join(', ')} }`;
  });
  const rowHoles = ({ rowHoles: holes }: Job['wish']): string => {
    const { bays, from, to, roundShelves } = holes!;
    const written = [
      ...(bays === undefined ? [] : [`bays: [${bays.join(', ')}]`]),
      ...(from === undefined ? [] : [`from: ${length(from)}`]),
      ...(to === undefined ? [] : [`to: ${length(to)}`]),
      ...(roundShelves === undefined ? [] : [`round-shelves: ${roundShelves}`]),
    ];
    return `{ ${written.join(', ')} }`;
  };
  return `unit: ${unit}
carcasses:
  test:
    kind: base
    width: ${length(wish.width!)}
    height: ${length(wish.height!)}
    depth: ${length(wish.depth!)}
    board: ${wish.board!}
    band: ${wish.band!}
    joint: ${wish.joint!}
    top: ${wish.top!}
    bottom: ${wish.bottom!}
    rail-width: ${length(wish.railWidth!)}
    plinth: ${length(wish.plinth!)}
    back: { how: ${wish.back!}, board: ${wish.backBoard!}, groove: ${length(wish.groove!)}, inset: ${length(wish.inset!)} }
    rows: ${wish.rows!}
    row-holes: ${rowHoles(wish)}
    end-panels: ${wish.endPanels!}
    fillers: ${wish.fillers?.left === undefined ? '{}' : `{ left: ${length(wish.fillers.left)} }`}
    row-offset: ${length(wish.rowOffset!)}
    row-setback: ${length(wish.rowSetback!)}
    dividers:${standing(wish.dividers)}
    fixed-shelves:${standing(wish.fixedShelves)}
    loose-shelves:${standing(wish.looseShelves)}
${panels.length > 0 ? `    panels:${panels.join('')}\n` : ''}`;
}

function specFrom(text: string, shop: Shop): CarcassSpec {
  const parts = cutJob(text);
  const { head, defaults, findings } = readHead(parts);
  const read = readCarcass(parts.carcasses[0]!, head, defaults, shop);
  expect([...findings, ...read.findings]).toEqual([]);
  return read.spec!;
}

function boresOf(spec: CarcassSpec, shop: Shop): readonly Omit<Bore, 'place'>[] {
  const { carcass, problems } = buildCarcass(spec, shop);
  expect(problems).toEqual([]);
  return boreCarcass(spec, carcass!, shop).bores.map(({ place: _place, ...bore }) => bore);
}

/* The international inch is 25.4 mm exactly (International Yard and Pound agreement, 1959). */
test('a job written in inches has the bores of the same job written in millimetres', () => {
  fc.assert(
    fc.property(jobArbitrary, ({ shop, wish, spec }) => {
      const inMillimetres = boresOf(specFrom(textOf(wish, 'mm'), shop), shop);
      const inInches = boresOf(specFrom(textOf(wish, 'in'), shop), shop);
      expect(inInches).toEqual(inMillimetres);
      expect(inMillimetres).toEqual(boresOf(spec, shop));
    }),
    { numRuns: 200 },
  );
});
