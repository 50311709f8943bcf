import type { Finding } from '../document/finding.js';
import type { MapEntry } from '../document/tree.js';
import type { Unit } from '../length/units.js';
import { quoted } from '../words/english.js';
import { messages, type Words } from '../words/message.js';
import { say } from './messages.js';
import { preferred } from './tell.js';

/** Words for the two units of files that are understood and yet not written so. */
const MEANT: Readonly<Record<string, Unit>> = {
  millimetre: 'mm',
  millimetres: 'mm',
  millimeter: 'mm',
  millimeters: 'mm',
  inch: 'in',
  inches: 'in',
  '"': 'in',
};
/** How many millimetres one of another unit is. */
const METRIC: Readonly<Record<string, number>> = { cm: 10, dm: 100, m: 1000 };

const UNTIL = 'No size is checked until then.';

export const told = messages('file-unit', {
  missing: ({ reading }: { readonly reading: Words }, show) => `${show.tell(reading)} ${UNTIL}`,
  unknown: ({ word }: { readonly word: string }) =>
    `${quoted(word)} is not a unit of these files. Use mm or in. ${UNTIL}`,
  metric: ({ word, factor }: { readonly word: string; readonly factor: number }) =>
    `${quoted(word)} is not a unit of these files. Write \`unit: mm\` and multiply every bare number by ${factor}. ${UNTIL}`,
});

/** Where a file says its unit; undefined where it does not. */
export function unitEntry(entries: readonly MapEntry[]): MapEntry | undefined {
  return entries.find(({ key }) => key === 'unit');
}

/** The unit is looked up before anything is read: it decides what every bare number means. */
export function unitOf(entry: MapEntry | undefined): Unit {
  return word(entry) === 'in' ? 'in' : 'mm';
}

/** True where the unit is neither mm nor in, or is yet to be written: then nobody knows what a bare number means. */
export function isUnknownUnit(entry: MapEntry | undefined): boolean {
  const said = word(entry);
  return entry !== undefined && said !== 'mm' && said !== 'in';
}

/** A reading's finding, with what to do where it is about the unit of the file. */
export function sayUnit(finding: Finding, entry: MapEntry | undefined): Finding {
  if (entry === undefined || !isUnknownUnit(entry) || finding.rule !== 'value-wrong') return finding;
  const said = word(entry);
  const { value } = entry;
  const { part, start } = value?.place ?? entry.keyPlace;
  const isOfUnit = [start, entry.keyPlace.start].includes(finding.place.start) && finding.place.part === part;
  if (!isOfUnit) return finding;
  if (value === null || said === null || said === '')
    return { ...finding, message: told.missing({ reading: finding.message }) };
  const factor = Object.hasOwn(METRIC, said) ? METRIC[said]! : null;
  if (factor !== null) {
    // The unit alone would change every size of the file.
    return { ...finding, message: told.metric({ word: said, factor }), repairs: [] };
  }
  const unit = Object.hasOwn(MEANT, said.toLowerCase()) ? MEANT[said.toLowerCase()]! : null;
  const repairs =
    unit === null
      ? finding.repairs
      : [preferred(say.write({ text: unit }), { kind: 'set', part: value.place.part, path: ['unit'], text: unit })];
  return { ...finding, message: told.unknown({ word: said }), repairs };
}

function word(entry: MapEntry | undefined): string | null {
  return entry?.value?.kind === 'scalar' ? entry.value.text.trim() : null;
}
