import { stacksAsked, type AskedFront } from '../../carcass/fronts/asked.js';
import {
  frontHeights,
  pitchesOfSteps,
  pitchShares,
  sharesHeight,
  stepOf,
  type FrontHeights,
} from '../../carcass/fronts/heights.js';
import type { Micrometres } from '../../length/units.js';
import { counted } from '../../words/english.js';
import { messages } from '../../words/message.js';
import { ownText, remove, setLength, setWord } from '../changes.js';
import type { Repair } from '../finding.js';
import { distinct, onPitch } from '../lookups.js';
import type { CarcassContext, CarcassRule, Found } from '../rule.js';
import { heightToClose } from './fronts-leave-open.js';

interface Off {
  readonly height: Micrometres;
  readonly gap: Micrometres;
  /** More than so many pitches; less where it is negative. */
  readonly over: Micrometres;
  readonly pitches: number;
  readonly to: Micrometres;
}

interface Few {
  readonly bay: number | null;
  readonly fronts: number;
  readonly step: number;
  readonly pitches: number;
  readonly wanted: number;
}

export const say = messages('front-off-pitch', {
  off: ({ height, gap, over, pitches, to }: Off, show) =>
    `A height of ${show.length(height)} and the gap of ${show.length(gap)} under it come to ${show.length(Math.abs(over))} ${over > 0 ? 'more' : 'less'} than ${counted(pitches, 'pitch', 'pitches')}, so slides and plates stand otherwise behind the fronts under it than behind those above. Make it ${show.length(to)} high.`,
  few: ({ bay, fronts, step, pitches, wanted }: Few) =>
    `${fronts} fronts${bay === null ? '' : ` before bay ${bay}`} share ${counted(pitches, 'pitch', 'pitches')}, and ${step === 0 ? 'in whole pitches' : `stepped by ${step}`} they need ${wanted}, so they are made alike and off the pitch. Make the carcass higher, or ${step === 0 ? 'use fewer fronts' : 'the step less'}.`,
  pitches: ({ pitches, to }: { readonly pitches: number; readonly to: Micrometres }, show) =>
    `Give it ${counted(pitches, 'pitch', 'pitches')}, which makes it ${show.exact(to)} high`,
  high: ({ to }: { readonly to: Micrometres }, show) => `Make it ${show.exact(to)} high`,
  step: ({ step }: { readonly step: number }) => `Step the fronts by ${step}`,
  how: ({ word }: { readonly word: string }) => `Divide the fronts with \`${word}\``,
  higher: ({ to }: { readonly to: Micrometres }, show) => `Make the carcass ${show.exact(to)} high`,
});

export const frontOffPitch: CarcassRule = {
  name: 'front-off-pitch',
  severity: 'warning',
  about: {
    what: 'Fronts are to be divided in whole pitches, and a height that is given, or too little room, keeps them from it.',
    why: 'Slides and plates stand on the pitch grid wherever fronts begin. Only where every front with its gap is a whole number of pitches do they stand at one place behind all of them, so that fronts and boxes of one height are bored alike, at one setting of the stops (common practice, no source).',
    remedy: 'Give fronts their height in `pitches`, step them by less, or make the carcass higher.',
    example:
      'kind: base\nwidth: 600\nfront-heights: on-pitch\nfronts: [{ front: drawer, height: 140 }, drawer, drawer]',
  },
  check(context) {
    const { spec, shop } = context;
    if (spec.frontHeights.how.value === 'equal') return [];
    const stacks = stacksAsked(spec).flatMap((stack) => {
      const heights = frontHeights(spec, shop, stack.fronts, heightToClose(context, stack.fronts));
      const shares = stack.fronts.filter(sharesHeight).length;
      return heights.as === 'too-high' || shares < 2 ? [] : [{ ...stack, heights, shares }];
    });
    // All bays have one height, so that the first tells of them all.
    const few = stacks.find(({ heights }) => !heights.isOnPitch);
    const off = stacks.flatMap(({ fronts }) => fronts.slice(0, -1).flatMap((front) => offPitch(context, front)));
    const once = off.filter(({ place }, i) => off.findIndex((one) => one.place.start === place.start) === i);
    return [...(few === undefined ? [] : tooFew(context, few)), ...once];
  },
};

function offPitch(context: CarcassContext, { height }: AskedFront): readonly Found[] {
  const { spec, shop } = context;
  const { pitch } = shop.habits;
  const gap = spec.doors.gap.value;
  if (height === null || onPitch(height.value + gap, pitch, context.unit)) return [];
  const pitches = Math.max(1, Math.round((height.value + gap) / pitch));
  const to = pitches * pitch - gap;
  const item = spec.fronts?.value.find(({ value }) => value.height === height)?.value;
  const inPitches: Repair = {
    title: say.pitches({ pitches, to }),
    changes: [
      setWord(height.path, String(pitches)),
      { kind: 'rename-key', part: 'self', path: height.path, text: 'pitches' },
    ],
    preferred: true,
  };
  const repairs: readonly Repair[] = !ownText(height)
    ? []
    : [
        ...(item?.pitches === undefined ? [inPitches] : []),
        { title: say.high({ to }), changes: [setLength(context, height.path, to)], preferred: false },
      ];
  const message = say.off({ height: height.value, gap, over: height.value + gap - pitches * pitch, pitches, to });
  return [{ place: height.place, message, repairs }];
}

interface Stack {
  readonly bay: number | null;
  readonly shares: number;
  readonly heights: Extract<FrontHeights, { readonly as: 'heights' }>;
}

function tooFew(context: CarcassContext, { bay, shares, heights: { pitches } }: Stack): readonly Found[] {
  const { spec, shop } = context;
  const { how, step } = spec.frontHeights;
  const by = stepOf(how.value, step.value);
  const steps = pitchesOfSteps(shares, by);
  const fits = (one: number): boolean => pitchShares(pitches, shares, one) !== null;
  const most = Array.from({ length: Math.max(0, by - 1) }, (_, i) => by - 1 - i).find(fits);
  // The greatest step leaves the uppermost front very low.
  const less = most === undefined || !ownText(step) ? [] : distinct([most, Math.ceil(most / 2)]);
  const word = by > 0 && fits(0) ? 'on-pitch' : 'equal';
  // The uppermost then stays about as high as it is.
  const short = shares * Math.max(1, Math.floor(pitches / shares)) + steps - pitches;
  const higher = spec.height.value + short * shop.habits.pitch;
  const repairs: readonly Repair[] = [
    ...less.map((one, i) => {
      return { title: say.step({ step: one }), changes: [setWord(step.path, String(one))], preferred: i === 0 };
    }),
    ...(ownText(how)
      ? [
          {
            title: say.how({ word }),
            changes: [setWord(how.path, word), ...(ownText(step) ? [remove(step.path)] : [])],
            preferred: less.length === 0,
          },
        ]
      : []),
    ...(ownText(spec.height)
      ? [
          {
            title: say.higher({ to: higher }),
            changes: [setLength(context, spec.height.path, higher)],
            preferred: false,
          },
        ]
      : []),
  ];
  const number = spec.dividers.length === 0 || bay === null ? null : bay + 1;
  const message = say.few({ bay: number, fronts: shares, step: by, pitches, wanted: shares + steps });
  return [{ place: how.place, message, repairs }];
}
