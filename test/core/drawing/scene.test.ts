import { boreMapOf } from './bore-map-of.js';
import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import type { Bore } from '../../../shared-core/boring/model.js';
import type { Axis, Panel } from '../../../shared-core/carcass/model.js';
import { boreMapScene } from '../../../shared-core/drawing/bore-map/bore-map.js';
import { shapeBox } from '../../../shared-core/drawing/scene/extent.js';
import { boxOf, contains, grow, overlap } from '../../../shared-core/drawing/scene/boxes.js';
import type { Drawn } from '../../../shared-core/drawing/drawn.js';
import { describe as inWords } from '../../../shared-core/drawing/bore-map/hole-table.js';
import { textBox } from '../../../shared-core/drawing/scene/lettering.js';
import { wider } from '../../../shared-core/drawing/scene/wider.js';
import {
  SCREEN,
  type BoreShape,
  type Box,
  type BracketShape,
  type CircleShape,
  type MarkShape,
  type Medium,
  type Scene,
  type TextShape,
} from '../../../shared-core/drawing/scene/scene.js';
import { allPanelsScene } from '../../../shared-core/drawing/bore-map/all-panels.js';
import { toSvg } from '../../../shared-core/drawing/render/svg.js';
import { demoShop, demoText, drawnOf } from './demo.js';
import { bore, handMade, um, unmatched } from './panels.js';

let drawn: readonly Drawn[] = [];
beforeAll(() => {
  const shop = demoShop();
  drawn = ['kitchen', 'studio', 'every-finding'].flatMap((job) => drawnOf(demoText(`${job}.carcass.yaml`), shop));
  all = [...everyScene()];
});

const boresIn = (scene: Scene): BoreShape[] =>
  scene.shapes.filter((shape): shape is BoreShape => shape.kind === 'bore');
const textsIn = (scene: Scene): TextShape[] =>
  scene.shapes.filter((shape): shape is TextShape => shape.kind === 'text');

interface Drawing {
  readonly what: string;
  readonly scene: Scene;
  readonly one: Drawn;
  readonly panel: Panel | null;
}
let all: readonly Drawing[] = [];
const scenes = (): readonly Drawing[] => all;

/** Paper, half a window, a narrow pane of 350 pixels and a wide one that is not high. */
const MEDIA: readonly Medium[] = [
  'paper',
  SCREEN,
  { pane: { width: 97, height: 130 }, nearer: 1 },
  { pane: { width: 320, height: 90 }, nearer: 1 },
];
const marksOf = ({ shapes }: Scene): { brackets: readonly BracketShape[]; rings: readonly MarkShape[] } => ({
  brackets: shapes.filter((shape): shape is BracketShape => shape.kind === 'bracket'),
  rings: shapes.filter((shape): shape is MarkShape => shape.kind === 'mark'),
});
const nameOf = (medium: Medium): string =>
  medium === 'paper' ? 'paper' : `a pane of ${medium.pane.width} by ${medium.pane.height}`;

/** Every bore map of the demo jobs and the drawings of all panels, on paper and on the screen. */
function* everyScene(): Generator<Drawing> {
  for (const one of drawn) {
    for (const medium of MEDIA) {
      yield { what: `${one.name}, ${nameOf(medium)}`, scene: allPanelsScene(one, medium), one, panel: null };
      for (const panel of one.carcass.panels) {
        yield {
          what: `${one.name}, ${panel.key}, ${nameOf(medium)}`,
          scene: boreMapScene(one, panel.key, medium)!,
          one,
          panel,
        };
      }
    }
  }
}

