import type { Place } from '../../../../shared-core/document/place.js';
import type { Blank, SetUp, Step } from '../../../../shared-core/machining/set-up.js';
import type {
  CupBorer,
  HorizontalHead,
  LineDrill,
  PanelRange,
  Stop,
  VerticalHead,
} from '../../../../shared-core/shop/model.js';

/** Machines and setUps of a made-up shop, for tests of the replay and of the tolerances. */

export const mm = (value: number): number => Math.round(value * 1000);
const nowhere = {} as Place;
const ANY: PanelRange = { length: null, width: null, thickness: null };

const stop = (name: string, side: 'left' | 'right', from: number, to: number): Stop => ({
  name,
  side,
  range: { min: mm(from), max: mm(to) },
  lowers: true,
  stands: null,
  place: nowhere,
});

const HEAD = {
  body: 'b',
  spindles: 21,
  pitch: mm(32),
  depth: { min: 0, max: mm(60) },
  depthStops: null,
  panel: ANY,
  clamps: [],
  stands: null,
  place: nowhere,
};

export const VERTICAL: VerticalHead = {
  ...HEAD,
  kind: 'vertical',
  name: 'upright',
  fence: 'far',
  from: 'above',
  fenceOffset: { min: mm(20), max: mm(80) },
  extension: mm(1200),
  stops: [stop('near-left', 'left', 0, 60), stop('far-left', 'left', 60, 800), stop('near-right', 'right', 0, 60)],
};
export const HORIZONTAL: HorizontalHead = {
  ...HEAD,
  kind: 'horizontal',
  name: 'level',
  height: { min: mm(4), max: mm(40) },
  stops: [stop('square-left', 'left', 20, 80), stop('square-right', 'right', 20, 80)],
};
export const LINE: LineDrill = {
  ...HEAD,
  kind: 'line',
  name: 'liner',
  fence: 'far',
  from: 'above',
  heads: 2,
  setback: { min: mm(20), max: mm(80) },
  headDistance: { min: mm(96), max: mm(640) },
  throat: mm(700),
  indexPins: 'row',
  indexRange: mm(2000),
  meetsHolesTwice: false,
  stops: [stop('end-left', 'left', 0, 300), stop('end-right', 'right', 0, 300)],
};
export const CUP: CupBorer = {
  kind: 'cup',
  name: 'cupper',
  body: 'c',
  distance: { min: mm(3), max: mm(40) },
  depth: { min: 0, max: mm(15) },
  stops: [stop('door-left', 'left', 50, 300), stop('door-right', 'right', 50, 300)],
  panel: ANY,
  stands: null,
  place: nowhere,
};

export const blank = (length: number, width: number, thickness: number, hand: Blank['hand']): Blank => ({
  length: mm(length),
  width: mm(width),
  thickness: mm(thickness),
  hand,
});

/** A step with spindles of head 0 written by their numbers. */
export const step = (
  lies: Pick<Step, 'down' | 'edge' | 'end' | 'stop'>,
  spindles: readonly number[],
  diameter: number,
  moved = 0,
): Step => ({
  ...lies,
  moved,
  spindles: spindles.map((spindle) => ({ head: 0, spindle, diameter: mm(diameter) })),
  holes: [],
});

interface Setting {
  readonly id?: string;
  readonly fence?: readonly number[];
  readonly height?: number;
  readonly stops: Readonly<Record<string, number>>;
  readonly extension?: boolean;
  readonly depth: number;
  readonly through?: boolean;
}

/** A set-up written in millimetres; each panel with its steps. */
export function setUp(
  machine: SetUp['machine'],
  setting: Setting,
  panels: Readonly<Record<string, readonly Step[]>>,
): SetUp {
  return {
    id: setting.id ?? `${machine.name}-1`,
    machine,
    fence: (setting.fence ?? []).map(mm),
    height: setting.height === undefined ? null : mm(setting.height),
    stops: Object.entries(setting.stops).map(([name, position]) => ({
      name,
      side: machine.stops.find((one) => one.name === name)?.side ?? 'left',
      position: mm(position),
    })),
    extension: setting.extension ?? false,
    depth: mm(setting.depth),
    thickness: null,
    through: setting.through ?? false,
    runs: Object.entries(panels).map(([panel, steps]) => ({ carcass: 'box', panel, pieces: 1, steps })),
  };
}
