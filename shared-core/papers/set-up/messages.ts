import { indexMoveWords, offStopWords, type IndexMove, type OffStop } from '../../drawing/machine-view/messages.js';
import type { Micrometres, Unit } from '../../length/units.js';
import type { Changeover } from '../../shop/model.js';
import { counted, listed, runsOfNumbers, sentence, verb } from '../../words/english.js';
import { messages } from '../../words/message.js';
import { inUnit } from '../../words/names.js';
import type { Show, Tellable } from '../../words/show.js';
import { timeWords } from '../../words/time.js';
import { labels, type Told } from '../../words/told.js';

export const HEADS = labels('set-up-heads', {
  pieces: 'Pieces',
  panel: 'Panel',
  size: 'Size',
  stroke: 'Stroke',
  doing: 'What to do',
});

/** Of the table of what is measured on the first piece, and of the boxes to tick. */
export const CHECK_HEADS = labels('check-heads', {
  drawn: 'Drawn',
  from: 'From',
  to: 'To',
  found: 'Found',
  right: 'Right',
  done: 'Done',
});

/** What is set on a machine, beside its stops and heads, which have names of their own. */
export const SETTINGS = labels('settings', {
  extension: 'fence extension',
  height: 'height',
  fence: 'fence',
  depth: 'depth',
  bits: 'bits',
});

export const SETTING_VALUES = labels('setting-values', { on: 'on', off: 'off' });

/** From where to where a setting is measured. */
export const MEASURED = labels('measured', {
  fromTable: 'from the table to the spindles',
  fromFence: 'from the fence',
  toOnlySpindle: 'to the spindle',
  toFirstSpindle: 'to spindle 1',
  stopToOnlySpindle: 'from its face to the spindle',
  stopToLine: 'from its face to the line of spindles',
});

/** What lies against the edge of a panel, and from where spindles are counted. */
export const AGAINST = labels('against', { squaringStop: 'the squaring stop', fence: 'the fence' });
export const COUNTED_FROM = labels('counted-from', { fence: 'the fence', left: 'the left' });

/** What changes of each kind are called in a list of what they take. */
export const CHANGED: Readonly<Record<keyof Changeover, Told>> = labels('changed', {
  stop: 'stops',
  fence: 'fences, heads and heights',
  bit: 'bits',
  depth: 'depth stops',
  turnHead: 'turning heads',
  extension: 'fence extensions',
  machine: 'going to machines',
});

/** Bits of one diameter on heads that carry them alike. */
export interface BitsTold {
  readonly diameter: Micrometres;
  /** The spindles that carry them, from 1; null where the machine has one spindle. */
  readonly spindles: readonly number[] | null;
  /** How many spindles each head has. */
  readonly onEachHead: number;
  /** The heads by their names. */
  readonly heads: readonly string[];
  /** How many heads the machine has. */
  readonly of: number;
}

function bitsTold(bits: readonly BitsTold[], relation: 'in' | 'into' | 'from', show: Show): string {
  const told = bits.map(({ diameter, spindles, onEachHead, heads, of }) => {
    const bit = `Ø ${show.nominal(diameter)}`;
    if (spindles === null) return bit;
    const where =
      spindles.length === onEachHead && onEachHead > 1
        ? `all ${onEachHead} spindles`
        : `${verb(spindles.length, 'spindle', 'spindles')} ${runsOfNumbers(spindles)}`;
    const all = of === 2 ? 'both heads' : `all ${of} heads`;
    const onHeads = of < 2 ? '' : ` of ${heads.length === of ? all : `the ${listed(heads)}`}`;
    return `${bit} ${relation} ${where}${onHeads}`;
  });
  return listed(told);
}

/** A setting that is moved: 'front head' and '37 mm'. */
interface Placed {
  readonly name: string;
  readonly value: string;
}

interface Panels {
  readonly panels: number;
  readonly strokes: number;
  readonly indexMoves: number;
}

const placed = (settings: readonly Placed[]): string =>
  listed(settings.map(({ name, value }) => `${name} to ${value}`));

const work = ({ panels, strokes, indexMoves }: Panels, panel: string): string =>
  [
    counted(panels, panel),
    counted(strokes, 'stroke'),
    ...(indexMoves > 0 ? [counted(indexMoves, 'index move')] : []),
  ].join(', ');

