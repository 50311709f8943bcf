import type { CarcassPart } from '../document/cut.js';
import { readCarcassTree } from '../document/parts.js';
import type { Finding } from '../document/finding.js';
import type { Located, Path, Place } from '../document/place.js';
import type { MapEntry } from '../document/tree.js';
import type { Micrometres } from '../length/units.js';
import { half } from '../length/units.js';
import { showLength } from '../length/show.js';
import { nearestName } from '../schema/nearest.js';
import { readBySchema } from '../schema/read.js';
import { errorAt, preferred, quoted, syntaxFinding } from '../schema/tell.js';
import type { Infer } from '../schema/schema.js';
import type { CarcassKind, Shop } from '../shop/model.js';
import { astrayKeys } from './astray.js';
import { hasFigures } from './figures.js';
import type { Defaults } from './head.js';
import type {
  BackHow,
  CarcassSpec,
  DividerSpec,
  EdgeName,
  JobHead,
  PanelChoice,
  RowChoice,
  ShelfSpec,
} from './model.js';
import { carcassSchema } from './schema.js';
import type { Opening, ShelfBody } from './spread.js';
import { openingsBetween, spreadDividers, spreadShelves } from './spread.js';

export interface ReadCarcass {
  /** null where a required value is missing, a written one is invalid, or the shop has no figures for what is named. */
  readonly spec: CarcassSpec | null;
  readonly findings: readonly Finding[];
  /** null where the text has none. */
  readonly name: Located<string> | null;
  /** The entry `name: {...}`; its value is the root that paths of part 'self' start from. */
  readonly entry: MapEntry | null;
}

type Input = Infer<typeof carcassSchema>['value'];
type ShelvesInput = NonNullable<Input['fixed-shelves']>;

/**
 * Reads one carcass and fills in every default: its own text, then the job's `defaults`, then the shop's habits. A value of
 * its own has part 'self', one of the defaults part 'head'; a default that nobody wrote stands at the carcass's name, with the
 * path under which the carcass itself would write it. So `path` always counts from the root of `place.part`. Never throws.
 */
export function readCarcass(part: CarcassPart, head: JobHead, defaults: Defaults, shop: Shop): ReadCarcass {
  const { entry, problems: broken, astray } = readCarcassTree(part);
  const layout = entry === null || broken.length > 0 ? null : astrayKeys(part.text, entry, astray);
  const problems = layout === null ? broken : [layout.problem];
  const findings: Finding[] = problems.map(syntaxFinding);
  if (entry === null || layout?.isNameless === true) return { spec: null, findings, name: null, entry };
  const name: Located<string> = { value: entry.key, place: entry.keyPlace, path: [], written: true };
  const read = readBySchema(carcassSchema, entry.value, {
    unit: head.unit,
    part: 'self',
    path: [],
    place: entry.keyPlace,
  });
  // What a broken text seems to say is not worth telling.
  if (problems.length > 0) return { spec: null, findings, name, entry };
  // Without a unit no length can be judged, and none be built with.
  findings.push(...read.findings.filter(({ rule }) => !head.unitUnknown || rule !== 'length-impossible'));
  if (read.value === null || !read.sound || head.unitUnknown || shop.unusable === true)
    return { spec: null, findings, name, entry };
  const filler = new Filler(name, read.value.value, defaults, head, shop);
  const spec = filler.spec();
  // The shop's fault is told once, where the job names the shop.
  if (!hasFigures(spec, shop)) return { spec: null, findings, name, entry };
  findings.push(...filler.findings);
  return { spec: filler.sound ? spec : null, findings, name, entry };
}

type Shared = NonNullable<Defaults>;

class Filler {
  readonly findings: Finding[] = [];
  sound = true;

  constructor(
    readonly name: Located<string>,
    readonly input: Input,
    readonly defaults: Defaults,
    readonly head: JobHead,
    readonly shop: Shop,
  ) {}

