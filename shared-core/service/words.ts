import { kindOf } from '../fittings/kinds.js';
import type { Micrometres, Unit } from '../length/units.js';
import { nominal, showLength } from '../length/show.js';
import type { NameOf, Schema } from '../schema/schema.js';
import type { Band, Board, Machine, Shop } from '../shop/model.js';

// The things of a shop in one line each, for hovers and completion. Plain text, figures in the file's unit.

/** Names of one sort that the shop knows, in its order, each with its line. */
export function namesOf(
  shop: Shop,
  of: NameOf,
  unit: Unit,
): readonly { readonly name: string; readonly line: string }[] {
  const { boards, bands, fittings, machines, unread } = shop;
  const faulty = (names: Iterable<string> | undefined): readonly { readonly name: string; readonly line: string }[] =>
    [...(names ?? [])].map((name) => ({ name, line: `${of} with a fault in the shop file` }));
  switch (of) {
    case 'board':
      return [
        ...[...boards.values()].map((board) => ({ name: board.name, line: boardLine(board, unit) })),
        ...faulty(unread?.boards),
      ];
    case 'band':
      return [
        ...[...bands.values()].map((band) => ({ name: band.name, line: bandLine(band, unit) })),
        ...faulty(unread?.bands),
      ];
    case 'fitting':
      return [
        ...[...fittings.values()].map((fitting) => ({
          name: fitting.name,
          line: kindOf(fitting).described(fitting, (length) => nominal(length, unit)),
        })),
        ...faulty(unread?.fittings.keys()),
      ];
    case 'machine':
      return [
        ...[...machines.values()].map((machine) => ({ name: machine.name, line: machineLine(machine, unit) })),
        ...faulty(unread?.machines.keys()),
      ];
    case 'stop':
    case 'shop-file':
    case 'panel':
      return [];
  }
}

function boardLine(board: Board, unit: Unit): string {
  const show = (length: Micrometres): string => showLength(length, unit);
  const measured = board.thickness === board.nominal ? '' : ` measured, ${show(board.nominal)} nominal`;
  const sheet =
    board.sheetLength === null || board.sheetWidth === null
      ? ''
      : `, sheet ${show(board.sheetLength)} × ${show(board.sheetWidth)}`;
  return `board, ${show(board.thickness)} thick${measured}${sheet}${board.grain === 'length' ? ', grain along' : ''}`;
}

function bandLine(band: Band, unit: Unit): string {
  const height = band.height === null ? '' : `, ${showLength(band.height, unit)} wide as bought`;
  return `band, ${showLength(band.thickness, unit)} thick${height}`;
}

function machineLine(machine: Machine, unit: Unit): string {
  const show = (length: Micrometres): string => showLength(length, unit);
  switch (machine.kind) {
    case 'vertical':
      return `vertical head, ${machine.spindles} spindles at ${nominal(machine.pitch, unit)}`;
    case 'horizontal':
      return `horizontal head, ${machine.spindles} spindles at ${nominal(machine.pitch, unit)}`;
    case 'line':
      return `line drill, ${machine.heads} heads of ${machine.spindles} spindles at ${nominal(machine.pitch, unit)}`;
    case 'cup':
      return `cup borer, ${show(machine.distance.min)} to ${show(machine.distance.max)} from the edge`;
    case 'saw':
      return `panel saw, kerf ${show(machine.kerf)}`;
    case 'bander':
      return 'edge bander';
    case 'clamp':
      return 'case clamp';
  }
}

/** What may be written, in a few words: for hovers of keys. */
export function formOf(schema: Schema, unit: Unit): string {
  const show = (length: Micrometres): string => showLength(length, unit);
  switch (schema.type) {
    case 'length':
      return `a length from ${show(schema.min)} to ${show(schema.max)}`;
    case 'span':
      return `two lengths, such as ${unit === 'mm' ? '20 to 80' : '3/4 to 3 1/8'}`;
    case 'count':
      return `a whole number from ${schema.min} to ${schema.max}`;
    case 'number':
      return `a number from ${schema.min} to ${schema.max}`;
    case 'flag':
      return 'yes or no';
    case 'text':
      return 'a text';
    case 'name':
      return schema.of === 'shop-file' ? 'the name of a shop file' : `the name of a ${schema.of}`;
    case 'choice':
      return `one of ${Object.keys(schema.options).join(', ')}`;
    case 'list':
      return `a list: each ${formOf(schema.item, unit)}`;
    case 'named':
      return `names, each with the keys of a ${schema.noun}`;
    case 'record':
      return `a map with the keys ${Object.keys(schema.fields).join(', ')}`;
    case 'either':
      return schema.of.map((one) => formOf(one, unit)).join('; or ');
  }
}
