import type { Micrometres } from '../../length/units.js';
import { kilograms, say as sayOfLoads } from '../../loads/messages.js';
import { isLoaded, sagOf, sagsOf, type Sag } from '../../loads/shelf.js';
import { listed, quoted } from '../../words/english.js';
import { messages, type Message } from '../../words/message.js';
import { setLength, setWord } from '../changes.js';
import type { Repair } from '../finding.js';
import type { CarcassContext, CarcassRule, Found } from '../rule.js';

/** A strip as high as this stiffens most shelves and is still low enough to look through under (common practice, no source). */
const LIPPING: Micrometres = 40_000;

interface Sags {
  readonly shelves: readonly string[];
  /** The one that the figures are of. */
  readonly worst: string;
  readonly load: { readonly spread: number; readonly middle: number };
  readonly creep: number;
  readonly sag: Micrometres;
  readonly limit: Micrometres;
  readonly caution: Message;
}

export const say = messages('shelf-sags', {
  sags: ({ shelves, worst, load, creep, sag, limit, caution }: Sags, show) =>
    `${shelves.length === 1 ? worst : `${listed(shelves)} sag too much: ${worst}`} sags ${show.length(sag)} under ${loads(load)} and the shelf’s own weight, creep of ${creep} times the first sag counted; the limit is ${show.length(limit)}. Make the span shorter with a divider, or the shelf stiffer with a thicker board or a lipping. ${show.tell(caution)}`,
  thicker: ({ shelves, board }: { readonly shelves: readonly string[]; readonly board: string }) =>
    `Make ${listed(shelves)} of ${quoted(board)}`,
  divider: () => 'Put in a divider',
  lipping: ({ height }: { readonly height: Micrometres }, show) => `Give shelves a lipping of ${show.exact(height)}`,
});

function loads({ spread, middle }: Sags['load']): string {
  return listed([
    ...(spread > 0 ? [`${kilograms(spread)} spread evenly`] : []),
    ...(middle > 0 ? [`${kilograms(middle)} at the middle`] : []),
  ]);
}

export const shelfSags: CarcassRule = {
  name: 'shelf-sags',
  severity: 'warning',
  about: {
    what: 'A shelf or a bottom sags more under its load than the shop accepts.',
    why: 'A load that stays makes boards creep: what sags a little on the first day sags half as much again in years (`creep-factor`; common practice, no source). Particleboard and MDF under a load that never leaves them creep more: EN 1995-1-1 counts a factor of up to 3.25 for them (from memory). Reckoned as a beam with one span, 5wL⁴/384EI for a load spread evenly and PL³/48EI for one at the middle, with the modulus of the board (EN 312, EN 622-5, Wood Handbook) and its own weight; shear is left out, which adds less than a twentieth where a shelf lies on its supports. The eye sees a sag of 2.6 mm in a metre (`sag-limit`; common practice, no source). No structural approval: the figures are no characteristic values for design, and the wall and its fixing are for someone competent to judge.',
    remedy: 'Put in a divider, use a thicker or stiffer board, give the shelf a lipping, or put less on it.',
    example: 'kind: open\nwidth: 500\nload: 9.2\nfixed-shelves: 1',
  },
  check(context) {
    const { spec, carcass, shop } = context;
    if (!isLoaded(spec)) return [];
    const sagging = sagsOf(spec, carcass, shop.habits).filter(({ sag, limit }) => sag > limit);
    const worst = sagging.toSorted((a, b) => b.sag / b.limit - a.sag / a.limit)[0];
    return worst === undefined ? [] : [found(context, sagging, worst)];
  },
};

function found(context: CarcassContext, same: readonly Sag[], worst: Sag): Found {
  const { spec, shop } = context;
  const { load, sag, limit, panel } = worst;
  const { onShelf, atMiddle, standard } = spec.load;
  const place = (onShelf ?? atMiddle ?? standard).place;
  const shelves = same.map((one) => one.panel.key);
  return {
    place,
    panel: panel.key,
    message: say.sags({
      shelves,
      worst: panel.key,
      load: { spread: load.spread, middle: load.middle },
      creep: shop.habits.creepFactor,
      sag,
      limit,
      caution: sayOfLoads.noApproval(),
    }),
    repairs: [...thickerBoards(context, same), ...stiffer(context, same)],
  };
}

/** The least thick of the shop's boards that would do for all of them. */
function thickerBoards({ spec, carcass, shop }: CarcassContext, same: readonly Sag[]): readonly Repair[] {
  const board = [...shop.boards.values()]
    .filter((one) => same.every(({ panel }) => one.thickness > panel.board.thickness))
    .toSorted((a, b) => a.thickness - b.thickness)
    .find((one) => same.every(({ panel }) => isStiffEnough(sagOf(spec, carcass, panel, one, shop.habits))));
  if (board === undefined) return [];
  const panels = same.map(({ panel }) => panel);
  return [
    {
      title: say.thicker({ shelves: panels.map(({ key }) => key), board: board.name }),
      changes: panels.map(({ key }) => setWord(['panels', key, 'board'], board.name)),
      preferred: true,
    },
  ];
}

const isStiffEnough = ({ sag, limit }: Sag): boolean => sag <= limit;

function stiffer(context: CarcassContext, same: readonly Sag[]): readonly Repair[] {
  const { spec, carcass, shop } = context;
  const parted: readonly Repair[] =
    spec.dividers.length > 0 ? [] : [{ title: say.divider(), changes: [setWord(['dividers'], '1')], preferred: false }];
  const withLipping = { ...spec, load: { ...spec.load, lipping: { ...spec.load.ends, value: LIPPING } } };
  const isEnough =
    spec.load.lipping === null &&
    same.every(({ panel }) => isStiffEnough(sagOf(withLipping, carcass, panel, panel.board, shop.habits)));
  if (!isEnough) return parted;
  return [
    ...parted,
    {
      title: say.lipping({ height: LIPPING }),
      changes: [setLength(context, ['load', 'lipping'], LIPPING)],
      preferred: false,
    },
  ];
}
