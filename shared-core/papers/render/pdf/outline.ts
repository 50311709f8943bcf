import { PDFHexString, PDFName, type PDFDocument, type PDFRef } from '@cantoo/pdf-lib';
import type { Mark } from './flow.js';
import { POINTS_PER_MM } from './fonts.js';

/** A place in the document that a reader is led to: a page, counted from 0, and millimetres from its upper edge. */
export interface Target {
  readonly page: number;
  readonly y: number;
}

interface Entry extends Target {
  readonly mark: Mark;
  readonly ref: PDFRef;
  readonly within: Entry[];
}

/** Bookmarks of headings, each under the one before it that is of a greater part (ISO 32000-1, 12.3.3). */
export function addOutline(document: PDFDocument, marks: readonly (Target & { readonly mark: Mark })[]): void {
  if (marks.length === 0) return;
  const { context } = document;
  const top: Entry[] = [];
  const open: Entry[] = [];
  for (const { mark, page, y } of marks) {
    const entry: Entry = { mark, page, y, ref: context.nextRef(), within: [] };
    while (open.length > 0 && open.at(-1)!.mark.level >= mark.level) open.pop();
    (open.at(-1)?.within ?? top).push(entry);
    open.push(entry);
  }
  const root = context.nextRef();
  write(document, top, root);
  context.assign(root, context.obj({ Type: 'Outlines', ...ends(top), Count: top.length }));
  document.catalog.set(PDFName.of('Outlines'), root);
}

/** Entries are closed: a negative count says how many there are in one. */
function write(document: PDFDocument, entries: readonly Entry[], parent: PDFRef): void {
  const { context } = document;
  entries.forEach(({ mark, ref, within, page, y }, i) => {
    const before = entries[i - 1];
    const after = entries[i + 1];
    context.assign(
      ref,
      context.obj({
        Title: PDFHexString.fromText(mark.text),
        Parent: parent,
        ...(before !== undefined && { Prev: before.ref }),
        ...(after !== undefined && { Next: after.ref }),
        ...(within.length > 0 && { ...ends(within), Count: -within.length }),
        Dest: destination(document, { page, y }),
      }),
    );
    write(document, within, ref);
  });
}

const ends = (entries: readonly Entry[]): { readonly First: PDFRef; readonly Last: PDFRef } => ({
  First: entries[0]!.ref,
  Last: entries.at(-1)!.ref,
});

/** The place at the upper edge of the window, nothing zoomed. */
function destination(document: PDFDocument, { page, y }: Target) {
  const of = document.getPage(page);
  return document.context.obj([of.ref, 'XYZ', null, of.getHeight() - Math.max(0, y - 3) * POINTS_PER_MM, null]);
}

/** Has a click on a part of a page, in millimetres from its upper left corner, lead somewhere. */
export function addLink(
  document: PDFDocument,
  page: number,
  { x, y, width, height }: { readonly x: number; readonly y: number; readonly width: number; readonly height: number },
  target: Target,
): void {
  const on = document.getPage(page);
  const top = on.getHeight() - y * POINTS_PER_MM;
  const rect = [x * POINTS_PER_MM, top - height * POINTS_PER_MM, (x + width) * POINTS_PER_MM, top];
  const link = document.context.obj({
    Type: 'Annot',
    Subtype: 'Link',
    Rect: rect,
    Border: [0, 0, 0],
    Dest: destination(document, target),
  });
  on.node.addAnnot(document.context.register(link));
}
