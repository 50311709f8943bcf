import type { Finding, Repair } from '../document/finding.js';
import type { Located, Place } from '../document/place.js';
import { companionsSaid } from '../fittings/read.js';
import { camel } from '../schema/model.js';
import { nearestName } from '../schema/nearest.js';
import { errorAt, preferred } from '../schema/tell.js';
import { habits } from './habit-schemas.js';
import { say, type NamedSort, type NamingHabit, type Sort } from './messages.js';
import type { CarcassKind, Habits, KindSize, MachineKind, Shop } from './model.js';
import type { ShopInput } from './schema.js';
import type { Stock } from './stock.js';

type Input = ShopInput['value'];
type HabitsInput = NonNullable<Input['habits']>['value'];
type Known = Stock & Pick<Shop, 'unread'>;
type MachineUse = keyof Habits['machines'];

/** The usual size of a kind of carcass. */
export const sizeOfKind = ({ sizes }: Pick<Habits, 'sizes'>, kind: CarcassKind): KindSize => sizes[camel(kind)];

/** The kinds of carcasses, as a job writes them. */
export const CARCASS_KINDS = Object.keys(habits.fields.sizes.schema.fields) as readonly CarcassKind[];

/** Band name that leaves an edge bare. */
export const NO_BAND = 'none';

/** Hinge name that leaves doors without bores for hinges. */
export const NO_HINGE = 'none';

/** Pull name that leaves a front without bores for a pull. */
export const NO_PULL = 'none';

/** Bracket name that leaves the sides without bores for hanging brackets. */
export const NO_BRACKET = 'none';

/** Foot name that leaves the bottom without bores for feet. */
export const NO_FOOT = 'none';

/** Angle name that leaves fronts that do not move without bores for angles. */
export const NO_ANGLE = 'none';

/** The kind of machine that each use asks for. */
export const KIND_FOR_USE = {
  faces: 'vertical',
  ends: 'horizontal',
  rows: 'line',
  cups: 'cup',
  clamp: 'clamp',
  saw: 'saw',
} as const satisfies Readonly<Record<MachineUse, MachineKind>>;

/** A board up to this thick is taken for one of backs where the shop does not say (common practice, no source). */
const THICKEST_BACK = 10_000;

/**
 * The habits with every name in them looked up: one that names nothing in the shop is told, and stands for the first thing of
 * its sort; `place` is blamed for one that is not written. `said` are the habits with every gap filled, `written` as they stand.
 */
export function namedHabits(
  said: Habits,
  written: HabitsInput,
  usualMachines: Habits['machines'] | null,
  stock: Known,
  place: Place,
  findings: Finding[],
): Habits {
  const chooser = new Chooser(findings, place);
  const names = namesIn(stock);
  const first = firstOf(stock, names);
  const bands = [...names.bands, NO_BAND];
  const machine = (use: MachineUse): string | null =>
    machineFor(use, written.machines?.value[use], usualMachines?.[use] ?? null, stock, chooser);
  return {
    ...said,
    board: chooser.choose('board', 'board', written.board, said.board, names.boards, first.board),
    backBoard: chooser.choose(
      'board',
      'back-board',
      written['back-board'],
      said.backBoard,
      names.boards,
      first.backBoard,
    ),
    band: chooser.choose('band', 'band', written.band, said.band, bands, names.bands[0]),
    joint: chooser.choose('fitting', 'joint', written.joint, said.joint, names.fittings, first.joint),
    hinge: chooser.choose('hinge', 'hinge', written.hinge, said.hinge, names.hinges, names.hinges[0]),
    slide: chooser.choose('slide', 'slide', written.slide, said.slide, names.slides, names.slides[0]),
    pull: chooser.choose('pull', 'pull', written.pull, said.pull, names.pulls, NO_PULL),
    bracket: chooser.choose('bracket', 'bracket', written.bracket, said.bracket, names.brackets, NO_BRACKET),
    wardrobeRail: chooser.choose(
      'wardrobe-rail',
      'wardrobe-rail',
      written['wardrobe-rail'],
      said.wardrobeRail,
      names.wardrobeRails,
      names.wardrobeRails[0],
    ),
    foot: chooser.choose('foot', 'foot', written.foot, said.foot, names.feet, NO_FOOT),
    angle: chooser.choose('angle', 'angle', written.angle, said.angle, names.angles, names.angles[0]),
    machines: {
      faces: machine('faces'),
      ends: machine('ends'),
      rows: machine('rows'),
      cups: machine('cups'),
      clamp: machine('clamp'),
      saw: machine('saw'),
    },
  };
}

