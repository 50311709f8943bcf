import { describe, expect, test } from 'vitest';
import type { Bore } from '../../../../shared-core/boring/model.js';
import type { Panel } from '../../../../shared-core/carcass/model.js';
import { blankOf } from '../../../../shared-core/machining/blank.js';
import { cupOperations } from '../../../../shared-core/machining/plan/cup-operations.js';
import { setUpsOf } from '../../../../shared-core/machining/plan/set-ups.js';
import { compareHoles } from '../../../../shared-core/machining/replay/compare.js';
import { replayPanel } from '../../../../shared-core/machining/replay/replay.js';
import { neutralShop } from '../../../../shared-core/shop/neutral.js';
import type { CupBorer } from '../../../../shared-core/shop/model.js';
import { mm } from '../../specs.js';
import { demoJob, shed } from './jobs.js';

const nowhere = { part: 'self', start: 0, end: 0 } as const;
const press = shed.machines.get('cup-press') as CupBorer;
const stops = (['left', 'right'] as const).map((side) => ({
  name: `cup-${side}`,
  place: nowhere,
  side,
  range: { min: mm(50), max: mm(700) },
  lowers: true,
  stands: null,
}));

/** The demo's first side stands in for a door: all that counts is its size and handedness. */
const door = (): Panel => {
  const panel = demoJob('kitchen.carcass.yaml', shed)[0]?.carcass.panels[0];
  if (!panel) throw new Error('the demo has no panel');
  return panel;
};

/** Cups of 35 mm, 22.5 mm from the edge and 12.5 mm deep: common practice, no source. */
const cup = (v: number, change: Partial<Bore> = {}): Bore => ({
  id: `door:cup:${v}`,
  panel: door().key,
  face: 'inside',
  u: mm(22.5),
  v: mm(v),
  diameter: mm(35),
  depth: mm(12.5),
  through: false,
  purpose: 'cup',
  group: 'door:cups',
  fitting: null,
  place: nowhere,
  ...change,
});

describe('hinge cups', () => {
  test.each([
    ['built-in shop', neutralShop],
    ['demo’s shop', shed],
  ])('of 35 mm can be bored in the %s as it stands', (_, shop) => {
    const borer = [...shop.machines.values()].find((machine) => machine.kind === 'cup')!;
    const { unreachable } = cupOperations('door', door(), blankOf(door()), [cup(96)], borer);
    expect(unreachable).toEqual([]);
  });

  test('are bored one by one against the stops, and the replay makes them', () => {
    const panel = door();
    const bores = [cup(96), cup(panel.length / 1000 - 96)];
    const { operations, unreachable } = cupOperations('door', panel, blankOf(panel), bores, { ...press, stops });
    expect(unreachable).toEqual([]);
    const setUps = setUpsOf([{ operations, unreachable, count: 1 }]).map(({ setUp }) => setUp);
    const replay = replayPanel(setUps, 'door', panel.key, blankOf(panel));
    expect(replay.ok && compareHoles(replay.holes, bores)).toBeNull();
  });

  test.each([
    ['no stops', cup(96), { ...press, stops: [] }, 'stops'],
    [
      'no stop so far out',
      cup(96),
      { ...press, stops: stops.map((stop) => ({ ...stop, range: { min: 0, max: mm(80) } })) },
      'stops',
    ],
    ['too far from the edge', cup(96, { u: mm(60) }), { ...press, stops }, 'distance'],
    ['too deep', cup(96, { depth: mm(25) }), { ...press, stops }, 'depth'],
  ] as const)('%s: says which parameter stands in the way', (_, bore, borer, parameter) => {
    const { operations, unreachable } = cupOperations('door', door(), blankOf(door()), [bore], borer);
    expect(operations).toEqual([]);
    expect(unreachable.map((one) => one.parameter)).toEqual([parameter]);
  });
});
