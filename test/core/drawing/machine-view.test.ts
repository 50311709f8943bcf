import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { boxOf, contains, overlap } from '../../../shared-core/drawing/scene/boxes.js';
import { wider } from '../../../shared-core/drawing/scene/wider.js';
import type { Drawn } from '../../../shared-core/drawing/drawn.js';
import { textBox } from '../../../shared-core/drawing/scene/lettering.js';
import { Interrupted, kept } from '../../../shared-core/drawing/machine-view/interrupted.js';
import type { MachineScene } from '../../../shared-core/drawing/machine-view/scene.js';
import { moveWords, turnOf } from '../../../shared-core/drawing/machine-view/words.js';
import { act } from '../../../shared-core/drawing/machine-view/strokes.js';
import { ON_PAGE } from '../../../shared-core/drawing/machine-view/stage.js';
import { unionOutline } from '../../../shared-core/drawing/machine-view/union.js';
import { machineScene } from '../../../shared-core/drawing/machine-view/view.js';
import type { Box, CircleShape, PathShape, Shape, TextShape } from '../../../shared-core/drawing/scene/scene.js';
import { Engine } from '../../../shared-core/engine.js';
import type { TableLayout } from '../../../shared-core/machining/replay/layout.js';
import type { SetUp, Step } from '../../../shared-core/machining/set-up.js';
import { setUp, step, VERTICAL } from '../machining/replay/set-ups.js';
import { demoText } from './demo.js';

/** One stroke of a job with its scene. */
interface Shown {
  readonly name: string;
  readonly setUp: SetUp;
  readonly step: Step;
  readonly index: number;
  readonly carcass: string;
  readonly panel: string;
  readonly drawn: Drawn;
  readonly scene: MachineScene;
}

/** A job with every one of its set-ups, in an order of its own: the order to run takes a while to find. */
function jobOf(text: string, shop: string) {
  const engine = new Engine({ readShop: () => ({ ok: true, uri: 'shop', text: shop }) });
  const analysis = engine.analyse('job', text);
  const setUps = analysis.setUps().map(({ setUp }) => setUp);
  const drawnOf = (name: string): Drawn => {
    const { carcass, boring } = analysis.carcasses.find((one) => one.name === name)!;
    return { name, carcass: carcass!, boring: boring!, findings: [], reader: analysis.unit };
  };
  const shown = setUps.flatMap((setUp) =>
    setUp.runs.flatMap(({ carcass, panel, steps }) => {
      const drawn = drawnOf(carcass);
      return steps.map((step, index): Shown => {
        const name = `${setUp.id} ${carcass} ${panel} ${index}`;
        const scene = machineScene(drawn, { setUps, setUp: setUp.id, panel, step: index });
        if (scene === null) throw new Error(`${name} cannot be drawn`);
        return { name, setUp, step, index, carcass, panel, drawn, scene };
      });
    }),
  );
  return { setUps, drawnOf, shown };
}

const shed = demoText('shed.shop.yaml');
/** The same machines with their fences on the operator's side and the bits coming from under the table. */
const turned = shed.replaceAll('fence: far', 'fence: near').replaceAll('from: above', 'from: below');
const kitchenText = demoText('kitchen.carcass.yaml');
const kitchen = jobOf(kitchenText, shed);
const studio = jobOf(demoText('studio.carcass.yaml'), '');
const JOBS = [
  ['the kitchen', kitchen.shown],
  ['the studio, in inches', studio.shown],
  ['the kitchen, fences near', jobOf(kitchenText, turned).shown],
] as const;

const stepOf = (carcass: string, panel: string, wanted: (one: Shown) => boolean): Shown =>
  kitchen.shown.find((one) => one.carcass === carcass && one.panel === panel && wanted(one))!;
const texts = (scene: MachineScene): TextShape[] => scene.shapes.filter((one): one is TextShape => one.kind === 'text');
const textOf = (scene: MachineScene, key: string): string | undefined =>
  texts(scene).find((one) => one.key === key)?.text;
