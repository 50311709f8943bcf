/** A printed page upright, in millimetres. */
export interface PageSize {
  readonly width: number;
  readonly height: number;
}

/** Pages that shops print on. A4: ISO 216. Letter: 8 1/2 by 11 inches (ANSI/ASME Y14.1, size A). */
export const PAGE_SIZES = {
  a4: { width: 210, height: 297 },
  letter: { width: 215.9, height: 279.4 },
} as const satisfies Readonly<Record<string, PageSize>>;

export type PageName = keyof typeof PAGE_SIZES;
