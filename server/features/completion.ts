import type { CompletionItem, CompletionList, MarkupContent, Position, TextEdit } from 'vscode-languageserver';
import { CompletionItemKind, InsertTextFormat, InsertTextMode, MarkupKind } from 'vscode-languageserver';
import { gridOfSides } from '../../shared-core/boring/rows.js';
import type { Path } from '../../shared-core/document/place.js';
import type { JobAnalysis } from '../../shared-core/engine.js';
import { companionKindAt } from '../../shared-core/fittings/read.js';
import { panelKeys } from '../../shared-core/carcass/roles.js';
import { scalarText } from '../../shared-core/document/scalar-text.js';
import { carcassSkeletons, newJob } from '../../shared-core/job/skeletons.js';
import { jobSchema } from '../../shared-core/job/schema.js';
import { placesOf } from '../../shared-core/length/grid.js';
import type { Unit } from '../../shared-core/length/units.js';
import { writeLength } from '../../shared-core/length/write.js';
import { wouldCount, type Made } from '../../shared-core/findings/circumstances.js';
import { schemaAt } from '../../shared-core/schema/at.js';
import type {
  ListSchema,
  NamedSchema,
  NameOf,
  NameSchema,
  RecordSchema,
  Fields,
  Schema,
} from '../../shared-core/schema/schema.js';
import { filledIn, type Skeleton } from '../../shared-core/schema/skeleton.js';
import { KIND_FOR_USE } from '../../shared-core/shop/habits.js';
import type { Shop } from '../../shared-core/shop/model.js';
import { newShop } from '../../shared-core/shop/skeletons.js';
import { shopSchema } from '../../shared-core/shop/schema.js';
import type { ClientAbilities } from '../abilities.js';
import type { Files } from '../files.js';
import { baseName, isShop, shopUri } from '../files.js';
import type { TextDocument } from 'vscode-languageserver-textdocument';
import { withCode } from '../../shared-core/service/markdown.js';
import { offsetOf, rangeOf } from '../text.js';
import type { OpenFile } from '../workspace.js';
import type { LineContext } from './line-context.js';
import { lineContext } from './line-context.js';
import { formOf, namesOf } from '../../shared-core/service/words.js';

/** An offer before it is placed at the cursor. */
interface Offer {
  readonly label: string;
  readonly kind: CompletionItemKind;
  readonly detail?: string;
  readonly documentation?: string;
  /** What is written, where not the label. `$0` is where the cursor goes, in a client that knows snippets. */
  readonly text?: string;
  /** What is written in a client that knows snippets, with places to be filled in; `text` is then for the others. */
  readonly snippet?: string;
  /** Other words that it is found by. */
  readonly tried?: readonly string[];
}

interface Asked {
  readonly file: OpenFile;
  readonly files: Files;
  readonly context: LineContext;
  readonly offset: number;
  readonly unit: Unit;
  readonly shop: Shop;
}

/** Keys, words, names and heights that fit where the cursor stands, also in a line that is not whole yet. */
export function completion(
  file: OpenFile,
  position: Position,
  files: Files,
  { snippets }: Pick<ClientAbilities, 'snippets'>,
): CompletionList | null {
  const offset = offsetOf(file.document, position);
  const context = lineContext(file.document.getText(), offset);
  if (context === null) return null;
  const { shop } = file.analysis;
  const unit = file.kind === 'job' ? file.analysis.unit : shop.unit;
  const asked: Asked = { file, files, context, offset, unit, shop };
  const spot = schemaAt(file.kind === 'job' ? jobSchema : shopSchema, context.path);
  if (spot === null) return null;
  const offers = alternatives(spot.schema).flatMap((schema) => offersFor(schema, asked));
  const range = rangeOf(file.document, context.start, context.end);
  // A skeleton takes the place of no word that is there, nor a value that of a key.
  const room = context.quote === null && context.end === offset;
  const fitting = offers.filter(({ kind }) =>
    context.hasColon ? isKeyKind(kind) : room || kind !== CompletionItemKind.Snippet,
  );
  const written = distinct(fitting).map((offer) => ({
    ...offer,
    text: inPlace(offer, context, file.document.getText()),
  }));
  const moved = reindented(file.document, context);
  return { isIncomplete: false, items: written.map((offer, index) => item(offer, index, range, moved, snippets)) };
}

function isKeyKind(kind: CompletionItemKind): boolean {
  return kind === CompletionItemKind.Property || kind === CompletionItemKind.Field;
}

