import type { MateFault, Mating } from '../../boring/matings.js';
import type { Bore } from '../../boring/model.js';
import { boredFor, purposeOf, reaches } from '../../fittings/purposes.js';
import { chosen } from '../../carcass/choices.js';
import { frontOf } from '../../carcass/panel.js';
import { writeLength } from '../../length/write.js';
import type { Located } from '../../document/place.js';
import type { Micrometres } from '../../length/units.js';
import { remove, setWord } from '../changes.js';
import type { Change, RelatedPlace, Repair } from '../finding.js';
import { distinct, grouped, panelOf } from '../lookups.js';
import type { CarcassContext, QuickRule, Found } from '../rule.js';
import { aNoun, counted, listed, quoted } from '../../words/english.js';
import { messages, type Message } from '../../words/message.js';
import type { Show } from '../../words/show.js';

export const dowelsUnmatched: QuickRule = {
  name: 'dowels-unmatched',
  severity: 'error',
  about: {
    what: 'The bores in the end of a panel and those in the face that it meets do not match in count, place or diameter.',
    why: 'A dowel stands in two bores on one axis. Whether they meet is decided where the panels stand in the carcass, to the micrometre, not by comparing lists: a panel that is set back has the same places at other distances from its own front edge.',
    remedy:
      'Give both panels the same places and the same fitting; most simply by taking out what only one of them says.',
    example: 'kind: wall\nwidth: 600\npanels:\n  left: { dowels: [53, 117, 245] }',
  },
  check(context) {
    const faulty = context.matings.flatMap((mating) => {
      const faults = mating.mates.flatMap((mate) => mate.faults);
      const lonely = mating.unmatchedInEnd.length + mating.unmatchedInFace.length;
      return faults.length === 0 && lonely === 0 ? [] : [faultOf(context, mating, faults)];
    });
    return grouped(faulty, ({ cause, mating }) => cause?.value.path.join(' ') ?? mating.joint.id).map((same) =>
      found(context, same),
    );
  },
};

interface Lonely {
  readonly panel: string;
  readonly mates: readonly string[];
  /** The mate that the figures are of. */
  readonly mate: string;
  readonly counts: readonly [own: number, mates: number];
  /** Places without a mate, from the front of the carcass. */
  readonly own: readonly Micrometres[];
  readonly others: readonly Micrometres[];
}

interface Pair {
  readonly panel: string;
  readonly mates: readonly string[];
  readonly face: string;
  readonly end: string;
}

interface Places {
  readonly panels: readonly string[];
  readonly places: readonly Micrometres[];
  readonly like: readonly string[];
}

const SAME = 'Give both the same places and the same fitting.';

export const say = messages('dowels-unmatched', {
  blind: (
    {
      panel,
      mates,
      driven,
      depth,
      face,
      thickness,
    }: Omit<Pair, 'end'> & { readonly driven: string; readonly depth: Micrometres; readonly thickness: Micrometres },
    show,
  ) =>
    `The bores of ${listed([panel, ...mates])} do not match: the ${driven} holes are only ${show.length(depth)} deep in ${face}, which is ${show.length(thickness)} thick, and do not come through. Leave their depth to the fitting.`,
  lonely: ({ panel, mates, mate, counts: [own, others], ...places }: Lonely, show) =>
    `The bores of ${listed([panel, ...mates])} do not match. At ${mate}, ${panel} has ${counted(own, 'bore')} and ${mate} has ${others}. No bore lies opposite ${[...at(panel, places.own, show), ...at(mate, places.others, show)].join(' or opposite ')}, counted from the front of the carcass. ${SAME}`,
  diameters: (
    { panel, mates, face, end, wide }: Pair & { readonly wide: readonly [face: Micrometres, end: Micrometres] },
    show,
  ) =>
    `The bores of ${listed([panel, ...mates])} do not match: those in the face of ${face} are ${show.length(wide[0])} wide and those in the end of ${end} ${show.length(wide[1])}. ${SAME}`,
  fittings: ({
    panel,
    mates,
    face,
    end,
    fittings,
  }: Pair & { readonly fittings: readonly [string | null, string | null] }) =>
    `The bores of ${listed([panel, ...mates])} do not match: ${face} is bored for ${named(fittings[0])} and ${end} for ${named(fittings[1])}. ${SAME}`,
  purposes: ({ panel, mates, face, end, boredFor }: Pair & { readonly boredFor: readonly [string, string] }) =>
    `The bores of ${listed([panel, ...mates])} do not match: ${face} is bored for ${aNoun(boredFor[0])} and ${end} for ${aNoun(boredFor[1])}. ${SAME}`,
  boredAt: (
    { mate, panel, places }: { readonly mate: string; readonly panel: string; readonly places: readonly Micrometres[] },
    show,
  ) =>
    `${mate} is bored for ${panel} at ${places.length === 0 ? 'no place' : lengths(places, show)} from the carcass front.`,
  leaveDepth: ({ panel }: { readonly panel: string }) => `Leave the depth in ${panel} to the fitting`,
  removeDowels: ({ panel, mates }: { readonly panel: string; readonly mates: readonly string[] }) =>
    `Remove \`dowels\` of ${panel}, so that it is bored like ${listed(mates)}`,
  removeFitting: ({ panel, mates }: { readonly panel: string; readonly mates: readonly string[] }) =>
    `Remove the fitting of ${panel}, so that it is bored like ${listed(mates)}`,
  boreLike: ({ panels, places, like }: Places, show) =>
    `Bore ${listed(panels)} at ${lengths(places, show)}, like ${listed(like)}`,
  endDowels: ({ panel, mates }: { readonly panel: string; readonly mates: readonly string[] }) =>
    `Bore ${listed(mates)} for ${panel} at the same places (\`end-dowels\`)`,
  boreAll: ({ places }: Pick<Places, 'places'>, show) => `Bore every panel of this carcass at ${lengths(places, show)}`,
  holdToo: ({ panels, fitting }: { readonly panels: readonly string[]; readonly fitting: string }) =>
    `Hold ${listed(panels)} with ${quoted(fitting)} too`,
  holdWhole: ({ fitting }: { readonly fitting: string }) => `Hold the whole carcass with ${quoted(fitting)}`,
});