/** How a panel lies: the face that is down, where that has to be said, and what lies against what. */
export interface Lay {
  readonly face: string | null;
  readonly end: string;
  readonly stop: string;
  /** The edge at the stop, where the end comes to a level head; null where the end comes to the stop. */
  readonly edge: string | null;
  /** What lies at the fence where it is not the front edge: an end of a panel turned by a quarter, or the back edge. */
  readonly atFence: string | null;
}

/** What an operator does with a panel before a stroke. */
export type Handled =
  /** It lies as it did, and is moved along; `then` says where that brings its end. */
  | { readonly kind: 'moved'; readonly move: IndexMove; readonly then: OffStop | null }
  /** It is laid, coming from another lay by this turn, and moved along from there where there is a move. */
  | {
      readonly kind: 'laid';
      readonly turn: 'over' | 'half' | 'quarter' | 'slide' | null;
      readonly lay: Lay;
      readonly move: IndexMove | null;
    };

interface StrokeTold {
  readonly handled: Handled;
  readonly lowered: readonly string[];
  readonly held: boolean;
  readonly holes: number;
}

export const TURNS = labels('turns', {
  over: 'turn it over, front edge to the same side again',
  half: 'turn it through half a turn, flat on the table',
  quarter: 'turn it through a quarter turn, flat on the table',
  slide: 'slide it along',
});

/** 'outside face down, bottom end at near-left'; 'left end to the head, front edge at square-left'; 'left end to the fence, front edge at near-left' */
function layWords({ face, end, stop, edge, atFence }: Lay): string {
  const fence = atFence === null ? '' : `${atFence} to the fence, `;
  const against = edge === null ? `${fence}${end} at ${stop}` : `${end} to the head, ${edge} at ${stop}`;
  return face === null ? against : `${face} down, ${against}`;
}

/** 'slide it along: top end at near-right'; 'bottom end at row-left, then move it along …' */
function handledWords(handled: Handled, show: Show): string {
  if (handled.kind === 'moved') {
    const along = `move it along ${indexMoveWords(handled.move, show)}`;
    return handled.then === null ? along : `${along}; its end is then ${offStopWords(handled.then, show)}`;
  }
  const { turn, lay, move } = handled;
  const laid = turn === null ? layWords(lay) : `${TURNS[turn]}: ${layWords(lay)}`;
  return move === null ? laid : `${laid}, then move it along ${indexMoveWords(move, show)}`;
}

