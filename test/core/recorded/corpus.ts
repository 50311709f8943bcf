import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { Engine, type JobAnalysis, type ShopAnalysis } from '../../../shared-core/engine.js';
import { readingRules } from '../../../shared-core/findings/reading-rules.js';
import { rules } from '../../../shared-core/findings/registry.js';
import { NEUTRAL_SHOP_TEXT } from '../../../shared-core/shop/neutral-text.js';
import { asMessage } from '../../in-words.js';
import { BARE, JOBS, OFFERED, SHOPS, type Text } from '../messages/texts.js';
import { SELDOM } from './texts.js';

const HERE = join(import.meta.dirname, 'jobs');
const FOLDERS = [HERE, join(import.meta.dirname, '../../fixtures'), join(import.meta.dirname, '../../demo')];

function found(name: string): string | null {
  for (const folder of FOLDERS) if (readdirSync(folder).includes(name)) return readFileSync(join(folder, name), 'utf8');
  return null;
}

/** A job as it is opened, with the shop files that stand beside it. */
export function opened(text: string, shops: Readonly<Record<string, string>> = {}): JobAnalysis {
  const engine = new Engine({
    readShop: (_, reference) => {
      const shop = shops[reference] ?? found(reference);
      if (shop === null) return { ok: false, message: asMessage(`There is no file ${reference} beside this job.`) };
      return { ok: true, uri: `file:///${reference}`, text: shop };
    },
  });
  return engine.analyse('file:///job.carcass.yaml', text);
}

/** The shop file of this name. */
export function shopText(name: string): string {
  const text = found(name);
  if (text === null) throw new Error(`There is no shop file ${name}`);
  return text;
}

/** A shop file as it is opened. */
export function openedShop(text: string): ShopAnalysis {
  const engine = new Engine({ readShop: () => ({ ok: false, message: asMessage('There is none.') }) });
  return engine.analyseShop('file:///own.shop.yaml', text);
}

const filesOf = (ending: string): readonly string[] =>
  readdirSync(HERE)
    .filter((name) => name.endsWith(ending))
    .toSorted();
const textOf = (name: string): string => found(name)!;

/** Invented jobs that use every part of the core, by name. */
export const WHOLE_JOBS: readonly (readonly [name: string, text: string])[] = filesOf('.carcass.yaml').map((name) => [
  name.replace('.carcass.yaml', ''),
  textOf(name),
]);

/** Longer ones, of which less is recorded. */
export const LONG_JOBS: readonly (readonly [name: string, text: string])[] = (
  ['canteen', 'office', 'seeds', 'kitchen', 'every-finding'] as const
).map((name) => [name, textOf(`${name}.carcass.yaml`)]);

export const SHOP_FILES: readonly (readonly [name: string, text: string])[] = [
  ...filesOf('.shop.yaml').map((name) => [name.replace('.shop.yaml', ''), textOf(name)] as const),
  ['built-in', NEUTRAL_SHOP_TEXT],
  ['yard', textOf('yard.shop.yaml')],
];

const LONGEST = 5_000;
const examples = [...rules, ...readingRules].map(({ about }): Text => {
  const whole = /^(carcasses|shop|unit|title):/.test(about.example);
  const { shop } = about;
  const head = shop === undefined ? '' : 'shop: own.shop.yaml\n';
  const text = whole ? about.example : `${head}carcasses:\n  sink:\n    ${about.example.replaceAll('\n', '\n    ')}\n`;
  return shop === undefined || shop.endsWith('.yaml') ? text : [text, shop];
});

/** Short texts with a fault each. */
export const FAULTY: readonly Text[] = [...examples, ...JOBS, ...OFFERED, BARE, ...SELDOM].filter(
  (text) => (typeof text === 'string' ? text : text[0]).length < LONGEST,
);
export const FAULTY_SHOPS: readonly string[] = SHOPS;
