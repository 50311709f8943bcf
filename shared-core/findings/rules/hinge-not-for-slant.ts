import { borerOf, isForSlant } from '../../hung/hang.js';
import type { HungDoor } from '../../hung/model.js';
import { reachFor } from '../../hung/reach.js';
import { listed, quoted, verb } from '../../words/english.js';
import { messages } from '../../words/message.js';
import { replaceName, setWord } from '../changes.js';
import type { Repair } from '../finding.js';
import { grouped } from '../lookups.js';
import type { CarcassContext, CarcassRule, Found } from '../rule.js';

interface Slants {
  readonly doors: readonly string[];
  readonly hinge: string;
  /** Degrees. */
  readonly slant: number;
  readonly made: number;
}

const degrees = (angle: number): string => `${Math.round(angle * 10) / 10}°`;

export const say = messages('hinge-not-for-slant', {
  slants: ({ doors, hinge, slant, made }: Slants) =>
    `${listed(doors)} ${verb(doors.length, 'slants', 'slant')} ${degrees(slant)} away from a front square to the side, and ${quoted(hinge)} is made for ${made === 0 ? 'fronts that do not slant' : degrees(made)} (\`slant\`). Choose a hinge that is made for it (\`doors: hinge\`).`,
  square: ({ doors, hinge, made }: Omit<Slants, 'slant'>) =>
    `${listed(doors)} ${verb(doors.length, 'stands', 'stand')} square to the side, and ${quoted(hinge)} is made for fronts that slant ${degrees(made)} (\`slant\`). Choose another hinge (\`doors: hinge\`).`,
  use: ({ hinge }: { readonly hinge: string }) => `Hang them on ${quoted(hinge)}`,
});

export const hingeNotForSlant: CarcassRule = {
  name: 'hinge-not-for-slant',
  severity: 'error',
  hides: true,
  about: {
    what: 'A door across a corner hangs on a hinge that is not made for its slant, or a straight door on one that is made for a slant.',
    why: 'Arm and plate bring the cup where it belongs only at the angle that the hinge is made for. At another the door neither closes nor stands where it should; hinges take up a degree or so (common practice, no source).',
    remedy:
      'Choose a hinge whose `slant` in the shop file is that of the front, or make the wings of the corner such that it is.',
    example: 'kind: wall\nwidth: 600\ndepth: 320\ndiagonal: { right: 600 }\ndoors: left',
  },
  check(context) {
    const wrong = context.boring.hung.filter(({ hinge, slant }) => !isForSlant(hinge, slant));
    return grouped(wrong, ({ door, slant }) => `${door.place.start} ${slant}`).map((same): Found => {
      const { door, hinge, slant } = same[0]!;
      const told = { doors: same.map((one) => one.door.key), hinge: hinge.name, made: hinge.slant };
      return {
        place: context.spec.doors.hinge.written ? context.spec.doors.hinge.place : door.place,
        panel: door.key,
        message: slant === 0 ? say.square(told) : say.slants({ ...told, slant }),
        repairs: otherHinges(context, same),
      };
    });
  },
};

/** Hinges of the shop that are made for the slant and reach all of the doors. */
function otherHinges({ shop, spec }: CarcassContext, doors: readonly HungDoor[]): readonly Repair[] {
  const borer = borerOf(shop)?.distance ?? null;
  const { hinge: named, hung } = spec.doors;
  const fit = [...shop.hinges.values()].filter((hinge) =>
    doors.every(({ overlay, slant }) => isForSlant(hinge, slant) && reachFor(hinge, overlay, borer) !== null),
  );
  return fit.flatMap(({ name }): readonly Repair[] => {
    // A word that stands for the doors has no place for a hinge beside it.
    const isWord = hung.written && hung.path.length === 1;
    const own =
      isWord && hung.place.part === 'self' ? setWord(['doors'], `{ hung: ${hung.value}, hinge: ${name} }`) : null;
    const added = isWord ? own : setWord(['doors', 'hinge'], name);
    const change = named.written ? replaceName(named, name) : added;
    return change === null ? [] : [{ title: say.use({ hinge: name }), changes: [change], preferred: fit.length === 1 }];
  });
}
