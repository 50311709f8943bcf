import { described, headsSet } from '../../machining/described.js';
import { tell } from '../../words/message.js';
import { MEASURED, say, SETTING_VALUES, SETTINGS } from './messages.js';
import { showLength } from '../../length/show.js';
import { headName } from '../../drawing/machine-view/words.js';
import { stopCalled } from '../../drawing/words.js';
import type { Reader } from '../../length/reader.js';
import type { Micrometres } from '../../length/units.js';
import type { Plan, PlannedSetUp } from '../../machining/plan/plan.js';
import type { LoadedSpindle, SetStop, SetUp } from '../../machining/set-up.js';
import { asItIs, type Told } from '../../words/told.js';
import { bitsOf, bitWords, loadedIn } from './spindles.js';

/** One thing that stands on the machine, under the name that its operator has for it. */
export interface Setting {
  /** A stop by the shop's own name ('stop 7' where that is short); else 'fence', 'head', 'front head', 'height', 'fence extension', 'depth' or 'bits'. */
  readonly name: Told;
  readonly value: Told;
  /** From where to where it is measured, where the name does not say: 'to spindle 1'; else ''. */
  readonly about: Told | '';
  /** False where it stands so from the set-up before. */
  readonly changed: boolean;
}

/** A set-up in the order to run, with the one that was on the machines before it; null for the first. */
export interface InOrder {
  readonly planned: PlannedSetUp;
  readonly before: SetUp | null;
}

/** The set-ups of a plan, each with the one before it. */
export function inOrder({ setUps }: Pick<Plan, 'setUps'>): readonly InOrder[] {
  return setUps.map((planned, index) => ({ planned, before: setUps[index - 1]?.setUp ?? null }));
}

/** Everything that stands on the machine, in the order in which it is set. */
export function settingsOf(one: InOrder, reader: Reader): readonly Setting[] {
  return [...places(one, reader), ...stops(one, reader), depth(one, reader), bits(one, reader)];
}

/** The fence and all that moves the spindles: extension, heads, height. */
function places(one: InOrder, reader: Reader): readonly Setting[] {
  const { setUp, changes } = one.planned;
  const { machine, fence, height, extension } = setUp;
  const heads = headsSet(setUp);
  const at = (name: Told, place: Micrometres, about: Told, changed: boolean): Setting => ({
    name,
    value: asItIs(showLength(place, reader)),
    about,
    changed,
  });
  return [
    ...(extension || changes.extension
      ? [
          {
            name: SETTINGS.extension,
            value: SETTING_VALUES[extension ? 'on' : 'off'],
            about: '',
            changed: changes.extension,
          } as const,
        ]
      : []),
    ...(height === null ? [] : [at(SETTINGS.height, height, MEASURED.fromTable, changes.height)]),
    ...fence.map((place, head) => {
      const changed = changes.fences.includes(head);
      const { manyHeads, spindles } = described(machine);
      if (manyHeads) return at(headName(head, heads), place, MEASURED.fromFence, changed);
      return at(SETTINGS.fence, place, spindles === 'one' ? MEASURED.toOnlySpindle : MEASURED.toFirstSpindle, changed);
    }),
  ];
}

function stops({ planned: { setUp, changes } }: InOrder, reader: Reader): readonly Setting[] {
  return setUp.stops.map(({ name, side, position }) => ({
    name: stopCalled(name),
    value: asItIs(showLength(position, reader)),
    about: stopMeasured(setUp.machine, side),
    changed: changes.stops.includes(name),
  }));
}

/** What the figure of a stop is measured to: on a row of spindles that lies along the fence, the one nearest to the stop. */
function stopMeasured(machine: SetUp['machine'], side: SetStop['side']): Told {
  const { spindles, onEachHead } = described(machine);
  switch (spindles) {
    case 'one':
      return MEASURED.stopToOnlySpindle;
    case 'away':
      return MEASURED.stopToLine;
    case 'along':
      return tell(say.stopToSpindle({ spindle: side === 'left' ? 1 : onEachHead }), 'mm');
  }
}

