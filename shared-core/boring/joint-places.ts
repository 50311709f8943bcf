import { chosen, chosenAtEnd } from '../carcass/choices.js';
import type { Interval } from '../carcass/interval.js';
import type { Carcass, Joint, Panel } from '../carcass/model.js';
import { frontOf, runsAlong, sharedDepth } from '../carcass/panel.js';
import { isInDrawer } from '../carcass/roles.js';
import type { CarcassSpec } from '../carcass/spec.js';
import type { Located, Place } from '../document/place.js';
import type { Fitting } from '../fittings/kinds.js';
import type { JointPlaces } from '../job/model.js';
import type { Micrometres } from '../length/units.js';
import type { Shop } from '../shop/model.js';
import type { CrowdedJoint, UnusedPlace } from './model.js';
import { patternPlaces } from './pattern.js';
import { wishIn } from './wish.js';

/** One place of a joint in one of its panels: y from the carcass front or the upper edge of a drawer, and the text that put it there. */
export interface PlaceOnDepth {
  readonly y: Micrometres;
  readonly place: Place;
}

/** Where the joints of one carcass are bored, and which wishes of the job came to nothing. */
export class JointPlacesOf {
  readonly #spec: CarcassSpec;
  readonly #carcass: Carcass;
  readonly #shop: Shop;
  readonly #panels: ReadonlyMap<string, Panel>;
  readonly #lists = new Map<Located<Micrometres>, string | null>();
  readonly #used = new Set<Located<Micrometres>>();
  readonly #crowded: CrowdedJoint[] = [];

  constructor(spec: CarcassSpec, carcass: Carcass, shop: Shop) {
    this.#spec = spec;
    this.#carcass = carcass;
    this.#shop = shop;
    this.#panels = new Map(carcass.panels.map((panel) => [panel.key, panel]));
    for (const at of spec.dowels?.value ?? []) this.#lists.set(at, null);
  }

  panelsOf({ facePanel, endPanel }: Joint): { readonly face: Panel; readonly end: Panel } {
    return { face: this.#panels.get(facePanel)!, end: this.#panels.get(endPanel)! };
  }

  /** Places of the bores of a joint in one of its two panels, ascending. */
  in(joint: Joint, panel: Panel, fitting: Fitting): readonly PlaceOnDepth[] {
    const { face, end } = this.panelsOf(joint);
    const overlap = sharedDepth(face, end);
    if (overlap === null) return [];
    const own = askedFor(this.#spec, panel, end, joint);
    if (own?.asked.as === 'list') {
      // Places on a face that the joint runs along count from the front of the panel that stands there.
      const front = frontOf(runsAlong(face, end) ? end : own.of);
      return this.#listed(own.asked.is.value, own.of.key, front, overlap);
    }
    if (own?.asked.as === 'count') return this.#counted(own.asked.is, joint, overlap, fitting, panel);
    const { dowels } = this.#spec;
    if (dowels !== null && !isInDrawer(panel)) return this.#listed(dowels.value, null, overlap.from, overlap);
    const { line } = this.#carcass;
    // The shared load is for depths of carcasses; heights of drawers have nothing to do with them.
    const from = isInDrawer(panel) ? { ...line, shared: null } : line;
    const wish = wishIn(this.#shop, overlap, fitting, joint.stagger);
    return patternPlaces(from, wish).map((y) => ({ y, place: joint.place }));
  }

  /** What a panel as deep as the face panel would get in its joint with it. */
  full(joint: Joint): readonly Micrometres[] {
    const { face } = this.panelsOf(joint);
    const overlap = sharedDepth(face, face);
    if (this.#spec.dowels || chosen(this.#spec, face.key, 'dowels') || overlap === null) return [];
    return patternPlaces(this.#carcass.line, wishIn(this.#shop, overlap, joint.faceFitting, false));
  }

  /** Listed places that no joint took. */
  unused(): readonly UnusedPlace[] {
    return [...this.#lists].filter(([at]) => !this.#used.has(at)).map(([at, panel]) => ({ panel, at }));
  }

  get crowded(): readonly CrowdedJoint[] {
    return this.#crowded;
  }

  /** The joint is told of once, at its end. */
  #counted(
    count: Located<number>,
    joint: Joint,
    overlap: Interval,
    fitting: Fitting,
    panel: Panel,
  ): readonly PlaceOnDepth[] {
    const wish = { ...wishIn(this.#shop, overlap, fitting, joint.stagger), howMany: count.value };
    const places = patternPlaces(this.#carcass.line, wish);
    if (places.length < count.value && panel.key === joint.endPanel)
      this.#crowded.push({ joint: joint.id, panel: panel.key, count, room: places.length });
    return places.map((y) => ({ y, place: count.place }));
  }

  /** A list counts from a front edge, in any order; each joint that it is for takes what falls on it. */
  #listed(
    list: readonly Located<Micrometres>[],
    panel: string | null,
    front: Micrometres,
    overlap: Interval,
  ): readonly PlaceOnDepth[] {
    const places: PlaceOnDepth[] = [];
    for (const at of list) {
      if (!this.#lists.has(at)) this.#lists.set(at, panel);
      const y = front + at.value;
      if (y <= overlap.from || y >= overlap.to) continue;
      this.#used.add(at);
      places.push({ y, place: at.place });
    }
    return places.sort((a, b) => a.y - b.y);
  }
}

/**
 * What the job asks for in a joint by single panels, and the panel from whose front edge places count: what is said of the joint
 * alone rules both panels, then each panel's own list its own bores, then what the end panel says of all its ends.
 */
export function askedFor(
  spec: CarcassSpec,
  panel: Panel,
  end: Panel,
  joint: Joint,
): { readonly asked: JointPlaces; readonly of: Panel } | null {
  const alone = chosenAtEnd(spec, end.key, joint.end, 'dowels');
  if (alone !== undefined) return { asked: alone, of: end };
  const own = chosen(spec, panel.key, 'dowels');
  if (own !== undefined) return { asked: { as: 'list', is: own }, of: panel };
  const ofEnd = chosen(spec, end.key, 'endDowels');
  return ofEnd === undefined ? null : { asked: ofEnd, of: end };
}
