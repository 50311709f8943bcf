import type { Path } from '../../document/place.js';
import { reachInJob } from '../../job/reach.js';
import { jobSchema } from '../../job/schema.js';
import { whenLeftOut } from '../../job/when-left-out.js';
import { leftOutMessages } from '../../job/left-out.js';
import { figure } from '../../length/show.js';
import { groupBy } from '../../machining/plan/numbers.js';
import { camel } from '../../schema/model.js';
import type { Schema } from '../../schema/schema.js';
import type { CarcassKind } from '../../shop/model.js';
import { neutralShop } from '../../shop/neutral.js';
import { NEUTRAL_SHOP_TEXT } from '../../shop/neutral-text.js';
import { shopSchema } from '../../shop/schema.js';
import { unusedWords } from '../../shop/unused.js';
import { identityOf, tell, type Message } from '../../words/message.js';
import { listed, sentence } from '../../words/english.js';
import { formOf } from '../words.js';
import { examplesIn, type Examples } from './example.js';
import { EXAMPLES, JOB_EXAMPLE, SHOP_EXAMPLE } from './examples.js';
import { anchorOf, headingOf, sectionsOf, type KeyEntry, type KeySection } from './keys.js';
import { PAGE } from './messages.js';

type FileKind = 'job' | 'shop';

const KINDS = Object.keys(jobSchema.fields.carcasses.schema.item.fields.kind.schema.options) as CarcassKind[];

/** Every key of a file as Markdown, made from its schema: what it means, where it counts, its form and an example. */
export function keysPage(kind: FileKind): string {
  const schema = schemaOfFile(kind);
  const sections = sectionsOf(schema);
  const examples = examplesIn(schema, EXAMPLES[kind]);
  const blocks = [
    `# ${PAGE[kind]}`,
    kind === 'job' ? PAGE.jobIntro : PAGE.shopIntro,
    ...(kind === 'shop' ? [PAGE.caution] : []),
    `${PAGE.seeAlso}: ${kind === 'job' ? `[${PAGE.shop}](shop-files.md)` : `[${PAGE.job}](job-files.md)`}, [${PAGE.findings}](findings.md).`,
    `## ${PAGE.writing}`,
    PAGE.lines,
    PAGE.lengths,
    PAGE.figures,
    ...sections.flatMap((section) => sectionBlocks(kind, section, sections, examples)),
    `## ${PAGE.whole}`,
    ...(kind === 'job'
      ? [fenced(JOB_EXAMPLE), `${PAGE.withShop}:`, fenced(SHOP_EXAMPLE)]
      : [fenced(NEUTRAL_SHOP_TEXT)]),
  ];
  return `${blocks.join('\n\n')}\n`;
}

/** What a page is made from. */
export function schemaOfFile(kind: FileKind): Schema {
  return kind === 'job' ? jobSchema : shopSchema;
}

function sectionBlocks(
  kind: FileKind,
  { noun, about, paths, keys, elsewhere }: KeySection,
  sections: readonly KeySection[],
  examples: Examples,
): readonly string[] {
  const places = paths.filter((path) => path.length > 0);
  return [
    `## ${headingOf(noun)}`,
    about,
    places.length === 0 ? PAGE.atTop : `${PAGE.stands} ${places.map(pathWords).join(', ')}.`,
    ...elsewhere.map(
      (other) =>
        `${PAGE.alsoHere} (${link(headingOf(other.section), anchorOf(headingOf(other.section)))}): ${other.keys
          .map((key) => link(`\`${key}\``, anchorOf(headingOf(other.section, key))))
          .join(', ')}.`,
    ),
    ...keys.flatMap((entry) => keyBlocks(kind, noun, entry, sections, examples)),
  ];
}

function keyBlocks(
  kind: FileKind,
  noun: string,
  { key, field, path, only }: KeyEntry,
  sections: readonly KeySection[],
  examples: Examples,
): readonly string[] {
  const { schema } = field;
  const inner = sections.find(({ paths }) => paths.some((one) => isUnder(one, path)));
  const counts = kind === 'job' ? reachInJob(path) : unusedWords(path);
  const example = examples.get(field);
  const points = [
    ...(inner === undefined || schema.type === 'either' ? [`${PAGE.write}: ${formOf(schema, 'mm')}.`] : []),
    ...(inner === undefined
      ? []
      : [`${PAGE.keysOf}: ${link(headingOf(inner.noun), anchorOf(headingOf(inner.noun)))}.`]),
    ...words(schema),
    ...(only === null ? [] : [`${PAGE.onlyOf} ${only.map(pathWords).join(', ')}.`]),
    ...(field.required ? [PAGE.required] : kind === 'job' ? leftOutOfJob(path) : leftOutOfShop(path, field)),
    ...(counts === null ? [] : [tell(counts, 'mm')]),
  ];
  return [
    `### ${headingOf(noun, key)}`,
    schema.about,
    points.map((point) => `- ${point}`).join('\n'),
    ...(example === undefined ? [] : [fenced(example)]),
  ];
}

