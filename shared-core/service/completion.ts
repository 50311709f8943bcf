import { tell } from '../words/message.js';
import { offer } from './messages.js';
import { gridOfSides } from '../carcass/grid.js';
import type { Path } from '../document/place.js';
import type { JobAnalysis } from '../engine.js';
import { notationIn } from '../engine/notation.js';
import { companionKindAt } from '../fittings/read.js';
import { panelKeys } from '../carcass/roles.js';
import { scalarText } from '../document/scalar-text.js';
import { carcassSkeletons, newJob } from '../job/skeletons.js';
import { reachInDefaults } from '../job/reach.js';
import { jobSchema } from '../job/schema.js';
import { placesOf } from '../length/grid.js';
import type { Unit } from '../length/units.js';
import type { Reader } from '../length/reader.js';
import { writeLength } from '../length/write.js';
import { wouldCount, type Made } from '../findings/circumstances.js';
import { schemaAt } from '../schema/at.js';
import type { ListSchema, NamedSchema, NameOf, NameSchema, RecordSchema, Fields, Schema } from '../schema/schema.js';
import { filledIn, type Skeleton } from '../schema/skeleton.js';
import { KIND_FOR_USE, NO_ANGLE, NO_BAND, NO_HINGE, NO_PULL, NO_FOOT, NO_BRACKET } from '../shop/habits.js';
import type { Shop } from '../shop/model.js';
import { newShop } from '../shop/skeletons.js';
import { shopSchema } from '../shop/schema.js';
import { withCode } from './markdown.js';
import type { AnalysedFile } from './file.js';
import type { LineContext } from './line-context.js';
import { lineContext } from './line-context.js';
import { carcassesFor, formOf, namesOf } from './words.js';
import { worded } from '../words/told.js';

export type OfferSort = 'key' | 'panel' | 'word' | 'name' | 'file' | 'skeleton';

/** An offer before it is placed at the cursor. */
interface Offer {
  readonly label: string;
  readonly sort: OfferSort;
  readonly detail?: string;
  readonly documentation?: string;
  /** What is written, where not the label. `$0` is where the cursor goes, in an editor that knows such places. */
  readonly text?: string;
  /** What is written in an editor that knows places to be filled in; `text` is then for the others. */
  readonly snippet?: string;
  /** Other words that it is found by. */
  readonly tried?: readonly string[];
  /** Goes as soon as something is written: Enter behind a figure of one's own must not make another of it. */
  readonly beforeAll?: true;
}

/** What can be written at the cursor in the place of the word there. */
export interface PlacedOffer extends Offer {
  /** Markdown. */
  readonly documentation?: string;
  readonly text: string;
}

export interface Offers {
  /** The word at the cursor, whose place an offer takes. */
  readonly start: number;
  readonly end: number;
  /** Spaces that the line lacks (or, below 0, has too many) to start where the lines beside it do. */
  readonly shift: number;
  /** The likeliest first. */
  readonly offers: readonly PlacedOffer[];
}

/** The names of shop files in a folder, as a job writes its way to them: '' or '../shops/'. */
export type ShopFiles = (folder: string) => readonly string[];

interface Asked {
  readonly file: AnalysedFile;
  readonly shopFiles: ShopFiles;
  readonly context: LineContext;
  readonly offset: number;
  /** What is written is in this unit; what is said beside it is for the reader. */
  readonly unit: Unit;
  readonly reader: Reader;
  readonly shop: Shop;
}

/** Keys, words, names and heights that fit where the cursor stands, also in a line that is not whole yet. */
export function offersAt(file: AnalysedFile, offset: number, shopFiles: ShopFiles): Offers | null {
  const whole = file.analysis.text;
  const context = lineContext(whole, offset);
  if (context === null) return null;
  const { shop, reader } = file.analysis;
  const unit = file.kind === 'job' ? file.analysis.unit : shop.unit;
  const asked: Asked = { file, shopFiles, context, offset, unit, reader, shop };
  const spot = schemaAt(file.kind === 'job' ? jobSchema : shopSchema, context.path);
  if (spot === null) return null;
  const forms = alternatives(spot.schema);
  const found = forms.flatMap((schema) =>
    context.what === 'value' && (schema.type === 'record' || schema.type === 'named' || schema.type === 'list')
      ? openedOffers(schema, forms.length === 1, asked)
      : offersFor(schema, asked),
  );
  // A skeleton takes the place of no word that is there, nor a value that of a key.
  const room = context.quote === null && context.end === offset;
  const fitting = found.filter(({ sort }) => (context.hasColon ? isKey(sort) : room || sort !== 'skeleton'));
  const offers = besideWritten(distinct(fitting), whole.slice(context.start, context.end).trim()).map(
    (offer): PlacedOffer => ({
      ...offer,
      ...(offer.documentation !== undefined && { documentation: withCode(offer.documentation) }),
      text: inPlace(offer, context, whole),
    }),
  );
  const { start, end, shift } = context;
  return { start, end, shift, offers };
}