/** What the papers of the machines say: how to come to a set-up, what to set, how panels lie, what it all takes. */
export const say = messages('set-up', {
  // Coming to a machine and setting it.
  goStanding: ({ machine }: { readonly machine: string }) => `Go to ${machine}, which is set as the shop file says.`,
  goFresh: ({ machine }: { readonly machine: string }) => `Go to ${machine} and set all of it.`,
  turnHead: ({ machine }: { readonly machine: string }) =>
    `Turn the head to ${machine} and set it again; the bits that are listed stay in.`,
  extensionOn: () => 'Put on the fence extension.',
  extensionOff: () => 'Take off the fence extension.',
  setPlaces: ({ settings }: { readonly settings: readonly Placed[] }) => `Set the ${placed(settings)}.`,
  setStops: ({ settings }: { readonly settings: readonly Placed[] }) => `Set ${placed(settings)}.`,
  setDepth: ({ depth }: { readonly depth: Micrometres }, show) => `Set the depth stop to ${show.exact(depth)}.`,
  setDepthThrough: ({ depth }: { readonly depth: Micrometres }, show) =>
    `Set the depth stop to bore through ${show.exact(depth)}.`,
  throughDepth: ({ depth }: { readonly depth: Micrometres }, show) => `through ${show.exact(depth)}`,
  inBoards: ({ thickness }: { readonly thickness: Micrometres }, show) => `in boards of ${show.exact(thickness)}`,
  stopToSpindle: ({ spindle }: { readonly spindle: number }) => `from its face to spindle ${spindle}`,
  bitsOut: ({ bits }: { readonly bits: readonly BitsTold[] }, show) => `Take out ${bitsTold(bits, 'from', show)}.`,
  bitsIn: ({ bits }: { readonly bits: readonly BitsTold[] }, show) => `Put ${bitsTold(bits, 'into', show)}.`,
  bits: ({ bits }: { readonly bits: readonly BitsTold[] }, show) => bitsTold(bits, 'in', show),
  changeMarked: ({ seconds }: { readonly seconds: number }) => `Change everything marked * (${timeWords(seconds)}):`,
  nothingToChange: () => 'Nothing to change:',
  counted: ({ from }: { readonly from: string }) =>
    `Spindles are counted from ${from}; those that are not listed are empty.`,
  notInUse: ({ stops }: { readonly stops: readonly string[] }) => `Not in use; keep out of the way: ${listed(stops)}.`,

  heading: ({ number, of, setUp }: { readonly number: number; readonly of: number; readonly setUp: string }) =>
    `Set-up ${number} of ${of}: ${setUp}`,
  onMachine: ({ machine, kind }: { readonly machine: string; readonly kind: string }) => `${machine}, ${kind}`,

  // How the panels lie.
  sameFaceDown: ({
    face,
    edges,
    against,
  }: {
    readonly face: string;
    readonly edges: readonly string[];
    readonly against: string;
  }) => `The ${face} lies down in every stroke; only the ${listed(edges)} touches ${against}.`,
  facesDiffer: ({ edges, against }: { readonly edges: readonly string[]; readonly against: string }) =>
    `The list says which face lies down in each stroke; only the ${listed(edges)} touches ${against}.`,
  cornersLater: ({ panels }: { readonly panels: readonly string[] }) =>
    `${listed(panels)}: bore ${verb(panels.length, 'it', 'them')} whole; the corner is sawn off when all of ${verb(panels.length, 'it', 'them')} is bored.`,
  unheld: () => 'Where the list says ‘no clamp reaches’, hold the panel in a fixture.',
  doNotBore: () => 'DO NOT BORE: its bores have errors',
  lay: (lay: Lay) => layWords(lay),
  handled: (handled: Handled, show) => handledWords(handled, show),
  stroke: ({ handled, lowered, held, holes }: StrokeTold, show) => {
    const notes = [...(lowered.length > 0 ? [`${listed(lowered)} down`] : []), ...(held ? [] : ['no clamp reaches'])];
    return `${sentence(handledWords(handled, show))}${notes.length > 0 ? ` (${notes.join('; ')})` : ''}, ${counted(holes, 'hole')}`;
  },
  piecesOf: ({ pieces }: { readonly pieces: number }) => `${pieces} of`,

  // What is measured on the first piece.
  measuredFrom: ({ from }: { readonly from: string }) => `from ${from}`,
  measuredOnFaceFrom: ({ face, from }: { readonly face: string; readonly from: string }) => `${face}, from ${from}`,
  diameter: () => 'diameter',
  diameterOnFace: ({ face }: { readonly face: string }) => `${face}, diameter`,
  firstPiece: ({ unit }: { readonly unit: Unit }) => `First piece, ${inUnit(unit)}`,
  checkFirst: ({ carcass, panel }: { readonly carcass: string; readonly panel: string }) =>
    `Bore ${carcass} ${panel} first, switch the machine off, and measure it. Limits follow from the tolerances of the shop file; bore no more before every box is ticked.`,
  toHole: ({
    face,
    edge,
    which,
  }: {
    readonly face: string | null;
    readonly edge: string;
    readonly which: 'nearest' | 'furthest' | 'every';
  }) => `${face === null ? '' : `${face}, `}${edge} to ${which === 'every' ? 'the holes' : `${which} hole`}`,
  depthOf: ({ face }: { readonly face: string | null }) => (face === null ? 'depth' : `${face}, depth`),
  pictured: ({ carcass, panel, step }: { readonly carcass: string; readonly panel: string; readonly step: number }) =>
    `${carcass} ${panel}, stroke ${step}, seen from above; the operator stands at the foot of the picture`,
  depth: () => 'depth',
  depthOnFace: ({ face }: { readonly face: string }) => `${face}, depth`,
  allThrough: () => 'through',
  someThrough: ({ depths }: { readonly depths: string }) => `${depths} and through`,

  // What it all takes.
  thenWork: ({ work: done, seconds }: { readonly work: Panels; readonly seconds: number }) =>
    `Then ${work(done, 'panel')}: ${timeWords(seconds)}.`,
  wholeCost: ({
    changeover,
    boring,
    work: done,
  }: {
    readonly changeover: number;
    readonly boring: number;
    readonly work: Panels;
  }) =>
    `In all ${timeWords(changeover + boring)} at the boring machines: changeovers ${timeWords(changeover)}, boring ${timeWords(boring)} (${work(done, 'panel run')}).`,
  changeovers: ({
    changeover,
    changes,
  }: {
    readonly changeover: number;
    readonly changes: readonly { readonly what: keyof Changeover; readonly seconds: number }[];
  }) =>
    `The changeovers of ${timeWords(changeover)} are made up of: ${listed(changes.map(({ what, seconds }) => `${CHANGED[what]} ${timeWords(seconds)}`))}.`,
  dearest: ({
    carcasses,
  }: {
    readonly carcasses: readonly {
      readonly carcass: string;
      readonly boring: number;
      readonly ownSetUps: readonly string[];
      readonly ownChangeover: number;
    }[];
  }) =>
    `What costs most: ${carcasses
      .map(({ carcass, boring, ownSetUps, ownChangeover }) =>
        ownSetUps.length === 0
          ? `${carcass}: boring ${timeWords(boring)}`
          : `${carcass}: boring ${timeWords(boring)}, and ${timeWords(ownChangeover)} to change over to ${verb(ownSetUps.length, 'a set-up', `${ownSetUps.length} set-ups`)} that nothing else needs (${listed(ownSetUps)})`,
      )
      .join('; ')}.`,
  nothingToBore: () => 'There is nothing to bore.',
  totals: (
    {
      setUps,
      strokes,
      least,
      seconds,
      bound,
    }: {
      readonly setUps: number;
      readonly strokes: number;
      readonly least: number;
      readonly seconds: number;
      readonly bound: Tellable;
    },
    show,
  ) =>
    [
      `${counted(setUps, 'set-up')}, ${counted(strokes, 'stroke')}; ${setUps <= least ? 'no fewer set-ups make these strokes' : `these strokes need at least ${counted(least, 'set-up')}`}.`,
      `Changeovers take ${timeWords(seconds)} in all.`,
      show.tell(bound),
    ].join(' '),
  provenLeast: () => 'No order that goes to each machine once takes less.',
  provenOnce: ({ least }: { readonly least: number }) =>
    `No order that goes to each machine and each of its heads once takes less; with more turns of the heads, none takes less than ${timeWords(least)}.`,
  notProven: ({ seconds, least }: { readonly seconds: number; readonly least: number }) =>
    `No order that goes to each machine once takes less than ${timeWords(least)}, so at most ${seconds > 0 ? ((100 * (seconds - least)) / seconds).toFixed(1) : '0'} % could be saved.`,
  withheld: () =>
    'The set-ups are withheld: a replay of them does not give the bore maps. Bore nothing from this plan.',
  share: ({
    setUps,
    strokes,
    seconds,
  }: {
    readonly setUps: number;
    readonly strokes: number;
    readonly seconds: number;
  }) => `In this part: ${counted(setUps, 'set-up')}, ${counted(strokes, 'stroke')}; changeovers ${timeWords(seconds)}.`,
  replayed: ({
    panels,
    holes,
    unbored,
    refused,
  }: {
    readonly panels: number;
    readonly holes: number;
    readonly unbored: number;
    readonly refused: number;
  }) => {
    const left = [
      ...(unbored > 0 ? [`${counted(unbored, 'hole')} in no set-up`] : []),
      ...(refused > 0 ? [`${counted(refused, 'panel')} not to be bored`] : []),
    ];
    return `Replayed from the set-ups alone: ${panels} panels, ${holes} holes, all as in their bore maps${left.length === 0 ? '' : `; ${left.join(', ')}, see below`}.`;
  },
  note: ({ carcass, note }: { readonly carcass: string; readonly note: string }) => `Note on ${carcass}: ${note}`,
  leftOut: ({ carcass }: { readonly carcass: string }) => `LEFT OUT: ${carcass}. Correct its errors first.`,
  notBored: ({
    carcass,
    panel,
    count,
    reason,
  }: {
    readonly carcass: string;
    readonly panel: string;
    readonly count: number;
    readonly reason: string;
  }) => `NOT BORED: ${counted(count, 'hole')} of ${carcass} ${panel}. ${reason}`,
  panelOf: ({ carcass, panel }: { readonly carcass: string; readonly panel: string }) => `${panel} of ${carcass}`,
  noCarcass: () => 'there is no carcass in this job.',
  noSetUpsFor: ({ carcasses }: { readonly carcasses: readonly string[] }) =>
    `no set-ups for ${carcasses.join(', ')}; correct the errors first.`,
  boreNot: ({ panels }: { readonly panels: readonly string[] }) =>
    `do not bore ${panels.join(', ')} from these set-ups before the errors are corrected.`,
});
