import type { Change, Finding, Repair } from '../document/finding.js';
import type { Located, Part, Path, Place } from '../document/place.js';
import type { ListNode, MapEntry, MapNode, ScalarNode, TreeNode } from '../document/tree.js';
import { parseLength } from '../length/parse.js';
import type { Micrometres, Unit } from '../length/units.js';
import { showLength } from '../length/show.js';
import { aNoun, expected, someKeys, spanExample } from './expected.js';
import { nearestName } from './nearest.js';
import type {
  ChoiceSchema,
  EitherSchema,
  Entry,
  Fields,
  Infer,
  LengthSchema,
  RecordSchema,
  Schema,
  Span,
  SpanSchema,
} from './schema.js';
import { errorAt, preferred, quoted } from './tell.js';

/** The text that is being read. */
export interface Reading {
  readonly unit: Unit;
  readonly part: Part;
  /** Path of the node from the root of the part. */
  readonly path: Path;
  /** Blamed where the node itself is not written: its key, or the name of what lacks it. */
  readonly place: Place;
  /** A span that runs beyond its bounds, or backwards, is told and then read as what of it can be; else it is left out. */
  readonly mendSpans?: boolean;
}

export interface ReadResult<S extends Schema> {
  /** null where the value itself cannot be had. Optional parts that cannot be had are left out of it. */
  readonly value: Infer<S> | null;
  /** True where nothing written had to be left out and nothing required is missing; unknown keys do not count. */
  readonly sound: boolean;
  readonly findings: readonly Finding[];
}

/**
 * Reads a node by a schema. Findings (rules key-unknown, key-missing, value-wrong, length-impossible, name-duplicate) carry
 * the place of exactly what is wrong and, where the meaning is near, a repair. Never throws.
 */
export function readBySchema<S extends Schema>(schema: S, node: TreeNode | null, reading: Reading): ReadResult<S> {
  const reader = new SchemaReader(reading.unit, reading.part, reading.mendSpans);
  const value = reader.read(schema, node, { path: reading.path, place: reading.place });
  // The reader walks the schema as data; that its result has the type which the schema infers is what the tests show.
  return { value: value as Infer<S> | null, sound: reader.sound, findings: reader.findings };
}

interface At {
  readonly path: Path;
  readonly place: Place;
}
type Unlocated = Located<unknown>;

const YES = new Set(['yes', 'true', 'on']);
const NO = new Set(['no', 'false', 'off']);

class SchemaReader {
  readonly findings: Finding[] = [];
  sound = true;
  readonly #unit: Unit;
  readonly #part: Part;
  readonly #mendSpans: boolean;

  constructor(unit: Unit, part: Part, mendSpans = false) {
    this.#unit = unit;
    this.#part = part;
    this.#mendSpans = mendSpans;
  }

