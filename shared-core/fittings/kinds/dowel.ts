import { half, type Micrometres } from '../../length/units.js';
import { required } from '../../schema/fields.js';
import { length, record } from '../../schema/schema.js';
import { messages } from '../../words/message.js';
import { asWritten, besideEdge, type AnyFitting, type FittingDefinition, type FittingOf } from '../fitting.js';
import { sector } from '../mark.js';
import { price } from '../price.js';

const item = record('dowel', 'A dowel.', {
  diameter: required(length('Diameter of the dowel and of its bores.', 3, 30)),
  length: required(length('Length.', 10, 200)),
  'in-face': required(
    length('Depth of the bore in the face; the end takes the rest of the dowel and the glue gap.', 2, 60),
  ),
  price,
});

export type Dowel = FittingOf<'dowel', typeof item.fields>;

export const isDowel = (fitting: AnyFitting): fitting is Dowel => fitting.kind === dowel.kind;

export const say = messages('dowel', {
  described: (one: Pick<Dowel, 'diameter' | 'length' | 'inFace'>, show) =>
    `dowel, Ø ${show.nominal(one.diameter)}, ${show.nominal(one.length)} long, ${show.nominal(one.inFace)} deep in the face`,
  nothingForEnd: ({ inFace, long }: { readonly inFace: Micrometres; readonly long: Micrometres }, show) =>
    `A bore ${show.exact(inFace)} deep in the face leaves nothing of a dowel ${show.exact(long)} long for the end. Write a smaller \`in-face\`.`,
});

/** A plain pin, glued into a bore in the face and one in the end. */
export const dowel: FittingDefinition<Dowel, typeof item.fields, 'dowels', 'dowel'> = {
  kind: 'dowel',
  section: 'dowels',
  sectionAbout: 'Dowels.',
  item,
  companions: [],
  judged(said) {
    const { 'in-face': inFace, length: long } = said;
    if (inFace.value < long.value) return asWritten(said);
    // Half and half stands in for one that leaves nothing for the end.
    return {
      said: { ...said, 'in-face': { ...inFace, value: half(long.value) } },
      faults: [{ at: inFace, message: say.nothingForEnd({ inFace: inFace.value, long: long.value }) }],
    };
  },
  described: say.described,
  purposes: {
    dowel: {
      nouns: ['dowel bore', 'dowel bores'],
      use: 'dowel',
      mark: [sector(0, 1), sector(2, 3)],
      ink: 'brown',
      mate: { purpose: 'dowel', alike: 'diameter' },
      depthChosen: true,
      driven: null,
      machine: null,
    },
  },
  joint: {
    edgeDistance: ({ diameter }) => besideEdge(diameter),
    holes({ name, diameter, length: long, inFace }, { side, depth }, { glueGap }) {
      const usual = side === 'face' ? inFace : long + glueGap - inFace;
      return [
        {
          purpose: 'dowel',
          fitting: name,
          diameter,
          depth: depth ?? usual,
          through: false,
          enters: { at: 'contact' },
          beside: null,
        },
      ];
    },
    lengthInBoth: (one) => one.length,
    // The two depths are judged by their sum.
    tooShort: () => [],
    whyDeepEnough: null,
  },
};