describe('bore maps of the demo jobs', () => {
  it('mark both references of a bored panel: triangles that stand on the front edge and on the reference end', () => {
    let [ends, named, bored] = [0, 0, 0];
    for (const { what, scene, panel } of scenes()) {
      if (panel === null || boresIn(scene).length === 0) continue;
      bored += 1;
      const paths = new Map(scene.shapes.flatMap((one) => (one.kind === 'path' ? [[one.key, one] as const] : [])));
      expect(paths.has(`${panel.key}:datum-low`) && paths.has(`${panel.key}:datum-high`), what).toBe(true);
      const face = paths.get(`${panel.key}:face`)!.points;
      const mark = paths.get(`${panel.key}:datum-end`);
      if (mark === undefined) continue;
      ends += 1;
      const upright = scene.caption.endsWith('down.');
      const right = scene.caption.endsWith('on the right.');
      const [tip] = mark.points;
      if (upright) expect(tip!.y, what).toBeCloseTo(Math.max(...face.map(({ y }) => y)), 6);
      else expect(tip!.x, what).toBeCloseTo((right ? Math.max : Math.min)(...face.map(({ x }) => x)), 6);
      named += Number(textsIn(scene).some(({ key }) => key === `${panel.key}:reference-end:name`));
    }
    // A small panel that is full of figures may have no room for it; the caption then names it alone.
    expect(ends).toBeGreaterThan(bored * 0.9);
    expect(named).toBeGreaterThan(bored * 0.85);
  });

  it('are many', () => {
    expect(drawn.length).toBeGreaterThan(20);
  });

  it('draw every bore exactly once', () => {
    for (const { what, scene, one, panel } of scenes()) {
      const wanted = one.boring.bores
        .filter(({ panel: owner }) => panel === null || owner === panel.key)
        .map(({ id }) => id);
      const shown = boresIn(scene).map(({ bore: id }) => id);
      expect(shown.sort(), what).toEqual([...wanted].sort());
    }
  });

  it('list every bore in exactly one line of the hole table, and number it so', () => {
    for (const { what, scene } of scenes()) {
      const listed = scene.table.flatMap(({ bores }) => bores);
      expect(new Set(listed).size, what).toBe(listed.length);
      expect([...listed].sort(), what).toEqual(
        boresIn(scene)
          .map(({ bore: id }) => id)
          .sort(),
      );
      expect(
        scene.table.map(({ number }) => number),
        what,
      ).toEqual(scene.table.map((_, index) => index + 1));
      const numbers = new Map(scene.table.flatMap(({ number, bores }) => bores.map((id) => [id, number] as const)));
      for (const shape of boresIn(scene)) expect(shape.number, what).toBe(numbers.get(shape.bore));
    }
  });

  it('show faces truly: distances as in the carcass, and never a mirror image', () => {
    let triangles = 0;
    for (const { what, scene, one, panel } of scenes()) {
      if (panel === null) continue;
      const places = boresIn(scene).filter(({ face }) => face === 'inside' || face === 'outside');
      const sample = [places[0], places.at(-1), places[Math.floor(places.length / 2)]].filter(
        (place) => place !== undefined,
      );
      const points = sample.map((shape) => ({ page: shape, space: inCarcass(panel, boreOf(one, shape.bore)) }));
      for (const a of points) {
        for (const b of points) {
          const onPage = Math.hypot(a.page.cx - b.page.cx, a.page.cy - b.page.cy);
          expect(onPage, what).toBeCloseTo(Math.hypot(...difference(a.space, b.space)) / 1000, 6);
        }
      }
      const [p, q, r] = points;
      if (p === undefined || q === undefined || r === undefined) continue;
      const turn = cross(difference(q.space, p.space), difference(r.space, p.space));
      const seen = scene.caption.startsWith('Inside') ? 1 : -1;
      const toReader = dot(turn, vector(panel.pose.t)) * seen;
      const onPage = -(
        (q.page.cx - p.page.cx) * (r.page.cy - p.page.cy) -
        (q.page.cy - p.page.cy) * (r.page.cx - p.page.cx)
      );
      if (Math.abs(onPage) < 1) continue;
      triangles += 1;
      expect(Math.sign(onPage), what).toBe(Math.sign(toReader));
    }
    expect(triangles).toBeGreaterThan(50);
  });

  it('fold ends out about the edge that they share with the face, counted from the outside face', () => {
    let checked = 0;
    for (const { what, scene, one, panel } of scenes()) {
      if (panel === null) continue;
      const face = boxOfKey(scene, `${panel.key}:face`);
      for (const shape of boresIn(scene)) {
        if (shape.face !== 'reference-end' && shape.face !== 'far-end') continue;
        const { u, v } = boreOf(one, shape.bore);
        const end = boxOfKey(scene, `${panel.key}:${shape.face}`);
        expect(
          contains(end, { x: shape.cx - shape.r, y: shape.cy - shape.r, width: 2 * shape.r, height: 2 * shape.r }),
          what,
        ).toBe(true);
        expect(overlap(end, face), what).toBe(false);
        const upright = Math.abs(end.width - face.width) < 1e-6 && end.x === face.x;
        // From the edge of the strip that is turned away from the face, which is the outside where the inside is seen.
        const beyond = upright
          ? end.y > face.y
            ? end.y + end.height - shape.cy
            : shape.cy - end.y
          : end.x > face.x
            ? end.x + end.width - shape.cx
            : shape.cx - end.x;
        const across = scene.caption.startsWith('Inside') ? v / 1000 : (panel.thickness - v) / 1000;
        expect(beyond, what).toBeCloseTo(across, 6);
        // The same u as on the face.
        const along = upright ? shape.cx - face.x : face.y + face.height - shape.cy;
        expect(
          [u / 1000, (panel.width - u) / 1000].some((length) => Math.abs(along - length) < 1e-6),
          what,
        ).toBe(true);
        checked += 1;
      }
    }
    expect(checked).toBeGreaterThan(300);
  });

  it('draw no lettering over other lettering, over a bore or beyond the frame', () => {
    expect(all.flatMap(({ what, scene }) => clashes(scene).map((clash) => `${what}: ${clash}`))).toEqual([]);
  });

  it('keep the figures along a panel off its length, in a wide face too, and off the line that its length ends at', () => {
    let figures = 0;
    for (const { what, scene, panel } of scenes()) {
      if (panel === null) continue;
      const length = textsIn(scene).find(({ key }) => key === `${panel.key}:length:figure`)!;
      const end = scene.shapes.find(({ key }) => key === `${panel.key}:length:to:extension`);
      if (end?.kind !== 'path') throw new Error(`${what}: no line`);
      for (const one of textsIn(scene).filter(({ key }) => new RegExp(`^${panel.key}:v:.*:figure$`).test(key))) {
        figures += 1;
        const box = textBox(one, scene.scale);
        if (one.turn === 0)
          expect(overlap(wider(box), textBox(length, scene.scale)), `${what}: ${one.text}`).toBe(false);
        expect(overlap(box, boxOf(end.points, 0)), `${what}: ${one.text} at the end`).toBe(false);
      }
    }
    expect(figures).toBeGreaterThan(100);
  });

  it('put the number of a line into a circle that covers neither bores nor lettering', () => {
    let circles = 0;
    let lines = 0;
    for (const { what, scene } of scenes()) {
      if (scene.view === 'all-panels') continue;
      lines += scene.table.length;
      const rings = scene.shapes.filter(
        (shape): shape is CircleShape => shape.kind === 'circle' && shape.class === 'number',
      );
      circles += rings.length;
      for (const ring of rings) {
        const box = shapeBox(ring, scene.scale);
        for (const hole of boresIn(scene)) expect(overlap(box, shapeBox(hole, scene.scale)), what).toBe(false);
        for (const text of textsIn(scene)) {
          if (text.class !== 'number')
            expect(overlap(box, textBox(text, scene.scale)), `${what}: ${text.text}`).toBe(false);
        }
        for (const other of rings)
          if (other !== ring) expect(overlap(box, shapeBox(other, scene.scale)), what).toBe(false);
      }
    }
    expect(circles / lines).toBeGreaterThan(0.97);
  });

  it('dimension every place that is bored, each once', () => {
    for (const { what, scene, one, panel } of scenes()) {
      if (panel === null || scene.reader !== 'mm') continue;
      const bores = one.boring.bores.filter(({ panel: owner }) => owner === panel.key);
      const figures = (prefix: string): number[] =>
        textsIn(scene)
          .filter(({ key }) => key.startsWith(`${panel.key}:${prefix}:`) && key.endsWith(':figure'))
          .map(({ text }) => um(Number(text)))
          .sort((a, b) => a - b);
      const grooves = panel.grooves.flatMap(({ from, to }) => [from, to]).filter((u) => u > 0 && u < panel.width);
      const cut = panel.corner;
      const us = distinct([...bores.map(({ u }) => u), ...grooves, ...(cut ? [cut.u] : [])]);
      expect(figures('u'), what).toEqual(us.length === 0 ? [] : distinct([0, ...us]));
      const onFaces = bores.filter(({ face }) => face === 'inside' || face === 'outside');
      const rows = one.boring.rows.filter(({ panel: owner }) => owner === panel.key);
      const vs = distinct([
        ...onFaces.filter(({ purpose }) => purpose !== 'row').map(({ v }) => v),
        ...rows.flatMap(({ offset, pitch, count, holes }) => {
          const [first, last] = [holes?.[0] ?? 0, holes?.at(-1) ?? count - 1];
          return [offset + first * pitch, offset + last * pitch];
        }),
        ...(cut ? [cut.end === 'reference-end' ? cut.v : panel.length - cut.v] : []),
      ]);
      expect(figures('v'), what).toEqual(vs.length === 0 ? [] : distinct([0, ...vs]));
    }
  });

  it('have keys that are unique, and a place in the text for everything that says it has one', () => {
    for (const { what, scene } of scenes()) {
      const keys = scene.shapes.map(({ key }) => key);
      expect(new Set(keys).size, what).toBe(keys.length);
      for (const { source } of [...scene.shapes, ...scene.table, ...scene.findings]) {
        if (source !== undefined) expect(scene.sources[source], `${what}: ${source}`).toBeDefined();
      }
      for (const { source } of boresIn(scene)) expect(source, what).toBeDefined();
    }
  });

  it('fit paper: a bore map on A4, to a scale of ISO 5455', () => {
    for (const { what, scene } of scenes()) {
      if (!what.endsWith('paper')) continue;
      expect([1, 2, 5, 10, 20, 50], what).toContain(scene.scale);
      const [long, short] = [scene.frame.width, scene.frame.height]
        .map((side) => side / scene.scale)
        .sort((a, b) => b - a);
      expect(long, what).toBeLessThan(297);
      if (scene.view === 'all-panels') expect(short, what).toBeLessThan(210);
    }
  });
});

