import type { Mate, Mating } from '../../boring/matings.js';
import { chosen, chosenAtEnd } from '../../carcass/choices.js';
import { kindOf } from '../../fittings/kinds.js';
import type { Located } from '../../document/place.js';
import type { Micrometres } from '../../length/units.js';
import { remove, setLength } from '../changes.js';
import type { Repair } from '../finding.js';
import { distinct, grouped } from '../lookups.js';
import type { CarcassContext, CarcassRule, Found } from '../rule.js';
import { listed, quoted } from '../../words/english.js';
import { messages } from '../../words/message.js';
import type { Show } from '../../words/show.js';

/** What the two bores may be deeper together than the dowel is long (common practice, no source). */
const LEAST_GAP: Micrometres = 500;
const MOST_GAP: Micrometres = 2000;

export const dowelDepths: CarcassRule = {
  name: 'dowel-depths',
  severity: 'error',
  about: {
    what: 'The two bores of a dowel do not add up to its length plus the glue gap.',
    why: 'If they are too shallow, the dowel holds the joint open; if they are too deep, it holds in one panel only. Together the bores are 0.5 to 2 mm deeper than the dowel is long (common practice, no source), or by the shop’s own `glue-gap`.',
    remedy: 'Change `face-depth` or `end-depth`, or leave both to the fitting.',
    example: 'kind: wall\nwidth: 600\npanels:\n  bottom: { end-depth: 15 }',
  },
  check(context) {
    const wrong = context.matings.flatMap((mating) =>
      mating.mates.flatMap((mate) => {
        const dowel = mate.faults.length > 0 ? null : pinOf(context, mate);
        if (dowel === null) return [];
        const gap = mate.depthSum - dowel.length;
        if ((gap >= LEAST_GAP && gap <= MOST_GAP) || gap === context.shop.habits.glueGap) return [];
        return [{ mating, mate, dowel, gap, cause: causeOf(context, mating) }];
      }),
    );
    return grouped(wrong, ({ cause, gap, mating }) => `${cause?.value.path.join(' ') ?? mating.joint.id} ${gap}`).map(
      (same) => found(context, same),
    );
  },
};

interface Sum {
  readonly panel: string;
  readonly mates: readonly string[];
  /** Panel and depth of the bore in the face, and of the one in the end. */
  readonly face: readonly [panel: string, depth: Micrometres];
  readonly end: readonly [panel: string, depth: Micrometres];
  readonly dowel: Pin;
  /** What the two bores are deeper together than the dowel is long; below zero, what it is longer. */
  readonly gap: Micrometres;
  readonly habit: Micrometres;
}

interface Depth {
  readonly panels: readonly string[];
  readonly depth: Micrometres;
  readonly total: Micrometres;
  readonly mates: readonly string[];
}

export const say = messages('dowel-depths', {
  tooShallow: (sum: Sum, show) =>
    `${added(sum, show)}, but ${quoted(sum.dowel.name)} is ${show.length(-sum.gap)} longer. ${rule(sum, show)}`,
  tooLittle: (sum: Sum, show) =>
    `${added(sum, show)}, which leaves only ${show.length(sum.gap)} for the glue of ${quoted(sum.dowel.name)}. ${rule(sum, show)}`,
  tooMuch: (sum: Sum, show) =>
    `${added(sum, show)}, which leaves ${show.length(sum.gap)} for the glue of ${quoted(sum.dowel.name)}. ${rule(sum, show)}`,
  boredDeep: (
    { mate, depth, panel }: { readonly mate: string; readonly depth: Micrometres; readonly panel: string },
    show,
  ) => `${mate} is bored ${show.length(depth)} deep for ${panel}.`,
  removeFitting: ({ panel }: { readonly panel: string }) =>
    `Remove the fitting of ${panel}, so that both bores follow one fitting`,
  removeDepth: ({ panel }: { readonly panel: string }) =>
    `Remove the depth of ${panel}, so that both bores follow one fitting`,
  holdWhole: ({ fitting }: { readonly fitting: string }) => `Hold the whole carcass with ${quoted(fitting)}`,
  bore: ({ panels, depth, total, mates }: Depth, show) =>
    `Bore ${listed(panels)} ${show.exact(depth)} deep, which makes ${show.exact(total)} with ${listed(mates)}`,
});

function added({ panel, mates, face, end }: Sum, show: Show): string {
  return `The bores of ${listed([panel, ...mates])} add up to ${show.length(face[1] + end[1])} (${show.length(face[1])} in the face of ${face[0]}, ${show.length(end[1])} in the end of ${end[0]})`;
}

function rule({ dowel, habit }: Sum, show: Show): string {
  return `Change a depth so that both together are ${show.length(dowel.length + habit)}: ${show.length(dowel.length)} for the ${dowel.noun} and ${show.length(habit)} for the glue (between ${show.length(LEAST_GAP)} and ${show.length(MOST_GAP)}).`;
}

