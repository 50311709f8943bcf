import { writtenUnit } from '../length/reader.js';
import type { Micrometres } from '../length/units.js';
import { aNoun, counted, listed, verb, sortNoun } from '../words/english.js';
import { showSizes } from '../length/show.js';
import type { Span } from '../schema/schema.js';
import { spanExample } from '../schema/wanted-words.js';
import { holesTold } from '../papers/assembly/messages.js';
import type { NumberedHoles } from '../papers/pins.js';
import { messages, type Message } from '../words/message.js';
import { timeWords } from '../words/time.js';
import { labels, type Told } from '../words/told.js';

/** What stands in place of a name that nobody has written. */
export const UNNAMED = labels('unnamed', { carcass: '(no name)' });

/** What a schema of a whole file is called. */
export const SCHEMAS = labels({ job: 'Carcass job', shop: 'Shop' });

/** What a reader of a file is told that belongs to no paper: titles, totals, and why there is nothing to show. */
export const say = messages('file', {
  titled: ({ paper, job }: { readonly paper: string; readonly job: string }) => `${paper}: ${job}`,
  withErrors: ({ errors }: { readonly errors: number }) =>
    `The job has ${counted(errors, 'error')}: do not cut or bore before ${errors === 1 ? 'it is' : 'they are'} mended. The editor and borewright check list ${errors === 1 ? 'it' : 'them'}.`,
  findingTotals: ({
    files,
    errors,
    warnings,
    infos,
  }: Readonly<Record<'files' | 'errors' | 'warnings' | 'infos', number>>) =>
    `${[
      counted(files, 'file'),
      counted(errors, 'error'),
      counted(warnings, 'warning'),
      ...(infos > 0 ? [counted(infos, 'info', 'info')] : []),
    ].join(', ')}.`,
  noMachine: () => 'no machine',
  carcassTotals: ({
    panels,
    bores,
    strokes,
    setUps,
  }: Readonly<Record<'panels' | 'bores' | 'strokes' | 'setUps', number>>) =>
    [counted(panels, 'panel'), counted(bores, 'bore'), counted(strokes, 'stroke'), counted(setUps, 'set-up')].join(
      ' · ',
    ),
  planTotals: ({ setUps, seconds }: { readonly setUps: number; readonly seconds: number }) =>
    `${counted(setUps, 'set-up')} · changeovers ${timeWords(seconds)}`,

  // Nothing to show.
  shopHasNoBores: () => 'A shop file has no bores of its own. Open a job file (NAME.carcass.yaml).',
  shopHasNoSetUps: () => 'A shop file has no set-ups of its own. Open a job file (NAME.carcass.yaml).',
  notDrawnYet: ({ fault }: { readonly fault: Message }, show) => `Nothing can be drawn yet: ${show.tell(fault)}`,
  notPlannedYet: ({ fault }: { readonly fault: Message }, show) => `Nothing can be planned yet: ${show.tell(fault)}`,
  noCarcasses: () => 'This job has no carcasses yet. Write one under `carcasses:` with its `kind` and `width`.',
  nothingBored: ({ carcasses }: { readonly carcasses: readonly string[] }) =>
    `Nothing is bored in ${listed(carcasses)}.`,
  panelRefused: () => 'Its bores have errors; correct these first.',
  noPanelNow: ({ carcass, panel }: { readonly carcass: string; readonly panel: string }) =>
    `The job has no panel ‘${panel}’ in a carcass ‘${carcass}’ any more.`,
  noStepNow: ({
    setUp,
    carcass,
    panel,
    step,
  }: {
    readonly setUp: string;
    readonly carcass: string;
    readonly panel: string;
    readonly step: number;
  }) => `Set-up ${setUp} has no step ${step} for ${carcass}, ${panel} any more.`,

  // An older drawing.
  placeBroken: ({ name }: { readonly name: string }) =>
    `The text is broken where ‘${name}’ stood; this is its last good drawing.`,
  carcassBroken: ({ name }: { readonly name: string }) =>
    `The text of ‘${name}’ cannot be worked out as it stands; this is its last good drawing.`,
});

