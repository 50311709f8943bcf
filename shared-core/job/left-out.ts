import type { Micrometres } from '../length/units.js';
import type { LongForm, Unfolded } from '../schema/unfold.js';
import type { EitherSchema, Fields, ListSchema, NamedSchema, RecordSchema, Schema } from '../schema/schema.js';
import type { CarcassKind, Habits } from '../shop/model.js';
import { NO_ANGLE, NO_BRACKET, NO_FOOT, NO_PULL, sizeOfKind } from '../shop/habits.js';
import { usuallyHasRails } from '../shop/usual-top.js';
import { quoted } from '../words/english.js';
import { messages, type Message } from '../words/message.js';
import { USUAL_BACK } from '../shop/back.js';
import type {
  BackHow,
  BottomHow,
  DoorHow,
  DrawerBottom,
  EndPanelsOn,
  FrontHeights,
  HungWord,
  PullEnd,
  PullLies,
  RowChoice,
  TopHow,
} from './choices.js';
import type { carcassSchema } from './schema.js';

// What a carcass has where nobody writes a key: the one table that the reading fills in from and that hovers tell.

/** What a default may depend on besides the key. */
export interface Usage {
  readonly habits: Habits;
  readonly kind: CarcassKind;
  readonly hasLooseShelves: boolean;
  /** It stands across a corner of the room. */
  readonly isDiagonal: boolean;
}

/** Puts a default into words; null where there is nothing to say. */
type Told<T> = (value: T, usage: Usage) => Message | null;

interface Must {
  readonly as: 'must';
}
interface Usual<T> {
  readonly as: 'usual';
  readonly value: (usage: Usage) => T;
  readonly told: Told<T>;
}
/** null, at least for some shops: it is then not there at all. */
interface Maybe<T> {
  readonly as: 'maybe';
  readonly value: (usage: Usage) => T | null;
  readonly told: Told<T | null>;
}
/** Where it is null, the building of the carcass works it out. */
interface WorkedOut<T> {
  readonly as: 'worked-out';
  readonly value: (usage: Usage) => T | null;
  readonly told: Told<T | null>;
}
/** A map, key by key; `told` is what they come to together. */
export interface Each<F> {
  readonly as: 'each';
  readonly fields: F;
  readonly told: (usage: Usage) => Message | null;
}
/** How many there are, or a list of them; none where it is left out. */
export interface Items<F> {
  readonly as: 'items';
  readonly item: F;
}
/** A map from names to what is different on each. */
export interface Parts {
  readonly as: 'parts';
}

type LeftOutOf<S> =
  S extends RecordSchema<infer F>
    ? Each<LeftOutFields<F>>
    : S extends NamedSchema<Schema>
      ? Parts
      : S extends EitherSchema<infer A>
        ? [LongForm<A>] extends [never]
          ? Items<ItemFields<Extract<A[number], ListSchema<Schema>>>>
          : LeftOutOf<LongForm<A>>
        : Usual<ValueOf<S>> | Maybe<ValueOf<S>> | WorkedOut<ValueOf<S>>;

type ItemFields<L> =
  L extends ListSchema<EitherSchema<infer A>>
    ? LongForm<A> extends RecordSchema<infer F>
      ? LeftOutFields<F>
      : never
    : never;

type ValueOf<S> = Unfolded<S> extends { readonly value: infer T } ? T : never;

/** For every key of a map what stands for it where it is left out. */
export type LeftOutFields<F extends Fields> = {
  readonly [K in keyof F]: F[K]['required'] extends true ? Must : LeftOutOf<F[K]['schema']>;
};

/** The same without the types of the values, for walking the table as data. */
export type LeftOut =
  | Must
  | Parts
  | {
      readonly as: 'usual' | 'maybe' | 'worked-out';
      readonly value: (usage: Usage) => unknown;
      readonly told: Told<never>;
    }
  | Each<LeftOutTable>
  | Items<LeftOutTable>;

export type LeftOutTable = Readonly<Record<string, LeftOut>>;