/** Found by the word at the cursor too, where that is one of them: they are what may stand in its place. */
function besideWritten(offers: readonly Offer[], written: string): readonly Offer[] {
  if (!offers.some(({ label, sort }) => label === written && !isKey(sort))) return offers;
  return offers.map((one) => (one.label === written ? one : { ...one, tried: [...(one.tried ?? []), written] }));
}

function isKey(sort: OfferSort): boolean {
  return sort === 'key' || sort === 'panel';
}

/** What of an offer is to be written, given what stands around the word: quotes, a colon, no space. */
function inPlace({ label, sort, text = label }: Offer, context: LineContext, whole: string): string {
  const { what, quote, hasColon, start, inFlow } = context;
  const writesKey = isKey(sort);
  if (writesKey && hasColon) return label;
  if (quote !== null) {
    const inner = writesKey ? label : text;
    const close = quote.closed ? '' : quote.sign;
    return `${quote.sign === "'" ? inner.replaceAll("'", "''") : JSON.stringify(inner).slice(1, -1)}${close}`;
  }
  // Straight behind its colon or dash a value would be glued to it.
  const glued = !inFlow && what === 'item' ? whole[start - 1] === '-' : what === 'value' && whole[start - 1] === ':';
  if (text.startsWith('\n')) return text;
  return `${glued ? ' ' : ''}${writesKey || text !== label ? text : scalarText(text, inFlow)}`;
}

function alternatives(schema: Schema): readonly Schema[] {
  return schema.type === 'either' ? schema.of.flatMap(alternatives) : [schema];
}

function offersFor(schema: Schema, asked: Asked): readonly Offer[] {
  const { what, inFlow } = asked.context;
  if (schema.type === 'record') {
    if (what === 'item' && inFlow) return mapOffers(schema, asked);
    return [...keyOffers(schema, asked), ...fileOffers(asked)];
  }
  if (schema.type === 'named') return entryOffers(schema, asked);
  if (schema.type === 'list') return what === 'key' && !inFlow ? dashOffers(schema) : [];
  if (what === 'key') return [];
  switch (schema.type) {
    case 'choice':
      return Object.entries(schema.options).map(([label, documentation]): Offer => ({
        label,
        sort: 'word',
        documentation: worded('keys', documentation),
      }));
    case 'flag':
      return ['yes', 'no'].map((label): Offer => ({ label, sort: 'word' }));
    case 'name':
      return nameOffers(schema, asked);
    case 'length':
      return heightOffers(asked);
    default:
      return [];
  }
}

/**
 * A map or a list in the place of a value: on the lines below, or in brackets where there is no room.
 * @param isAlone nothing else could stand there, so that all keys are offered, and not the map as such
 */
function openedOffers(
  schema: RecordSchema<Fields> | NamedSchema<Schema> | ListSchema<Schema>,
  isAlone: boolean,
  asked: Asked,
): readonly Offer[] {
  const { start, end, quote, below } = asked.context;
  if (start !== end || quote !== null) return [];
  if (schema.type === 'list') {
    const inBrackets: Offer = {
      label: '[ ]',
      sort: 'skeleton',
      detail: tell(offer.listOnOneLine(), 'mm'),
      text: '[$0]',
    };
    const dashes = below === null ? [] : dashOffers(schema, tell(offer.listBelow(), 'mm'));
    return [...dashes.map((one) => lower(one, below!)), inBrackets];
  }
  if (below === null) return schema.type === 'record' ? mapOffers(schema, asked) : [];
  if (schema.type === 'named') return entryOffers(schema, asked).map((one) => lower(one, below));
  const counting = keyOffers(schema, asked);
  // Where none would do anything yet, it is told once it is written.
  const keys = (counting.length > 0 ? counting : keyOffers(schema, asked, () => true)).map((one) => lower(one, below));
  const [first] = keys;
  if (isAlone || first === undefined) return keys;
  return [{ ...first, detail: tell(offer.withMore({ noun: schema.noun }), 'mm') }];
}

/** The same on the line below, deeper than its key. */
function lower({ text, snippet, ...one }: Offer, below: number): Offer {
  const lowered = (lines: string): string => `\n${lines}`.replaceAll('\n', `\n${' '.repeat(below + 2)}`);
  return {
    ...one,
    text: lowered(text ?? one.label),
    ...(snippet !== undefined && { snippet: lowered(snippet) }),
  };
}