const byKey = (scene: MachineScene): Map<string, Shape> => new Map(scene.shapes.map((one) => [one.key, one]));
/** Middle of a sign: a circle, or the box of a path. */
function middle(shape: Shape | undefined): { x: number; y: number } {
  if (shape?.kind === 'circle') return { x: shape.cx, y: shape.cy };
  const { points } = shape as PathShape;
  const [xs, ys] = [points.map(({ x }) => x), points.map(({ y }) => y)];
  return { x: (Math.min(...xs) + Math.max(...xs)) / 2, y: (Math.min(...ys) + Math.max(...ys)) / 2 };
}

/** On which side of the panel the mark of the reference end stands, as drawn. */
function endSide(scene: MachineScene): string {
  const [mark, panel] = ['datum:reference-end', 'panel'].map((key) => middle(byKey(scene).get(key)));
  const corner = (byKey(scene).get('panel') as PathShape).points[0]!;
  const [right, down] = [mark!.x - panel!.x, mark!.y - panel!.y];
  // Outside the half of the panel's size along one of the axes, or just inside it.
  const across = Math.abs(right) / Math.abs(corner.x - panel!.x) > Math.abs(down) / Math.abs(corner.y - panel!.y);
  return across ? (right > 0 ? 'right' : 'left') : down > 0 ? 'near' : 'far';
}

describe('on a page', () => {
  const upright = kitchen.shown.filter(({ setUp }) => setUp.machine.kind === 'vertical');
  const onPage = ({ drawn, setUp, panel, index }: Shown): MachineScene =>
    machineScene(drawn, { setUps: kitchen.setUps, setUp: setUp.id, panel, step: index }, 1, ON_PAGE)!;
  const isBroken = ({ shapes }: MachineScene): boolean => shapes.some(({ key }) => key.startsWith('break-y'));
  const emptyOf = ({ shapes }: MachineScene): readonly Shape[] =>
    shapes.filter((one) => one.class === 'spindle-empty' && one.key.startsWith('spindle:'));

  it('an upright head is broken where it stands empty beyond the panel, and nothing else of it is left out', () => {
    const broken = upright.filter((one) => isBroken(onPage(one)) && !isBroken(one.scene));
    expect(broken.length).toBeGreaterThan(5);
    for (const one of broken) {
      const scene = onPage(one);
      const loaded = (of: MachineScene): readonly string[] =>
        of.shapes.filter((shape) => shape.class === 'spindle-loaded').map(({ key }) => key);
      expect(loaded(scene), one.name).toEqual(loaded(one.scene));
      const all = new Map(emptyOf(one.scene).map((shape) => [shape.key, middle(shape)]));
      const kept = new Set(emptyOf(scene).map(({ key }) => key));
      const panel = boxOf((byKey(one.scene).get('panel') as PathShape).points, 0);
      const last = one.scene.spindles.length - 1;
      expect(kept, one.name).toContain(`spindle:0:${last}`);
      const out = [...all].filter(([key]) => !kept.has(key));
      expect(out.length, one.name).toBeGreaterThan(0);
      for (const [key, { y }] of out)
        expect(y < panel.y || y > panel.y + panel.height, `${one.name} ${key}`).toBe(true);
    }
  });
});

