import type { Finding, Repair } from '../document/finding.js';
import { CARCASSES_KEY } from '../document/outline.js';
import type { Place } from '../document/place.js';
import type { Unit } from '../length/units.js';
import { filledIn } from '../schema/skeleton.js';
import { messages } from '../words/message.js';
import { HOW_TO_WRITE_CARCASSES } from './messages.js';
import { carcassSkeletons, newJob } from './skeletons.js';

export const say = messages('nothing-yet', {
  nothing: () => `Nothing is written here yet. ${HOW_TO_WRITE_CARCASSES} A quick fix writes a job to begin with.`,
  noCarcasses: () => `The job has no carcasses yet. ${HOW_TO_WRITE_CARCASSES}`,
  beginMm: () => 'Begin with a job in millimetres',
  beginIn: () => 'Begin with a job in inches',
  beginCarcass: () => 'Begin with a base carcass',
});

/** Greets a file in which nothing is written but remarks. `text` is all of it. */
export function emptyJob(text: string, place: Place): Finding {
  const begin = (unit: Unit): Repair => ({
    title: unit === 'mm' ? say.beginMm() : say.beginIn(),
    changes: [],
    rewrites: [appended(text, filledIn(newJob(unit).text))],
    preferred: false,
  });
  return nothingYet(place, say.nothing(), [begin('mm'), begin('in')]);
}

/**
 * Tells a job of which everything is written but the carcasses. `text` is all of it; null where something stands
 * below that no carcass can be written under.
 */
export function withoutCarcasses(text: string | null, unit: Unit, place: Place, key: Place | null): Finding {
  const carcass = filledIn(carcassSkeletons(unit, new Set())[0]!.text).replaceAll(/^/gm, '  ');
  // Below the key the carcass can be written only where nothing else follows.
  const room =
    text !== null && (key === null || new RegExp(`^${CARCASSES_KEY}:[ \\t]*(?:#.*)?\\s*$`).test(text.slice(key.start)));
  const lines = key === null ? `${CARCASSES_KEY}:\n${carcass}\n` : `${carcass}\n`;
  const repairs = room
    ? [{ title: say.beginCarcass(), changes: [], rewrites: [appended(text, lines)], preferred: false }]
    : [];
  return nothingYet(key ?? place, say.noCarcasses(), repairs);
}

function nothingYet(place: Place, message: Finding['message'], repairs: readonly Repair[]): Finding {
  return { rule: 'nothing-yet', severity: 'info', message, place, related: [], repairs };
}

/** Lines written at the end of a text, in its own line ends. */
function appended(text: string, lines: string): NonNullable<Repair['rewrites']>[number] {
  const eol = text.includes('\r\n') ? '\r\n' : '\n';
  const end = text.length;
  const gap = /(?:^\uFEFF?|\n)$/.test(text) ? '' : eol;
  return { part: 'head', start: end, end, text: gap + lines.replaceAll('\n', eol) };
}
