import { expect, test } from 'vitest';
import type { Axis, Panel, PanelRole } from '../../../shared-core/carcass/model.js';
import { edgeNamed, endNamed } from '../../../shared-core/carcass/roles.js';
import { analyse, demoText } from '../findings/jobs.js';

/** Named after what they are for, not after where they look. */
const OTHERWISE: readonly PanelRole[] = ['door', 'filler', 'blind-panel', 'corner-back'];

/** What stands at the beginning of an axis is called, by who stands before the carcass. */
const EDGE: Partial<Record<Axis, string>> = { '+y': 'front edge', '-z': 'upper edge' };

const FEET = `feet:
  stub: { range: 90 to 150, from-front: 110, from-back: 70, from-side: 60, apart: 700, spacing: 32, diameter: 8, depth: 11, base: 70, rating: 100, clip: { from-top: 40, spacing: 20, diameter: 3, depth: 10 } }
`;

/** Every panel of these jobs that is bored. */
function bored(): readonly Panel[] {
  const jobs = [
    analyse(demoText('kitchen.carcass.yaml'), { 'shed.shop.yaml': demoText('shed.shop.yaml') }),
    analyse(
      'shop: own.shop.yaml\ncarcasses:\n  a: { kind: base, width: 600, plinth: 100, feet: stub }\n  d: { kind: for-drawers, width: 500, fronts: [drawer] }\n',
      { 'own.shop.yaml': FEET },
    ),
  ];
  return jobs.flatMap(({ carcasses }) =>
    carcasses.flatMap(({ carcass, boring }) =>
      carcass!.panels.filter(({ key }) => boring!.bores.some(({ panel }) => panel === key)),
    ),
  );
}

test('the edge that bores are counted from is called by where it looks', () => {
  const panels = bored().filter(({ role }) => !OTHERWISE.includes(role));
  const roles = new Set(panels.map(({ role }) => role));
  for (const role of ['left-side', 'plinth', 'drawer-side', 'drawer-front', 'bottom'] as const)
    expect(roles).toContain(role);
  for (const panel of panels) expect(edgeNamed(panel, 'front'), panel.key).toBe(EDGE[panel.pose.u]);
});

test('so is the end that they are counted from', () => {
  const END: Partial<Record<Axis, string>> = { '+z': 'bottom end', '+x': 'left end', '+y': 'front end' };
  const OTHER: Partial<Record<Axis, string>> = { '+z': 'top end', '+x': 'right end', '+y': 'back end' };
  const panels = bored();
  expect(new Set(panels.map(({ pose }) => pose.v))).toEqual(new Set(['+x', '+y', '+z']));
  for (const panel of panels) {
    expect(endNamed(panel, 'reference-end'), panel.key).toBe(END[panel.pose.v]);
    expect(endNamed(panel, 'far-end'), panel.key).toBe(OTHER[panel.pose.v]);
  }
});
