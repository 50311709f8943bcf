import type { Part, SheetLayout } from '../../sheets/model.js';

/** Sheets that are cut alike, which are told once. */
export interface NumberedSheets {
  readonly sheet: SheetLayout;
  /** Counted from 1 through all sheets of a board. */
  readonly first: number;
  readonly last: number;
  /** What is kept of them, by the part of the layout: a name for each sheet. */
  readonly offcuts: ReadonlyMap<Part, readonly string[]>;
}

/** The sheets of a board in the order of their numbers; what is kept is called R1, R2 and so on, in short letters to chalk on it. */
export function numbered(sheets: readonly SheetLayout[]): readonly NumberedSheets[] {
  const alike = new Map<string, SheetLayout[]>();
  for (const sheet of sheets) {
    const key = JSON.stringify(sheet);
    alike.set(key, [...(alike.get(key) ?? []), sheet]);
  }
  let last = 0;
  let named = 0;
  return [...alike.values()].map((those) => {
    const first = last + 1;
    last += those.length;
    const [sheet] = those as [SheetLayout];
    const offcuts = new Map(
      keptIn(sheet.part).map((part) => [
        part,
        those.map(() => {
          named += 1;
          return `R${named}`;
        }),
      ]),
    );
    return { sheet, first, last, offcuts };
  });
}

/** What is kept of a sheet, in the order of its cuts. */
function keptIn(part: Part): readonly Part[] {
  if (part.kind === 'cut') return part.parts.flatMap(keptIn);
  return part.kind === 'offcut' && part.kept ? [part] : [];
}
