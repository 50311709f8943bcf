/** A kind of rectangle to be cut from one sheet. Sizes in any one whole unit; fixed orientation. */
export interface Rectangle {
  readonly length: number;
  readonly width: number;
  /** What one copy is worth; not negative. */
  readonly value: number;
  /** Greatest number of copies. */
  readonly most: number;
}

/** One sheet to be cut by guillotine cuts in any number of stages, without kerf, so that the copies are worth most. */
export interface OneSheet {
  readonly length: number;
  readonly width: number;
  readonly rectangles: readonly Rectangle[];
}

/** A guillotine pattern: a rectangle of its list, or two patterns side by side along the length or along the width. */
export type Pattern =
  | { readonly kind: 'rectangle'; readonly index: number; readonly length: number; readonly width: number }
  | {
      readonly kind: 'beside' | 'above';
      readonly first: Pattern;
      readonly second: Pattern;
      readonly length: number;
      readonly width: number;
    };