/** A whole file, where nothing is written yet but the word at the cursor. */
function fileOffers({ file, context: { path, start, end } }: Asked): readonly Offer[] {
  const text = file.analysis.text;
  if (path.length > 0 || `${text.slice(0, start)}${text.slice(end)}`.replace(/^\uFEFF/, '').trim() !== '') return [];
  const whole = file.kind === 'job' ? newJob : newShop;
  return (['mm', 'in'] as const).map((unit) => skeletonOffer(whole(unit)));
}

function skeletonOffer({ label, about, text }: Skeleton): Offer {
  return { label, sort: 'skeleton', documentation: about, text: filledIn(text), snippet: text };
}

function keyOffers(
  { fields, tried = {}, standIn }: RecordSchema<Fields>,
  asked: Asked,
  counts = countingAt(asked),
): readonly Offer[] {
  const { context, reader } = asked;
  const open = Object.entries(fields).filter(([key]) => !context.present.has(key) && counts(key));
  // What must be there comes first.
  const ordered = [...open.filter(([, field]) => field.required), ...open.filter(([, field]) => !field.required)];
  const isRequired = standIn === undefined || !context.present.has(standIn);
  return ordered.map(([label, { schema, required }]): Offer => ({
    label,
    sort: 'key',
    detail: required && isRequired ? tell(offer.required(), reader) : formOf(alternatives(schema)[0]!, reader),
    documentation: worded('keys', schema.about),
    text: `${label}${afterKey(schema, context.inFlow)}`,
    tried: Object.entries(tried).flatMap(([word, meant]) =>
      'keys' in meant && meant.keys.includes(label) ? [word] : [],
    ),
  }));
}

/** Which keys would do something where the cursor stands, as the carcass is or, while it is being typed, last was. */
function countingAt({ file, context: { path }, offset }: Asked): (key: string) => boolean {
  if (file.kind === 'shop') return () => true;
  const { analysis } = file;
  const [first] = path;
  const index = first === 'defaults' ? null : analysis.carcassAt(offset);
  const meant = first === 'defaults' ? analysis.carcasses.map((_, i) => i) : index === null ? [] : [index];
  const made = meant.flatMap((one): Made[] => {
    const { spec, carcass, boring } = analysis.drawable(one)?.carcass ?? NOT_MADE;
    return spec === null || carcass === null || boring === null ? [] : [{ spec, carcass, boring }];
  });
  if (first !== 'defaults') return (key) => wouldCount([...path.slice(2), key], made);
  const own = path.slice(1);
  return (key) => wouldCount([...own, key], made, reachInDefaults([...own, key]));
}

const NOT_MADE = { spec: null, carcass: null, boring: null } as const;

/** In a bracketed list a map of its own: a bare key would take the rest of the list into it. */
function mapOffers(schema: RecordSchema<Fields>, asked: Asked): readonly Offer[] {
  const [first] = keyOffers(schema, asked);
  return first === undefined
    ? []
    : [{ ...first, detail: tell(offer.withMore({ noun: schema.noun }), 'mm'), text: `{ ${first.label}: $0 }` }];
}

/** The next item of a list over several lines. */
function dashOffers({ item: schema }: ListSchema<Schema>, detail = tell(offer.nextItem(), 'mm')): readonly Offer[] {
  const keys = alternatives(schema).flatMap((one) => (one.type === 'record' ? Object.entries(one.fields) : []));
  const [key] = keys.find(([, { required }]) => required) ?? keys[0] ?? [];
  const dash: Offer = { label: '-', sort: 'skeleton', detail, text: '- ' };
  return key === undefined
    ? [dash]
    : [dash, { label: `- ${key}`, sort: 'skeleton', detail: worded('keys', schema.about), text: `- ${key}: ` }];
}

/** What follows a key: its value on the line, or a deeper line. */
function afterKey(schema: Schema, inFlow: boolean): string {
  if (schema.type === 'list') return ': [$0]';
  if (schema.type !== 'record' && schema.type !== 'named') return ': ';
  return inFlow ? ': { $0 }' : ':\n  ';
}

/** Keys of a map whose names are the owner's: known panels, or one of his own with what it must have. */
function entryOffers(
  { noun, item: schema, about }: NamedSchema<Schema>,
  { file, context, offset, unit }: Asked,
): readonly Offer[] {
  if (noun === 'panel') {
    return panelNames(file, offset)
      .filter((label) => !context.present.has(label))
      .map((label): Offer => ({ label, sort: 'panel', text: `${label}:\n  `, detail: tell(offer.panel(), 'mm') }));
  }
  if (schema.type !== 'record' || context.inFlow) return [];
  const musts = Object.entries(schema.fields).filter(([, { required }]) => required);
  const [first, ...more] = musts.map(([key, field]) => `${key}${afterKey(field.schema, false)}`.trimEnd());
  const body = first === undefined ? '' : `\n  ${[`${first} $0`, ...more].join('\n  ')}`;
  return [
    {
      label: tell(offer.anew({ noun }), 'mm'),
      sort: 'skeleton',
      documentation: about,
      text: `${freeName(noun, context.present)}:${body}`,
    },
    ...(noun === 'carcass' ? carcassSkeletons(unit, context.present).map(skeletonOffer) : []),
  ];
}