/** The things of a shop in one line each, and what may be written for a key: for hovers and completion. */
export const line = messages('shop-line', {
  faulty: ({ of }: { readonly of: string }) => `${sortNoun(of)} with a fault in the shop file`,
  board: (
    {
      thickness,
      nominal,
      sheet,
      hasGrain,
    }: {
      readonly thickness: Micrometres;
      readonly nominal: Micrometres;
      readonly sheet: { readonly length: Micrometres; readonly width: Micrometres } | null;
      readonly hasGrain: boolean;
    },
    show,
  ) =>
    [
      'board',
      `${show.exact(thickness)} thick${thickness === nominal ? '' : ` measured, ${show.exact(nominal)} nominal`}`,
      ...(sheet === null ? [] : [`sheet ${show.exact(sheet.length)} × ${show.exact(sheet.width)}`]),
      ...(hasGrain ? ['grain along'] : []),
    ].join(', '),
  band: ({ thickness, height }: { readonly thickness: Micrometres; readonly height: Micrometres | null }, show) =>
    `band, ${show.exact(thickness)} thick${height === null ? '' : `, ${show.exact(height)} wide as bought`}`,
  hinge: ({ cupDiameter, distance }: { readonly cupDiameter: Micrometres; readonly distance: Span }, show) =>
    `hinge, cup Ø ${show.nominal(cupDiameter)}, ${show.span(distance)} from the edge`,
  slide: ({ lengths, rating }: { readonly lengths: readonly Micrometres[]; readonly rating: number }, show) =>
    `slide, ${listed(lengths.map((one) => show.nominal(one)))} long, for ${rating} kg`,
  pull: ({ spacing, diameter }: { readonly spacing: Micrometres; readonly diameter: Micrometres }, show) =>
    spacing === 0
      ? `knob, bore Ø ${show.nominal(diameter)}`
      : `pull, bores Ø ${show.nominal(diameter)}, ${show.nominal(spacing)} apart`,
  bracket: (
    {
      diameter,
      holes,
      rating,
    }: { readonly diameter: Micrometres; readonly holes: readonly unknown[]; readonly rating: number | null },
    show,
  ) =>
    `hanging bracket, ${counted(holes.length, 'bore')} Ø ${show.nominal(diameter)}${rating === null ? '' : `, a pair carries ${rating} kg`}`,
  wardrobeRail: ({ width, height }: { readonly width: Micrometres; readonly height: Micrometres }, show) =>
    `wardrobe rail, ${show.exact(width)} × ${show.exact(height)}`,
  foot: ({ range, rating }: { readonly range: Span; readonly rating: number | null }, show) =>
    `foot, ${show.span(range)}${rating === null ? '' : `, carries ${rating} kg`}`,
  angle: ({ diameter, spacing }: { readonly diameter: Micrometres; readonly spacing: Micrometres }, show) =>
    `angle, ${spacing === 0 ? 'one screw' : `two screws ${show.nominal(spacing)} apart`} in each leg, bores Ø ${show.nominal(diameter)}`,
  oneHead: (
    { kind, spindles, pitch }: { readonly kind: string; readonly spindles: number; readonly pitch: Micrometres },
    show,
  ) => `${kind}, ${counted(spindles, 'spindle')} at ${show.nominal(pitch)}`,
  manyHeads: (
    {
      kind,
      heads,
      spindles,
      pitch,
    }: {
      readonly kind: string;
      readonly heads: number;
      readonly spindles: number;
      readonly pitch: Micrometres;
    },
    show,
  ) => `${kind}, ${counted(heads, 'head')} of ${counted(spindles, 'spindle')} at ${show.nominal(pitch)}`,
  cup: (
    {
      kind,
      distance,
    }: { readonly kind: string; readonly distance: { readonly min: Micrometres; readonly max: Micrometres } },
    show,
  ) => `${kind}, ${show.exact(distance.min)} to ${show.exact(distance.max)} from the edge`,
  saw: ({ kind, kerf }: { readonly kind: string; readonly kerf: Micrometres }, show) =>
    `${kind}, kerf ${show.exact(kerf)}`,
  carcass: ({ kind, size }: { readonly kind: string; readonly size: Told }) => `carcass of kind ${kind}, ${size}`,
  carcassUnread: () => 'carcass with faults of its own',
});