function depth({ planned: { setUp, changes } }: InOrder, reader: Reader): Setting {
  const { thickness } = setUp;
  return {
    name: SETTINGS.depth,
    value: setUp.through
      ? tell(say.throughDepth({ depth: setUp.depth }), reader)
      : asItIs(showLength(setUp.depth, reader)),
    about: thickness === null ? '' : tell(say.inBoards({ thickness }), reader),
    changed: changes.depth,
  };
}

function bits({ planned: { setUp, changes } }: InOrder, reader: Reader): Setting {
  return { name: SETTINGS.bits, value: bitWords(loadedIn(setUp), setUp, reader), about: '', changed: changes.bits > 0 };
}

/** What has to be done to come to a set-up from the one before, one sentence each, in order; none where nothing changes. */
export function changeSentences(one: InOrder, reader: Reader): readonly Told[] {
  const { setUp, changes } = one.planned;
  const moved = places(one, reader).filter(({ name, changed }) => changed && name !== SETTINGS.extension);
  const set = stops(one, reader).filter(({ changed }) => changed);
  return [
    ...comeSentences(one, reader),
    ...(changes.extension ? [tell(setUp.extension ? say.extensionOn() : say.extensionOff(), reader)] : []),
    ...(moved.length > 0 ? [tell(say.setPlaces({ settings: moved }), reader)] : []),
    ...(set.length > 0 ? [tell(say.setStops({ settings: set }), reader)] : []),
    ...(changes.depth
      ? [tell((setUp.through ? say.setDepthThrough : say.setDepth)({ depth: setUp.depth }), reader)]
      : []),
    ...bitSentences(one, reader),
  ];
}

/** How the operator comes to the machine; none where he stands there. */
export function comeSentences({ planned: { setUp, changes, found } }: InOrder, reader: Reader): readonly Told[] {
  const machine = setUp.machine.name;
  if (changes.machine) return [tell((found === null ? say.goFresh : say.goStanding)({ machine }), reader)];
  return changes.turnHead ? [tell(say.turnHead({ machine }), reader)] : [];
}

/** The bits to take out and to put in, one sentence each; none where they stay. */
export function bitSentences(one: InOrder, reader: Reader): readonly Told[] {
  const { setUp, changes, found } = one.planned;
  if (changes.bits === 0) return [];
  const { out, into } = bitChanges(one);
  // Bits may come out of a head that is not set now.
  const heads = 1 + Math.max(...[...out, ...into].map(({ head }) => head));
  const fence = found !== null && heads > setUp.fence.length ? Array<number>(heads).fill(0) : setUp.fence;
  return [
    ...(out.length > 0 ? [tell(say.bitsOut({ bits: bitsOf(out, { ...setUp, fence }) }), reader)] : []),
    ...(into.length > 0 ? [tell(say.bitsIn({ bits: bitsOf(into, setUp) }), reader)] : []),
  ];
}

/** The bits to take out and to put in; on a machine that nobody knows the state of, all that are wanted. */
export function bitChanges({ planned: { setUp, found } }: Pick<InOrder, 'planned'>): {
  readonly out: readonly LoadedSpindle[];
  readonly into: readonly LoadedSpindle[];
} {
  const { machine } = setUp;
  const { heads, onEachHead } = described(machine);
  // Spindles that only the head turned away from has are left alone.
  const had = (found?.bits ?? [])
    .slice(0, heads)
    .flatMap((spindles, head) =>
      spindles
        .slice(0, onEachHead)
        .flatMap((diameter, spindle): LoadedSpindle[] => (diameter === 0 ? [] : [{ head, spindle, diameter }])),
    );
  const wanted = loadedIn(setUp);
  return { out: without(had, wanted), into: without(wanted, had) };
}

function without(these: readonly LoadedSpindle[], those: readonly LoadedSpindle[]): readonly LoadedSpindle[] {
  const key = ({ head, spindle, diameter }: LoadedSpindle): string => `${head}/${spindle}/${diameter}`;
  const taken = new Set(those.map(key));
  return these.filter((one) => !taken.has(key(one)));
}