/** What of an offer is to be written, given what stands around the word: quotes, a colon, no space. */
function inPlace({ label, kind, text = label }: Offer, context: LineContext, whole: string): string {
  const { what, quote, hasColon, start, inFlow } = context;
  const isKey = isKeyKind(kind);
  if (isKey && hasColon) return label;
  if (quote !== null) {
    const inner = isKey ? label : text;
    const close = quote.closed ? '' : quote.sign;
    return `${quote.sign === "'" ? inner.replaceAll("'", "''") : JSON.stringify(inner).slice(1, -1)}${close}`;
  }
  // Straight behind its colon or dash a value would be glued to it.
  const glued = !inFlow && what === 'item' ? whole[start - 1] === '-' : what === 'value' && whole[start - 1] === ':';
  return `${glued ? ' ' : ''}${isKey || text !== label ? text : scalarText(text, inFlow)}`;
}

/** Puts a line that starts in a wrong column into that of the lines beside it. */
function reindented(document: TextDocument, { start, shift }: LineContext): readonly TextEdit[] {
  if (shift === 0) return [];
  const { line } = document.positionAt(start);
  const at = { line, character: 0 };
  return shift > 0
    ? [{ range: { start: at, end: at }, newText: ' '.repeat(shift) }]
    : [{ range: { start: at, end: { line, character: -shift } }, newText: '' }];
}

function alternatives(schema: Schema): readonly Schema[] {
  return schema.type === 'either' ? schema.of.flatMap(alternatives) : [schema];
}

function offersFor(schema: Schema, asked: Asked): readonly Offer[] {
  const { what, inFlow } = asked.context;
  if (schema.type === 'record') {
    if (what === 'value') return [];
    if (what === 'item' && inFlow) return mapOffers(schema, asked);
    return [...keyOffers(schema, asked), ...fileOffers(asked)];
  }
  if (schema.type === 'named') return what === 'value' ? [] : entryOffers(schema, asked);
  if (schema.type === 'list') return what === 'key' && !inFlow ? dashOffers(schema) : [];
  if (what === 'key') return [];
  switch (schema.type) {
    case 'choice':
      return Object.entries(schema.options).map(([label, documentation]) => ({
        label,
        kind: CompletionItemKind.EnumMember,
        documentation,
      }));
    case 'flag':
      return ['yes', 'no'].map((label) => ({ label, kind: CompletionItemKind.EnumMember }));
    case 'name':
      return nameOffers(schema, asked);
    case 'length':
      return heightOffers(asked);
    default:
      return [];
  }
}

/** A whole file, where nothing is written yet but the word at the cursor. */
function fileOffers({ file, context: { path, start, end } }: Asked): readonly Offer[] {
  const text = file.document.getText();
  if (path.length > 0 || `${text.slice(0, start)}${text.slice(end)}`.replace(/^\uFEFF/, '').trim() !== '') return [];
  const whole = file.kind === 'job' ? newJob : newShop;
  return (['mm', 'in'] as const).map((unit) => skeletonOffer(whole(unit)));
}

function skeletonOffer({ label, about, text }: Skeleton): Offer {
  const kind = CompletionItemKind.Snippet;
  return { label, kind, documentation: about, text: filledIn(text), snippet: text };
}

