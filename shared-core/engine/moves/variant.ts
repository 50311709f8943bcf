import type { Change } from '../../document/finding.js';
import type { TextEdit } from '../../document/pieces.js';
import { remove, setInstead, setWord } from '../../findings/changes.js';
import { inherited, isOfItsOwn, over, type CarcassSaid } from '../../job/like.js';
import type { JobAnalysis } from '../analysis.js';
import { cursorAt } from '../cursor.js';
import type { Refactor } from '../refactor.js';
import { editsInCarcass } from '../repairs.js';
import { say } from './messages.js';
import { bare, defaultsOf, hasUnlikeSides, ownSaid, saidByBases, type OwnSaid } from './said.js';

/** So many carcasses are looked at, those that have the most lines in common with it. */
const MOST_LOOKED_AT = 6;

/** The keys of a carcass that another one says as well, and what is left when that one says them. */
interface Repeat {
  readonly base: number;
  readonly hand: 'same' | 'other';
  readonly keys: readonly string[];
}

/** A carcass that says what another one says, written as a variant of that one: what it has in common goes. */
export function asVariant(analysis: JobAnalysis, offset: number): readonly Refactor[] {
  const { part, carcass, path } = cursorAt(analysis, offset);
  if (part !== 'self' || carcass === null || path.length > 0 || analysis.parts.whole !== null) return [];
  const said = ownSaid(analysis, carcass);
  if (said === null || said.own.like !== undefined) return [];
  const given = defaultsOf(analysis);
  const best = likest(analysis, carcass)
    .flatMap((base) => repeatsOf(analysis, said, base, given))
    .reduce<Repeat | null>((most, one) => (most === null || one.keys.length > most.keys.length ? one : most), null);
  if (best === null) return [];
  const keys = best.keys.filter((key) => key === 'kind' || canGo(analysis, carcass, key));
  const edits = keys.length < 2 ? [] : variantEdits(analysis, carcass, { ...best, keys });
  if (edits.length === 0) return [];
  return [{ title: say.variant({ name: analysis.carcasses[best.base]!.name, hand: best.hand }), edits }];
}

/** The carcasses of one kind with it that share the most lines with it and are not like it; the nearest above it first. */
function likest(analysis: JobAnalysis, own: number): readonly number[] {
  const { carcasses, parts } = analysis;
  const linesOf = (index: number): readonly string[] => parts.carcasses[index]!.text.split('\n').slice(1);
  const lines = new Set(linesOf(own).map((line) => line.trim()));
  const names = new Set<string>();
  const shared = carcasses.flatMap(({ spec, name }, index) => {
    const isFirst = !names.has(name);
    names.add(name);
    const kind = carcasses[own]!.spec?.kind.value;
    if (!isFirst || index === own || kind === undefined || spec?.kind.value !== kind) return [];
    if (analysis.lineageOf(index).bases.includes(own)) return [];
    return [{ index, common: linesOf(index).filter((line) => lines.has(line.trim())).length }];
  });
  const away = (index: number): number => (index < own ? own - index : carcasses.length + index - own);
  return shared
    .toSorted((a, b) => b.common - a.common || away(a.index) - away(b.index))
    .slice(0, MOST_LOOKED_AT)
    .map(({ index }) => index);
}

function repeatsOf(
  analysis: JobAnalysis,
  { own, entry }: OwnSaid,
  base: number,
  given: CarcassSaid,
): readonly Repeat[] {
  const bases = [base, ...analysis.lineageOf(base).bases];
  const yes = { value: true, place: entry.keyPlace, path: ['mirrored'], written: true };
  const whole = over(own, given);
  const before = bare(inherited(whole));
  return (['same', 'other'] as const).flatMap((hand): readonly Repeat[] => {
    const taken = saidByBases(analysis, bases, hand === 'other' ? { mirrored: yes } : {}, given);
    if (taken === null || (taken.leading === 'right' && hasUnlikeSides(whole))) return [];
    const shared = Object.keys(own).filter((key) => !isOfItsOwn(key));
    const keys = shared.filter((key) => bare(valueOf(own, key)) === bare(valueOf(taken.said, key)));
    if (!keys.includes('kind') || keys.length < 2 || keys.length * 2 <= shared.length) return [];
    const left = Object.fromEntries(Object.entries(own).filter(([key]) => !keys.includes(key)));
    const after = bare(inherited(over(over(left, taken.said), given)));
    return after === before ? [{ base, hand, keys }] : [];
  });
}

const valueOf = (said: CarcassSaid, key: string): unknown => (said as Readonly<Record<string, unknown>>)[key];

/** Whether a key can be taken out without a comment going with it. */
function canGo(analysis: JobAnalysis, carcass: number, key: string): boolean {
  const edits = editsInCarcass(analysis, carcass, [remove([key])]);
  return edits.length > 0 && !edits.some(({ start, end }) => analysis.text.slice(start, end).includes('#'));
}

/** `like` comes in the place of `kind`, `mirrored` in that of `width` where that goes, so that they stand where one looks first. */
function variantEdits(analysis: JobAnalysis, carcass: number, { base, hand, keys }: Repeat): readonly TextEdit[] {
  const name = analysis.carcasses[base]!.name;
  const isWidthGone = hand === 'other' && keys.includes('width');
  const mirrored: readonly Change[] = isWidthGone
    ? setInstead('width', 'mirrored', 'yes')
    : hand === 'other'
      ? [setWord(['mirrored'], 'yes')]
      : [];
  const gone = keys.filter((key) => key !== 'kind' && !(isWidthGone && key === 'width'));
  return editsInCarcass(analysis, carcass, [
    ...setInstead('kind', 'like', name),
    ...mirrored,
    ...gone.map((key) => remove([key])),
  ]);
}