function freeName(noun: string, taken: ReadonlySet<string>): string {
  const stem = noun.replaceAll(' ', '-');
  let number = 1;
  while (taken.has(`${stem}-${number}`)) number += 1;
  return `${stem}-${number}`;
}

function panelNames(file: AnalysedFile, offset: number): readonly string[] {
  if (file.kind !== 'job') return [];
  const spec = specAt(file.analysis, offset);
  return spec === null ? [] : panelKeys(spec);
}

/** The carcass that the offset stands in as it is, or, while it is being typed, as it last was. */
function specAt(analysis: JobAnalysis, offset: number) {
  const index = analysis.carcassAt(offset);
  if (index === null) return null;
  return analysis.carcasses[index]?.spec ?? analysis.drawable(index)?.carcass.spec ?? null;
}

/** Of the names of machines and fittings those of the kind that the key is for. */
function isRightKind(shop: Shop, name: string, of: NameOf, path: Path): boolean {
  const key = path.at(-1);
  if (of === 'machine' && typeof key === 'string' && Object.hasOwn(KIND_FOR_USE, key))
    return (
      (shop.machines.get(name)?.kind ?? shop.unread?.machines.get(name)) ===
      KIND_FOR_USE[key as keyof typeof KIND_FOR_USE]
    );
  const wanted = of === 'fitting' ? companionKindAt(path) : null;
  return wanted === null || (shop.fittings.get(name)?.kind ?? shop.unread?.fittings.get(name)) === wanted;
}

function nameOffers({ of }: NameSchema, { file, shopFiles, context, offset, shop, reader }: Asked): readonly Offer[] {
  if (of === 'shop-file') {
    const typed = file.analysis.text.slice(context.start, offset);
    const folder = typed.slice(0, typed.lastIndexOf('/') + 1);
    return shopFiles(folder).map((name): Offer => ({ label: `${folder}${name}`, sort: 'file' }));
  }
  if (of === 'carcass' && file.kind === 'job')
    return carcassesFor(file.analysis, file.analysis.carcassAt(offset)).map(({ name, line }): Offer => ({
      label: name,
      sort: 'name',
      detail: line,
    }));
  const known = namesOf(shop, of, reader)
    .filter(({ name }) => isRightKind(shop, name, of, context.path))
    .map(({ name, line }): Offer => ({ label: name, sort: 'name', detail: line }));
  if (of === 'band') return [...known, { label: NO_BAND, sort: 'name', detail: tell(offer.bare(), 'mm') }];
  if (of === 'pull') return [...known, { label: NO_PULL, sort: 'name', detail: tell(offer.unpulled(), 'mm') }];
  if (of === 'bracket') return [...known, { label: NO_BRACKET, sort: 'name', detail: tell(offer.unbracketed(), 'mm') }];
  if (of === 'foot') return [...known, { label: NO_FOOT, sort: 'name', detail: tell(offer.unfooted(), 'mm') }];
  if (of === 'angle') return [...known, { label: NO_ANGLE, sort: 'name', detail: tell(offer.unangled(), 'mm') }];
  return of === 'hinge' ? [...known, { label: NO_HINGE, sort: 'name', detail: tell(offer.unhung(), 'mm') }] : known;
}

/** Heights of shelves that stand on the pitch grid of the carcass. */
function heightOffers({ file, context, offset, unit, shop }: Asked): readonly Offer[] {
  const list = context.path.findLast((step) => typeof step === 'string' && step !== 'at');
  if (file.kind !== 'job' || (list !== 'fixed-shelves' && list !== 'loose-shelves')) return [];
  // The count of shelves is asked for, not a height.
  if (context.what === 'value' && context.path.at(-1) === list) return [];
  if (offset > context.start) return [];
  const index = file.analysis.carcassAt(offset);
  const drawable = index === null ? null : file.analysis.drawable(index);
  const spec = drawable?.carcass.spec ?? null;
  const carcass = drawable?.carcass.carcass ?? null;
  if (spec === null || carcass === null) return [];
  const { inches } = notationIn(file.analysis, index!);
  const grid = gridOfSides(spec, carcass, shop);
  // The first and the last place are those of bottom and top.
  return placesOf(grid)
    .slice(1, -1)
    .map((height, k): Offer => ({
      label: writeLength(height, unit, inches),
      sort: 'name',
      detail: tell(offer.onGrid({ hole: k + 2, of: grid.count }), 'mm'),
      beforeAll: true,
    }));
}

function distinct(offers: readonly Offer[]): readonly Offer[] {
  return [...new Map(offers.map((offer) => [offer.label, offer])).values()];
}