describe.each(JOBS)('every stroke of %s', (_, all) => {
  it('has every loaded spindle once, and every other one empty', () => {
    for (const { name, setUp, step, scene } of all) {
      const loaded = scene.shapes.filter((one) => one.class === 'spindle-loaded');
      expect(loaded.map(({ key }) => key).sort(), name).toEqual(
        step.spindles.map(({ head, spindle }) => `spindle:${head}:${spindle}`).sort(),
      );
      const spindles = setUp.machine.kind === 'cup' ? 1 : setUp.machine.spindles;
      const heads = setUp.machine.kind === 'line' ? setUp.fence.length : 1;
      expect(scene.spindles, name).toHaveLength(heads * spindles);
      const empty = scene.shapes.filter((one) => one.class === 'spindle-empty' && one.key.startsWith('spindle:'));
      expect(empty, name).toHaveLength(heads * spindles - step.spindles.length);
    }
  });

  it('has its spindles a pitch apart, true to the millimetre, on the line that the machine has them on', () => {
    for (const { name, setUp, step, scene } of all) {
      const { machine } = setUp;
      if (machine.kind === 'cup') continue;
      const shapes = byKey(scene);
      const heads = new Map<number, typeof step.spindles>();
      for (const one of step.spindles) heads.set(one.head, [...(heads.get(one.head) ?? []), one]);
      for (const [first, ...others] of heads.values()) {
        const from = middle(shapes.get(`spindle:${first!.head}:${first!.spindle}`));
        for (const one of others) {
          const at = middle(shapes.get(`spindle:${one.head}:${one.spindle}`));
          const apart = ((one.spindle - first!.spindle) * machine.pitch) / 1000;
          if (machine.kind === 'vertical') {
            expect(at.x, name).toBeCloseTo(from.x, 6);
            expect(Math.abs(at.y - from.y), name).toBeCloseTo(Math.abs(apart), 6);
          } else {
            expect(at.x - from.x, name).toBeCloseTo(apart, 6);
          }
        }
      }
    }
  });

  it('has the hole of each bit under that bit, and no other hole as made now', () => {
    for (const { name, setUp, step, scene } of all) {
      const now = scene.holes.filter(({ state }) => state === 'now');
      // What the set-up claims is what the replay drew.
      expect(now.map(({ bore }) => bore).sort(), name).toEqual(step.holes.map(({ bore }) => bore).sort());
      if (setUp.machine.kind === 'horizontal') continue;
      const shapes = byKey(scene);
      const bits = step.spindles.map(({ head, spindle }) => middle(shapes.get(`spindle:${head}:${spindle}`)));
      for (const { key } of now) {
        const at = middle(shapes.get(key));
        const under = bits.filter(({ x, y }) => Math.hypot(x - at.x, y - at.y) < 1e-6);
        expect(under, `${name} ${key}`).toHaveLength(1);
      }
    }
  });

  it('counts the holes of the panel: each once, made before, now or later; none is left at the end', () => {
    const panels = new Map<string, Shown[]>();
    for (const one of all) {
      const key = `${one.carcass} ${one.panel}`;
      panels.set(key, [...(panels.get(key) ?? []), one]);
    }
    for (const [key, strokes] of panels) {
      const bores = strokes[0]!.drawn.boring.bores.filter(({ panel }) => panel === strokes[0]!.panel);
      let made = 0;
      for (const { name, scene } of strokes) {
        const count = (state: string): number => scene.holes.filter((hole) => hole.state === state).length;
        expect(new Set(scene.holes.map(({ bore }) => bore)).size, name).toBe(bores.length);
        expect(count('made'), name).toBe(made);
        made += count('now');
        expect(count('to-come'), name).toBe(bores.length - made);
      }
      expect(made, key).toBe(bores.length);
    }
  });

  it('has every stop by its name and figure, the used one solid, those in the panel’s way dashed', () => {
    for (const { name, setUp, step, scene } of all) {
      const shapes = byKey(scene);
      for (const stop of setUp.stops) {
        const sign = shapes.get(`stop:${stop.name}`) as PathShape;
        // A short name would run into the figure: stop 1 at 21 is no 1 21.
        const called = stop.name.length > 2 ? stop.name : `stop ${stop.name}`;
        expect(textOf(scene, `position:${stop.name}`), name).toMatch(new RegExp(`^${called} {2}\\d`));
        expect(sign.class === 'stop-used', `${name} ${stop.name}`).toBe(stop.name === step.stop);
        const panel = shapes.get('panel') as PathShape;
        const face =
          stop.side === 'left'
            ? Math.max(...sign.points.map(({ x }) => x))
            : Math.min(...sign.points.map(({ x }) => x));
        const xs = panel.points.map(({ x }) => x);
        // One that the free end comes to, or nearly to, is lowered too.
        const room = stop.name === step.stop ? -1e-6 : 2 - 1e-6;
        const inTheWay = Math.min(...xs) - room < face && face < Math.max(...xs) + room;
        expect(sign.line, `${name} ${stop.name}`).toBe(inTheWay ? 'hidden' : 'outline');
      }
    }
  });

  it('names the face on the panel or clear of it, and no end of a panel under its long edge, in any face of lettering', () => {
    let beside = 0;
    for (const { name, setUp, scene } of all) {
      const panel = scene.shapes.find(({ key }) => key === 'panel') as PathShape;
      const outline = boxOf(panel.points, 0);
      const face = texts(scene).find(({ key }) => key === 'panel:face')!;
      if (face.turn === 0) {
        const room = wider(textBox(face, scene.scale));
        expect(contains(outline, room) || !overlap(outline, room), name).toBe(true);
      }
      for (const end of texts(scene).filter(({ key }) => /^edge:.*-end$/.test(key))) {
        const box = textBox(end, scene.scale);
        const isUnder =
          box.x > outline.x && box.x + box.width < outline.x + outline.width && box.y > outline.y + outline.height;
        const hasLine = scene.shapes.some(({ key }) => key === `${end.key}:leader`);
        const isAcross = setUp.machine.kind === 'horizontal';
        if (outline.width > outline.height && !hasLine && !isAcross) {
          beside += 1;
          expect(isUnder, name).toBe(false);
        }
      }
    }
    expect(beside).toBeGreaterThan(10);
  });

  it('says in words which face is up, and names both ends, the fence or head and where to stand', () => {
    for (const { name, setUp, step, scene } of all) {
      expect(textOf(scene, 'panel:face'), name).toMatch(
        step.down === 'inside' ? /^Outside( \((left|lower)\))? face up$/ : /^Inside( \((right|upper)\))? face up$/,
      );
      expect(textOf(scene, 'edge:reference-end'), name).toMatch(/^(Bottom|Left) end/);
      expect(textOf(scene, 'edge:far-end'), name).toMatch(/^(Top|Right) end/);
      expect(textOf(scene, 'edge:front'), name).toMatch(/^Front edge/);
      if (setUp.machine.kind === 'horizontal') {
        // On the side where that edge lies, at its stop; not at the head.
        const label = textBox(
          texts(scene).find(({ key }) => key === 'edge:front')!,
          scene.scale,
        );
        const xs = (byKey(scene).get('panel') as PathShape).points.map(({ x }) => x);
        const panelAt = (Math.min(...xs) + Math.max(...xs)) / 2;
        const isRight = middle(byKey(scene).get(`stop:${step.stop}`)).x > panelAt;
        expect(label.x + label.width / 2 > panelAt, name).toBe(isRight);
      }
      expect(textOf(scene, 'fence:name'), name).toMatch(/^(Fence|Head)$/);
      expect(textOf(scene, 'operator'), name).toBe('Operator');
      expect(byKey(scene).has('datum:reference-end'), name).toBe(true);
      expect(byKey(scene).has('zone-0'), name).toBe(true);
    }
  });

  it('is turned in the words where the reference end has come to the other side of the drawing, and not else', () => {
    let slid = 0;
    for (const [at, { name, index, scene }] of all.entries()) {
      const before = all[at - 1];
      if (index === 0 || before === undefined) continue;
      const [was, is] = [endSide(before.scene), endSide(scene)];
      const { move } = scene.words;
      const over = move?.startsWith('Turn it over') ?? false;
      if (!over) expect(move?.startsWith('Turn it through 180 degrees') ?? false, name).toBe(was !== is);
      expect(byKey(scene).has('move:arc'), name).toBe(!over && was !== is);
      slid += Number(move?.startsWith('Slide it along, do not turn it: ') ?? false);
    }
    expect(slid).toBeGreaterThan(0);
  });

  it('has the words of the zone across no border of it, in a wide face too', () => {
    let zones = 0;
    for (const { name, scene } of all) {
      const words = texts(scene).find(({ key }) => key === 'zone:name');
      if (words === undefined) continue;
      zones += 1;
      const box = wider(textBox(words, scene.scale));
      for (const shape of scene.shapes) {
        if (shape.kind !== 'path' || shape.class !== 'zone') continue;
        shape.points.forEach((corner, index) => {
          const border = boxOf([corner, shape.points[(index + 1) % shape.points.length]!], 0);
          expect(overlap(box, border), `${name}: ${words.text}`).toBe(false);
        });
      }
    }
    expect(zones).toBeGreaterThan(10);
  });

  it('has no lettering over other lettering, and none outside the frame', () => {
    for (const { name, scene } of all) {
      const boxes = texts(scene).map((shape) => ({ text: shape.text, box: textBox(shape, scene.scale) }));
      boxes.forEach(({ text, box }, index) => {
        expect(contains(scene.frame, box), `${name}: ${text} in the frame`).toBe(true);
        for (const other of boxes.slice(index + 1))
          expect(overlap(box, other.box), `${name}: ${text} | ${other.text}`).toBe(false);
      });
    }
  });

  it('has keys of its own for every shape', () => {
    for (const { name, scene } of all) expect(byKey(scene).size, name).toBe(scene.shapes.length);
  });
});

