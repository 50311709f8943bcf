import { jobSchema } from '../job/schema.js';
import { parseLength } from '../length/parse.js';
import type { Micrometres, Unit } from '../length/units.js';
import { schemaAt } from '../schema/at.js';
import type { LengthSchema, Schema, SpanSchema } from '../schema/schema.js';
import { spanExample } from '../schema/wanted-words.js';
import { shopSchema } from '../shop/schema.js';
import { sentence } from '../words/english.js';
import { asItIs, type Told } from '../words/told.js';
import type { AnalysedFile } from './file.js';
import { lineContext } from './line-context.js';
import { paragraphs, plain, withCode } from './markdown.js';
import { formOf } from './words.js';

/** How the value at a cursor may be written. */
export interface WritingHelp {
  /** The key with examples: 'width: 600, 600 mm, 23 5/8 in'. */
  readonly label: Told;
  /** Markdown: what the key means, and the bounds. */
  readonly about: string;
}

/** About one length each, written out in both units; the first that the bounds let through is taken. */
const EXAMPLES: readonly Readonly<Record<Unit, readonly [bare: string, ...more: string[]]>>[] = [
  { mm: ['600', '600.5 mm'], in: ['23 5/8', '23.625 in', '1\' 11 5/8"'] },
  { mm: ['120', '120.5 mm'], in: ['4 3/4', '4.75 in'] },
  { mm: ['18', '18.5 mm'], in: ['11/16', '0.75 in'] },
  { mm: ['5', '5.5 mm'], in: ['3/16', '0.2 in'] },
  { mm: ['0.4', '0.5 mm'], in: ['1/64', '0.02 in'] },
];

/** For a length or a range of lengths at the cursor, be it written yet or not; null anywhere else. */
export function writingHelpAt(file: AnalysedFile, offset: number): WritingHelp | null {
  const context = lineContext(file.analysis.text, offset);
  if (context === null || context.what === 'key') return null;
  const spot = schemaAt(file.kind === 'job' ? jobSchema : shopSchema, context.path);
  const schema = spot === null ? undefined : lengthIn(spot.schema);
  if (spot === null || schema === undefined) return null;
  const unit = file.kind === 'job' ? file.analysis.unit : file.analysis.shop.unit;
  const key = context.path.findLast((step) => typeof step === 'string');
  const examples = schema.type === 'length' ? lengths(schema, unit) : ranges(schema, unit);
  return {
    label: asItIs(`${key === undefined ? '' : `${key}: `}${examples.join(', ')}`),
    about: paragraphs(withCode(spot.about), plain(`${sentence(formOf(schema, unit))}.`)),
  };
}

function lengthIn(schema: Schema): LengthSchema | SpanSchema | undefined {
  if (schema.type === 'length' || schema.type === 'span') return schema;
  return schema.type === 'either' ? schema.of.map(lengthIn).find((one) => one !== undefined) : undefined;
}

const other = (unit: Unit): Unit => (unit === 'mm' ? 'in' : 'mm');

/** A bare number is in the unit of the file; one of the other unit says so. */
function lengths({ min, max }: LengthSchema, unit: Unit): readonly string[] {
  const isWithin = (text: string, of: Unit): boolean => within(text, of, min, max);
  const fitting = EXAMPLES.find((one) => isWithin(one.mm[0], 'mm') && isWithin(one.in[0], 'in')) ?? EXAMPLES.at(-1)!;
  const [bare, ...more] = fitting[unit];
  const [foreign] = fitting[other(unit)];
  return [bare, ...more, `${foreign} ${other(unit)}`].filter((text) => isWithin(text, unit));
}

function ranges(span: SpanSchema, unit: Unit): readonly string[] {
  const foreign = spanExample(span, other(unit)).split(' to ');
  return [spanExample(span, unit), foreign.map((one) => `${one} ${other(unit)}`).join(' to ')];
}

function within(text: string, unit: Unit, min: Micrometres, max: Micrometres): boolean {
  const read = parseLength(text, unit);
  return read.ok && min <= read.value && read.value <= max;
}