/** What stands for a habit that names nothing of the shop: the first that would do. */
function firstOf(stock: Known, names: ReturnType<typeof namesIn>) {
  const boards = [...stock.boards.values()];
  const fittings = [...stock.fittings.values()];
  const thinnest = boards
    .filter((board) => board.thickness <= THICKEST_BACK)
    .toSorted((a, b) => a.thickness - b.thickness)[0];
  const thickest = boards.find((board) => board.thickness > THICKEST_BACK);
  return {
    board: (thickest ?? boards[0])?.name ?? names.boards[0],
    backBoard: (thinnest ?? boards[0])?.name ?? names.boards[0],
    joint: fittings[0]?.name ?? names.fittings[0],
  };
}

/** The names that habits may take, sort by sort. */
function namesIn(stock: Known) {
  const { unread } = stock;
  return {
    boards: [...stock.boards.keys(), ...(unread?.boards ?? [])],
    bands: [...stock.bands.keys(), ...(unread?.bands ?? [])],
    fittings: [...stock.fittings.keys(), ...(unread?.fittings.keys() ?? [])],
    hinges: [...stock.hinges.keys(), ...(unread?.hinges ?? []), NO_HINGE],
    slides: [...stock.slides.keys(), ...(unread?.slides ?? [])],
    brackets: [...stock.brackets.keys(), ...(unread?.brackets ?? []), NO_BRACKET],
    wardrobeRails: [...stock.wardrobeRails.keys(), ...(unread?.wardrobeRails ?? [])],
    angles: [...stock.angles.keys(), ...(unread?.angles ?? []), NO_ANGLE],
    feet: [...stock.feet.keys(), ...(unread?.feet ?? []), NO_FOOT],
    pulls: [...stock.pulls.keys(), ...(unread?.pulls ?? []), NO_PULL],
  };
}

class Chooser {
  readonly #findings: Finding[];
  readonly #place: Place;

  constructor(findings: Finding[], place: Place) {
    this.#findings = findings;
    this.#place = place;
  }

  /** The written name, else the built-in habit; told, and replaced by `instead`, where the shop has nothing of that name. */
  choose(
    sort: Exclude<NamedSort, 'machine'>,
    habit: NamingHabit,
    written: Located<string> | undefined,
    name: string,
    names: readonly string[],
    instead: string | undefined,
  ): string {
    if (names.includes(name)) return name;
    const fallback = instead ?? name;
    if (written !== undefined) this.unknown(sort, written, names);
    else {
      const repairs = names.map((one): Repair => ({
        title: say.addHabit({ habit, name: one }),
        changes: [{ kind: 'set', part: 'shop', path: ['habits', habit], text: one }],
        preferred: false,
      }));
      const message = say.usualMissing({ habit, taken: fallback });
      this.#findings.push({ ...errorAt('key-missing', this.#place, message, { repairs }), severity: 'warning' });
    }
    return fallback;
  }

  unknown(sort: Sort, written: Located<string>, known: readonly string[]): void {
    const near = nearestName(written.value, known);
    const repairs =
      near === null
        ? []
        : [preferred(say.use({ name: near }), { kind: 'set', part: 'shop', path: written.path, text: near })];
    const message = say.unknown({ name: written.value, sort, known });
    this.#findings.push(errorAt('value-wrong', written.place, message, { repairs }));
  }
}

function machineFor(
  use: MachineUse,
  written: Located<string> | undefined,
  old: string | null,
  stock: Known,
  chooser: Chooser,
): string | null {
  const kind = KIND_FOR_USE[use];
  const fit = [...stock.machines.values()].filter((machine) => machine.kind === kind).map((machine) => machine.name);
  // A machine that cannot be read is told where it stands; the habit is right.
  if (written !== undefined && stock.unread?.machines.get(written.value) === kind) return written.value;
  if (written !== undefined && !fit.includes(written.value)) chooser.unknown({ machine: kind }, written, fit);
  else if (written !== undefined) return written.value;
  return old !== null && fit.includes(old) ? old : (fit[0] ?? null);
}

/** What a fitting names as its companion must be a fitting of the kind that it asks for. */
export function checkCompanions(input: Input, stock: Known, place: Place, findings: Finding[]): void {
  const chooser = new Chooser(findings, place);
  for (const { name, kind } of companionsSaid(input)) {
    const read = [...stock.fittings.values()].filter((one) => one.kind === kind).map((one) => one.name);
    const unread = [...(stock.unread?.fittings ?? [])].filter(([, one]) => one === kind).map(([one]) => one);
    const known = [...read, ...unread];
    if (!known.includes(name.value)) chooser.unknown({ fitting: kind }, name, known);
  }
}