describe('a stroke in words', () => {
  it('a side that is slid along from stop to stop', () => {
    const strokes = kitchen.shown.filter(
      ({ carcass, panel, setUp }) => carcass === 'larder' && panel === 'left' && setUp.machine.kind === 'vertical',
    );
    expect(strokes.map(({ scene }) => [scene.words.move, scene.words.lie])).toEqual([
      [null, 'Inside face up, front edge at the fence, bottom end against near-left.'],
      [
        'Slide it along, do not turn it: the bottom end comes to long-left.',
        'Inside face up, front edge at the fence, bottom end against long-left.',
      ],
      [
        'Slide it along, do not turn it: the top end comes to near-right.',
        'Inside face up, front edge at the fence, top end against near-right.',
      ],
    ]);
    expect(strokes[0]!.scene.words.bore).toBe('Spindles 1, 3, 6, 8, 14 and 16 bore 6 holes Ø 8 mm, 12 mm deep.');
    expect(strokes[0]!.scene.words.notes).toEqual(['Lower near-right and long-right, out of the panel’s way.']);
    expect(strokes.map(({ scene }) => scene.words.left)).toEqual([
      '142 holes are still to come.',
      '136 holes are still to come.',
      '130 holes are still to come.',
    ]);
    expect(strokes.map(({ scene }) => scene.stop)).toEqual(['near-left', 'long-left', 'near-right']);
    expect(strokes[1]!.scene.words.described).toContain(`by 16 mm. ${strokes[1]!.scene.words.move} Inside face up,`);
    for (const { scene } of strokes) expect(byKey(scene).has('move:arc')).toBe(false);
  });

  it('bits that come down beside a panel are none of those that bore', () => {
    // The line of a shallow side ends before spindles 14 and 16.
    const { scene } = stepOf('glasses', 'left', ({ setUp }) => setUp.machine.kind === 'vertical');
    expect(scene.words.bore).toBe('Spindles 1, 3, 6 and 8 bore 4 holes Ø 8 mm, 12 mm deep.');
    expect(scene.words.notes).toContain('Spindles 14 and 16 are loaded too, and come down beside the panel.');
  });

  it('an end against a level head, with the height over the table', () => {
    const { scene } = stepOf(
      'pan-drawers',
      'bottom',
      ({ setUp, step }) => setUp.machine.kind === 'horizontal' && step.end === 'reference-end',
    );
    expect(scene.words.lie).toBe('Inside face up, left end pressed against the head, front edge against square-left.');
    for (const note of scene.words.notes) expect(note).not.toContain('come down');
    expect(textOf(scene, 'over-table:8:figure')).toBe('8');
    expect(textOf(scene, 'over-table:16:figure')).toBe('16');
    const end = byKey(scene).get('elevation:panel') as PathShape;
    const plan = byKey(scene).get('panel') as PathShape;
    // In line with the plan under it, and as thick as the board.
    expect(end.points.map(({ x }) => x).sort()).toEqual(plan.points.map(({ x }) => x).sort());
    expect(end.points[2]!.y - end.points[0]!.y).toBeCloseTo(16, 9);
    const bit = byKey(scene).get('elevation:spindle-0') as CircleShape;
    expect(end.points[2]!.y - bit.cy).toBeCloseTo(8, 9);
  });

  it('an index move, from where the panel lay in the stroke before, else from the stop', () => {
    const moved = kitchen.shown.filter(({ step }) => step.moved !== 0);
    expect(moved.length).toBeGreaterThan(3);
    for (const { name, setUp, step, index, carcass, panel, scene } of moved) {
      const { steps } = setUp.runs.find((run) => run.carcass === carcass && run.panel === panel)!;
      const before = steps[index - 1];
      const same = before?.end === step.end && before.stop === step.stop;
      const by = (step.moved - (same ? before.moved : 0)) / 1000;
      const hand = by < 0 ? 'left' : 'right';
      expect(textOf(scene, 'move:words'), name).toBe(`Index move ${Math.abs(by)} to the ${hand}`);
      const pitches = Math.abs(by) / 32;
      expect(scene.words.move, name).toContain(`${Math.abs(by)} mm to the ${hand}, ${pitches} pitches, onto the pins`);
      // The end is no longer at its stop, and the words do not say that it is.
      expect(scene.words.lie, name).toMatch(new RegExp(`end ${Math.abs(step.moved) / 1000} mm past ${step.stop}\\.$`));
      expect(scene.words.bore, name).toMatch(/^Spindles .* of both heads bore \d+ holes Ø 5 mm/);
      // The arrow ends at the end of the panel that was pushed against the stop.
      const head = byKey(scene).get('move:head') as PathShape;
      const edges = (byKey(scene).get('panel') as PathShape).points.map(({ x }) => x);
      expect(head.points[0]!.x, name).toBeCloseTo(hand === 'left' ? Math.min(...edges) : Math.max(...edges), 6);
    }
  });

  it('tells a reader who sees nothing all of it', () => {
    const { scene } = stepOf('larder', 'left', ({ setUp }) => setUp.machine.kind === 'vertical');
    for (const words of [
      'larder, left, on borer-up, step 1 of 3.',
      '2064 mm by 560 mm by 16 mm.',
      'near-left on the left at 8 mm, used',
      'first spindle 21 mm from the fence',
      'left-clamp comes down beside the panel',
      'right-clamp holds the panel',
      'Keep hands clear of spindles and clamps.',
    ])
      expect(scene.words.described).toContain(words);
  });
});

