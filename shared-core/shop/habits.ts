import type { Finding, Repair } from '../document/finding.js';
import type { Located, Path, Place } from '../document/place.js';
import { nearestName } from '../schema/nearest.js';
import { errorAt, quoted } from '../schema/tell.js';
import type { CarcassKind, Changeover, Fitting, Habits, KindSize, MachineKind, Shop, Tolerances } from './model.js';
import type { ShopInput } from './schema.js';

type Input = ShopInput['value'];
type Stock = Pick<Shop, 'boards' | 'bands' | 'fittings' | 'machines' | 'unread'>;
type Base = Pick<Shop, 'habits' | 'changeover' | 'tolerances'>;
type MachineUse = keyof Habits['machines'];

/** Band name that leaves an edge bare. */
export const NO_BAND = 'none';

/** The kind of machine that each use asks for. */
export const KIND_FOR_USE = {
  faces: 'vertical',
  ends: 'horizontal',
  rows: 'line',
  cups: 'cup',
  clamp: 'clamp',
} as const satisfies Readonly<Record<MachineUse, MachineKind>>;

/** What each kind of machine is called in a sentence. */
export const KIND_WORDS: Readonly<Record<MachineKind, string>> = {
  vertical: 'vertical head',
  horizontal: 'horizontal head',
  line: 'line drill',
  cup: 'cup borer',
  saw: 'panel saw',
  bander: 'edge bander',
  clamp: 'case clamp',
};

/** What each kind of fitting is called in a sentence. */
export const FITTING_WORDS: Readonly<Record<Fitting['kind'], string>> = {
  dowel: 'dowel',
  screw: 'connector screw',
  cam: 'cam fitting',
};

const CARCASS_KINDS: readonly CarcassKind[] = ['base', 'wall', 'tall', 'drawer', 'open'];
/** A board up to this thick is taken for one of backs where the shop does not say (common practice, no source). */
const THICKEST_BACK = 10_000;

/**
 * Habits, times and tolerances, every one filled in; null `base` only for the built-in shop, whose text gives them all. A habit
 * that names nothing in the shop is told, and stands for the first thing of its sort; `place` is blamed for one that is not written.
 */
export function habitsOf(input: Input, stock: Stock, base: Base | null, place: Place, findings: Finding[]): Base {
  const written = input.habits?.value ?? {};
  const old = base?.habits;
  const chooser = new Chooser(findings, place);
  const boards = [...stock.boards.values()];
  const { unread } = stock;
  const names = {
    boards: [...stock.boards.keys(), ...(unread?.boards ?? [])],
    bands: [...stock.bands.keys(), ...(unread?.bands ?? [])],
    fittings: [...stock.fittings.keys(), ...(unread?.fittings.keys() ?? [])],
  };
  const thinnest = boards
    .filter((board) => board.thickness <= THICKEST_BACK)
    .toSorted((a, b) => a.thickness - b.thickness)[0];
  const thickest = boards.find((board) => board.thickness > THICKEST_BACK);
  const fittings = [...stock.fittings.values()];
  const machine = (use: MachineUse): string | null =>
    machineFor(use, written.machines?.value[use], old?.machines[use] ?? null, stock, chooser);
  const length = (value: Located<number> | undefined, fallback: number | undefined): number =>
    value?.value ?? fallback ?? 0;
  const habits: Habits = {
    board: chooser.choose(
      'board',
      ['habits', 'board'],
      written.board,
      old?.board,
      names.boards,
      (thickest ?? boards[0])?.name ?? names.boards[0],
    ),
    backBoard: chooser.choose(
      'board',
      ['habits', 'back-board'],
      written['back-board'],
      old?.backBoard,
      names.boards,
      (thinnest ?? boards[0])?.name ?? names.boards[0],
    ),
    band: chooser.choose(
      'band',
      ['habits', 'band'],
      written.band,
      old?.band,
      [...names.bands, NO_BAND],
      names.bands[0],
    ),
    joint: chooser.choose(
      'fitting',
      ['habits', 'joint'],
      written.joint,
      old?.joint,
      names.fittings,
      (fittings.find(({ kind }) => kind === 'dowel') ?? fittings[0])?.name ?? names.fittings[0],
    ),
    sizes: sizesOf(written.sizes, old?.sizes),
    machines: {
      faces: machine('faces'),
      ends: machine('ends'),
      rows: machine('rows'),
      cups: machine('cups'),
      clamp: machine('clamp'),
    },
    pitch: length(written.pitch, old?.pitch),
    setback: length(written.setback, old?.setback),
    rowDiameter: length(written['row-diameter'], old?.rowDiameter),
    rowDepth: length(written['row-depth'], old?.rowDepth),
    rowOffset: written['row-offset']?.value ?? old?.rowOffset ?? null,
    rearMargin: length(written['rear-margin'], old?.rearMargin),
    firstDowel: length(written['first-dowel'], old?.firstDowel),
    dowelSpacing: length(written['dowel-spacing'], old?.dowelSpacing),
    glueGap: length(written['glue-gap'], old?.glueGap),
    leastWall: length(written['least-wall'], old?.leastWall),
    railWidth: length(written['rail-width'], old?.railWidth),
    grooveDepth: length(written['groove-depth'], old?.grooveDepth),
    backInset: length(written['back-inset'], old?.backInset),
    shelfGap: length(written['shelf-gap'], old?.shelfGap),
    shelfSetback: length(written['shelf-setback'], old?.shelfSetback),
  };
  checkGuides(input, stock, chooser);
  return {
    habits,
    changeover: changeoverOf(input, base?.changeover),
    tolerances: tolerancesOf(input, base?.tolerances),
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
    sort: string,
    path: Path,
    written: Located<string> | undefined,
    old: string | undefined,
    names: readonly string[],
    instead: string | undefined,
  ): string {
    const name = written?.value ?? old ?? instead ?? '';
    if (names.includes(name)) return name;
    const fallback = instead ?? name;
    if (written !== undefined) this.unknown(sort, written, names);
    else {
      const repairs: Repair[] = names.map((one) => ({
        title: `Add ${path.join(': ')}: ${one}`,
        changes: [{ kind: 'set', part: 'shop', path, text: one }],
        preferred: false,
      }));
      const message = `This shop does not say which ${sort} is its usual one (${path.join(': ')}). ${quoted(fallback)} is taken.`;
      this.#findings.push({ ...errorAt('key-missing', this.#place, message, { repairs }), severity: 'warning' });
    }
    return fallback;
  }

  unknown(sort: string, written: Located<string>, known: readonly string[]): void {
    const near = nearestName(written.value, known);
    const has = known.length === 0 ? `This shop has no ${sort}.` : `It has: ${known.join(', ')}.`;
    const repairs: Repair[] =
      near === null
        ? []
        : [
            {
              title: `Write ${near}`,
              changes: [{ kind: 'set', part: 'shop', path: written.path, text: near }],
              preferred: true,
            },
          ];
    this.#findings.push(
      errorAt('value-wrong', written.place, `There is no ${sort} ${quoted(written.value)} in this shop. ${has}`, {
        repairs,
      }),
    );
  }
}

