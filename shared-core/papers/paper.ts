import type { Scene } from '../drawing/scene/scene.js';

/**
 * A paper as data: what it says, in the order to read it. How it looks (columns padded with spaces, a page, a print)
 * is left to the renderers, so that none of it stands in the text. All text is plain, in the reader's words and units.
 */
export interface Paper {
  /** '' where it has none. */
  readonly title: string;
  readonly blocks: readonly Block[];
}

export type Block = Heading | Paragraph | List | Cautions | Figures | Table | Picture;

export interface Heading {
  readonly kind: 'heading';
  /** 1 for a part that stands by itself, and may have a page of its own; 2 and 3 for what is in it. */
  readonly level: 1 | 2 | 3;
  readonly text: string;
  /** What stands at the other end of the line; '' for nothing. */
  readonly aside: string;
}

export interface Paragraph {
  readonly kind: 'paragraph';
  readonly text: string;
}

/** Things that are told one by one, each to be found by itself. */
export interface List {
  readonly kind: 'list';
  readonly items: readonly string[];
}

/** What to mind so that nobody is hurt, in the order in which it is met. */
export interface Cautions {
  readonly kind: 'cautions';
  readonly items: readonly string[];
}

/** Named figures: what is to be set, measured or held. */
export interface Figures {
  readonly kind: 'figures';
  readonly figures: readonly NamedFigure[];
  /** What goes for all of them; '' for nothing. */
  readonly note: string;
}

export interface NamedFigure {
  readonly name: string;
  /** With its unit. */
  readonly value: string;
  /** From where to where it is measured; '' where the name says it. */
  readonly about: string;
  /** What the paper draws the eye to. */
  readonly marked: boolean;
  /** What is done about it, a sentence each. */
  readonly doing: readonly string[];
}

export interface Table {
  readonly kind: 'table';
  readonly columns: readonly Column[];
  /** As many cells as columns. null: as in the row above, not said again. */
  readonly rows: readonly (readonly (string | null)[])[];
}

export interface Column {
  readonly head: string;
  /** Figures stand with their ends under each other. */
  readonly figures: boolean;
}

export interface Picture {
  readonly kind: 'picture';
  readonly name: string;
  /** What it shows, for a reader who cannot see it. */
  readonly about: string;
  readonly scene: Scene;
  /** The file that has it, by its path from the paper's; null where it stands in the paper itself. */
  readonly file: string | null;
}

export const heading = (level: Heading['level'], text: string, aside = ''): Heading => ({
  kind: 'heading',
  level,
  text,
  aside,
});
export const paragraph = (text: string): Paragraph => ({ kind: 'paragraph', text });
/** A list; nothing where there is nothing to list. */
export const list = (items: readonly string[]): readonly List[] =>
  items.length === 0 ? [] : [{ kind: 'list', items }];
export const column = (head: string): Column => ({ head, figures: false });
export const figuresColumn = (head: string): Column => ({ head, figures: true });