describe('a bore map', () => {
  it('says in words what it shows', () => {
    const scene = boreMapScene(handMade([unmatched]), 'left')!;
    expect(scene.caption).toBe('Inside face up; front edge on the left, bottom end down.');
    expect(boreMapScene(handMade(), 'right')!.caption).toBe(
      'Inside face up; front edge on the right, bottom end down.',
    );
    expect(boreMapScene(handMade(), 'bottom')!.caption).toBe(
      'Inside face up; front edge toward you, left end on the left.',
    );
    expect(boreMapScene(handMade(), 'top')!.caption).toBe(
      'Inside face up; front edge toward you, left end on the right.',
    );
    expect(scene.facts).toEqual([
      { word: 'Finished', value: '720 × 560 × 16 mm' },
      { word: 'Cut', value: '720 × 559 mm' },
      { word: 'Board', value: 'board-16' },
      { word: 'Banded', value: 'front edge with band-1' },
    ]);
    expect(inWords(scene)).toBe(
      'sink, left. Inside face up; front edge on the left, bottom end down. Finished: 720 × 560 × 16 mm. Cut: 720 × 559 mm. ' +
        'Board: board-16. Banded: front edge with band-1. 54 bores. ' +
        'Findings: The bore of bottom at 213 mm from the front edge has no mate in left.',
    );
    expect(boresIn(scene).find(({ bore: id }) => id === 'left:row-front:3')?.about).toBe(
      'Front row, hole 4 of 23: Ø 5 mm, 13 mm deep. Inside face, 37 mm from the front edge, 104 mm from the bottom end.',
    );
    expect(boresIn(scene).find(({ bore: id }) => id === 'left:bottom/left:1')?.about).toBe(
      'Dowel to bottom, dowel-8x30: Ø 8 mm, 12 mm deep. Inside face, 213 mm from the front edge, 8 mm from the bottom end.',
    );
  });

  it('has the name of the face beside its loose shelves', () => {
    const one = drawn.find(({ name }) => name === 'corner-base')!;
    const scene = boreMapScene(one, 'left', SCREEN)!;
    const name = textsIn(scene).find(({ key }) => key === 'left:face-name')!;
    const shelves = scene.shapes.filter(({ class: kind }) => kind === 'loose-shelf');
    expect(shelves).not.toEqual([]);
    for (const shelf of shelves)
      expect(overlap(shapeBox(shelf, scene.scale), textBox(name, scene.scale)), shelf.key).toBe(false);
  });

  it('has a hole table with rows and joints', () => {
    const { heads, table } = boreMapScene(handMade(), 'left')!;
    expect(heads).toEqual([
      'No.',
      'Qty',
      'Face',
      'From front edge, mm',
      'From bottom end, mm',
      'Ø, mm',
      'Depth, mm',
      'For',
    ]);
    expect(
      table.map(({ number, count, face, u, v, diameter, depth, use }) => [
        number,
        count,
        face,
        u,
        v,
        diameter,
        depth,
        use,
      ]),
    ).toEqual([
      [1, 4, 'inside', '53, 213, 373, 501', '8', '8', '12', 'dowel to bottom'],
      [2, 4, 'inside', '53, 213, 373, 501', '712', '8', '12', 'dowel to top'],
      [3, 23, 'inside', '37', '8 to 712 by 32', '5', '13', 'front row'],
      [4, 23, 'inside', '485', '8 to 712 by 32', '5', '13', 'rear row'],
    ]);
  });

  it('gives pairs of figures where bores of a group form no grid', () => {
    const base = handMade();
    const odd = [
      bore('left:x:0', 'left', 'inside', 100, 200, 8, 12, 'dowel', 'x'),
      bore('left:x:1', 'left', 'inside', 150, 250, 8, 12, 'dowel', 'x'),
    ];
    const scene = boreMapScene(
      {
        ...base,
        boring: boreMapOf([], odd),
      },
      'left',
    )!;
    expect(scene.table[0]).toMatchObject({ u: '100; 150', v: '200; 250' });
  });

  it('counts in inches to a thousandth', () => {
    const scene = boreMapScene(handMade([], 'in'), 'left')!;
    expect(scene.facts[0]?.value).toBe('28.346 × 22.047 × 0.63 in');
    expect(scene.table[2]).toMatchObject({ u: '1.457', v: '0.315 to 28.031 by 32 mm', diameter: '5 mm' });
    expect(scene.heads).toContain('Ø, in');
  });

  it('is the mirror image for the right side of the left one', () => {
    const [left, right] = ['left', 'right'].map((key) =>
      boresIn(boreMapScene(handMade(), key)!).map(({ cx, cy, r }) => ({ cx, cy, r })),
    );
    const sort = (list: { cx: number; cy: number; r: number }[]): unknown =>
      list.sort((a, b) => a.cx - b.cx || a.cy - b.cy || a.r - b.r);
    expect(sort(right!.map(({ cx, ...rest }) => ({ cx: 560 - cx, ...rest })))).toEqual(sort(left!));
  });

  it('rings the bores that a finding concerns, the gravest finding of each', () => {
    const warning = {
      ...unmatched,
      rule: 'near-edge',
      severity: 'warning' as const,
      bores: ['left:bottom/left:1', 'left:bottom/left:2'],
    };
    const scene = boreMapScene(handMade([warning, unmatched]), 'left')!;
    const marks = scene.shapes.flatMap((shape) => (shape.kind === 'mark' ? [[shape.bore, shape.severity]] : []));
    expect(marks).toEqual([
      ['left:bottom/left:1', 'error'],
      ['left:bottom/left:2', 'warning'],
    ]);
    const right = boreMapScene(handMade([unmatched]), 'right')!;
    expect(right.findings).toEqual([]);
    expect(allPanelsScene(handMade([unmatched])).findings).toHaveLength(1);
  });

  it('marks a row that a finding concerns with one bracket, clear of the row and on its inner side', () => {
    const row = handMade().boring.bores.filter(({ group }) => group === 'left:row-front');
    const bores = row.map(({ id }) => id);
    const scene = boreMapScene(handMade([{ ...unmatched, rule: 'row-unbalanced', bores }]), 'left')!;
    const { brackets, rings } = marksOf(scene);
    expect(rings).toEqual([]);
    expect(brackets.map((one) => one.bores)).toEqual([bores]);
    const own = boresIn(scene).filter(({ bore: id }) => bores.includes(id));
    const [bracket] = brackets;
    const ys = bracket!.points.map(({ y }) => y);
    expect(Math.min(...ys)).toBeLessThan(Math.min(...own.map(({ cy, r }) => cy - r)));
    expect(Math.max(...ys)).toBeGreaterThan(Math.max(...own.map(({ cy, r }) => cy + r)));
    for (const { x } of bracket!.points) {
      for (const { cx, r } of own) expect(Math.abs(x - cx)).toBeGreaterThan(r);
      expect(Math.abs(x - 280)).toBeLessThan(Math.abs(own[0]!.cx - 280));
    }
  });

  it('breaks the bracket where bores of the row are sound, and rings what stands alone', () => {
    const row = handMade()
      .boring.bores.filter(({ group }) => group === 'left:row-front')
      .sort((a, b) => a.v - b.v)
      .map(({ id }) => id);
    const bores = [...row.slice(0, 4), row[6]!, ...row.slice(8, 12)];
    const scene = boreMapScene(handMade([{ ...unmatched, rule: 'row-unbalanced', bores }]), 'left')!;
    const { brackets, rings } = marksOf(scene);
    expect(brackets.map((one) => one.bores)).toEqual([row.slice(0, 4), row.slice(8, 12)]);
    expect(rings.map((one) => one.bore)).toEqual([row[6]]);
  });

  it('draws what is bored from the face that lies down dashed, and what goes through whole', () => {
    const base = handMade();
    const below = bore('left:x:0', 'left', 'outside', 300, 300, 8, 12, 'cam', 'x');
    const through: Bore = { ...bore('left:x:1', 'left', 'outside', 300, 400, 7, 16, 'clearance', 'x'), through: true };
    const scene = boreMapScene(
      { ...base, boring: { ...base.boring, bores: [...base.boring.bores, below, through] } },
      'left',
    )!;
    const hidden = boresIn(scene).filter((shape) => shape.hidden);
    expect(hidden.map(({ bore: id }) => id)).toEqual(['left:x:0']);
    expect(scene.notes).toContain('Dashed circles are bored from the outside face.');
  });

  it('is null for a panel that is not there', () => {
    expect(boreMapScene(handMade(), 'shelf-9')).toBeNull();
  });

  it('does not depend on the order in which bores, rows and findings of different panels are listed', () => {
    const base = handMade([unmatched]);
    const wanted = toSvg(boreMapScene(base, 'left')!);
    fc.assert(
      fc.property(
        fc.shuffledSubarray([...base.boring.bores], { minLength: base.boring.bores.length }),
        fc.shuffledSubarray([...base.boring.rows], { minLength: 4 }),
        (bores, rows) => {
          expect(
            toSvg(
              boreMapScene(
                {
                  ...base,
                  boring: boreMapOf(rows, bores),
                },
                'left',
              )!,
            ),
          ).toBe(wanted);
        },
      ),
      { numRuns: 50 },
    );
  });

  it('keeps the panel where it is, however near the reader goes', () => {
    const places = (nearer: number): unknown =>
      boresIn(boreMapScene(handMade(), 'bottom', { ...SCREEN, nearer })!).map(({ bore: id, cx, cy }) => [id, cx, cy]);
    // End views stand nearer with smaller lettering; faces do not move.
    const faces = (nearer: number): unknown =>
      boresIn(boreMapScene(handMade(), 'left', { ...SCREEN, nearer })!).map(({ bore: id, cx, cy }) => [id, cx, cy]);
    expect(faces(8)).toEqual(faces(1));
    expect(places(8)).not.toEqual(places(1));
  });
});