describe('a turn', () => {
  /** A panel 4 by 2 whose reference end stands left or right of its far end, its front edge away from the operator or not. */
  const lay = (up: 'inside' | 'outside', ...panel: readonly (readonly [number, number])[]) =>
    ({ up, panel: panel.map(([x, y]) => [x * 1000, y * 1000, 0]) }) as unknown as TableLayout;
  const left = lay('inside', [0, 0], [4, 0], [4, -2], [0, -2]);

  it('is seen by how the corners lie, not by which end is at the stop', () => {
    expect(turnOf(left, lay('inside', [-4, 0], [0, 0], [0, -2], [-4, -2]))).toBe('none');
    expect(turnOf(left, lay('inside', [4, -2], [0, -2], [0, 0], [4, 0]))).toBe('half');
    expect(turnOf(left, lay('inside', [0, -4], [0, 0], [2, 0], [2, -4]))).toBe('quarter');
    expect(turnOf(left, lay('outside', [4, 0], [0, 0], [0, -2], [4, -2]))).toBe('over');
  });

  it('by a quarter is told with the edges that come to the fence and to the stop', () => {
    const { carcass, boring } = kitchen.drawnOf('larder');
    const side = carcass.panels.find(({ key }) => key === 'left')!;
    const lying = { down: 'outside', edge: 'front', end: 'reference-end', stop: 'near-left' } as const;
    const across = { ...lying, edge: 'far-end', end: 'front' } as const;
    const steps = [step(lying, [0], 8), step(across, [0], 8)];
    const sheet = setUp(VERTICAL, { fence: [53], stops: { 'near-left': 8 }, depth: 12 }, { left: steps });
    expect(moveWords(side, act([sheet], sheet.id, 'box', side, boring, 1)!, 'mm')).toBe(
      'Turn it through 90 degrees on the table: the outside face stays down, the top end comes to the fence, the front edge to near-left.',
    );
  });
});

