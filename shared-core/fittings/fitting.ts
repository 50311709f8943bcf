import type { Located } from '../document/place.js';
import type { Micrometres } from '../length/units.js';
import type { ModelFields, Named } from '../schema/model.js';
import type { Fields, InferFields, RecordSchema } from '../schema/schema.js';
import { listed } from '../words/english.js';
import type { Message } from '../words/message.js';
import type { Ink, MarkPart } from './mark.js';
import type { BorePurpose, FittingKind } from './names.js';

/** A fitting of the shop, of whatever kind. */
export interface AnyFitting extends Named {
  readonly kind: string;
}

/** The fitting of a kind, with the figures that the shop file gives by its fields. */
export type FittingOf<K extends string, F extends Fields> = Named & ModelFields<F> & { readonly kind: K };

/**
 * All that there is to know of one kind of fitting: how it is written, read, bored, drawn, told and checked. One file gives
 * one of these; nothing else in the house knows the kind by name. Methods get a fitting of the kind and plain figures.
 */
export interface FittingDefinition<T extends AnyFitting, F extends Fields, S extends string, P extends BorePurpose> {
  readonly kind: T['kind'];
  /** The key of the shop file that these fittings stand under, and the sentence that an owner reads of it. */
  readonly section: S;
  readonly sectionAbout: string;
  /** How one is written; its noun is what a sentence calls it. */
  readonly item: RecordSchema<F>;
  /** Keys that name another fitting of the shop, and the kind that it must be. */
  readonly companions: readonly Companion<T, keyof F & string>[];
  /** What the bounds of the schema cannot say against what is written, and what to go on with. */
  judged(said: InferFields<F>): Judged<F>;
  /** In one line, for completion and hovers: 'dowel, Ø 8 mm, 30 mm long'. */
  described(fitting: T): Message;
  /** What its bores are for. */
  readonly purposes: Readonly<Record<P, Purpose>>;
  /** How it holds the end of one panel against the face of another. */
  readonly joint: JointUse<T>;
}

export interface Companion<T extends AnyFitting, K extends string> {
  readonly key: K;
  readonly kind: FittingKind;
  /** Its name; null where none is written. */
  named(fitting: T): string | null;
}

export interface Judged<F extends Fields> {
  readonly said: InferFields<F>;
  /** Values that cannot be. */
  readonly faults: readonly { readonly at: Located<unknown>; readonly message: Message }[];
}

/** Where the bounds of the schema say all there is to say. */
export const asWritten = <F extends Fields>(said: InferFields<F>): Judged<F> => ({ said, faults: [] });

/** One purpose that a bore can have. */
export interface Purpose {
  /** One bore and several of them: 'dowel bore', 'dowel bores'. */
  readonly nouns: readonly [string, string];
  /** What the bore is for, in the hole table: 'screw clearance'. */
  readonly use: string;
  readonly mark: readonly MarkPart[];
  readonly ink: Ink;
  /** What it must open into in the other panel of the joint; null for one that reaches into no other panel. */
  readonly mate: Mate | null;
  /** Whether `face-depth` and `end-depth` of a panel rule its depth. */
  readonly depthChosen: boolean;
  /** What is driven in at its mouth when the box stands ('screw'), so that it must come through and stay uncovered; or null. */
  readonly driven: string | null;
  /** The machine that bores it; null for the one that the surface asks for. */
  readonly machine: 'rows' | 'cups' | null;
}

export interface Mate {
  readonly purpose: BorePurpose;
  /** What the two must have in common: the very fitting, or only the diameter. */
  readonly alike: 'fitting' | 'diameter';
}

/** The use of a fitting in a joint. */
export interface JointUse<T extends AnyFitting> {
  /** What the centre of a bore keeps from the front and the back of the joint. */
  edgeDistance(fitting: T, around: Surroundings): Micrometres;
  /** The bores of one panel at one place of the joint; the first is the main one, on the axis of the joint. */
  holes(fitting: T, at: PlaceInJoint, around: Surroundings): readonly Hole[];
  /** What lies in both of two mated bores, which with the glue gap must be as deep together; null where nothing does. */
  lengthInBoth(fitting: T): Micrometres | null;
  /** Bores of two mates that are too short for what goes into them; `fitting` is the one that the end is bored for. */
  tooShort<B extends BoredHole>(fitting: T, mates: MatedBores<B>): readonly TooShort<B>[];
  /** What happens where they are, for the reference page; null where the fitting has no such bores. */
  readonly whyDeepEnough: string | null;
}

/** What a fitting may ask of the shop. */
export interface Surroundings {
  readonly glueGap: Micrometres;
  readonly leastWall: Micrometres;
  /** The fitting of a name, or the usual one where the shop has none of it. */
  named(name: string): AnyFitting;
}

/** One place of a joint, seen from one of its panels: whose face is bored, or whose end. */
export interface PlaceInJoint {
  readonly side: 'face' | 'end';
  /** Counted from the front. */
  readonly index: number;
  readonly count: number;
  readonly faceThickness: Micrometres;
  readonly endThickness: Micrometres;
  /** The depth that the job chooses for this panel; null where it leaves it to the fitting. */
  readonly depth: Micrometres | null;
}

/** A bore, told by where it stands in the joint. */
export interface Hole {
  readonly purpose: BorePurpose;
  /** Name of the fitting that it is for. */
  readonly fitting: string;
  readonly diameter: Micrometres;
  readonly depth: Micrometres;
  readonly through: boolean;
  readonly enters: HoleEntry;
  /** For all but the main one: what its id adds to that of the main one, and whether the two meet by design. */
  readonly beside: { readonly tag: string; readonly meetsMain: boolean } | null;
}

/**
 * - contact: on the axis of the joint, where the panels meet;
 * - behind: on the axis too, but from the other face of the face panel;
 * - out-of-sight: in the face of the end panel that is seen least, `fromEnd` from its end.
 */
export type HoleEntry =
  | { readonly at: 'contact' }
  | { readonly at: 'behind' }
  | { readonly at: 'out-of-sight'; readonly fromEnd: Micrometres };

/** What a check may know of a bore. */
export interface BoredHole {
  readonly purpose: BorePurpose;
  readonly depth: Micrometres;
}

/** A bore in a face and one in an end that open into each other, with the figures of their panels. */
export interface MatedBores<B extends BoredHole> {
  readonly face: B;
  readonly end: B;
  readonly faceThickness: Micrometres;
  readonly endThickness: Micrometres;
  /** The bores of a face that the one in the end opens into, each with how far under that face its axis lies. */
  readonly crossing: readonly { readonly bore: B; readonly under: Micrometres }[];
}

export interface TooShort<B> {
  readonly bore: B;
  readonly severity: 'error' | 'warning';
  /** What is told of it and of all others that are too short for the same reason. */
  readonly told: (bores: BoresTold) => Message;
}

/** What the centre of a bore keeps from an edge: one and a half diameters (common practice, no source). */
export function besideEdge(diameter: Micrometres): Micrometres {
  return Math.ceil((3 * diameter) / 2);
}

/** Bores of one purpose, for a message. */
export interface BoresTold {
  readonly purpose: BorePurpose;
  readonly count: number;
  readonly panels: readonly string[];
}

/** 'The dowel bore in bottom', 'The 4 dowel bores in bottom and top'. */
export function boresOf({ nouns: [one, several] }: Purpose, { count, panels }: Omit<BoresTold, 'purpose'>): string {
  return `The ${count === 1 ? one : `${count} ${several}`} in ${listed(panels)}`;
}