export const form = messages('form', {
  length: ({ min, max }: { readonly min: Micrometres; readonly max: Micrometres }, show) =>
    `a length from ${show.exact(min)} to ${show.exact(max)}`,
  span: ({ min, max }: { readonly min: Micrometres; readonly max: Micrometres }, show) =>
    `two lengths from ${show.exact(min)} to ${show.exact(max)}, such as ${spanExample({ max }, writtenUnit(show.reader))}`,
  count: ({ min, max }: { readonly min: number; readonly max: number }) => `a whole number from ${min} to ${max}`,
  number: ({ min, max }: { readonly min: number; readonly max: number }) => `a number from ${min} to ${max}`,
  flag: () => 'yes or no',
  text: () => 'a text',
  shopFile: () => 'the name of a shop file',
  name: ({ of }: { readonly of: string }) => `the name of ${aNoun(sortNoun(of))}`,
  choice: ({ options }: { readonly options: readonly string[] }) => `one of ${listed(options, 'or')}`,
  list: ({ item, most }: { readonly item: Message; readonly most: number }, show) =>
    `a list of no more than ${most}, each ${show.tell(item)}`,
  named: ({ noun }: { readonly noun: string }) => `names, each with the keys of a ${noun}`,
  record: ({ keys }: { readonly keys: readonly string[] }) => `a map with the keys ${listed(keys)}`,
  either: ({ forms }: { readonly forms: readonly Message[] }, show) => forms.map((one) => show.tell(one)).join('; or '),
});

/** Heads of the tables in hovers. */
export const HEADS = labels('hover-heads', {
  panel: 'Panel',
  board: 'Board',
  setUp: 'Set-up',
  stops: 'Stops',
  depth: 'Depth',
  bits: 'Bits',
  strokes: 'Strokes',
  lie: 'How it lies',
});

/** What hovers say. Names are given as Markdown has them. */
export const hover = messages('hover', {
  finished: (_: unknown, { unit }) => `Finished, ${unit}`,
  toCut: (_: unknown, { unit }) => `To cut, ${unit}`,
  notWorkedOut: () => 'The panels of this carcass cannot be worked out while its text or its shop file has errors.',
  pins: ({ holes }: { readonly holes: NumberedHoles }) =>
    `Its pins stand in ${holesTold(holes)}, counted from the bottom end.`,
  pinsOf: ({ panel, holes }: { readonly panel: string; readonly holes: NumberedHoles }) =>
    `- ${panel}: ${holesTold(holes)}, counted from the bottom end.`,
  pinHoles: ({ holes }: { readonly holes: NumberedHoles }) => holesTold(holes),
  onMachines: ({ strokes, setUps }: { readonly strokes: number; readonly setUps: number }) =>
    `**On the machines:** ${counted(strokes, 'stroke')} in ${counted(setUps, 'set-up')}.`,
  carcass: (
    {
      name,
      count,
      kind,
      size,
      wings,
      plinth,
      panels,
      bores,
    }: {
      readonly name: string;
      readonly count: number;
      readonly kind: string;
      readonly size: readonly Micrometres[];
      /** How deep those of one across a corner are. */
      readonly wings: Micrometres | null;
      readonly plinth: Micrometres;
      readonly panels: number;
      readonly bores: number;
    },
    show,
  ) => {
    const many = count === 1 ? '' : `${count} equal ones of it; `;
    const on = plinth > 0 ? `, on a plinth of ${show.exact(plinth)}` : '';
    const across = wings === null ? '' : `, across a corner with wings ${show.exact(wings)} deep`;
    return `**${name}**: ${many}${kind} carcass, ${showSizes(size, show.reader)} over all without plinth and fronts${across}${on}; ${counted(panels, 'panel')}, ${counted(bores, 'bore')}.`;
  },
  panel: (
    {
      panel,
      board,
      size,
      cut,
      banded,
    }: {
      readonly panel: string;
      readonly board: string;
      readonly size: readonly Micrometres[];
      readonly cut: readonly Micrometres[];
      readonly banded: string | null;
    },
    { reader },
  ) =>
    `**${panel}**: ${board}, finished ${showSizes(size, reader)}, to cut ${showSizes(cut, reader)}${banded === null ? ', no edge banded' : `; banded: ${banded}`}.`,
  nothingBored: () => 'Nothing is bored in it.',
  joined: ({ panels, fitting }: { readonly panels: string; readonly fitting: string }) =>
    `Joined to ${panels} by ${fitting}.`,
  row: (
    {
      panel,
      line: which,
      count,
      diameter,
      pitch,
      u,
      first,
      last,
      balanced,
    }: {
      readonly panel: string;
      readonly line: 'front' | 'rear';
      readonly count: number;
      readonly diameter: Micrometres;
      readonly pitch: Micrometres;
      readonly u: Micrometres;
      readonly first: { readonly at: Micrometres; readonly end: string };
      readonly last: { readonly at: Micrometres; readonly end: string };
      readonly balanced: boolean;
    },
    show,
  ) =>
    `- ${panel}, ${which} row: ${counted(count, 'hole')} Ø ${show.nominal(diameter)} every ${show.nominal(pitch)}, ${show.exact(u)} from the front edge; first hole ${show.exact(first.at)} from the ${first.end}, last ${show.exact(last.at)} from the ${last.end}: ${balanced ? 'balanced' : 'not balanced'}.`,
  more: ({ count }: { readonly count: number }) => `… and ${count} more.`,
  stop: ({ stop, at }: { readonly stop: string; readonly at: Micrometres }, show) => `${stop} ${show.exact(at)}`,
  layAt: ({ lay, at }: { readonly lay: string; readonly at: Micrometres }, show) => `${lay}, ${show.exact(at)}`,
  depth: (
    {
      depth,
      through,
      height,
    }: { readonly depth: Micrometres; readonly through: boolean; readonly height: Micrometres | null },
    show,
  ) => `${through ? 'through ' : ''}${show.exact(depth)}${height === null ? '' : ` at ${show.exact(height)} height`}`,
  rowStrokes: (
    {
      panel,
      lines,
      strokes,
      machine,
      stops,
      depth,
      through,
      setUps,
      bits,
      moves,
      centred,
    }: {
      readonly panel: string;
      readonly lines: readonly string[];
      readonly strokes: number;
      readonly machine: string;
      readonly stops: readonly { readonly name: string; readonly at: Micrometres }[];
      readonly depth: string;
      readonly through: boolean;
      /** None where the order to run is not known yet. */
      readonly setUps: readonly string[];
      readonly bits: readonly string[];
      readonly moves: readonly Micrometres[];
      readonly centred: boolean;
    },
    show,
  ) => {
    const rows = `${listed(lines)} ${verb(lines.length, 'row', 'rows')}`;
    const at = listed([...new Set(stops.map((stop) => `${stop.name} at ${show.exact(stop.at)}`))]);
    const lengths = [...new Set(moves.map(show.exact))];
    const each = lengths.length < moves.length ? ' each' : '';
    const made = [
      `${counted(strokes, 'stroke')} on ${machine}, ${at}, ${depth}${through ? '' : ' deep'}${setUps.length === 0 ? '' : ` (${setUps.join(', ')})`}`,
      bits.join(', then '),
      moves.length === 0 ? 'no index move' : `${counted(moves.length, 'index move')} of ${listed(lengths)}${each}`,
      centred ? 'centred' : 'not centred',
    ];
    return `- ${panel}, ${rows}: ${made.join('; ')}.`;
  },
  tolerance: (
    {
      joints,
      worst,
      open,
    }: {
      readonly joints: number;
      readonly worst: readonly {
        readonly of: 'front' | 'step' | 'gap';
        readonly likely: string;
        readonly worst: string;
      }[];
      readonly open: number;
    },
    { unit },
  ) => {
    const names = { front: 'front edge', step: 'outside face', gap: 'gap' };
    const parts = worst.map((one) => `${names[one.of]} ${one.likely} (${one.worst}) ${unit}`);
    const closing = open === 0 ? '' : ` ${counted(open, 'joint')} may not close with the play of the dowels.`;
    return `By the shop’s tolerances ${joints === 1 ? 'the joint comes' : `the ${joints} joints come`} out within these figures, usually (at worst): ${parts.join(', ')}.${closing}`;
  },
});

