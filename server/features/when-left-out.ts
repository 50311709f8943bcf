import type { Path } from '../../shared-core/document/place.js';
import { usualRows, usualTop } from '../../shared-core/job/carcass.js';
import type { Unit } from '../../shared-core/length/units.js';
import { showLength } from '../../shared-core/length/show.js';
import { KIND_FOR_USE } from '../../shared-core/shop/habits.js';
import type { CarcassKind, Shop } from '../../shared-core/shop/model.js';
import { code } from '../markdown.js';

/** What a carcass has where nobody writes the key at the path; '' where there is nothing to say. `kind`: null in defaults. */
export function whenLeftOut(path: Path, kind: CarcassKind | null, unit: Unit, shop: Shop): string {
  const steps = path.filter((step) => typeof step === 'string');
  const [first = '', second] = steps;
  const said = first === 'panels' ? ofPanel(steps[2]) : ofCarcass(first, second, kind, unit, shop);
  return said === '' ? '' : `When left out: ${said}.`;
}

function ofPanel(key: string | undefined): string {
  return key === undefined ? '' : 'as in the rest of the carcass';
}

function ofCarcass(
  key: string,
  inner: string | undefined,
  kind: CarcassKind | null,
  unit: Unit,
  { habits }: Shop,
): string {
  const show = (length: number): string => showLength(length, unit);
  switch (key) {
    case 'height': {
      const size = kind === null ? null : habits.sizes[kind];
      if (size === null) return 'the shop’s usual height of the kind';
      if (size.height !== null) return `${show(size.height)}, the shop’s usual height of a ${kind} carcass`;
      return `${size.pitches} pitches of ${show(habits.pitch)} and the thickness of the side, so that rows come out balanced`;
    }
    case 'depth':
      return kind === null
        ? 'the shop’s usual depth of the kind'
        : `${show(habits.sizes[kind].depth)}, the shop’s usual depth of a ${kind} carcass`;
    case 'board':
      return `${code(habits.board)}, the shop’s usual board`;
    case 'band':
      return `${code(habits.band)}, the shop’s usual band`;
    case 'joint':
      return `${code(habits.joint)}, the shop’s usual fitting`;
    case 'top':
      return kind === null ? 'what suits the kind' : code(usualTop(kind));
    case 'bottom':
      return code('between');
    case 'rail-width':
      return show(habits.railWidth);
    case 'plinth':
      return 'none';
    case 'back':
      return ofBack(inner, habits, show);
    case 'rows':
      if (kind === null) return 'what suits the kind';
      return usualRows(kind, true) === usualRows(kind, false)
        ? code(usualRows(kind, true))
        : `${code(usualRows(kind, true))} with loose shelves, else ${code(usualRows(kind, false))}`;
    case 'row-offset':
      return habits.rowOffset === null ? 'half the nominal thickness of the side' : show(habits.rowOffset);
    case 'row-setback':
      return show(habits.setback);
    case 'rear-row':
      return 'as far back as the pitch and the shop’s rear margin allow';
    case 'dowels':
      return 'the places that the spindles of the shop’s vertical head give';
    case 'machines':
      return ofMachines(inner, habits);
    case 'dividers':
      return inner === undefined ? 'none' : ofShelf(inner, '');
    case 'fixed-shelves':
      return inner === undefined ? 'none' : ofShelf(inner, show(0));
    case 'loose-shelves':
      return inner === undefined ? 'none' : ofShelf(inner, show(habits.shelfSetback));
    default:
      return '';
  }
}

function ofBack(key: string | undefined, habits: Shop['habits'], show: (length: number) => string): string {
  switch (key) {
    case 'board':
      return `${code(habits.backBoard)}, the shop’s usual board of backs`;
    case 'groove':
      return show(habits.grooveDepth);
    case 'inset':
      return show(habits.backInset);
    default:
      return code('grooved');
  }
}

function ofMachines(use: string | undefined, { machines }: Shop['habits']): string {
  if (use === undefined || !Object.hasOwn(KIND_FOR_USE, use)) return 'the shop’s usual machines';
  const name = machines[use as keyof typeof KIND_FOR_USE];
  return name === null ? '' : `${code(name)}, the shop’s usual one`;
}

function ofShelf(key: string, setback: string): string {
  switch (key) {
    case 'bay':
      return 'one in every bay';
    case 'board':
      return 'the board of the carcass';
    case 'setback':
      return setback;
    default:
      return '';
  }
}
