import type { Box, PrintedScene, Shape } from '../drawing/scene/scene.js';
import { asItIs, type Told } from '../words/told.js';

/**
 * A paper as data: what it says, in the order to read it. How it looks (columns padded with spaces, a page, a print)
 * is left to the renderers, so that none of it stands in the text. All text is plain, in the reader's words and units, and comes
 * out of a table of words or stands as it is (`Told`); a renderer takes any text (`Paper<string>`).
 */
export interface Paper<T extends string = Told> {
  /** '' where it has none. */
  readonly title: T | '';
  readonly blocks: readonly Block<T>[];
}

export type Block<T extends string = Told> =
  Heading<T> | Paragraph<T> | List<T> | Cautions<T> | Figures<T> | Table<T> | Picture<T> | Labels<T>;

export interface Heading<T extends string = Told> {
  readonly kind: 'heading';
  /** 1 for a part that stands by itself, and may have a page of its own; 2 and 3 for what is in it. */
  readonly level: 1 | 2 | 3;
  readonly text: T;
  /** What stands at the other end of the line; '' for nothing. */
  readonly aside: T | '';
}

export interface Paragraph<T extends string = Told> {
  readonly kind: 'paragraph';
  readonly text: T;
}

/** Things that are told one by one, each to be found by itself. */
export interface List<T extends string = Told> {
  readonly kind: 'list';
  readonly items: readonly T[];
}

/** What to mind so that nobody is hurt, in the order in which it is met. */
export interface Cautions<T extends string = Told> {
  readonly kind: 'cautions';
  readonly items: readonly T[];
}

/** Named figures: what is to be set, measured or held. */
export interface Figures<T extends string = Told> {
  readonly kind: 'figures';
  readonly figures: readonly NamedFigure<T>[];
  /** What goes for all of them; '' for nothing. */
  readonly note: T | '';
}

export interface NamedFigure<T extends string = Told> {
  readonly name: T;
  /** With its reader. */
  readonly value: T;
  /** From where to where it is measured; '' where the name says it. */
  readonly about: T | '';
  /** What the paper draws the eye to. */
  readonly marked: boolean;
  /** What is done about it, a sentence each. */
  readonly doing: readonly T[];
}

/** What stands in a cell; '' for nothing, null as in the row above, not said again. */
export type Cell<T extends string = Told> = T | '' | null;

export interface Table<T extends string = Told> {
  readonly kind: 'table';
  readonly columns: readonly Column<T>[];
  /** As many cells as columns. */
  readonly rows: readonly (readonly Cell<T>[])[];
}

export interface Column<T extends string = Told> {
  readonly head: T | '';
  /** Figures stand with their ends under each other. */
  readonly figures: boolean;
}

export interface Picture<T extends string = Told> {
  readonly kind: 'picture';
  readonly name: T;
  /** What it shows, for a reader who cannot see it. */
  readonly about: T;
  readonly scene: PrintedScene;
  /** The file that has it, by its path from the paper's; null where it stands in the paper itself. */
  readonly file: string | null;
}

/**
 * Labels on sheets of labels. Where they are printed, nothing else of the paper is: a sheet of labels has no room for it. Forms
 * that cannot show them have the table.
 */
export interface Labels<T extends string = Told> {
  readonly kind: 'labels';
  readonly sheet: LabelPage;
  /** Each drawn in millimetres from the top left corner of its label. */
  readonly labels: readonly DrawnLabel<T>[];
  readonly table: Table<T>;
}

/** Where the labels stand on each sheet, in millimetres from its top left corner, in the order to fill them. */
export interface LabelPage {
  readonly width: number;
  readonly height: number;
  readonly places: readonly Box[];
}

export interface DrawnLabel<T extends string = Told> {
  /** What it says, for a reader who cannot see it. */
  readonly about: T;
  readonly shapes: readonly Shape[];
}

export const heading = <T extends string>(level: Heading['level'], text: T, aside: T | '' = ''): Heading<T> => ({
  kind: 'heading',
  level,
  text,
  aside,
});
export const paragraph = <T extends string>(text: T): Paragraph<T> => ({ kind: 'paragraph', text });
/** A list; nothing where there is nothing to list. */
export const list = <T extends string>(items: readonly T[]): readonly List<T>[] =>
  items.length === 0 ? [] : [{ kind: 'list', items }];
export const column = <T extends string>(head: T): Column<T> => ({ head, figures: false });
export const figuresColumn = <T extends string>(head: T): Column<T> => ({ head, figures: true });
/** A box to tick, in a cell. */
export const TICK = asItIs('☐');
/** Room to write a figure by hand, in a cell. */
export const BLANK = asItIs('____________');
/** A column whose cells say themselves what they are. */
export const UNNAMED: Column = { head: '', figures: false };