interface Cause {
  readonly panel: string;
  readonly choice: 'faceDepth' | 'endDepth' | 'joint';
  readonly value: Located<unknown>;
}
interface Pin {
  readonly name: string;
  readonly noun: string;
  readonly length: Micrometres;
}
interface Wrong {
  readonly mating: Mating;
  readonly mate: Mate;
  readonly dowel: Pin;
  readonly gap: Micrometres;
  readonly cause: Cause | null;
}

/** What stands in both bores: the longer one, where the two panels are bored for two of one diameter. */
function pinOf({ shop }: CarcassContext, { face, end }: Mate): Pin | null {
  const pins = [face.fitting, end.fitting].flatMap((name): Pin[] => {
    const fitting = name === null ? undefined : shop.fittings.get(name);
    const length = fitting === undefined ? null : kindOf(fitting).joint.lengthInBoth(fitting);
    return fitting === undefined || length === null
      ? []
      : [{ name: fitting.name, noun: kindOf(fitting).item.noun, length }];
  });
  return pins.toSorted((a, b) => b.length - a.length)[0] ?? null;
}

function causeOf({ spec }: CarcassContext, { joint: { facePanel, endPanel, end } }: Mating): Cause | null {
  const hasOwnFitting = chosenAtEnd(spec, endPanel, end, 'joint') !== undefined;
  const candidates = [
    [endPanel, 'endDepth'],
    [facePanel, 'faceDepth'],
    [endPanel, 'joint'],
    [facePanel, 'joint'],
  ] as const;
  for (const [panel, choice] of candidates) {
    if (choice === 'joint' && hasOwnFitting) continue;
    const value: Located<unknown> | undefined = chosen(spec, panel, choice);
    if (value !== undefined) return { panel, choice, value };
  }
  return null;
}

function found(context: CarcassContext, same: readonly Wrong[]): Found {
  const { mating, mate, dowel, gap, cause } = same[0]!;
  const { facePanel, endPanel, place } = mating.joint;
  const panel = cause?.panel ?? endPanel;
  const mates = distinct(
    same.map((one) => (one.mating.joint.facePanel === panel ? one.mating.joint.endPanel : one.mating.joint.facePanel)),
  );
  const sum = {
    panel,
    mates,
    face: [facePanel, mate.face.depth],
    end: [endPanel, mate.end.depth],
    dowel,
    gap,
    habit: context.shop.habits.glueGap,
  } as const;
  return {
    place: cause?.value.place ?? place,
    panel,
    message: gap < 0 ? say.tooShallow(sum) : gap < LEAST_GAP ? say.tooLittle(sum) : say.tooMuch(sum),
    related: related(context, same, panel, mates),
    bores: distinct(same.flatMap((one) => [one.mate.face.id, one.mate.end.id])),
    repairs: cause === null ? [] : repairs(context, same, cause, mates),
  };
}

function related(
  context: CarcassContext,
  same: readonly Wrong[],
  panel: string,
  mates: readonly string[],
): Found['related'] {
  return mates.map((key) => {
    const { mate } = same.find(({ mating: { joint } }) => joint.facePanel === key || joint.endPanel === key)!;
    const bore = mate.face.panel === key ? mate.face : mate.end;
    const choice = chosen(context.spec, key, mate.face.panel === key ? 'faceDepth' : 'endDepth');
    const place = choice?.place ?? context.carcass.panels.find((one) => one.key === key)!.place;
    return { place, message: say.boredDeep({ mate: key, depth: bore.depth, panel }) };
  });
}

function repairs(
  context: CarcassContext,
  same: readonly Wrong[],
  { panel, choice, value }: Cause,
  mates: readonly string[],
): readonly Repair[] {
  const { mate, dowel } = same[0]!;
  const total = dowel.length + context.shop.habits.glueGap;
  const offers: Repair[] = [
    {
      title: choice === 'joint' ? say.removeFitting({ panel }) : say.removeDepth({ panel }),
      changes: [remove(value.path)],
      preferred: true,
    },
  ];
  if (choice === 'joint') {
    const name = value.value as string;
    offers.push({
      title: say.holdWhole({ fitting: name }),
      changes: [{ kind: 'set', part: 'self', path: ['joint'], text: name }, remove(value.path)],
      preferred: false,
    });
    return offers;
  }
  const own = choice === 'endDepth' ? mate.end.depth : mate.face.depth;
  const theirs = choice === 'endDepth' ? mate.face.depth : mate.end.depth;
  const fitted = total - theirs;
  if (fitted > 0 && fitted !== own)
    offers.push({
      title: say.bore({ panels: [panel], depth: fitted, total, mates }),
      changes: [setLength(context, value.path, fitted)],
      preferred: false,
    });
  const mateDepth = total - own;
  const mateChoice = choice === 'endDepth' ? 'faceDepth' : 'endDepth';
  if (mateDepth > 0)
    offers.push({
      title: say.bore({ panels: mates, depth: mateDepth, total, mates: [panel] }),
      changes: mates.map((key) =>
        setLength(
          context,
          chosen(context.spec, key, mateChoice)?.path ?? [
            'panels',
            key,
            mateChoice === 'faceDepth' ? 'face-depth' : 'end-depth',
          ],
          mateDepth,
        ),
      ),
      preferred: false,
    });
  return offers;
}