  /** A default that nobody wrote. */
  #unwritten<T>(value: T, path: Path): Located<T> {
    return { value, place: this.name.place, path, written: false };
  }

  #said<K extends keyof Shared>(key: K): Shared[K] {
    return (this.input as Shared)[key] ?? this.defaults?.[key];
  }

  #thickness(board: string): Micrometres {
    const { boards, habits } = this.shop;
    return (boards.get(board) ?? boards.get(habits.board))?.thickness ?? 0;
  }

  /** What rows and heights are set out on, so that they stay as they are from one batch of boards to the next. */
  #nominal(board: string): Micrometres {
    const { boards, habits } = this.shop;
    return (boards.get(board) ?? boards.get(habits.board))?.nominal ?? 0;
  }

  #panelBoard(key: string, board: string): string {
    const choice = this.input.panels?.value.find((panel) => panel.name.value === key);
    return choice?.value.value.board?.value ?? board;
  }

  spec(): CarcassSpec {
    const { input, shop } = this;
    const { habits } = shop;
    const kind = input.kind;
    const board = this.#said('board') ?? this.#unwritten(habits.board, ['board']);
    const top = this.#said('top') ?? this.#unwritten(usualTop(kind.value), ['top']);
    const bottom = this.#said('bottom') ?? this.#unwritten<'between' | 'under'>('between', ['bottom']);
    const sideBoard = this.#panelBoard('left', board.value);
    const sideThickness = this.#thickness(sideBoard);
    const sideNominal = this.#nominal(sideBoard);
    const topThickness = this.#thickness(this.#panelBoard(top.value === 'rails' ? 'rail-front' : 'top', board.value));
    const bottomThickness = this.#thickness(this.#panelBoard('bottom', board.value));
    const over = top.value === 'over' ? topThickness : 0;
    const under = bottom.value === 'under' ? bottomThickness : 0;
    const size = habits.sizes[kind.value];
    const balanced = size.pitches * habits.pitch + sideNominal + over + under;
    const height = this.#said('height') ?? this.#unwritten(size.height ?? balanced, ['height']);
    const rowOffset =
      this.#said('row-offset') ?? this.#unwritten(habits.rowOffset ?? half(sideNominal), ['row-offset']);
    const dividers = this.#dividers(board, sideThickness);
    const sideLength = height.value - over - under;
    const opening: Opening = {
      from: bottom.value === 'under' ? 0 : bottomThickness,
      to: top.value === 'over' ? sideLength : sideLength - topThickness,
    };
    const grid = { offset: rowOffset.value, pitch: habits.pitch };
    const shelfThickness = this.#thickness(board.value);
    const lower = half(shelfThickness);
    const centred: ShelfBody = { below: lower, reach: lower, above: shelfThickness - lower };
    // A loose shelf lies on its pins: its underside is half a hole above their centres.
    const pin = half(habits.rowDiameter);
    const onPins: ShelfBody = { below: -pin, reach: pin, above: shelfThickness + pin };
    const fixedShelves = this.#shelves('fixed-shelves', board, this.#unwritten(0, []), (count) =>
      spreadShelves(count, [opening], centred, grid),
    );
    const taken = fixedShelves.map((shelf): Opening => {
      const thickness = this.#thickness(this.#panelBoard(shelf.key, shelf.board.value));
      const from = shelf.at.value - half(thickness);
      return { from, to: from + thickness };
    });
    const looseShelves = this.#shelves('loose-shelves', board, this.#unwritten(habits.shelfSetback, []), (count) =>
      spreadShelves(count, openingsBetween(opening, taken), onPins, grid),
    );
    const spec: CarcassSpec = {
      name: this.name,
      kind,
      width: input.width,
      height,
      depth: this.#said('depth') ?? this.#unwritten(size.depth, ['depth']),
      board,
      band: this.#said('band') ?? this.#unwritten(habits.band, ['band']),
      joint: this.#said('joint') ?? this.#unwritten(habits.joint, ['joint']),
      top,
      bottom,
      railWidth: this.#said('rail-width') ?? this.#unwritten(habits.railWidth, ['rail-width']),
      plinth: this.#said('plinth') ?? this.#unwritten(0, ['plinth']),
      back: this.#back(),
      rows: this.#said('rows') ?? this.#unwritten(usualRows(kind.value, looseShelves.length > 0), ['rows']),
      rowOffset,
      rowSetback: this.#said('row-setback') ?? this.#unwritten(habits.setback, ['row-setback']),
      rearRow: this.#said('rear-row') ?? null,
      dowels: this.#distinct(this.#said('dowels')) ?? null,
      machines: this.#machines(),
      dividers,
      fixedShelves,
      looseShelves,
      panels: this.#panels(),
      note: input.note?.value ?? '',
    };
    this.#checkPanelKeys(spec);
    return spec;
  }

  #back(): CarcassSpec['back'] {
    const { habits } = this.shop;
    const own = this.input.back;
    const given = this.defaults?.back;
    const part = <K extends 'how' | 'board' | 'groove' | 'inset'>(key: K) =>
      (own?.as === 'record' ? own.is.value[key] : undefined) ??
      (given?.as === 'record' ? given.is.value[key] : undefined);
    const how: Located<BackHow> | undefined =
      own?.as === 'choice' ? own.is : (part('how') ?? (given?.as === 'choice' ? given.is : undefined));
    return {
      how: how ?? this.#unwritten<BackHow>('grooved', own === undefined ? ['back'] : ['back', 'how']),
      board: part('board') ?? this.#unwritten(habits.backBoard, ['back', 'board']),
      groove: part('groove') ?? this.#unwritten(habits.grooveDepth, ['back', 'groove']),
      inset: part('inset') ?? this.#unwritten(habits.backInset, ['back', 'inset']),
    };
  }

  #machines(): CarcassSpec['machines'] {
    const machine = (use: 'faces' | 'ends' | 'rows' | 'clamp'): Located<string> | null => {
      const said = this.input.machines?.value[use] ?? this.defaults?.machines?.value[use];
      const usual = this.shop.habits.machines[use];
      return said ?? (usual === null ? null : this.#unwritten(usual, ['machines', use]));
    };
    return { faces: machine('faces'), ends: machine('ends'), rows: machine('rows'), clamp: machine('clamp') };
  }

  #dividers(board: Located<string>, sideThickness: Micrometres): readonly DividerSpec[] {
    const input = this.input.dividers;
    if (input === undefined) return [];
    if (input.as === 'list') {
      return input.is.value.map((item, i): DividerSpec => {
        const own = item.as === 'record' ? item.is.value : null;
        const at = item.as === 'record' ? item.is.value.at : item.is;
        const path = own === null ? item.is.path : [...item.is.path, 'board'];
        return {
          key: `divider-${i + 1}`,
          at,
          board: own?.board ?? { ...board, path: board.written ? board.path : path },
        };
      });
    }
    const count = input.is.value;
    const thickness = this.#thickness(board.value);
    const right = this.#thickness(this.#panelBoard('right', board.value));
    const places = spreadDividers(count, sideThickness, this.input.width.value - right, thickness, half(thickness));
    if (places === null) {
      const clear = showLength(Math.max(0, this.input.width.value - right - sideThickness), this.head.unit);
      this.#fault(
        input.is.place,
        `${count} dividers of ${showLength(thickness, this.head.unit)} leave no clear bay in a clear width of ${clear}. Write fewer, or a greater width.`,
      );
      return [];
    }
    return places.map((at, i) => ({ key: `divider-${i + 1}`, at: this.#counted(at, input.is, i), board }));
  }

  /** A place that follows from a count: blamed on the count, written as an item of the list that could stand there. */
  #counted(at: Micrometres, count: Located<number>, index: number): Located<Micrometres> {
    return { value: at, place: count.place, path: [...count.path, index], written: false };
  }

  #shelves(
    key: 'fixed-shelves' | 'loose-shelves',
    board: Located<string>,
    usualSetback: Located<Micrometres>,
    spread: (count: number) => readonly Micrometres[],
  ): readonly ShelfSpec[] {
    const input: ShelvesInput | undefined = this.input[key];
    if (input === undefined) return [];
    const stem = key === 'fixed-shelves' ? 'shelf' : 'loose';
    if (input.as === 'list') {
      return input.is.value.map((item, i): ShelfSpec => {
        const path = item.is.path;
        const own = item.as === 'record' ? item.is.value : null;
        const at = item.as === 'record' ? item.is.value.at : item.is;
        return {
          key: `${stem}-${i + 1}`,
          at,
          bay: own?.bay ?? null,
          board: own?.board ?? (board.written ? board : { ...board, path: [...path, 'board'] }),
          setback: own?.setback ?? { ...usualSetback, place: at.place, path: [...path, 'setback'] },
        };
      });
    }
    const count = input.is.value;
    const places = spread(count);
    if (places.length < count) {
      const most =
        places.length === 0 ? 'none does' : `at most ${places.length} ${places.length === 1 ? 'does' : 'do'}`;
      const pitch = showLength(this.shop.habits.pitch, this.head.unit);
      const words = key === 'fixed-shelves' ? 'fixed' : 'loose';
      this.#fault(
        input.is.place,
        `${count} ${words} shelves do not fit here on the pitch of ${pitch}: ${most}. Write fewer, or a greater height.`,
      );
    }
    return places.map((at, i) => {
      const located = this.#counted(at, input.is, i);
      return {
        key: `${stem}-${i + 1}`,
        at: located,
        bay: null,
        board,
        setback: { ...usualSetback, place: located.place, path: [...located.path, 'setback'] },
      };
    });
  }

  #fault(place: Place, message: string): void {
    this.sound = false;
    this.findings.push(errorAt('value-wrong', place, message));
  }

  #panels(): ReadonlyMap<string, PanelChoice> {
    const panels = new Map<string, PanelChoice>();
    for (const { name, value } of this.input.panels?.value ?? []) {
      const input = value.value;
      const dowels = this.#distinct(input.dowels);
      const bands: Partial<Record<EdgeName, Located<string>>> = {};
      for (const edge of ['front', 'back', 'reference-end', 'far-end'] as const) {
        const band = input.bands?.value[edge];
        if (band !== undefined) bands[edge] = band;
      }
      panels.set(name.value, {
        key: name,
        ...(input.board && { board: input.board }),
        ...(input.rows && { rows: input.rows }),
        ...(input['row-offset'] && { rowOffset: input['row-offset'] }),
        ...(input.joint && { joint: input.joint }),
        ...(dowels && { dowels }),
        ...(input['face-depth'] && { faceDepth: input['face-depth'] }),
        ...(input['end-depth'] && { endDepth: input['end-depth'] }),
        bands,
      });
    }
    return panels;
  }

  /** A place that is written twice in a list is one bore: the second is told and left out. */
  #distinct<L extends Located<readonly Located<Micrometres>[]>>(places: L | undefined): L | undefined {
    if (places === undefined) return undefined;
    const twice = places.value.filter((one, i) => places.value.findIndex(({ value }) => value === one.value) < i);
    for (const { value, place, path } of twice) {
      const length = showLength(value, this.head.unit);
      const repairs = [preferred(`Take the second ${length} out`, { kind: 'remove', part: place.part, path })];
      const message = `${length} stands in this list already; one bore is made there. Take it out, or write another place.`;
      this.findings.push(errorAt('value-wrong', place, message, { repairs }));
    }
    return twice.length === 0 ? places : { ...places, value: places.value.filter((one) => !twice.includes(one)) };
  }

  #checkPanelKeys(spec: CarcassSpec): void {
    const keys = panelKeys(spec);
    for (const { key } of spec.panels.values()) {
      if (keys.includes(key.value)) continue;
      const near = nearestName(
        key.value,
        keys.filter((known) => !spec.panels.has(known)),
      );
      const guess = near === null ? `It has: ${keys.join(', ')}.` : `Did you mean \`${near}\`?`;
      const repairs =
        near === null
          ? []
          : [preferred(`Rename to ${near}`, { kind: 'rename-key', part: 'self', path: key.path, text: near })];
      this.findings.push(
        errorAt('panel-unknown', key.place, `This carcass has no panel ${quoted(key.value)}. ${guess}`, { repairs }),
      );
    }
  }
}