const named = (fitting: string | null): string => (fitting === null ? 'nothing' : quoted(fitting));

function at(panel: string, places: readonly Micrometres[], show: Show): readonly string[] {
  return places.length === 0 ? [] : [`${lengths(places, show)} in ${panel}`];
}

function lengths(places: readonly Micrometres[], show: Show): string {
  return listed(places.map(show.length));
}

type Choice = 'dowels' | 'joint' | 'faceDepth';

/** What one panel says for itself and its mates do not. */
interface Cause {
  readonly panel: string;
  readonly choice: Choice;
  readonly value: Located<unknown>;
}
interface Fault {
  readonly mating: Mating;
  readonly faults: readonly MateFault[];
  readonly cause: Cause | null;
}

function faultOf(context: CarcassContext, mating: Mating, faults: readonly MateFault[]): Fault {
  const { facePanel, endPanel } = mating.joint;
  const lonely = mating.unmatchedInEnd.length + mating.unmatchedInFace.length > 0;
  const order: readonly Choice[] = isBlind(mating) ? ['faceDepth'] : lonely ? ['dowels', 'joint'] : ['joint', 'dowels'];
  const causes = order.flatMap((choice) =>
    [facePanel, endPanel].flatMap((panel): Cause[] => {
      const value: Located<unknown> | undefined = chosen(context.spec, panel, choice);
      return value === undefined ? [] : [{ panel, choice, value }];
    }),
  );
  return { mating, faults, cause: causes[0] ?? null };
}

/** True where holes that something is driven through do not come out of the face panel. */
function isBlind({ unmatchedInFace }: Mating): boolean {
  return unmatchedInFace.some(({ bore }) => purposeOf(bore).driven !== null && !bore.through);
}

function found(context: CarcassContext, same: readonly Fault[]): Found {
  const { mating, cause } = same[0]!;
  const { joint } = mating;
  const panel = cause?.panel ?? joint.endPanel;
  const mates = distinct(
    same.map(({ mating: { joint: one } }) => (one.facePanel === panel ? one.endPanel : one.facePanel)),
  );
  const bores = same.flatMap(({ mating: one }) => [
    ...one.unmatchedInFace.map(({ bore }) => bore.id),
    ...one.unmatchedInEnd.map(({ bore }) => bore.id),
    ...one.mates.filter(({ faults }) => faults.length > 0).flatMap(({ face, end }) => [face.id, end.id]),
  ]);
  return {
    place: cause?.value.place ?? joint.place,
    panel,
    message: reason(context, same[0]!, panel, mates),
    related: relatedTo(context, same, panel, mates),
    bores: distinct(bores),
    repairs: cause === null ? [] : repairs(context, same, cause, mates),
  };
}

/** The figures, for the first of the joints that fail for one reason. */
function reason(context: CarcassContext, { mating, faults }: Fault, panel: string, mates: readonly string[]): Message {
  const { joint, unmatchedInEnd, unmatchedInFace } = mating;
  const { facePanel: face, endPanel: end } = joint;
  const mate = face === panel ? end : face;
  if (isBlind(mating)) {
    const { bore } = unmatchedInFace[0]!;
    const thickness = panelOf(context, face)?.thickness ?? 0;
    return say.blind({ panel, mates, driven: purposeOf(bore).driven!, depth: bore.depth, face, thickness });
  }
  if (unmatchedInEnd.length + unmatchedInFace.length === 0) return mateReason(faults[0]!, { panel, mates, face, end });
  const [own, others] = face === panel ? [unmatchedInFace, unmatchedInEnd] : [unmatchedInEnd, unmatchedInFace];
  const places = (bores: typeof own): readonly Micrometres[] => bores.map(({ bore }) => onDepth(context, bore));
  return say.lonely({
    panel,
    mates,
    mate,
    counts: [boresIn(context, mating, panel).length, boresIn(context, mating, mate).length],
    own: places(own),
    others: places(others),
  });
}

