import type { Micrometres } from '../length/units.js';
import { sentence } from '../words/english.js';
import { messages } from '../words/message.js';
import { labels } from '../words/told.js';

/** A face in a column headed 'Face'. */
export const FACE_COLUMN = labels('face-column', { inside: 'inside', outside: 'outside' });

type FaceThatLooks = { readonly face: 'inside' | 'outside'; readonly looks: string };

/** What a drawing says of panels and bores, whatever it is a drawing of. */
export const say = messages('drawing', {
  faceThatLooks: ({ face, looks }: FaceThatLooks) => `${face} (${looks}) face`,
  faceInColumn: ({ face, looks }: FaceThatLooks) => `${face} (${looks})`,
  stopNamed: ({ name }: { readonly name: string }) => `stop ${name}`,
  faceUp: ({ face }: { readonly face: string }) => `${sentence(face)} up`,

  scale: ({ scale }: { readonly scale: number }) => `Scale 1:${scale}`,
  notToScale: () => 'Not to scale',

  // What a bore is for.
  rowHole: ({ line }: { readonly line: 'front' | 'rear' }) => `${line} row`,
  joinedTo: ({ use, panel }: { readonly use: string; readonly panel: string }) => `${use} to ${panel}`,
  bore: (
    {
      use,
      place,
      fitting,
      diameter,
      depth,
      surface,
      u,
      edge,
      v,
      from,
    }: {
      readonly use: string;
      /** Its place in its row; null for a bore of none. */
      readonly place: { readonly hole: number; readonly of: number } | null;
      readonly fitting: string | null;
      readonly diameter: Micrometres;
      /** null for a bore that goes through. */
      readonly depth: Micrometres | null;
      readonly surface: string;
      readonly u: Micrometres;
      readonly edge: string;
      readonly v: Micrometres;
      readonly from: string;
    },
    show,
  ) => {
    const what = [
      sentence(use),
      ...(place === null ? [] : [`hole ${place.hole} of ${place.of}`]),
      ...(fitting === null ? [] : [fitting]),
    ].join(', ');
    const deep = depth === null ? 'through' : `${show.exact(depth)} deep`;
    return (
      `${what}: Ø ${show.nominal(diameter)}, ${deep}. ` +
      `${sentence(surface)}, ${show.exact(u)} from the ${edge}, ${show.exact(v)} from the ${from}.`
    );
  },
});
