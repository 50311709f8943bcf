import { counted, listed, verb } from '../../words/english.js';
import { messages } from '../../words/message.js';
import { timeWords } from '../../words/time.js';

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

/** What the papers of the machines say: how to come to a set-up, what to set, how panels lie, what it all takes. */
export const say = messages('set-up', {
  // Coming to a machine and setting it.
  goStanding: ({ machine }: { readonly machine: string }) => `Go to ${machine}, which stands as the shop file says.`,
  goFresh: ({ machine }: { readonly machine: string }) => `Go to ${machine} and set all of it.`,
  turnHead: ({ machine }: { readonly machine: string }) =>
    `Turn the head to ${machine} and set it anew; bits that are named stay in.`,
  extensionOn: () => 'Put on the fence extension.',
  extensionOff: () => 'Take off the fence extension.',
  setPlaces: ({ settings }: { readonly settings: readonly Placed[] }) => `Set the ${placed(settings)}.`,
  setStops: ({ settings }: { readonly settings: readonly Placed[] }) => `Set ${placed(settings)}.`,
  setDepth: ({ depth }: { readonly depth: string }) => `Set the depth stop to ${depth}.`,
  setDepthThrough: ({ depth }: { readonly depth: string }) => `Set the depth stop to bore through ${depth}.`,
  bitsOut: ({ bits }: { readonly bits: string }) => `Take out ${bits}.`,
  bitsIn: ({ bits }: { readonly bits: string }) => `Put ${bits}.`,
  changeMarked: ({ seconds }: { readonly seconds: number }) => `Change what is marked *, ${timeWords(seconds)}:`,
  nothingToChange: () => 'Nothing is to be changed:',
  counted: ({ from }: { readonly from: string }) =>
    `Spindles are counted from ${from}; one that is not named is empty.`,
  notInUse: ({ stops }: { readonly stops: readonly string[] }) => `Not in use, out of the way: ${listed(stops)}.`,

  // How the panels lie.
  sameFaceDown: ({
    face,
    edges,
    against,
  }: {
    readonly face: string;
    readonly edges: readonly string[];
    readonly against: string;
  }) => `The ${face} face lies down in every stroke; only the ${listed(edges)} edge touches ${against}.`,
  facesDiffer: ({ edges, against }: { readonly edges: readonly string[]; readonly against: string }) =>
    `The list says which face lies down in each stroke; only the ${listed(edges)} edge touches ${against}.`,
  unheld: () => 'Where the list says ‘no clamp reaches’, hold the panel in a fixture.',
  doNotBore: () => 'DO NOT BORE: its bores have errors',
  turnOver: () => 'turn it over, front edge to the same side again',
  turnHalf: () => 'turn it half a turn, flat on the table',
  slide: () => 'slide it along',

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
    readonly changes: readonly { readonly what: string; readonly seconds: number }[];
  }) =>
    `Of the ${timeWords(changeover)} of changeovers: ${listed(changes.map(({ what, seconds }) => `${what} ${timeWords(seconds)}`))}.`,
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
          : `${carcass}: boring ${timeWords(boring)}, and ${timeWords(ownChangeover)} to come to ${verb(ownSetUps.length, 'a set-up', `${ownSetUps.length} set-ups`)} that nothing else needs (${listed(ownSetUps)})`,
      )
      .join('; ')}.`,
  nothingToBore: () => 'Nothing is to be bored.',
  totals: ({
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
    readonly bound: string;
  }) =>
    `${counted(setUps, 'set-up')}, ${counted(strokes, 'stroke')}; ${setUps <= least ? 'no fewer set-ups make these strokes' : `these strokes need at least ${counted(least, 'set-up')}`}; changeovers ${timeWords(seconds)} in all; ${bound}.`,
  provenLeast: () => 'going to each machine once, no order takes less',
  provenOnce: ({ least }: { readonly least: number }) =>
    `going to each machine and each of its heads once, no order takes less; turning heads more often, none takes less than ${timeWords(least)}`,
  notProven: ({ seconds, least }: { readonly seconds: number; readonly least: number }) =>
    `going to each machine once, no order takes less than ${timeWords(least)}: at most ${seconds > 0 ? ((100 * (seconds - least)) / seconds).toFixed(1) : '0'} % could be saved`,
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
  }) =>
    `Of these here: ${counted(setUps, 'set-up')}, ${counted(strokes, 'stroke')}; changeovers ${timeWords(seconds)}.`,
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
  leftOut: ({ carcass }: { readonly carcass: string }) => `LEFT OUT: ${carcass}. Put its errors right first.`,
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
  noCarcass: () => 'there is no carcass in this job.',
  noSetUpsFor: ({ carcasses }: { readonly carcasses: readonly string[] }) =>
    `no set-ups for ${carcasses.join(', ')}; put the errors right first.`,
  boreNot: ({ panels }: { readonly panels: readonly string[] }) =>
    `do not bore ${panels.join(', ')} from these set-ups before the errors are put right.`,
});
