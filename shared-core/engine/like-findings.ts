import type { CarcassPart, JobParts } from '../document/cut.js';
import type { Finding, Repair } from '../document/finding.js';
import { readCarcassTree } from '../document/parts.js';
import type { Located } from '../document/place.js';
import { LONGEST_LINEAGE } from '../job/lineage.js';
import type { Lines } from './lined.js';
import { nearestName } from '../schema/nearest.js';
import { errorAt, preferred } from '../schema/tell.js';
import { listed, quoted } from '../words/english.js';
import { messages } from '../words/message.js';
import { withoutOwnName } from './stand-in.js';
import type { CarcassAnalysis, FileFinding } from './carcass-analysis.js';

/** So many names a message can bear. */
const MOST_NAMES = 6;

export const say = messages('like', {
  unknown: ({ name, carcasses }: { readonly name: string; readonly carcasses: readonly string[] }) =>
    carcasses.length === 0
      ? `No other carcass of this file has a name, so none is named ${quoted(name)}. Write the kind and the width of this one instead.`
      : `No carcass of this file is named ${quoted(name)}. Use another one, such as ${listed(carcasses, 'or')}.`,
  misspelt: ({ name, near }: { readonly name: string; readonly near: string }) =>
    `No carcass of this file is named ${quoted(name)}. Use ${quoted(near)}.`,
  use: ({ name }: { readonly name: string }) => `Use ${quoted(name)}`,
  itself: () =>
    'The carcass is like itself, so nothing says what it is. Name another one, or write its kind and width.',
  circular: ({ names }: { readonly names: readonly string[] }) =>
    `${quoted(names[0]!)} is like ${[...names.slice(1), names[0]!].map(quoted).join(', which is like ')} again, so nothing says what they are. Take \`like\` out of one of them, and write its kind and width.`,
  standAlone: () => 'Take `like` out: this carcass has a kind and a width of its own',
  far: ({ most }: { readonly most: number }) =>
    `More than ${most} carcasses are like one another in a row. Name one that comes earlier in the row.`,
  unread: ({ name }: { readonly name: string }) =>
    `${quoted(name)}, which this carcass is like, has faults of its own. Correct them first.`,
  unreadHere: ({ name }: { readonly name: string }) => `${quoted(name)} is here.`,
});

/** What is wrong with what carcasses say they are like, by their names alone. */
export function likeFindings(
  parts: JobParts,
  lines: Lines | null,
  carcasses: readonly CarcassAnalysis[],
): readonly FileFinding[] {
  if (lines === null) return [];
  return lines.links.flatMap((link, carcass): readonly FileFinding[] => {
    if (link.like === null) return [];
    const finding = findingOf(carcass, knownAt(link.like, carcasses[carcass]!), parts, lines);
    return finding === null ? [] : [{ finding, carcass }];
  });
}

/** What was read from the text of a carcass, where what is known of the carcass has its places. */
const knownAt = (like: Located<string>, { standIn }: CarcassAnalysis): Located<string> => {
  return { ...like, place: withoutOwnName(like.place, standIn) };
};

function findingOf(
  carcass: number,
  like: Located<string>,
  parts: JobParts,
  { links, lineages }: Lines,
): Finding | null {
  const { place, value } = like;
  const { fault } = lineages[carcass]!;
  switch (fault?.kind) {
    case 'unknown': {
      const own = links[carcass]!.name;
      const others = [...new Set(links.map(({ name }) => name))].filter((name) => name !== '' && name !== own);
      const near = nearestName(value, others);
      if (near === null)
        return errorAt('carcass-unknown', place, say.unknown({ name: value, carcasses: others.slice(0, MOST_NAMES) }));
      const repairs = [preferred(say.use({ name: near }), { kind: 'set', part: 'self', path: ['like'], text: near })];
      return errorAt('carcass-unknown', place, say.misspelt({ name: value, near }), { repairs });
    }
    case 'circular': {
      const { names } = fault;
      const message = names.length === 1 ? say.itself() : say.circular({ names });
      return errorAt('like-circular', place, message, { repairs: standingAlone(parts.carcasses[carcass]!) });
    }
    case 'far':
      return errorAt('like-circular', place, say.far({ most: LONGEST_LINEAGE }));
    default:
      return null;
  }
}

/** A carcass that says all that it must may be like none. */
function standingAlone(part: CarcassPart): readonly Repair[] {
  const { entry } = readCarcassTree(part);
  const keys = entry?.value?.kind === 'map' ? entry.value.entries.map(({ key }) => key) : [];
  if (!keys.includes('kind') || !keys.includes('width') || keys.includes('mirrored')) return [];
  return [{ title: say.standAlone(), changes: [{ kind: 'remove', part: 'self', path: ['like'] }], preferred: false }];
}

/** Of carcasses that nothing of their own keeps from being made: the faults of those that they are like are told there. */
export function unreadBases(lines: Lines | null, carcasses: readonly CarcassAnalysis[]): readonly FileFinding[] {
  return (lines?.links ?? []).flatMap(({ like }, carcass): readonly FileFinding[] => {
    const own = carcasses[carcass]!;
    if (like === null || own.spec !== null || hasError(own)) return [];
    const { bases, fault } = lines!.lineages[carcass]!;
    const broken = bases.find((one) => carcasses[one]!.spec === null && hasError(carcasses[one]!));
    const at = broken ?? (fault?.kind === 'above' ? bases[0] : undefined);
    if (at === undefined) return [];
    const { name, nameAt } = carcasses[at]!;
    const related = nameAt === null ? [] : [{ place: nameAt.place, message: say.unreadHere({ name }), carcass: at }];
    const { place } = knownAt(like, own);
    return [{ finding: errorAt('like-unread', place, say.unread({ name }), { related }), carcass }];
  });
}

function hasError({ known }: CarcassAnalysis): boolean {
  return known.some(({ severity, place }) => severity === 'error' && place.part === 'self');
}
