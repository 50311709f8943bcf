import { matings, type MateFault, type Mating } from '../../boring/matings.js';
import type { Bore } from '../../boring/model.js';
import { boredFor, purposeOf, reaches } from '../../fittings/purposes.js';
import { chosen } from '../../carcass/choices.js';
import { writeLength } from '../../length/write.js';
import type { Located } from '../../document/place.js';
import type { Micrometres } from '../../length/units.js';
import { remove, setWord } from '../changes.js';
import type { Change, RelatedPlace, Repair } from '../finding.js';
import { distinct, grouped, panelOf } from '../lookups.js';
import type { CarcassContext, CarcassRule, Found } from '../rule.js';
import { show } from '../words.js';
import { counted, listed } from '../../words/english.js';

export const dowelsUnmatched: CarcassRule = {
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
    const faulty = matings(context.carcass, context.boring).flatMap((mating) => {
      const faults = mating.mates.flatMap((mate) => mate.faults);
      const lonely = mating.unmatchedInEnd.length + mating.unmatchedInFace.length;
      return faults.length === 0 && lonely === 0 ? [] : [faultOf(context, mating, faults)];
    });
    return grouped(faulty, ({ cause, mating }) => cause?.value.path.join(' ') ?? mating.joint.id).map((same) =>
      found(context, same),
    );
  },
};

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
    message:
      `${panel} and ${listed(mates)} do not match: ${reason(context, same[0]!, panel)}. ` +
      (isBlind(mating) ? 'Leave their depth to the fitting.' : 'Give both the same places and the same fitting.'),
    related: relatedTo(context, same, panel, mates),
    bores: distinct(bores),
    repairs: cause === null ? [] : repairs(context, same, cause, mates),
  };
}

/** The figures, for the first of the joints that fail for one reason. */
function reason(context: CarcassContext, { mating, faults }: Fault, panel: string): string {
  const { joint, unmatchedInEnd, unmatchedInFace } = mating;
  const mate = joint.facePanel === panel ? joint.endPanel : joint.facePanel;
  if (isBlind(mating)) {
    const { bore } = unmatchedInFace[0]!;
    const depth = show(context, bore.depth);
    const thickness = show(context, panelOf(context, joint.facePanel)?.thickness ?? 0);
    return `the holes for the ${purposeOf(bore).driven!}s are ${depth} deep in ${joint.facePanel}, which is ${thickness} thick, and do not come through`;
  }
  if (unmatchedInEnd.length + unmatchedInFace.length === 0)
    return mateReason(context, faults[0]!, joint.facePanel, joint.endPanel);
  const [own, others] =
    joint.facePanel === panel ? [unmatchedInFace, unmatchedInEnd] : [unmatchedInEnd, unmatchedInFace];
  const [ownCount, mateCount] = [boresIn(context, mating, panel).length, boresIn(context, mating, mate).length];
  const places = (bores: readonly { readonly bore: Bore }[]): string =>
    bores.length === 0 ? 'none' : listed(bores.map(({ bore }) => show(context, onDepth(context, bore))));
  return (
    `at ${mate}, ${panel} has ${counted(ownCount, 'bore')} and ${mate} has ${mateCount}; counted from the carcass front, ` +
    `without a mate are ${places(own)} in ${panel} and ${places(others)} in ${mate}`
  );
}

function mateReason(context: CarcassContext, fault: MateFault, face: string, end: string): string {
  switch (fault.kind) {
    case 'diameter':
      return `the bores in the face of ${face} are ${show(context, fault.face)} wide and those in the end of ${end} ${show(context, fault.end)}`;
    case 'fitting':
      return `${face} is bored for ${fault.face ?? 'nothing'} and ${end} for ${fault.end ?? 'nothing'}`;
    case 'purpose':
      return `${face} is bored for a ${boredFor(fault.face)} and ${end} for a ${boredFor(fault.end)}`;
  }
}

/** Distance of a bore from the front of the carcass: the one figure that both panels share. */
function onDepth(context: CarcassContext, bore: Bore): Micrometres {
  return bore.u + (panelOf(context, bore.panel)?.pose.origin.y ?? 0);
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
    const places = boresIn(context, mating, mate).map((bore) => show(context, onDepth(context, bore)));
    return {
      place: chosen(context.spec, mate, 'dowels')?.place ?? panelOf(context, mate)!.place,
      message: `${mate} is bored for ${panel} at ${places.length === 0 ? 'no place' : listed(places)} from the carcass front.`,
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
    return [{ title: `Leave the depth in ${panel} to the fitting`, changes: [remove(value.path)], preferred: true }];
  const what = choice === 'dowels' ? 'its own list of dowels' : 'its own fitting';
  const offers: Repair[] = [
    {
      title: `Take out ${what} of ${panel}, so that it is bored like ${listed(mates)}`,
      changes: [remove(value.path)],
      preferred: true,
    },
  ];
  const set = (title: string, changes: readonly Change[]): void => {
    offers.push({ title, changes, preferred: false });
  };
  if (choice === 'dowels') {
    const own = chosen(spec, panel, 'dowels')!.value.map((at) => at.value);
    const theirs = placesOfMates(context, same, panel, mates);
    if (theirs.length > 0)
      set(`Bore ${panel} at ${shownList(context, theirs)}, like ${listed(mates)}`, [
        setWord(value.path, textList(context, theirs)),
      ]);
    set(
      `Bore ${listed(mates)} at ${shownList(context, own)}, like ${panel}`,
      mates.map((mate) => setWord(choicePath(context, mate, 'dowels'), textList(context, own))),
    );
    set(`Bore every panel of this carcass at ${shownList(context, own)}`, [
      setWord(['dowels'], textList(context, own)),
      remove(value.path),
    ]);
  } else {
    const name = chosen(spec, panel, 'joint')!.value;
    set(
      `Hold ${listed(mates)} with ${name} too`,
      mates.map((mate) => setWord(choicePath(context, mate, 'joint'), name)),
    );
    set(`Hold the whole carcass with ${name}`, [setWord(['joint'], name), remove(value.path)]);
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
  const front = panelOf(context, panel)?.pose.origin.y ?? 0;
  const bores = same.flatMap(({ mating }) => mates.flatMap((mate) => boresIn(context, mating, mate)));
  return distinct(bores.map((bore) => onDepth(context, bore) - front)).toSorted((a, b) => a - b);
}

const shownList = (context: CarcassContext, places: readonly Micrometres[]): string =>
  listed(places.map((at) => show(context, at)));

function textList({ unit }: CarcassContext, places: readonly Micrometres[]): string {
  return `[${places.map((at) => writeLength(at, unit)).join(', ')}]`;
}