describe('a scene', () => {
  it('is the same each time', () => {
    const { drawn, setUp, panel, index, scene } = kitchen.shown[40]!;
    const again = machineScene(drawn, { setUps: kitchen.setUps, setUp: setUp.id, panel, step: index });
    expect(again).toEqual(scene);
  });

  it('is of the same things in the same places for a reader who goes nearer, with smaller letters', () => {
    const { drawn, setUp, panel, index, scene } = stepOf(
      'jigs',
      'top',
      ({ setUp: { machine } }) => machine.kind === 'vertical',
    );
    const near = machineScene(drawn, { setUps: kitchen.setUps, setUp: setUp.id, panel, step: index }, 4)!;
    expect(near.scale).toBeCloseTo(scene.scale / 4, 9);
    for (const key of ['panel', 'stop:long-left', 'spindle:0:0', 'clamp:left-clamp'])
      expect(byKey(near).get(key), key).toEqual(byKey(scene).get(key));
  });

  it('is none where the panel has no such step', () => {
    const drawn = kitchen.drawnOf('larder');
    const of = { setUps: kitchen.setUps, setUp: kitchen.setUps[0]!.id, step: 99 };
    expect(machineScene(drawn, { ...of, panel: 'left' })).toBeNull();
    expect(machineScene(drawn, { ...of, panel: 'nothing', step: 0 })).toBeNull();
    expect(machineScene(drawn, { ...of, setUp: 'nowhere', panel: 'left', step: 0 })).toBeNull();
  });
});