const must: Must = { as: 'must' };
const usual = <T>(value: (usage: Usage) => T, told: Told<T>): Usual<T> => ({ as: 'usual', value, told });
const maybe = <T>(value: (usage: Usage) => T | null, told: Told<T | null>): Maybe<T> => ({ as: 'maybe', value, told });
const workedOut = <T>(value: (usage: Usage) => T | null, told: Told<T | null>): WorkedOut<T> => ({
  as: 'worked-out',
  value,
  told,
});
/** Not there, with what happens then. */
const nothing = (told: () => Message | null) => ({ as: 'maybe', value: () => null, told }) as const;

type LoadName = 'none' | 'books' | 'a161-1';

interface Size {
  readonly length: Micrometres;
  readonly kind: CarcassKind;
}

export const leftOutMessages = messages('left-out', {
  byKind: () => 'When left out: what suits the kind.',
  byLooseShelves: ({ some, none }: { readonly some: RowChoice; readonly none: RowChoice }) =>
    `When left out: \`${some}\` with loose shelves, else \`${none}\`.`,
  length: ({ length }: { readonly length: Micrometres }, show) => `When left out: ${show.exact(length)}.`,
  word: ({ word }: { readonly word: string }) => `When left out: \`${word}\`.`,
  none: () => 'When left out: none.',
  one: () => 'When left out: one.',
  rightOfLast: () =>
    'When left out: right of the carcass before it in the file that stands at the same wall and, as it does, on the floor or above it.',
  onFloor: () => 'When left out: on the floor.',
  usualHeight: ({ length, kind }: Size, show) =>
    `When left out: ${show.exact(length)}, the shop’s usual height for \`kind: ${kind}\`.`,
  balancedHeight: ({ pitches, pitch }: { readonly pitches: number; readonly pitch: Micrometres }, show) =>
    `When left out: ${pitches} pitches of ${show.nominal(pitch)} and the thickness of the side, so that rows come out balanced.`,
  usualDepth: ({ length, kind }: Size, show) =>
    `When left out: ${show.exact(length)}, the shop’s usual depth for \`kind: ${kind}\`.`,
  usualBoard: ({ name }: { readonly name: string }) => `When left out: ${quoted(name)}, the shop’s usual board.`,
  usualBackBoard: ({ name }: { readonly name: string }) =>
    `When left out: ${quoted(name)}, the shop’s usual board of backs.`,
  usualBand: ({ name }: { readonly name: string }) => `When left out: ${quoted(name)}, the shop’s usual band.`,
  usualFitting: ({ name }: { readonly name: string }) => `When left out: ${quoted(name)}, the shop’s usual fitting.`,
  usualHinge: ({ name }: { readonly name: string }) => `When left out: ${quoted(name)}, the shop’s usual hinge.`,
  usualSlide: ({ name }: { readonly name: string }) => `When left out: ${quoted(name)}, the shop’s usual slide.`,
  everyRowBay: () => 'When left out: every bay.',
  wholeBack: () => 'When left out: the back is whole, or what the other of the two says.',
  wholeRow: () => 'When left out: as far as the row goes.',
  everyHole: () => 'When left out: every hole.',
  usualPull: ({ name }: { readonly name: string }) => `When left out: ${quoted(name)}, the shop’s usual pull.`,
  usualBracket: ({ name }: { readonly name: string }) => `When left out: ${quoted(name)}, the shop’s usual bracket.`,
  usualFoot: ({ name }: { readonly name: string }) => `When left out: ${quoted(name)}, the shop’s usual foot.`,
  usualAngle: ({ name }: { readonly name: string }) => `When left out: ${quoted(name)}, the shop’s usual angle.`,
  pullOfDoors: () => 'When left out: that of the doors.',
  pullByHand: ({ height, kind }: { readonly height: Micrometres; readonly kind: CarcassKind }, show) =>
    kind === 'wall'
      ? 'When left out: near the bottom end.'
      : `When left out: ${show.exact(height)} above the floor where that is in the middle third of the door, else near the end that is nearer to it.`,
  centred: () => 'When left out: in the middle of the height.',
  usualMachine: ({ name }: { readonly name: string }) => `When left out: ${quoted(name)}, the shop’s usual machine.`,
  usualMachines: () => 'When left out: the shop’s usual machines.',
  halfSide: () => 'When left out: half the nominal thickness of the side.',
  asFarBack: () => 'When left out: as far back as the pitch and the shop’s rear margin allow.',
  bySpindles: () => 'When left out: the places that the spindles of the shop’s vertical head give.',
  everyBay: () => 'When left out: one in every bay.',
  hungBefore: () => 'When left out: what `hung` says, before the whole front.',
  asDoorsSay: () => 'When left out: what `doors` says.',
  asHighAsFits: () => 'When left out: as high as its place allows.',
  usualDrawers: () => 'When left out: the shop’s usual slide, and the board, the band and the joint of the carcass.',
  fittingOfCarcass: () => 'When left out: the fitting of the carcass.',
  bandOfCarcass: () => 'When left out: the band of the carcass.',
  downToFloor: () => 'When left out: they do.',
  boardOfFronts: () => 'When left out: the board of the doors.',
  bandOfFronts: () => 'When left out: the band of the doors.',
  boardOfCarcass: () => 'When left out: the board of the carcass.',
  asCarcass: () => 'When left out: as in the rest of the carcass.',
});
const say = leftOutMessages;