/** The words that may be written, each with its meaning, and those of earlier versions. */
function words(schema: Schema): readonly string[] {
  if (schema.type === 'either') return schema.of.flatMap(words);
  if (schema.type !== 'choice') return [];
  const former = Object.entries(schema.formerly ?? {});
  return [
    ...Object.entries(schema.options).map(([word, about]) => `\`${word}\`: ${about}`),
    ...former.map(([old, now]) => `${PAGE.formerly} \`${old}\`: \`${now}\`.`),
  ];
}

/** In a carcass, and for each kind by itself where it depends on the kind. */
function leftOutOfJob([first, ...rest]: Path): readonly string[] {
  if (first !== 'carcasses') return [PAGE.optional];
  const own = rest.slice(1);
  const byKind = KINDS.map((kind) => ({ kind, told: whenLeftOut(own, kind, neutralShop.habits) }));
  const told = byKind.filter((one): one is { kind: CarcassKind; told: Message } => one.told !== null);
  if (told.length === 0) return [PAGE.optional];
  const alike = [...groupBy(told, (one) => identityOf(one.told)).values()];
  return alike.map((some) => {
    const kinds = listed(some.map(({ kind }) => `\`${kind}\``));
    const said = tell(some[0]!.told, 'mm');
    return alike.length === 1 ? said : `${PAGE.ofKind} ${kinds}: ${said}`;
  });
}

function leftOutOfShop(path: Path, { schema, leftOut }: KeyEntry['field']): readonly string[] {
  switch (leftOut.as) {
    case 'nothing':
      return [PAGE.optional];
    case 'own-name':
      return [PAGE.ownName];
    case 'empty':
      return [];
    case 'value':
      return leftOut.value === '' ? [] : [valueWords(schema, leftOut.value)];
    case 'before': {
      const value = path.reduce<unknown>(
        (within, step) => (within as Readonly<Record<string, unknown>>)[camel(String(step))],
        neutralShop,
      );
      return [valueWords(schema, value)];
    }
  }
}

/** A value of the model as a shop file has it. */
function valueWords(schema: Schema, value: unknown): string {
  if (value === null) return tell(leftOutMessages.none(), 'mm');
  if (schema.type === 'length' && typeof value === 'number')
    return tell(leftOutMessages.length({ length: value }), 'mm');
  return tell(leftOutMessages.word({ word: writtenAs(schema, value) }), 'mm');
}

/** As it would be written in a file of millimetres. */
function writtenAs(schema: Schema, value: unknown): string {
  if (schema.type === 'list' && Array.isArray(value))
    return `[${value.map((one: unknown) => writtenAs(schema.item, one)).join(', ')}]`;
  if (schema.type === 'length' && typeof value === 'number') return figure(value, 'mm');
  return typeof value === 'boolean' ? (value ? 'yes' : 'no') : `${value as string | number}`;
}

/** '`carcasses` › NAME › `back`'; places in a list are left out. */
function pathWords(path: Path): string {
  return path
    .filter((step) => typeof step === 'string')
    .map((step) => (step === '*' ? PAGE.aName : `\`${step}\``))
    .join(' › ');
}

/** True where the maps of a path are those of the key. */
function isUnder(maps: Path, key: Path): boolean {
  const rest = maps.slice(key.length);
  return key.every((step, i) => maps[i] === step) && rest.every((step) => step === '*' || step === 0);
}

const link = (words: string, anchor: string): string => `[${sentence(words)}](#${anchor})`;
const fenced = (text: string): string => `\`\`\`yaml\n${text.trimEnd()}\n\`\`\``;