describe('an interrupted axis', () => {
  const stretches = fc
    .array(fc.tuple(fc.integer({ min: -3000, max: 3000 }), fc.integer({ min: 1, max: 400 })), {
      minLength: 1,
      maxLength: 8,
    })
    .map((all) => all.map(([from, long]) => ({ from, to: from + long })));

  it('is true to scale where it is shown, shortened in between, and never turns back', () => {
    fc.assert(
      fc.property(stretches, fc.integer({ min: 0, max: 300 }), fc.integer({ min: 1, max: 90 }), (all, least, gap) => {
        const seen = kept(all, least);
        const axis = new Interrupted(seen, gap);
        expect(axis.breaks).toHaveLength(seen.length - 1);
        for (const { from, to } of seen) expect(axis.at(to) - axis.at(from)).toBeCloseTo(to - from, 6);
        seen.slice(1).forEach(({ from }, index) => {
          expect(axis.at(from) - axis.at(seen[index]!.to)).toBeCloseTo(gap, 6);
        });
        for (const { from, to } of all) {
          expect(axis.at(to) - axis.at(from)).toBeCloseTo(to - from, 6);
          expect(axis.leavesOut(from)).toBe(false);
        }
        let last = -Infinity;
        for (let place = -3500; place <= 3900; place += 37) {
          const at = axis.at(place);
          expect(at).toBeGreaterThan(last);
          last = at;
        }
      }),
    );
  });
});

describe('the outline of a union', () => {
  it('encloses the area of the boxes together', () => {
    const boxes = fc.array(
      fc.record({
        x: fc.integer({ min: 0, max: 12 }),
        y: fc.integer({ min: 0, max: 12 }),
        width: fc.integer({ min: 1, max: 6 }),
        height: fc.integer({ min: 1, max: 6 }),
      }),
      { minLength: 1, maxLength: 7 },
    );
    fc.assert(
      fc.property(boxes, (all) => {
        // Shoelace formula; loops about holes run the other way and count against.
        const enclosed = unionOutline(all).reduce(
          (sum, loop) =>
            sum +
            loop.reduce((area, { x, y }, index) => {
              const next = loop[(index + 1) % loop.length]!;
              return area + (x * next.y - next.x * y) / 2;
            }, 0),
          0,
        );
        expect(Math.abs(enclosed)).toBe(cells(all));
      }),
    );
  });

  function cells(boxes: readonly Box[]): number {
    let count = 0;
    for (let x = 0; x < 18; x += 1) {
      for (let y = 0; y < 18; y += 1) {
        const covered = boxes.some(
          (box) => box.x <= x && x < box.x + box.width && box.y <= y && y < box.y + box.height,
        );
        count += Number(covered);
      }
    }
    return count;
  }
});