describe('a bore map of any carcass', () => {
  it('draws every bore once and lets no lettering clash', () => {
    const shop = demoShop();
    const kind = fc.constantFrom('base', 'wall', 'tall', 'for-drawers', 'open');
    const joint = fc.constantFrom('dowel-8x30', 'screw-7x50', 'cam-15');
    const carcass = fc.record({
      kind,
      joint,
      width: fc.integer({ min: 150, max: 1800 }),
      depth: fc.integer({ min: 150, max: 900 }),
      height: fc.option(fc.integer({ min: 150, max: 2600 })),
      fixed: fc.integer({ min: 0, max: 5 }),
      loose: fc.integer({ min: 0, max: 4 }),
      dividers: fc.integer({ min: 0, max: 3 }),
      unit: fc.constantFrom('mm', 'in'),
      top: fc.constantFrom('between', 'over', 'rails'),
    });
    let maps = 0;
    fc.assert(
      fc.property(carcass, (c) => {
        const lines = [
          `unit: ${c.unit}`,
          'carcasses:',
          '  any:',
          `    kind: ${c.kind}`,
          `    width: ${c.width} mm`,
          `    depth: ${c.depth} mm`,
          `    joint: ${c.joint}`,
          `    top: ${c.top}`,
        ];
        if (c.height !== null) lines.push(`    height: ${c.height} mm`);
        lines.push(`    fixed-shelves: ${c.fixed}`, `    loose-shelves: ${c.loose}`, `    dividers: ${c.dividers}`);
        for (const one of drawnOf(lines.join('\n'), shop)) {
          const scene = allPanelsScene(one, SCREEN);
          expect(
            boresIn(scene)
              .map(({ bore: id }) => id)
              .sort(),
          ).toEqual(one.boring.bores.map(({ id }) => id).sort());
          expect(clashes(scene)).toEqual([]);
          for (const { key } of one.carcass.panels) {
            for (const medium of MEDIA)
              expect(clashes(boreMapScene(one, key, medium)!), `${key} on ${nameOf(medium)}`).toEqual([]);
            maps += 1;
          }
        }
      }),
      { numRuns: 60 },
    );
    expect(maps).toBeGreaterThan(200);
  });
});

