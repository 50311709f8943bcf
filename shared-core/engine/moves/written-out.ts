import type { Change } from '../../document/finding.js';
import { remove, setInstead, setLength } from '../../findings/changes.js';
import { inchesOf } from '../../job/notation.js';
import { inherited, over, type CarcassSaid } from '../../job/like.js';
import type { Notation } from '../../length/write.js';
import type { JobAnalysis } from '../analysis.js';
import { cursorAt } from '../cursor.js';
import type { Refactor } from '../refactor.js';
import { editsInCarcass } from '../repairs.js';
import { changesTo } from './changed.js';
import { say } from './messages.js';
import { defaultsOf, hasUnlikeSides, ownSaid, saidByBases, sidesChosen } from './said.js';

/** A carcass that is like another one, with all that comes from there written in its own text. */
export function writtenOut(analysis: JobAnalysis, offset: number): readonly Refactor[] {
  const { part, carcass, path } = cursorAt(analysis, offset);
  const isAtName = path.length === 0 || path[0] === 'like' || path[0] === 'mirrored';
  if (part !== 'self' || carcass === null || !isAtName || analysis.parts.whole !== null) return [];
  const said = ownSaid(analysis, carcass);
  const { bases, fault } = analysis.lineageOf(carcass);
  if (said?.own.like === undefined || fault !== null) return [];
  const { own, entry } = said;
  const given = defaultsOf(analysis);
  const taken = saidByBases(analysis, bases, pick(own, 'mirrored'), given);
  if (taken === null) return [];
  const whole = over(own, taken.said);
  const how: Notation = { unit: analysis.unit, inches: inchesOf(entry.value) };
  const more = taken.leading === 'left' ? [] : ledByLeft(analysis, carcass, over(whole, given), how);
  if (more === null) return [];
  const { kind, ...rest } = inherited(whole);
  const changes = changesTo(rest, own, over(own, given), how);
  const edits = editsInCarcass(analysis, carcass, [
    ...inTheirPlaces(own, kind!.value, changes),
    ...(rest.height === undefined ? more : []),
  ]);
  return edits.length === 0 ? [] : [{ title: say.writtenOut({ name: said.own.like.value }), edits }];
}

/**
 * What must be said where the left side leads again: the height that followed from the right one. null where rows of dividers and
 * drawers follow from it too, which cannot be said.
 */
function ledByLeft(
  analysis: JobAnalysis,
  carcass: number,
  whole: CarcassSaid,
  how: Notation,
): readonly Change[] | null {
  if (!hasUnlikeSides(whole)) return [];
  const { spec } = analysis.carcasses[carcass]!;
  if (spec === null || sidesChosen(whole).some(({ value }) => value.value['row-offset'] !== undefined)) return null;
  // Half of the leading side is the usual distance of the first hole.
  const offset = whole['row-offset'] === undefined ? [setLength(how, ['row-offset'], spec.rowOffset.value)] : [];
  return [setLength(how, ['height'], spec.height.value), ...offset];
}

/** `kind` comes in the place of `like`, and `width` in that of `mirrored`. */
function inTheirPlaces(own: CarcassSaid, kind: string, changes: readonly Change[]): readonly Change[] {
  const width = changes.find(({ path }) => path.join() === 'width');
  const like = own.kind === undefined ? setInstead('like', 'kind', kind) : [remove(['like'])];
  if (own.mirrored === undefined) return [...like, ...changes];
  if (width?.kind !== 'set') return [...like, remove(['mirrored']), ...changes];
  return [...like, ...setInstead('mirrored', 'width', width.text), ...changes.filter((one) => one !== width)];
}

function pick(said: CarcassSaid, key: 'mirrored'): Pick<CarcassSaid, 'mirrored'> {
  const value = said[key];
  return value === undefined ? {} : { [key]: value };
}
