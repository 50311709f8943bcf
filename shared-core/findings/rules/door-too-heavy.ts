import { kilograms, say as sayOfLoads } from '../../loads/messages.js';
import { weightOf } from '../../loads/weight.js';
import { listed, quoted, verb } from '../../words/english.js';
import { messages, type Message } from '../../words/message.js';
import { replaceName, setWord } from '../changes.js';
import type { Repair } from '../finding.js';
import { grouped } from '../lookups.js';
import type { CarcassContext, CarcassRule, Found } from '../rule.js';
import type { HungDoor } from '../../hung/model.js';

interface Heavy {
  readonly doors: readonly string[];
  readonly weight: number;
  readonly hinges: number;
  readonly hinge: string;
  readonly rating: number;
  readonly caution: Message;
}

export const say = messages('door-too-heavy', {
  heavy: ({ doors, weight, hinges, hinge, rating, caution }: Heavy, show) =>
    `${listed(doors)} ${verb(doors.length, 'weighs', 'weigh')} ${kilograms(weight)}${doors.length > 1 ? ' each' : ''}; ${hinges} of ${quoted(hinge)} carry ${kilograms(rating * hinges)} at the most. Use a lighter board, more hinges (\`hinges-by-weight\`), or a hinge with a greater \`rating\`. ${show.tell(caution)}`,
  use: ({ hinge }: { readonly hinge: string }) => `Hang the doors on ${quoted(hinge)}`,
  lighter: ({ board }: { readonly board: string }) => `Make the doors of ${quoted(board)}`,
});

export const doorTooHeavy: CarcassRule = {
  name: 'door-too-heavy',
  severity: 'error',
  about: {
    what: 'A door is heavier than its hinges carry.',
    why: 'Hinges that carry too much sag and let go of their screws; a door that comes off hurts whoever stands under it. The door is weighed by its finished size and the density of its board; how much each hinge carries is the maker’s figure (`rating`). No structural approval.',
    remedy:
      'Use a lighter board or a hinge that carries more, or have doors of this weight on more hinges (`hinges-by-weight`).',
    example: 'kind: tall\nwidth: 600\nboard: board-19\ndoors: left',
    shop: 'boards:\n  board-19: { thickness: 19 }\n  back-3: { thickness: 3 }\nhinges:\n  light: { cup-diameter: 35, cup-depth: 12, distance: 20.5 to 24.5, usual-distance: 22.5, arms: [5], plates: [0], setback: 37, plate-diameter: 5, plate-depth: 13, body-height: 62, body-depth: 80, rating: 3 }\nhabits: { hinge: light, board: board-19 }',
  },
  check(context) {
    const heavy = context.boring.hung.filter((one) => one.hinges.length > 0 && isTooHeavy(one, one.hinge.rating));
    const alike = ({ door, hinges }: HungDoor): string => `${door.place.start} ${weightOf(door)} ${hinges.length}`;
    return grouped(heavy, alike).map((same): Found => {
      const { door, hinge, hinges } = same[0]!;
      return {
        place: door.place,
        panel: door.key,
        message: say.heavy({
          doors: same.map((one) => one.door.key),
          weight: weightOf(door),
          hinges: hinges.length,
          hinge: hinge.name,
          rating: hinge.rating!,
          caution: sayOfLoads.noApproval(),
        }),
        repairs: [...strongerHinges(context, same), ...lighterBoards(context, same)],
      };
    });
  },
};

function isTooHeavy({ door, hinges }: HungDoor, rating: number | null): boolean {
  return rating !== null && weightOf(door) > rating * hinges.length;
}

function strongerHinges({ shop, spec }: CarcassContext, doors: readonly HungDoor[]): readonly Repair[] {
  return [...shop.hinges.values()]
    .filter(({ rating }) => rating !== null && !doors.some((one) => isTooHeavy(one, rating)))
    .flatMap(({ name }): readonly Repair[] => {
      const change = replaceName(spec.doors.hinge, name);
      return change === null ? [] : [{ title: say.use({ hinge: name }), changes: [change], preferred: false }];
    });
}

/** The heaviest of the lighter boards that the hinges carry. */
function lighterBoards({ shop }: CarcassContext, doors: readonly HungDoor[]): readonly Repair[] {
  const made = (one: HungDoor, board: HungDoor['door']['board']): HungDoor => ({
    ...one,
    door: { ...one.door, board, thickness: board.thickness },
  });
  const { thickness: now } = doors[0]!.door.board;
  const fitting = [...shop.boards.values()].filter(
    (board) =>
      // Thinner ones make no door.
      board.thickness * 4 >= now * 3 && doors.every((one) => !isTooHeavy(made(one, board), one.hinge.rating)),
  );
  const [board] = fitting.toSorted((a, b) => b.thickness - a.thickness);
  if (board === undefined) return [];
  const change = setWord(['doors', 'board'], board.name);
  return [{ title: say.lighter({ board: board.name }), changes: [change], preferred: false }];
}