describe('a pane', () => {
  const inPane = (one: Drawn, key: string, width: number, height: number): Scene =>
    boreMapScene(one, key, { pane: { width, height }, nearer: 1 })!;

  it('is filled, with lettering of one size', () => {
    for (const one of drawn) {
      for (const { key } of one.carcass.panels) {
        for (const [width, height] of [
          [175, 138],
          [110, 130],
          [330, 150],
        ] as const) {
          const { frame, scale } = inPane(one, key, width, height);
          const part = Math.max(frame.width / scale / width, frame.height / scale / height);
          // A panel has its part of the pane, so lettering that needs more than the rest makes the frame larger.
          expect(part, `${one.name}, ${key} in ${width} by ${height}`).toBeLessThan(1.12);
          expect(part, `${one.name}, ${key} in ${width} by ${height}`).toBeGreaterThan(0.8);
        }
      }
    }
  });

  it('lays a tall panel on its side where that makes it larger by half, its front edge toward the reader', () => {
    const larder = drawn.find(({ name }) => name === 'larder')!;
    const lies = (key: string, width: number, height: number): boolean => {
      const { width: x, height: y } = boxOfKey(inPane(larder, key, width, height), `${key}:face`);
      return x > y;
    };
    expect(lies('left', 320, 120)).toBe(true);
    expect(lies('left', 120, 160)).toBe(false);
    expect(boxOfKey(boreMapScene(larder, 'left')!, 'left:face').height).toBe(2064);
    for (const key of ['left', 'right']) {
      const scene = inPane(larder, key, 320, 120);
      expect(scene.caption).toMatch(/^Inside face up; front edge toward you, bottom end on the (left|right)\.$/);
      const side = larder.carcass.panels.find((panel) => panel.key === key)!;
      for (const bore of boresIn(scene)) {
        const { u, v, face } = larder.boring.bores.find(({ id }) => id === bore.bore)!;
        if (face !== 'inside') continue;
        expect(bore.cy).toBeCloseTo((side.width - u) / 1000, 6);
        // Seen from inside, the left side has its front edge on the left: turned down, its bottom end comes to the left.
        const bottomOnLeft = scene.caption.endsWith('left.');
        expect(bore.cx).toBeCloseTo((bottomOnLeft ? v : side.length - v) / 1000, 6);
      }
    }
    // A true view, not a mirror image: the two sides of a carcass lie the other way about.
    expect(inPane(larder, 'left', 320, 120).caption).not.toBe(inPane(larder, 'right', 320, 120).caption);
  });

  it('leaves the scale while an edit moves the lettering only a little', () => {
    const at = (height: number): number =>
      inPane(
        drawnOf(`carcasses:\n  a: { kind: base, width: 600, fixed-shelves: [${height}] }\n`, demoShop())[0]!,
        'left',
        175,
        138,
      ).scale;
    expect(new Set([297, 300, 329, 361].map(at)).size).toBe(1);
  });
});