const length = (value: (usage: Usage) => Micrometres): Usual<Micrometres> =>
  usual(value, (one) => say.length({ length: one }));
const machine = (use: keyof Habits['machines']): Maybe<string> =>
  maybe(
    ({ habits }) => habits.machines[use],
    (name) => (name === null ? null : say.usualMachine({ name })),
  );
const boardOfCarcass = workedOut(
  (): string | null => null,
  () => say.boardOfCarcass(),
);
const bandOfCarcass = workedOut(
  (): string | null => null,
  () => say.bandOfCarcass(),
);
const boardOfFronts = workedOut(
  (): string | null => null,
  () => say.boardOfFronts(),
);
const bandOfFronts = workedOut(
  (): string | null => null,
  () => say.bandOfFronts(),
);
const endPanelsOn = usual(
  (): EndPanelsOn => 'none',
  () => say.none(),
);
const shelf = (setback: (usage: Usage) => Micrometres) =>
  ({
    at: must,
    bay: nothing(() => say.everyBay()),
    board: boardOfCarcass,
    setback: length(setback),
  }) as const;

const usualTop = ({ kind, isDiagonal }: Usage): TopHow =>
  isDiagonal ? 'over' : usuallyHasRails(kind) ? 'rails' : 'between';

/** Seen of a blind panel in a corner: the depth of a usual pull, and a finger’s room (common practice, no source). */
const USUAL_STRIP: Micrometres = 60_000;

/** In an open carcass rows would show. */
const usualRows = ({ kind, hasLooseShelves }: Usage): RowChoice =>
  kind !== 'open' || hasLooseShelves ? 'both' : 'none';

const tellRows = (_: RowChoice, usage: Usage): Message => {
  const [some, none] = [true, false].map((hasLooseShelves) => usualRows({ ...usage, hasLooseShelves }));
  return some === none ? say.word({ word: some! }) : say.byLooseShelves({ some: some!, none: none! });
};

const backHow = usual(
  ({ isDiagonal }): BackHow => (isDiagonal ? 'applied' : USUAL_BACK),
  (word) => say.word({ word }),
);

const frontHeights = usual(
  (): FrontHeights => 'equal',
  (word) => say.word({ word }),
);

const hung = usual(
  (): HungWord => 'none',
  () => say.none(),
);

const pull = usual(
  ({ habits }) => habits.pull,
  (name) => (name === NO_PULL ? say.none() : say.usualPull({ name })),
);

