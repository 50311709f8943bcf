import DxfParser, { type ICircleEntity, type ILwpolylineEntity } from 'dxf-parser';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { boreCarcass } from '../../../shared-core/boring/bores.js';
import type { Bore } from '../../../shared-core/boring/model.js';
import { buildCarcass } from '../../../shared-core/carcass/build.js';
import type { Panel } from '../../../shared-core/carcass/model.js';
import { UNIT } from '../../../shared-core/carcass/pose.js';
import { layerOf, panelDxf } from '../../../shared-core/papers/render/dxf/panel-dxf.js';
import { jobArbitrary } from '../arbitraries.js';

// Read back with a parser that is not the writer's.
const read = (text: string) => new DxfParser().parseSync(text)!;

/** Where u stands in the file: from the left, seen on the inside face, by the cross product of the panel's axes alone. */
function across({ pose, width }: Panel, u: number): number {
  const [a, b, t] = [UNIT[pose.u], UNIT[pose.v], UNIT[pose.t]];
  const cross = [a.y * b.z - a.z * b.y, a.z * b.x - a.x * b.z, a.x * b.y - a.y * b.x];
  const isRight = cross[0]! * t.x + cross[1]! * t.y + cross[2]! * t.z > 0;
  return (isRight ? u : width - u) / 1000;
}

const near = (a: number, b: number): boolean => Math.abs(a - b) < 1e-4;

test('every bore of random panels is in the file, at its place, in the layer of its kind and depth, and nothing else', () => {
  fc.assert(
    fc.property(jobArbitrary, ({ spec, shop }) => {
      const { carcass } = buildCarcass(spec, shop);
      if (!carcass) return;
      const { bores } = boreCarcass(spec, carcass, shop);
      for (const panel of carcass.panels) {
        const own = bores.filter((bore) => bore.panel === panel.key);
        const { entities, tables } = read(panelDxf(panel, bores));
        const circles = entities.filter((one): one is ICircleEntity => one.type === 'CIRCLE');
        const shapes = entities.filter((one): one is ILwpolylineEntity => one.type === 'LWPOLYLINE');
        const isFaceBore = ({ face }: Bore): boolean => face === 'inside' || face === 'outside';
        expect(circles).toHaveLength(own.filter(isFaceBore).length);
        expect(shapes).toHaveLength(1 + panel.grooves.length + own.filter((bore) => !isFaceBore(bore)).length);
        for (const bore of own) {
          const layer = layerOf(bore);
          expect(Object.keys(tables.layer.layers)).toContain(layer);
          const found = isFaceBore(bore)
            ? circles.some(
                ({ center, radius, layer: on }) =>
                  on === layer &&
                  near(center.x, across(panel, bore.u)) &&
                  near(center.y, bore.v / 1000) &&
                  near(radius, bore.diameter / 2000),
              )
            : shapes.some(({ vertices, layer: on }) => {
                const xs = vertices.map(({ x }) => x);
                const ys = vertices.map(({ y }) => y);
                const end = bore.face === 'reference-end' ? Math.min(...ys) : Math.max(...ys);
                return (
                  on === layer &&
                  near((Math.min(...xs) + Math.max(...xs)) / 2, across(panel, bore.u)) &&
                  near(Math.max(...xs) - Math.min(...xs), bore.diameter / 1000) &&
                  near(Math.max(...ys) - Math.min(...ys), bore.depth / 1000) &&
                  near(end, bore.face === 'reference-end' ? 0 : panel.length / 1000)
                );
              });
          expect(found, bore.id).toBe(true);
        }
        const outline = shapes.find(({ layer }) => layer === 'panel')!.vertices;
        expect(near(Math.max(...outline.map(({ x }) => x)), panel.width / 1000)).toBe(true);
        expect(near(Math.max(...outline.map(({ y }) => y)), panel.length / 1000)).toBe(true);
      }
    }),
    { numRuns: 25 },
  );
});

test('the same panel gives the same bytes', () => {
  fc.assert(
    fc.property(jobArbitrary, ({ spec, shop }) => {
      const { carcass } = buildCarcass(spec, shop);
      if (!carcass) return;
      const { bores } = boreCarcass(spec, carcass, shop);
      const [panel] = carcass.panels;
      expect(panelDxf(panel!, bores)).toBe(panelDxf(panel!, bores));
    }),
    { numRuns: 5 },
  );
});
