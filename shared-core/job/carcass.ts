import type { CarcassPart } from '../document/cut.js';
import { readCarcassTree } from '../document/parts.js';
import type { Finding } from '../document/finding.js';
import { depthOf, type Located, type Place } from '../document/place.js';
import type { MapEntry } from '../document/tree.js';
import { readBySchema } from '../schema/read.js';
import { syntaxFinding } from '../schema/tell.js';
import { laidOver, unfold, type UnfoldedFields } from '../schema/unfold.js';
import type { Hand, Shop } from '../shop/model.js';
import { isAboveFloor } from './above-floor.js';
import { astrayKeys } from './astray.js';
import { distinctPlaces, type Places } from './distinct.js';
import { hasFigures } from './figures.js';
import { fillIn, type FilledCarcass } from './fill.js';
import type { Defaults } from './head.js';
import type { Usage } from './left-out.js';
import { standsAcross, withBases, type CarcassSaid, type Likeness } from './like.js';
import type { JobCarcass, JobHead, JointChoice, JointPlaces, PanelChoice } from './model.js';
import { carcassSchema, jobSchema } from './schema.js';

export interface ReadJobCarcass {
  /** null where a required value is missing, a written one is invalid, or the shop has no figures for what is named. */
  readonly carcass: JobCarcass | null;
  readonly findings: readonly Finding[];
  /** null where the text has none. */
  readonly name: Located<string> | null;
  /** The entry `name: {...}`; its value is the root that paths of part 'self' start from. */
  readonly entry: MapEntry | null;
}

/**
 * Reads what one carcass asks for, with every default that stands in a table: its own text, then that of what it is like, then the
 * job's `defaults`, then what is usual. A value of its own has part 'self', one of the carcass that it is like part 'like-1', one of
 * the defaults part 'head'; a default that nobody wrote stands at the
 * carcass's name, with the path under which the carcass itself would write it. So `path` always counts from the root of
 * `place.part`. Never throws.
 */
export function readJobCarcass(
  part: CarcassPart,
  head: JobHead,
  defaults: Defaults,
  shop: Shop,
  likeness: Likeness | null,
): ReadJobCarcass {
  const { entry, problems: broken, astray } = readCarcassTree(part);
  const layout = entry === null || broken.length > 0 ? null : astrayKeys(part.text, entry, astray);
  const problems = layout === null ? broken : [layout.problem];
  const findings: Finding[] = problems.map(syntaxFinding);
  if (entry === null || layout?.isNameless === true) return { carcass: null, findings, name: null, entry };
  const name: Located<string> = { value: entry.key, place: entry.keyPlace, path: [], written: true };
  const nothing = { carcass: null, findings, name, entry };
  const read = readBySchema(carcassSchema, entry.value, {
    unit: head.unit,
    part: 'self',
    path: [],
    place: entry.keyPlace,
  });
  // What a broken text seems to say is not worth telling.
  if (problems.length > 0) return nothing;
  // Without a unit no length can be judged, and none be built with.
  findings.push(...read.findings.filter(({ rule }) => !head.unitUnknown || rule !== 'length-impossible'));
  if (read.value === null || !read.sound || head.unitUnknown || shop.unusable === true) return nothing;
  const given = unfold(jobSchema.fields.defaults.schema, defaults ?? {});
  const own: CarcassSaid = unfold(carcassSchema, read.value.value);
  // That a carcass is like none that could be is told with the job.
  if (likeness === null) return nothing;
  const together = withBases(own, given, head.unit, likeness);
  if (together === null || !isWhole(together.said)) return nothing;
  const { carcass, twice } = fill(name, laidOver(carcassSchema, together.said, given), together.leading, shop);
  // The shop's fault is told once, where the job names the shop.
  if (!hasFigures(carcass, shop)) return nothing;
  return { ...nothing, carcass, findings: [...findings, ...twice] };
}

type WholeCarcass = UnfoldedFields<typeof carcassSchema.fields>;

/** With what is required, be it of its own or of what it is like. */
function isWhole(said: CarcassSaid): said is WholeCarcass {
  return said.kind !== undefined && said.width !== undefined;
}

/** Filled in; what hangs has a plinth only where it says so, not because the defaults do. */
function filledWhereItStands({ plinth, ...said }: WholeCarcass, usage: Usage, place: Place): FilledCarcass {
  const without = fillIn(said, usage, place);
  const isOfDefaults = plinth?.place.part === 'head' || plinth?.place.part === 'tail';
  return plinth === undefined || (isOfDefaults && isAboveFloor(without)) ? without : { ...without, plinth };
}

function fill(
  name: Located<string>,
  said: WholeCarcass,
  leading: Hand,
  shop: Shop,
): { readonly carcass: JobCarcass; readonly twice: readonly Finding[] } {
  const loose = said['loose-shelves'];
  const usage: Usage = {
    habits: shop.habits,
    kind: said.kind.value,
    hasLooseShelves: loose !== undefined && (loose.as === 'list' ? loose.is.value.length : loose.is.value) > 0,
    isDiagonal: standsAcross(said),
  };
  // What is mirrored has been when it is filled in.
  const { mirrored: _, ...filled } = filledWhereItStands(said, usage, name.place);
  const twice: Finding[] = [];
  const once = (places: Places | null | undefined): Places | null => {
    const distinct = distinctPlaces(places ?? null);
    // What another carcass says twice is told there.
    twice.push(...distinct.findings.filter(({ place }) => depthOf(place.part) === null));
    return distinct.places;
  };
  const placesOnce = (asked: JointPlaces): JointPlaces =>
    asked.as === 'count' ? asked : { as: 'list', is: once(asked.is)! };
  const jointOnce = (one: Located<JointChoice>): Located<JointChoice> => ({
    ...one,
    value: { ...one.value, ...(one.value.dowels && { dowels: placesOnce(one.value.dowels) }) },
  });
  const dowels = once(filled.dowels);
  const panels = [...filled.panels].map(([key, choice]): [string, PanelChoice] => {
    const own = once(choice.dowels);
    return [
      key,
      {
        ...choice,
        ...(own && { dowels: own }),
        ...(choice.endDowels && { endDowels: placesOnce(choice.endDowels) }),
        ...(choice.referenceEnd && { referenceEnd: jointOnce(choice.referenceEnd) }),
        ...(choice.farEnd && { farEnd: jointOnce(choice.farEnd) }),
      },
    ];
  });
  return { carcass: { ...filled, name, leading, dowels, panels: new Map(panels) }, twice };
}