describe('all panels of a carcass', () => {
  it('shows every panel once, to one scale, none over another', () => {
    for (const one of drawn) {
      for (const medium of MEDIA) {
        const scene = allPanelsScene(one, medium);
        const cells = new Map<string, Box>();
        for (const shape of scene.shapes) {
          const box = shapeBox(shape, scene.scale);
          const cell = cells.get(shape.panel);
          cells.set(shape.panel, cell === undefined ? box : union(cell, box));
        }
        expect([...cells.keys()].sort()).toEqual(one.carcass.panels.map(({ key }) => key).sort());
        const boxes = [...cells.entries()];
        boxes.forEach(([name, box], index) => {
          for (const [other, beside] of boxes.slice(index + 1))
            expect(overlap(box, beside), `${one.name}: ${name} and ${other}`).toBe(false);
        });
        for (const panel of one.carcass.panels) {
          const face = boxOfKey(scene, `${panel.key}:face`);
          expect([face.width, face.height].map((side) => Math.round(side * 1000)).sort()).toEqual(
            [panel.width, panel.length].sort(),
          );
        }
      }
    }
  });
});

/** What is written over something else, or beyond the frame. */
function clashes(scene: Scene): string[] {
  const found: string[] = [];
  const texts = textsIn(scene).map((shape) => ({
    name: `${shape.text} (${shape.key})`,
    box: textBox(shape, scene.scale),
  }));
  const bores = boresIn(scene).map((shape) => ({ name: shape.bore, box: shapeBox(shape, scene.scale) }));
  texts.forEach(({ name, box }, index) => {
    if (!contains(scene.frame, box)) found.push(`${name} beyond the frame`);
    for (const other of [...texts.slice(index + 1).map((text) => ({ ...text, box: shrunk(text.box) })), ...bores]) {
      if (overlap(shrunk(box), other.box)) found.push(`${name} over ${other.name}`);
    }
  });
  return found;
}
function boreOf(one: Drawn, id: string): Bore {
  return one.boring.bores.find((candidate) => candidate.id === id)!;
}
function boxOfKey(scene: Scene, key: string): Box {
  return shapeBox(
    scene.shapes.find((shape) => shape.key === key)!,
    scene.scale,
  );
}
const distinct = (values: readonly number[]): number[] => [...new Set(values)].sort((a, b) => a - b);
/** Boxes of lettering hold ascenders and descenders that few figures have: a hair of common border is no overlap. */
const shrunk = (box: Box): Box => grow(box, -Math.min(box.width, box.height) * 0.04);
function union(a: Box, b: Box): Box {
  const x = Math.min(a.x, b.x);
  const y = Math.min(a.y, b.y);
  return {
    x,
    y,
    width: Math.max(a.x + a.width, b.x + b.width) - x,
    height: Math.max(a.y + a.height, b.y + b.height) - y,
  };
}

type Vector = readonly [number, number, number];
function vector(axis: Axis): Vector {
  const sign = axis.startsWith('+') ? 1 : -1;
  return [axis.endsWith('x') ? sign : 0, axis.endsWith('y') ? sign : 0, axis.endsWith('z') ? sign : 0];
}
/** Where a bore of a face enters, in the carcass frame: the panel's pose applied by hand. */
function inCarcass({ pose }: Panel, { u, v }: Bore): Vector {
  const [a, b] = [vector(pose.u), vector(pose.v)];
  const { x, y, z } = pose.origin;
  return [x + a[0] * u + b[0] * v, y + a[1] * u + b[1] * v, z + a[2] * u + b[2] * v];
}
const difference = (a: Vector, b: Vector): [number, number, number] => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
const dot = (a: Vector, b: Vector): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const cross = (a: Vector, b: Vector): Vector => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