/** What stands for each key of a carcass that is left out. A key that the schema has and this has not does not compile. */
export const LEFT_OUT = {
  kind: must,
  width: must,
  like: nothing(() => null),
  mirrored: usual(
    () => false,
    () => null,
  ),
  count: usual(
    () => 1,
    () => say.one(),
  ),
  place: {
    as: 'each',
    fields: {
      at: workedOut(
        (): Micrometres | null => null,
        () => say.rightOfLast(),
      ),
      wall: usual(
        () => 1,
        () => say.one(),
      ),
      'above-floor': usual(
        ({ habits, kind }) => (kind === 'wall' ? habits.hangHeight : 0),
        (length, { kind }) => (kind === 'wall' ? say.length({ length }) : say.onFloor()),
      ),
    },
    told: () => say.rightOfLast(),
  },
  height: workedOut(
    ({ habits, kind }) => sizeOfKind(habits, kind).height,
    (height, { habits, kind }) =>
      height === null
        ? say.balancedHeight({ pitches: sizeOfKind(habits, kind).pitches, pitch: habits.pitch })
        : say.usualHeight({ length: height, kind }),
  ),
  depth: usual(
    ({ habits, kind }) => sizeOfKind(habits, kind).depth,
    (depth, { kind }) => say.usualDepth({ length: depth, kind }),
  ),
  board: usual(
    ({ habits }) => habits.board,
    (name) => say.usualBoard({ name }),
  ),
  band: usual(
    ({ habits }) => habits.band,
    (name) => say.usualBand({ name }),
  ),
  joint: usual(
    ({ habits }) => habits.joint,
    (name) => say.usualFitting({ name }),
  ),
  top: usual(usualTop, (word) => say.word({ word })),
  bottom: usual(
    ({ isDiagonal }): BottomHow => (isDiagonal ? 'under' : 'between'),
    (word) => say.word({ word }),
  ),
  'rail-width': length(({ habits }) => habits.railWidth),
  plinth: usual(
    () => 0,
    () => say.none(),
  ),
  back: {
    as: 'each',
    fields: {
      how: backHow,
      board: usual(
        // Where loose shelves need a pin in the corner, the back carries it.
        ({ habits, isDiagonal }) => (isDiagonal ? habits.board : habits.backBoard),
        (name, { isDiagonal }) => (isDiagonal ? say.usualBoard({ name }) : say.usualBackBoard({ name })),
      ),
      groove: length(({ habits }) => habits.grooveDepth),
      inset: length(({ habits }) => habits.backInset),
      'open-from': nothing(() => say.wholeBack()),
      'open-to': nothing(() => say.wholeBack()),
    },
    told: (usage) => backHow.told(backHow.value(usage), usage),
  },
  doors: {
    as: 'each',
    fields: {
      hung,
      bays: nothing(() => say.hungBefore()),
      how: usual(
        (): DoorHow => 'overlay',
        (word) => say.word({ word }),
      ),
      board: boardOfCarcass,
      band: bandOfCarcass,
      hinge: usual(
        ({ habits }) => habits.hinge,
        (name) => say.usualHinge({ name }),
      ),
      gap: length(({ habits }) => habits.doorGap),
      reveal: length(({ habits }) => habits.doorReveal),
      'top-reveal': length(({ habits }) => habits.doorTopReveal),
      'bottom-reveal': length(({ habits }) => habits.doorBottomReveal),
      buffer: length(({ habits }) => habits.doorBuffer),
    },
    told: (usage) => hung.told(hung.value(usage), usage),
  },
  'front-heights': {
    as: 'each',
    fields: {
      how: frontHeights,
      step: usual(
        () => 1,
        () => say.one(),
      ),
    },
    told: (usage) => frontHeights.told(frontHeights.value(usage), usage),
  },
  drawers: {
    as: 'each',
    fields: {
      slide: usual(
        ({ habits }) => habits.slide,
        (name) => say.usualSlide({ name }),
      ),
      board: boardOfCarcass,
      band: bandOfCarcass,
      bottom: usual(
        (): DrawerBottom => 'grooved',
        (word) => say.word({ word }),
      ),
      'bottom-board': usual(
        ({ habits }) => habits.backBoard,
        (name) => say.usualBackBoard({ name }),
      ),
      joint: workedOut(
        (): string | null => null,
        () => say.fittingOfCarcass(),
      ),
      height: nothing(() => say.asHighAsFits()),
    },
    told: () => say.usualDrawers(),
  },
  pulls: {
    as: 'each',
    fields: {
      pull,
      'on-drawers': workedOut(
        (): string | null => null,
        () => say.pullOfDoors(),
      ),
      lies: usual(
        (): PullLies => 'upright',
        (word) => say.word({ word }),
      ),
      end: workedOut(
        (): PullEnd | null => null,
        (_, { habits, kind }) => say.pullByHand({ height: habits.handHeight, kind }),
      ),
      'from-edge': length(({ habits }) => habits.pullFromEdge),
      'from-end': length(({ habits }) => habits.pullFromEnd),
      'from-top': nothing(() => say.centred()),
    },
    told: (usage) => pull.told(pull.value(usage), usage),
  },
  feet: usual(
    ({ habits }) => habits.foot,
    (name) => (name === NO_FOOT ? say.none() : say.usualFoot({ name })),
  ),
  angles: usual(
    ({ habits }) => habits.angle,
    (name) => (name === NO_ANGLE ? say.none() : say.usualAngle({ name })),
  ),
  brackets: usual(
    ({ habits }) => habits.bracket,
    (name) => (name === NO_BRACKET ? say.none() : say.usualBracket({ name })),
  ),
  'end-panels': {
    as: 'each',
    fields: {
      on: endPanelsOn,
      board: boardOfFronts,
      band: bandOfFronts,
      'to-floor': usual(
        () => true,
        () => say.downToFloor(),
      ),
    },
    told: (usage) => endPanelsOn.told(endPanelsOn.value(usage), usage),
  },
  fillers: {
    as: 'each',
    fields: {
      left: nothing(() => say.none()),
      right: nothing(() => say.none()),
      board: boardOfFronts,
      band: bandOfFronts,
    },
    told: () => say.none(),
  },
  load: {
    as: 'each',
    fields: {
      'on-shelf': nothing(() => say.none()),
      'at-middle': nothing(() => say.none()),
      standard: usual(
        (): LoadName => 'none',
        (word) => say.word({ word }),
      ),
      ends: usual(
        (): 'lying' | 'clamped' => 'lying',
        (word) => say.word({ word }),
      ),
      back: usual(
        (): 'free' | 'held' => 'free',
        (word) => say.word({ word }),
      ),
      lipping: nothing(() => say.none()),
    },
    told: () => say.none(),
  },
  rows: usual(usualRows, tellRows),
  'row-offset': workedOut(
    ({ habits }) => habits.rowOffset,
    (offset) => (offset === null ? say.halfSide() : say.length({ length: offset })),
  ),
  'row-holes': {
    as: 'each',
    fields: {
      bays: nothing(() => say.everyRowBay()),
      from: nothing(() => say.wholeRow()),
      to: nothing(() => say.wholeRow()),
      'round-shelves': nothing(() => say.everyHole()),
    },
    told: () => say.everyHole(),
  },
  'row-setback': length(({ habits }) => habits.setback),
  'rear-row': nothing(() => say.asFarBack()),
  dowels: nothing(() => say.bySpindles()),
  machines: {
    as: 'each',
    fields: { faces: machine('faces'), ends: machine('ends'), rows: machine('rows'), clamp: machine('clamp') },
    told: () => say.usualMachines(),
  },
  dividers: { as: 'items', item: { at: must, board: boardOfCarcass } },
  'fixed-shelves': { as: 'items', item: shelf(() => 0) },
  'loose-shelves': { as: 'items', item: shelf(({ habits }) => habits.shelfSetback) },
  fronts: nothing(() => say.asDoorsSay()),
  blind: {
    as: 'each',
    fields: {
      left: nothing(() => say.none()),
      right: nothing(() => say.none()),
      strip: length(() => USUAL_STRIP),
      board: boardOfFronts,
      band: bandOfFronts,
    },
    told: () => say.none(),
  },
  diagonal: {
    as: 'each',
    fields: { left: nothing(() => say.none()), right: nothing(() => say.none()) },
    told: () => say.none(),
  },
  'wardrobe-rails': nothing(() => say.none()),
  panels: { as: 'parts' },
  note: nothing(() => null),
} as const satisfies LeftOutFields<typeof carcassSchema.fields>;
