import { writtenSize } from '../carcass/outer-size.js';
import type { CarcassSpec } from '../carcass/spec.js';
import type { JobAnalysis } from '../engine.js';
import { kindOf } from '../fittings/kinds.js';
import type { Reader } from '../length/reader.js';
import { showSizes } from '../length/show.js';
import type { NameOf, Schema } from '../schema/schema.js';
import { KIND_WORDS } from '../shop/kind-words.js';
import type { Board, Machine, Shop, Slide } from '../shop/model.js';
import { tell, type Message } from '../words/message.js';
import { asItIs, type Told } from '../words/told.js';
import { form, line } from './messages.js';

// The things of a shop in one line each, for hovers and completion. Plain text, figures in the file's reader.

/** Names of one sort that the shop knows, in its order, each with its line. */
export function namesOf(
  shop: Shop,
  of: NameOf,
  reader: Reader,
): readonly { readonly name: string; readonly line: Told }[] {
  const { unread } = shop;
  const all = <T extends { readonly name: string }>(
    things: ReadonlyMap<string, T>,
    told: (one: T) => Told,
    unreadable: Iterable<string> | undefined,
  ): readonly { readonly name: string; readonly line: Told }[] => [
    ...[...things.values()].map((one) => ({ name: one.name, line: told(one) })),
    ...[...(unreadable ?? [])].map((name) => ({ name, line: tell(line.faulty({ of }), reader) })),
  ];
  switch (of) {
    case 'board':
      return all(shop.boards, (one) => boardLine(one, reader), unread?.boards);
    case 'band':
      return all(shop.bands, (one) => tell(line.band(one), reader), unread?.bands);
    case 'fitting':
      return all(shop.fittings, (one) => tell(kindOf(one).described(one), reader), unread?.fittings.keys());
    case 'hinge':
      return all(shop.hinges, (one) => tell(line.hinge(one), reader), unread?.hinges);
    case 'slide':
      return all(shop.slides, (one) => slideLine(one, reader), unread?.slides);
    case 'pull':
      return all(shop.pulls, (one) => tell(line.pull(one), reader), unread?.pulls);
    case 'bracket':
      return all(shop.brackets, (one) => tell(line.bracket(one), reader), unread?.brackets);
    case 'wardrobe-rail':
      return all(shop.wardrobeRails, (one) => tell(line.wardrobeRail(one), reader), unread?.wardrobeRails);
    case 'foot':
      return all(shop.feet, (one) => tell(line.foot(one), reader), unread?.feet);
    case 'angle':
      return all(shop.angles, (one) => tell(line.angle(one), reader), unread?.angles);
    case 'machine':
      return all(shop.machines, (one) => machineLine(one, reader), unread?.machines.keys());
    case 'stop':
    case 'shop-file':
    case 'panel':
    case 'carcass':
      return [];
  }
}

/** The carcasses of a job that one of them can be like, each with its line: all but itself and those that are like it. */
export function carcassesFor(
  analysis: JobAnalysis,
  own: number | null,
): readonly { readonly name: string; readonly line: Told }[] {
  const seen = new Set<string>();
  return analysis.carcasses.flatMap(({ name, spec }, i) => {
    if (name === '' || i === own || seen.has(name)) return [];
    seen.add(name);
    if (own !== null && analysis.lineageOf(i).bases.includes(own)) return [];
    return [{ name, line: carcassLine(spec, analysis.reader) }];
  });
}

function carcassLine(spec: CarcassSpec | null, reader: Reader): Told {
  if (spec === null) return tell(line.carcassUnread(), reader);
  const size = asItIs(showSizes(writtenSize(spec), reader));
  return tell(line.carcass({ kind: spec.kind.value, size }), reader);
}

function slideLine({ lengths, rating }: Slide, reader: Reader): Told {
  return tell(line.slide({ lengths: lengths.map(({ length }) => length), rating }), reader);
}

function boardLine({ thickness, nominal, sheetLength, sheetWidth, grain }: Board, reader: Reader): Told {
  const sheet = sheetLength === null || sheetWidth === null ? null : { length: sheetLength, width: sheetWidth };
  return tell(line.board({ thickness, nominal, sheet, hasGrain: grain === 'length' }), reader);
}

function machineLine(machine: Machine, reader: Reader): Told {
  const kind = KIND_WORDS[machine.kind];
  switch (machine.kind) {
    case 'vertical':
    case 'horizontal':
      return tell(line.oneHead({ ...machine, kind }), reader);
    case 'line':
      return tell(line.manyHeads({ ...machine, kind }), reader);
    case 'cup':
      return tell(line.cup({ kind, distance: machine.distance }), reader);
    case 'saw':
      return tell(line.saw({ kind, kerf: machine.kerf }), reader);
    case 'bander':
    case 'clamp':
      return kind;
  }
}

/** What may be written, in a few words: for hovers of keys. */
export function formOf(schema: Schema, reader: Reader): Told {
  return tell(formTold(schema), reader);
}

function formTold(schema: Schema): Message {
  switch (schema.type) {
    case 'length':
    case 'span':
    case 'count':
    case 'number':
      return form[schema.type]({ min: schema.min, max: schema.max });
    case 'flag':
      return form.flag();
    case 'text':
      return form.text();
    case 'name':
      return schema.of === 'shop-file' ? form.shopFile() : form.name({ of: schema.of });
    case 'choice':
      return form.choice({ options: Object.keys(schema.options) });
    case 'list':
      return form.list({ item: formTold(schema.item), most: schema.most });
    case 'named':
      return form.named({ noun: schema.noun });
    case 'record':
      return form.record({ keys: Object.keys(schema.fields) });
    case 'either':
      return form.either({ forms: schema.of.map((one) => formTold(one)) });
  }
}