  read(schema: Schema, node: TreeNode | null, at: At): unknown {
    if (schema.type === 'either') return this.#either(schema, node, at);
    if (schema.type === 'record') return this.#record(schema, node, at);
    if (schema.type === 'named') return this.#named(schema.noun, schema.item, node, at);
    if (schema.type === 'list') return this.#list(schema.item, node, at);
    if (node === null || (node.kind === 'scalar' && node.text.trim() === '')) {
      if (schema.type === 'text') return this.#located('', node?.place ?? at.place, at.path);
      return this.#wrong(
        node !== null && node.place.end > node.place.start ? node.place : at.place,
        `There is no value here. ${expected(schema, this.#unit)}.`,
      );
    }
    if (node.kind !== 'scalar') {
      const what = node.kind === 'map' ? 'a map of keys' : 'a list';
      return this.#wrong(
        firstLineOf(node),
        `This is ${what}, where one value belongs. ${expected(schema, this.#unit)}.`,
      );
    }
    const value = this.#scalar(schema, node.text.trim(), node.place, at.path);
    return value === null ? null : this.#located(value, node.place, at.path);
  }

  #located<T>(value: T, place: Place, path: Path): Located<T> {
    return { value, place, path, written: true };
  }

  #fault(finding: Finding): null {
    this.sound = false;
    this.findings.push(finding);
    return null;
  }

  #wrong(place: Place, message: string, repairs: readonly Repair[] = []): null {
    return this.#fault(errorAt('value-wrong', place, message, { repairs }));
  }

  #set(path: Path, text: string): Change {
    return { kind: 'set', part: this.#part, path, text };
  }

  #scalar(
    schema: Exclude<Schema, { type: 'either' | 'record' | 'named' | 'list' }>,
    text: string,
    place: Place,
    path: Path,
  ): unknown {
    switch (schema.type) {
      case 'length':
        return this.#length(schema, text, place, path);
      case 'span':
        return this.#span(schema, text, place);
      case 'count':
      case 'number':
        return this.#number(schema, text, place);
      case 'flag':
        if (YES.has(text.toLowerCase())) return true;
        if (NO.has(text.toLowerCase())) return false;
        return this.#wrong(place, `${quoted(text)} is neither yes nor no. ${expected(schema, this.#unit)}.`);
      case 'choice':
        return this.#choice(schema, text, place, path);
      case 'text':
      case 'name':
        return text;
    }
  }

  #length(schema: LengthSchema, text: string, place: Place, path: Path): Micrometres | null {
    const parsed = parseLength(text, this.#unit);
    if (!parsed.ok) {
      const { message, instead } = parsed;
      const repairs =
        instead !== undefined && this.#fits(schema, instead, place)
          ? [preferred(`Write ${instead}`, this.#set(path, instead))]
          : [];
      return this.#fault(errorAt('length-impossible', place, message, { repairs }));
    }
    return this.#bounded(schema, parsed.value, place, this.#otherUnit(schema, text, place, path)) ? parsed.value : null;
  }

  /** What a bare number out of bounds says in the other unit, where it fits; null for any other text. */
  #otherUnit(schema: LengthSchema, text: string, place: Place, path: Path): Meant | null {
    const [other, name] = this.#unit === 'mm' ? (['in', 'inches'] as const) : (['mm', 'millimetres'] as const);
    const written = `${text} ${other}`;
    if (!/[\d.]$/.test(text) || !this.#fits(schema, written, place)) return null;
    const repair = { title: `Write ${written}`, changes: [this.#set(path, written)], preferred: false };
    return { words: `If ${name} are meant, write ${written}.`, repairs: [repair] };
  }

  /** True where the schema would read a text without fault. */
  #fits(schema: Schema, text: string, place: Place): boolean {
    const trial = new SchemaReader(this.#unit, this.#part);
    trial.read(schema, { kind: 'scalar', place, text, plain: true }, { path: [], place });
    return trial.sound;
  }

  /** Tells a decimal comma, which in brackets parts one value into two; `more` are further offers. */
  #decimalComma(first: ScalarNode, rest: Place, restText: string, schema: Schema, more: readonly Repair[]): null {
    const place: Place = { ...first.place, end: rest.end };
    const meant = `${first.text}.${restText}`;
    const comma = { part: this.#part, start: first.place.end, end: rest.start, text: '.' };
    const repairs: Repair[] = this.#fits(schema, meant, first.place)
      ? [{ title: `Write ${meant}`, changes: [], rewrites: [comma], preferred: true }]
      : [];
    const twoMeant = more.length > 0 ? ' If two values are meant, write a space behind the comma.' : '';
    return this.#fault(
      errorAt(
        'length-impossible',
        place,
        `‘${first.text},${restText}’: a decimal comma? In brackets a comma parts two values. Write ${meant}.${twoMeant}`,
        { repairs: [...repairs, ...more] },
      ),
    );
  }

  #bounded(schema: LengthSchema | SpanSchema, value: Micrometres, place: Place, meant: Meant | null = null): boolean {
    if (value >= schema.min && value <= schema.max) return true;
    const side = value < schema.min ? 'less than' : 'more than';
    const bound =
      value < schema.min
        ? `the least, ${showLength(schema.min, this.#unit)}`
        : `the greatest, ${showLength(schema.max, this.#unit)}`;
    this.#fault(
      errorAt(
        'length-impossible',
        place,
        `${showLength(value, this.#unit)} is ${side} ${bound}. ${expected(schema, this.#unit)}.${meant === null ? '' : ` ${meant.words}`}`,
        { repairs: meant?.repairs ?? [] },
      ),
    );
    return false;
  }

  #span(schema: SpanSchema, text: string, place: Place): Span | null {
    const parts = text.split(/\s+to\s+/i);
    const [first, second] = parts;
    if (first === undefined || parts.length > 2)
      return this.#fault(
        errorAt('length-impossible', place, `${quoted(text)} is not a span. ${expected(schema, this.#unit)}.`),
      );
    const last = second ?? first;
    // In `20 to 80 mm` the unit counts for both.
    const unit = /mm$/i.test(last) ? 'mm' : /(in|inch|inches|")$/i.test(last) ? 'in' : this.#unit;
    const min = parseLength(first, unit);
    const max = parseLength(last, this.#unit);
    if (!min.ok || !max.ok) {
      const message = !min.ok ? min.message : !max.ok ? max.message : '';
      return this.#fault(
        errorAt('length-impossible', place, `${message} A span is two of them: ${spanExample(schema, this.#unit)}.`),
      );
    }
    if (min.value > max.value) {
      const message = `The span runs from ${showLength(min.value, this.#unit)} down to ${showLength(max.value, this.#unit)}. Write the smaller length first.`;
      this.#fault(errorAt('length-impossible', place, message));
      return this.#mended(schema, max.value, min.value);
    }
    if (!this.#bounded(schema, min.value, place) || !this.#bounded(schema, max.value, place))
      return this.#mended(schema, min.value, max.value);
    return { min: min.value, max: max.value };
  }

  /** What of a span lies within its bounds, where it is wanted. */
  #mended(schema: SpanSchema, from: Micrometres, to: Micrometres): Span | null {
    const min = Math.max(from, schema.min);
    const max = Math.min(to, schema.max);
    return this.#mendSpans && min <= max ? { min, max } : null;
  }

  #number(
    schema: { type: 'count' | 'number'; about: string; min: number; max: number },
    text: string,
    place: Place,
  ): number | null {
    const form = schema.type === 'count' ? /^[-+]?\d{1,15}$/ : /^[-+]?(?:\d{1,15}(?:\.\d{0,15})?|\.\d{1,15})$/;
    const wanted = `${expected(schema, this.#unit)}.`;
    if (!form.test(text))
      return this.#wrong(
        place,
        `${quoted(text)} is not a ${schema.type === 'count' ? 'whole number' : 'number'}. ${wanted}`,
      );
    const value = Number(text);
    if (value < schema.min) return this.#wrong(place, `${text} is less than the least, ${schema.min}. ${wanted}`);
    if (value > schema.max) return this.#wrong(place, `${text} is more than the greatest, ${schema.max}. ${wanted}`);
    return value === 0 ? 0 : value;
  }

  #choice(schema: ChoiceSchema<string>, text: string, place: Place, path: Path): string | null {
    if (Object.hasOwn(schema.options, text)) return text;
    const words = Object.keys(schema.options);
    const near = nearestName(text, words);
    const repairs = near === null ? [] : [preferred(`Write ${near}`, this.#set(path, near))];
    return this.#wrong(
      place,
      `${quoted(text)} is none of the words that can stand here: ${words.join(', ')}.`,
      repairs,
    );
  }

  #record(schema: RecordSchema<Fields>, node: TreeNode | null, at: At): Unlocated | null {
    if (node !== null && node.kind !== 'map') {
      if (node.kind !== 'scalar' || node.text.trim() !== '') {
        const glued = node.kind === 'scalar' && node.plain ? /^([\w-]+):(\S+)$/.exec(node.text) : null;
        if (glued !== null && Object.hasOwn(schema.fields, glued[1]!)) return this.#noSpace(node, glued[1]!, glued[2]!);
        return this.#wrong(
          firstLineOf(node),
          `Here belong the keys of ${aNoun(schema.noun)}, each on a line of its own: ${someKeys(schema)}.`,
        );
      }
    }
    const entries = node?.kind === 'map' ? node.entries : [];
    const values: Record<string, unknown> = {};
    const seen = new Map<string, MapEntry>();
    for (const entry of entries) {
      if (!Object.hasOwn(schema.fields, entry.key)) {
        if (this.#isDecimals(schema, entry, entries)) continue;
        this.#unknownKey(schema, entry, entries, at);
        continue;
      }
      if (this.#isDuplicate(seen, entry)) continue;
      const field = schema.fields[entry.key]!;
      const value = this.read(field.schema, entry.value, { path: [...at.path, entry.key], place: entry.keyPlace });
      if (value !== null) values[entry.key] = value;
    }
    let complete = true;
    for (const [key, field] of Object.entries(schema.fields)) {
      if (!field.required || seen.has(key)) {
        if (field.required && values[key] === undefined) complete = false;
        continue;
      }
      complete = false;
      this.#missing(schema, key, field.schema, at, entries);
    }
    if (!complete) return null;
    return this.#located(values, node?.place ?? at.place, at.path);
  }

  /** `kind:base` alone is one word to YAML, and no fault. */
  #noSpace({ place }: TreeNode, key: string, value: string): null {
    const at = place.start + key.length + 1;
    const space = { part: this.#part, start: at, end: at, text: ' ' };
    const repairs: Repair[] = [
      { title: 'Put a space behind the colon', changes: [], rewrites: [space], preferred: true },
    ];
    return this.#wrong(place, `The space behind the colon is missing: write \`${key}: ${value}\`.`, repairs);
  }

  #missing(schema: RecordSchema<Fields>, key: string, value: Schema, at: At, entries: readonly MapEntry[]): void {
    const misspelt = entries.some(
      (entry) => !Object.hasOwn(schema.fields, entry.key) && nearestName(entry.key, Object.keys(schema.fields)) === key,
    );
    // The misspelt key is told already, and its repair brings this one.
    if (misspelt) {
      this.sound = false;
      return;
    }
    const repairs =
      value.type === 'choice'
        ? Object.keys(value.options).map((word): Repair => ({
            title: `Add ${key}: ${word}`,
            changes: [this.#set([...at.path, key], word)],
            preferred: false,
          }))
        : [];
    const message = `The ${schema.noun} has no \`${key}\`. ${value.about} ${expected(value, this.#unit)}.`;
    this.#fault(errorAt('key-missing', at.place, message, { repairs }));
  }

  #unknownKey(schema: RecordSchema<Fields>, entry: MapEntry, entries: readonly MapEntry[], at: At): void {
    const written = new Set(entries.map((other) => other.key));
    const keys = Object.keys(schema.fields);
    const near = nearestName(
      entry.key,
      keys.filter((key) => !written.has(key)),
    );
    const change =
      near === null
        ? null
        : ({ kind: 'rename-key', part: this.#part, path: [...at.path, entry.key], text: near } as const);
    const guess = near === null ? `It has these keys: ${keys.join(', ')}.` : `Did you mean \`${near}\`?`;
    this.findings.push(
      errorAt('key-unknown', entry.keyPlace, `${quoted(entry.key)} is not a key of ${aNoun(schema.noun)}. ${guess}`, {
        repairs: change === null ? [] : [preferred(`Rename to ${change.text}`, change)],
      }),
    );
  }

  /** In `{ at: 360,5, bay: 1 }` the 5 is read as a key: tells it for what it is. */
  #isDecimals(schema: RecordSchema<Fields>, entry: MapEntry, entries: readonly MapEntry[]): boolean {
    const before = entries[entries.indexOf(entry) - 1];
    const value = before?.value;
    if (entry.value !== null || value?.kind !== 'scalar' || !Object.hasOwn(schema.fields, before!.key)) return false;
    if (!/^\d+$/.test(entry.key) || !/\d$/.test(value.text) || !touches(value, entry.keyPlace)) return false;
    this.#decimalComma(value, entry.keyPlace, entry.key, schema.fields[before!.key]!.schema, []);
    return true;
  }

  /** Tells every decimal comma of a list in brackets; true where there is one. */
  #hasDecimals(item: Schema, node: ListNode): boolean {
    if (!takesLengths(item)) return false;
    const pairs = node.items.map((one, i) => [one, node.items[i + 1]] as const);
    const spaced = pairs.some(([one, next]) => next !== undefined && !touches(one, next.place));
    let found = false;
    for (const [first, second] of pairs) {
      if (first.kind !== 'scalar' || second?.kind !== 'scalar' || !touches(first, second.place)) continue;
      const [, digits] = /^(\d+)(?:\s*(?:mm|in|"))?$/.exec(second.text) ?? [];
      if (digits === undefined || !/^[-+]?\d+$/.test(first.text)) continue;
      // A list of places rises: `[53,213,405]` is three of them, `[296,5]` is one.
      if (Number(digits) > Number(first.text) && !(spaced && digits.length < 3)) continue;
      found = true;
      const space = { part: this.#part, start: second.place.start, end: second.place.start, text: ' ' };
      this.#decimalComma(first, second.place, second.text, item, [
        {
          title: `Write ${first.text}, ${second.text}: two values`,
          changes: [],
          rewrites: [space],
          preferred: false,
        },
      ]);
    }
    return found;
  }

  /** Tells a key that is written twice; the first one counts. */
  #isDuplicate(seen: Map<string, MapEntry>, entry: MapEntry): boolean {
    const first = seen.get(entry.key);
    if (first === undefined) {
      seen.set(entry.key, entry);
      return false;
    }
    const related = [{ place: first.keyPlace, message: `${quoted(entry.key)} is first written here.` }];
    this.findings.push(
      errorAt(
        'name-duplicate',
        entry.keyPlace,
        `${quoted(entry.key)} is written twice here; only the first counts. Take one out, or give it another name.`,
        { related },
      ),
    );
    return true;
  }

  #named(noun: string, item: Schema, node: TreeNode | null, at: At): Unlocated | null {
    const map = this.#mapOf(noun, node);
    if (map === null) return null;
    const items: Entry<unknown>[] = [];
    const seen = new Map<string, MapEntry>();
    for (const entry of map?.entries ?? []) {
      const path = [...at.path, entry.key];
      if (entry.key.trim() === '') {
        this.#wrong(entry.keyPlace, `Every ${noun} needs a name before the colon.`);
        continue;
      }
      if (this.#isDuplicate(seen, entry)) continue;
      const value = this.read(item, entry.value, { path, place: entry.keyPlace });
      if (value !== null) items.push({ name: this.#located(entry.key, entry.keyPlace, path), value });
    }
    return this.#located(items, node?.place ?? at.place, at.path);
  }

  /** Offers to put a value that stands alone into a list, where the list would take it. */
  #asList(item: Schema, node: TreeNode | null, path: Path): readonly Repair[] {
    if (node?.kind !== 'scalar' || !this.#fits(item, node.text, node.place)) return [];
    const list = `[${node.text.trim()}]`;
    return [preferred(`Write ${list}`, this.#set(path, list))];
  }

  /** The map of named things; undefined where nothing is written, null where something else is. */
  #mapOf(noun: string, node: TreeNode | null): MapNode | undefined | null {
    if (node === null || (node.kind === 'scalar' && node.text.trim() === '')) return undefined;
    if (node.kind === 'map') return node;
    return this.#wrong(firstLineOf(node), `Here belong names, each with a colon and the keys of its ${noun} under it.`);
  }

  #list(item: Schema, node: TreeNode | null, at: At): Unlocated | null {
    if (node === null || (node.kind === 'scalar' && node.text.trim() === ''))
      return this.#located([], node?.place ?? at.place, at.path);
    if (node.kind !== 'list') {
      return this.#wrong(
        firstLineOf(node),
        `Here belongs a list: [ … ] with commas, or one line with - for each. ${expected(item, this.#unit)}.`,
        this.#asList(item, node, at.path),
      );
    }
    if (node.flow && this.#hasDecimals(item, node)) return null;
    const items: unknown[] = [];
    node.items.forEach((one, index) => {
      const value = this.read(item, one, {
        path: [...at.path, index],
        place: one.place.end > one.place.start ? firstLineOf(one) : at.place,
      });
      if (value !== null) items.push(value);
    });
    return this.#located(items, node.place, at.path);
  }

  /** Takes the first alternative of the node's shape that reads without fault; else tells the faults of the first of that shape. */
  #either(schema: EitherSchema<readonly Schema[]>, node: TreeNode | null, at: At): unknown {
    const fitting = schema.of.filter((one) => node !== null && shapeOf(one) === node.kind);
    for (const one of fitting) {
      const trial = new SchemaReader(this.#unit, this.#part);
      const value = trial.read(one, node, at);
      if (trial.sound && value !== null) {
        this.findings.push(...trial.findings);
        return { as: one.type, is: value };
      }
    }
    const first = fitting[0];
    if (first === undefined) {
      const place = node === null ? at.place : firstLineOf(node);
      return this.#wrong(
        place,
        `This is not what belongs here. ${schema.about} ${schema.of.map((one) => expected(one, this.#unit)).join('; or: ')}.`,
      );
    }
    const list = schema.of.find((one) => one.type === 'list');
    const asList = list === undefined ? [] : this.#asList(list.item, node, at.path);
    if (node?.kind === 'scalar' && asList.length > 0) {
      const text = node.text.trim();
      const words = `${expected(first, this.#unit)}; for a list with this one in it, write [${text}].`;
      return this.#wrong(node.place, `${quoted(text)} stands alone. ${words}`, asList);
    }
    const value = this.read(first, node, at);
    return value === null ? null : { as: first.type, is: value };
  }
}

/** What was most likely meant, in words and as repairs. */
interface Meant {
  readonly words: string;
  readonly repairs: readonly Repair[];
}

/** True where a place starts right behind a value and one comma. */
function touches(value: TreeNode, next: Place): boolean {
  return value.alias === undefined && next.start === value.place.end + 1;
}

function takesLengths(schema: Schema): boolean {
  return schema.type === 'length' || (schema.type === 'either' && schema.of.some(takesLengths));
}

function shapeOf(schema: Schema): TreeNode['kind'] | null {
  switch (schema.type) {
    case 'record':
    case 'named':
      return 'map';
    case 'list':
      return 'list';
    case 'either':
      return null;
    default:
      return 'scalar';
  }
}

/** An indented block is blamed by its first key or item, so that its lines are not all underlined. */
function firstLineOf(node: TreeNode): Place {
  if (node.alias !== undefined) return node.alias;
  if (node.kind === 'scalar' || node.flow) return node.place;
  const first = node.kind === 'map' ? node.entries[0]?.keyPlace : node.items[0]?.place;
  if (first === undefined || first.end <= first.start) return node.place;
  return { part: node.place.part, start: node.place.start, end: Math.min(first.end, node.place.end) };
}
