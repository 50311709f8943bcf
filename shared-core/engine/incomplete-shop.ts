import type { Derived } from '../derived/derived.js';
import type { Located } from '../document/place.js';
import type { RelatedPlace, Repair } from '../findings/finding.js';
import { kindOf } from '../fittings/kinds.js';
import { withBuiltInList } from '../shop/built-in-list.js';
import type { Shop } from '../shop/model.js';
import type { ReadShop } from '../shop/read.js';
import { SECTION_OF } from '../shop/sections.js';
import { sectionsOf, type StockList } from '../shop/stock.js';
import type { CarcassAnalysis, FileFinding } from './carcass-analysis.js';
import { jobMessages } from './messages.js';

const MOST_RELATED = 5;
/** Of more carcasses than that one less is named, and the others are counted. */
const MOST_NAMED = 3;

/** A shop file that a job names, as it was read. */
export interface NamedShop {
  readonly reference: Located<string>;
  readonly text: string;
  readonly read: ReadShop;
}

type Names = ReadonlySet<string>;
type Used = Readonly<Record<StockList, Names>>;
type Made = Pick<CarcassAnalysis, 'carcass' | 'boring' | 'operations'>;

/** What of the built-in shop the job uses because its shop file leaves the whole list out: once for each list. */
export function incompleteShop(
  named: NamedShop,
  carcasses: readonly CarcassAnalysis[],
  derived: Derived,
): readonly FileFinding[] {
  const { leftOut, shop } = named.read;
  if (leftOut.length === 0) return [];
  const made = carcasses.map((carcass) => derived.get(usedBy, carcass));
  return leftOut.flatMap((list): readonly FileFinding[] => {
    const users = made.flatMap((used, index): readonly User[] => {
      const names = used?.[list] ?? new Set();
      const { nameAt } = carcasses[index]!;
      return names.size === 0 || nameAt === null ? [] : [{ index, nameAt, names: inOrder(shop, list, names) }];
    });
    return users.length === 0 ? [] : [{ finding: findingOf(named, list, users), carcass: null }];
  });
}

/** A carcass that uses something of a list. */
interface User {
  readonly index: number;
  readonly nameAt: Located<string>;
  readonly names: readonly string[];
}

function findingOf(
  { reference, text, read }: NamedShop,
  list: StockList,
  users: readonly User[],
): FileFinding['finding'] {
  const { shop } = read;
  const names = inOrder(shop, list, new Set(users.flatMap((user) => user.names)));
  const sections = [...new Set(names.map((name) => sectionOf(shop, list, name)))];
  const shown = users.length > MOST_NAMED ? MOST_NAMED - 1 : users.length;
  const carcasses = users.slice(0, shown).map(({ nameAt }) => nameAt.value);
  return {
    rule: 'shop-incomplete',
    severity: 'warning',
    place: reference.place,
    message: jobMessages.incompleteShop({ list, names, sections, carcasses, more: users.length - shown }),
    related: users.slice(0, MOST_RELATED).map((user): RelatedPlace => ({
      place: user.nameAt.place,
      message: jobMessages.usedHere({ names: user.names }),
      carcass: user.index,
    })),
    // To see whether the shop file takes the list, it is read once more.
    get repairs(): readonly Repair[] {
      const rewrite = withBuiltInList(text, read, list);
      if (rewrite === null) return [];
      return [{ title: jobMessages.writeBuiltIn({ list }), changes: [], rewrites: [rewrite], preferred: false }];
    },
  };
}

const inOrder = (shop: Shop, list: StockList, names: Names): readonly string[] =>
  [...shop[list].keys()].filter((name) => names.has(name));

/** The key of a shop file that a thing of the shop stands under. */
function sectionOf({ machines, fittings }: Shop, list: StockList, name: string): string {
  if (list === 'machines') return SECTION_OF[machines.get(name)!.kind];
  if (list === 'fittings') return kindOf(fittings.get(name)!).section;
  return sectionsOf(list)[0]!;
}

/** The names of what a carcass uses, list by list; null for one that nothing is made of. */
function usedBy({ carcass, boring, operations }: Made): Used | null {
  if (carcass === null || boring === null) return null;
  const { panels, joints, drawers } = carcass;
  const bored = [
    ...(operations?.operations.map(({ machine }) => machine.name) ?? []),
    ...(operations?.unreachable.flatMap(({ machine }) => machine ?? []) ?? []),
  ];
  return {
    boards: new Set(panels.map(({ board }) => board.name)),
    bands: new Set(panels.flatMap(({ bands }) => Object.values(bands).flatMap((band) => band?.name ?? []))),
    fittings: new Set(joints.flatMap(({ fitting, faceFitting }) => [fitting.name, faceFitting.name])),
    hinges: new Set(boring.hung.map(({ hinge }) => hinge.name)),
    slides: new Set(drawers.map(({ slide }) => slide.name)),
    pulls: new Set(boring.pulls.map(({ pull }) => pull.name)),
    brackets: new Set(boring.brackets.map(({ bracket }) => bracket.name)),
    wardrobeRails: new Set(boring.wardrobeRails.map(({ rail }) => rail.name)),
    feet: new Set(boring.feet.map(({ foot }) => foot.name)),
    angles: new Set(boring.angles.map(({ angle }) => angle.name)),
    machines: new Set(bored),
  };
}