function mateReason(fault: MateFault, pair: Pair): Message {
  switch (fault.kind) {
    case 'diameter':
      return say.diameters({ ...pair, wide: [fault.face, fault.end] });
    case 'fitting':
      return say.fittings({ ...pair, fittings: [fault.face, fault.end] });
    case 'purpose':
      return say.purposes({ ...pair, boredFor: [boredFor(fault.face), boredFor(fault.end)] });
  }
}

/** Distance of a bore from the front of the carcass: the one figure that both panels share. */
function onDepth(context: CarcassContext, bore: Bore): Micrometres {
  const panel = panelOf(context, bore.panel);
  return bore.u + (panel === undefined ? 0 : frontOf(panel));
}

/** The bores of a joint that reach from one panel into the other, in one of the two. */
function boresIn(context: CarcassContext, { joint }: Mating, panel: string): readonly Bore[] {
  return context.boring.bores.filter((bore) => bore.group === joint.id && bore.panel === panel && reaches(bore));
}

function relatedTo(
  context: CarcassContext,
  same: readonly Fault[],
  panel: string,
  mates: readonly string[],
): readonly RelatedPlace[] {
  return mates.map((mate) => {
    const { mating } = same.find(({ mating: { joint } }) => joint.facePanel === mate || joint.endPanel === mate)!;
    const places = boresIn(context, mating, mate).map((bore) => onDepth(context, bore));
    return {
      place: chosen(context.spec, mate, 'dowels')?.place ?? panelOf(context, mate)!.place,
      message: say.boredAt({ mate, panel, places }),
    };
  });
}

function repairs(
  context: CarcassContext,
  same: readonly Fault[],
  { panel, choice, value }: Cause,
  mates: readonly string[],
): readonly Repair[] {
  const { spec } = context;
  if (choice === 'faceDepth')
    return [{ title: say.leaveDepth({ panel }), changes: [remove(value.path)], preferred: true }];
  const offers: Repair[] = [
    {
      title: choice === 'dowels' ? say.removeDowels({ panel, mates }) : say.removeFitting({ panel, mates }),
      changes: [remove(value.path)],
      preferred: true,
    },
  ];
  const set = (title: Message, changes: readonly Change[]): void => {
    offers.push({ title, changes, preferred: false });
  };
  if (choice === 'dowels') {
    const own = chosen(spec, panel, 'dowels')!.value.map((at) => at.value);
    if (same.every(({ mating: { joint } }) => joint.endPanel === panel))
      set(say.endDowels({ panel, mates }), [
        setWord([...value.path.slice(0, -1), 'end-dowels'], textList(context, own)),
        remove(value.path),
      ]);
    const theirs = placesOfMates(context, same, panel, mates);
    if (theirs.length > 0)
      set(say.boreLike({ panels: [panel], places: theirs, like: mates }), [
        setWord(value.path, textList(context, theirs)),
      ]);
    set(
      say.boreLike({ panels: mates, places: own, like: [panel] }),
      mates.map((mate) => setWord(choicePath(context, mate, 'dowels'), textList(context, own))),
    );
    set(say.boreAll({ places: own }), [setWord(['dowels'], textList(context, own)), remove(value.path)]);
  } else {
    const name = chosen(spec, panel, 'joint')!.value;
    set(
      say.holdToo({ panels: mates, fitting: name }),
      mates.map((mate) => setWord(choicePath(context, mate, 'joint'), name)),
    );
    set(say.holdWhole({ fitting: name }), [setWord(['joint'], name), remove(value.path)]);
  }
  return offers;
}

function choicePath(context: CarcassContext, panel: string, choice: Choice): readonly (string | number)[] {
  return chosen(context.spec, panel, choice)?.path ?? ['panels', panel, choice];
}

/** Where the mates are bored, counted from the panel’s own front edge. */
function placesOfMates(
  context: CarcassContext,
  same: readonly Fault[],
  panel: string,
  mates: readonly string[],
): readonly Micrometres[] {
  const own = panelOf(context, panel);
  const front = own === undefined ? 0 : frontOf(own);
  const bores = same.flatMap(({ mating }) => mates.flatMap((mate) => boresIn(context, mating, mate)));
  return distinct(bores.map((bore) => onDepth(context, bore) - front)).toSorted((a, b) => a - b);
}

function textList({ unit, inches }: CarcassContext, places: readonly Micrometres[]): string {
  return `[${places.map((at) => writeLength(at, unit, inches)).join(', ')}]`;
}