function keyOffers({ fields, tried = {} }: RecordSchema<Fields>, asked: Asked): readonly Offer[] {
  const { context, unit } = asked;
  const counts = countingAt(asked);
  const open = Object.entries(fields).filter(([key]) => !context.present.has(key) && counts(key));
  // What must be there comes first.
  const ordered = [...open.filter(([, field]) => field.required), ...open.filter(([, field]) => !field.required)];
  return ordered.map(([label, { schema, required }]) => ({
    label,
    kind: CompletionItemKind.Property,
    detail: required ? 'must be there' : formOf(alternatives(schema)[0]!, unit),
    documentation: schema.about,
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
  const own = first === 'defaults' ? path.slice(1) : path.slice(2);
  return (key) => wouldCount([...own, key], made);
}

const NOT_MADE = { spec: null, carcass: null, boring: null } as const;

/** In a bracketed list a map of its own: a bare key would take the rest of the list into it. */
function mapOffers(schema: RecordSchema<Fields>, asked: Asked): readonly Offer[] {
  const [first] = keyOffers(schema, asked);
  return first === undefined
    ? []
    : [{ ...first, detail: `a ${schema.noun} with more about it`, text: `{ ${first.label}: $0 }` }];
}

/** The next item of a list over several lines. */
function dashOffers({ item: schema }: ListSchema<Schema>): readonly Offer[] {
  const keys = alternatives(schema).flatMap((one) => (one.type === 'record' ? Object.entries(one.fields) : []));
  const [key] = keys.find(([, { required }]) => required) ?? keys[0] ?? [];
  const dash: Offer = { label: '-', kind: CompletionItemKind.Snippet, detail: 'one more in this list', text: '- ' };
  return key === undefined
    ? [dash]
    : [dash, { label: `- ${key}`, kind: CompletionItemKind.Snippet, detail: schema.about, text: `- ${key}: ` }];
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
      .map((label) => ({ label, kind: CompletionItemKind.Field, text: `${label}:\n  `, detail: 'panel' }));
  }
  if (schema.type !== 'record' || context.inFlow) return [];
  const musts = Object.entries(schema.fields).filter(([, { required }]) => required);
  const [first, ...more] = musts.map(([key, field]) => `${key}${afterKey(field.schema, false)}`.trimEnd());
  const body = first === undefined ? '' : `\n  ${[`${first} $0`, ...more].join('\n  ')}`;
  return [
    {
      label: `new ${noun}`,
      kind: CompletionItemKind.Snippet,
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

function panelNames(file: OpenFile, offset: number): readonly string[] {
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

function nameOffers({ of }: NameSchema, { file, files, context, offset, shop, unit }: Asked): readonly Offer[] {
  if (of === 'shop-file') {
    const typed = file.document.getText().slice(context.start, offset);
    const folder = typed.slice(0, typed.lastIndexOf('/') + 1);
    const like = shopUri(file.document.uri, `${folder}x.shop.yaml`);
    return (like === null ? [] : files.beside(like))
      .map(baseName)
      .filter(isShop)
      .map((name) => ({ label: `${folder}${name}`, kind: CompletionItemKind.File }));
  }
  const known = namesOf(shop, of, unit)
    .filter(({ name }) => isRightKind(shop, name, of, context.path))
    .map(({ name, line }) => ({ label: name, kind: CompletionItemKind.Value, detail: line }));
  return of === 'band'
    ? [...known, { label: 'none', kind: CompletionItemKind.Value, detail: 'the edge stays bare' }]
    : known;
}

/** Heights of shelves that stand on the pitch grid of the carcass. */
function heightOffers({ file, context, offset, unit, shop }: Asked): readonly Offer[] {
  const list = context.path.findLast((step) => typeof step === 'string' && step !== 'at');
  if (file.kind !== 'job' || (list !== 'fixed-shelves' && list !== 'loose-shelves')) return [];
  // The count of shelves is asked for, not a height.
  if (context.what === 'value' && context.path.at(-1) === list) return [];
  const index = file.analysis.carcassAt(offset);
  const drawable = index === null ? null : file.analysis.drawable(index);
  const spec = drawable?.carcass.spec ?? null;
  const carcass = drawable?.carcass.carcass ?? null;
  if (spec === null || carcass === null) return [];
  const grid = gridOfSides(spec, carcass, shop);
  // The first and the last place are those of bottom and top.
  return placesOf(grid)
    .slice(1, -1)
    .map((height, k): Offer => ({
      label: writeLength(height, unit),
      kind: CompletionItemKind.Value,
      detail: `hole ${k + 2} of ${grid.count}, on the pitch grid`,
    }));
}

function distinct(offers: readonly Offer[]): readonly Offer[] {
  return [...new Map(offers.map((offer) => [offer.label, offer])).values()];
}

function item(
  offer: Offer,
  index: number,
  range: TextEdit['range'],
  moved: readonly TextEdit[],
  snippets: boolean,
): CompletionItem {
  const { label, kind, detail, documentation } = offer;
  const text = offer.text ?? label;
  const isSnippet = snippets && (offer.snippet !== undefined || text.includes('$0'));
  const newText =
    isSnippet && offer.snippet !== undefined
      ? offer.snippet
      : isSnippet
        ? text.replace(/[\\}](?!\s*$)|\$(?!0)/g, '\\$&')
        : text.replace('$0', '');
  return {
    label,
    kind,
    ...(detail !== undefined && { detail }),
    ...(documentation !== undefined && { documentation: markdown(documentation) }),
    sortText: String(index).padStart(4, '0'),
    filterText: [label, ...(offer.tried ?? [])].join(' '),
    insertTextFormat: isSnippet ? InsertTextFormat.Snippet : InsertTextFormat.PlainText,
    insertTextMode: InsertTextMode.adjustIndentation,
    textEdit: { range, newText },
    ...(moved.length > 0 && { additionalTextEdits: [...moved] }),
  };
}

function markdown(text: string): MarkupContent {
  return { kind: MarkupKind.Markdown, value: withCode(text) };
}