function machineFor(
  use: MachineUse,
  written: Located<string> | undefined,
  old: string | null,
  stock: Stock,
  chooser: Chooser,
): string | null {
  const kind = KIND_FOR_USE[use];
  const fit = [...stock.machines.values()].filter((machine) => machine.kind === kind).map((machine) => machine.name);
  // A machine that cannot be read is told where it stands; the habit is right.
  if (written !== undefined && stock.unread?.machines.get(written.value) === kind) return written.value;
  if (written !== undefined && !fit.includes(written.value)) chooser.unknown(KIND_WORDS[kind], written, fit);
  else if (written !== undefined) return written.value;
  return old !== null && fit.includes(old) ? old : (fit[0] ?? null);
}

function sizesOf(
  written: NonNullable<Input['habits']>['value']['sizes'],
  old: Habits['sizes'] | undefined,
): Habits['sizes'] {
  const size = (kind: CarcassKind): KindSize => {
    const said = written?.value[kind]?.value;
    const before = old?.[kind];
    // A number of pitches that is said undoes a fixed height that is not.
    const height = said?.height?.value ?? (said?.pitches === undefined ? before?.height : null) ?? null;
    return {
      height,
      pitches: said?.pitches?.value ?? before?.pitches ?? 22,
      depth: said?.depth?.value ?? before?.depth ?? 560_000,
    };
  };
  return Object.fromEntries(CARCASS_KINDS.map((kind) => [kind, size(kind)])) as Record<CarcassKind, KindSize>;
}

function changeoverOf(input: Input, old: Changeover | undefined): Changeover {
  const said = input.changeover?.value ?? {};
  return {
    stop: said.stop?.value ?? old?.stop ?? 0,
    fence: said.fence?.value ?? old?.fence ?? 0,
    bit: said.bit?.value ?? old?.bit ?? 0,
    depth: said.depth?.value ?? old?.depth ?? 0,
    turnHead: said['turn-head']?.value ?? old?.turnHead ?? 0,
    extension: said.extension?.value ?? old?.extension ?? 0,
    machine: said.machine?.value ?? old?.machine ?? 0,
  };
}

function tolerancesOf(input: Input, old: Tolerances | undefined): Tolerances {
  const said = input.tolerances?.value ?? {};
  return {
    thickness: said.thickness?.value ?? old?.thickness ?? 0,
    width: said.width?.value ?? old?.width ?? 0,
    length: said.length?.value ?? old?.length ?? 0,
    squareness: said.squareness?.value ?? old?.squareness ?? 0,
    stop: said.stop?.value ?? old?.stop ?? 0,
    drill: said.drill?.value ?? old?.drill ?? 0,
    dowelPlay: said['dowel-play']?.value ?? old?.dowelPlay ?? 0,
    frontLimit: said['front-limit']?.value ?? old?.frontLimit ?? 0,
    stepLimit: said['step-limit']?.value ?? old?.stepLimit ?? 0,
    gapLimit: said['gap-limit']?.value ?? old?.gapLimit ?? 0,
  };
}

/** The guide of a cam fitting must be a dowel of the shop. */
function checkGuides(input: Input, stock: Stock, chooser: Chooser): void {
  const read = [...stock.fittings.values()].filter(({ kind }) => kind === 'dowel').map(({ name }) => name);
  const unread = [...(stock.unread?.fittings ?? [])].filter(([, kind]) => kind === 'dowel').map(([name]) => name);
  const dowels = [...read, ...unread];
  for (const entry of input.cams?.value ?? []) {
    const guide = entry.value.value.guide;
    if (guide !== undefined && !dowels.includes(guide.value)) chooser.unknown('dowel', guide, dowels);
  }
}
