import { jobSchema } from '../job/schema.js';
import { lengthExamples } from '../schema/length-words.js';
import { schemaAt } from '../schema/at.js';
import type { LengthSchema, Schema, SpanSchema } from '../schema/schema.js';
import { spanExamples } from '../schema/wanted-words.js';
import { shopSchema } from '../shop/schema.js';
import { sentence } from '../words/english.js';
import { asItIs, type Told, worded } from '../words/told.js';
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

/** For a length or a range of lengths at the cursor, be it written yet or not; null anywhere else. */
export function writingHelpAt(file: AnalysedFile, offset: number): WritingHelp | null {
  const context = lineContext(file.analysis.text, offset);
  if (context === null || context.what === 'key') return null;
  const spot = schemaAt(file.kind === 'job' ? jobSchema : shopSchema, context.path);
  const schema = spot === null ? undefined : lengthIn(spot.schema);
  if (spot === null || schema === undefined) return null;
  const unit = file.kind === 'job' ? file.analysis.unit : file.analysis.shop.unit;
  const key = context.path.findLast((step) => typeof step === 'string');
  const examples = schema.type === 'length' ? lengthExamples(schema, unit) : spanExamples(schema, unit);
  return {
    label: asItIs(`${key === undefined ? '' : `${key}: `}${examples.join(', ')}`),
    about: paragraphs(
      withCode(worded('keys', spot.about)),
      plain(`${sentence(formOf(schema, file.analysis.reader))}.`),
    ),
  };
}

function lengthIn(schema: Schema): LengthSchema | SpanSchema | undefined {
  if (schema.type === 'length' || schema.type === 'span') return schema;
  return schema.type === 'either' ? schema.of.map(lengthIn).find((one) => one !== undefined) : undefined;
}