/** The keys that `panels` of a carcass may have. Where there are bays, a shelf's key alone means it in every bay. */
export function panelKeys(spec: CarcassSpec): readonly string[] {
  const bays = spec.dividers.length === 0 ? [] : Array.from({ length: spec.dividers.length + 1 }, (_, i) => i + 1);
  const perBay = (shelf: ShelfSpec): readonly string[] => [
    shelf.key,
    ...bays.filter((bay) => shelf.bay === null || shelf.bay.value === bay).map((bay) => `${shelf.key}-bay-${bay}`),
  ];
  return [
    'left',
    'right',
    'bottom',
    ...(spec.top.value === 'rails' ? ['rail-front', 'rail-back'] : ['top']),
    ...spec.dividers.map((divider) => divider.key),
    ...spec.fixedShelves.flatMap(perBay),
    ...spec.looseShelves.flatMap(perBay),
    ...(spec.back.how.value === 'none' ? [] : ['back']),
    ...(spec.plinth.value > 0 ? ['plinth'] : []),
  ];
}

/** A worktop closes what stands under it; every other carcass has a top of its own. */
/** How a carcass is closed above where nobody says. */
export function usualTop(kind: CarcassKind): 'between' | 'rails' {
  return kind === 'base' || kind === 'drawer' ? 'rails' : 'between';
}

/** Which rows a carcass has where nobody says. */
export function usualRows(kind: CarcassKind, hasLooseShelves: boolean): RowChoice {
  return kind !== 'open' || hasLooseShelves ? 'both' : 'none';
}