/** What stands beside an offer of completion. */
export const offer = messages('offer', {
  required: () => 'must be there',
  withMore: ({ noun }: { readonly noun: string }) => `a ${noun} with more about it`,
  nextItem: () => 'one more in this list',
  listBelow: () => 'a list, each item on a line',
  listOnOneLine: () => 'a list on one line',
  panel: () => 'a panel',
  anew: ({ noun }: { readonly noun: string }) => `new ${noun}`,
  bare: () => 'the edge stays bare',
  unhung: () => 'no bores for hinges',
  unbracketed: () => 'no bores for brackets',
  unfooted: () => 'no bores for feet',
  unangled: () => 'no bores for angles',
  unpulled: () => 'no pull',
  onGrid: ({ hole, of }: { readonly hole: number; readonly of: number }) => `hole ${hole} of ${of}, on the pitch grid`,
});

/** What hints in the text and the outline say. */
export const hint = messages('hint', {
  holes: ({ numbers }: { readonly numbers: readonly string[] }) => `holes ${listed(numbers)}`,
  counted: () => 'Counted from the bottom end of the panel that has the row.',
  carcass: (
    { count, kind, size }: { readonly count: number; readonly kind: string; readonly size: readonly Micrometres[] },
    { reader },
  ) => `${count === 1 ? '' : `${count} of `}${kind} ${showSizes(size, reader)}`,
});
