import { PDFDocument } from '@cantoo/pdf-lib';
import type { Block, Heading, Paper } from '../../paper.js';
import { withContents, type ContentsLine } from './contents.js';
import { heightOf, MARGIN, placed, roomOn, type Mark, type Piece, type Placed, type Room } from './flow.js';
import { Fonts, POINTS_PER_MM, type FontFiles } from './fonts.js';
import type { PageSize } from '../page-size.js';
import { labelPages } from './label-pages.js';
import { addLink, addOutline } from './outline.js';
import { packed } from './parts.js';
import { hex, Pen } from './pen.js';
import { piecesOf } from './pieces.js';
import { TEXT } from './text-pieces.js';

export interface PdfOptions {
  readonly page: PageSize;
  readonly fonts: FontFiles;
  /** What a reader calls the language of the paper: 'en'. */
  readonly language: string;
}

/** The core has no clock, and the same paper is to give the same bytes. */
const NO_DATE = new Date(0);

/**
 * A paper as a PDF to be printed: fonts embedded, each part on a page of its own where it does not go on one with others, tables
 * with their heads on every page, page numbers, bookmarks of its headings, and of a long paper a list of its parts with their
 * pages. Same paper, same bytes. A drawing is true to its scale where a page has room for it.
 */
export async function asPdf(
  { title, blocks }: Paper<string>,
  { page, fonts: files, language }: PdfOptions,
): Promise<Uint8Array> {
  const document = await PDFDocument.create({ updateMetadata: false });
  document.setTitle(title, { showInWindowTitleBar: true });
  document.setLanguage(language);
  document.setProducer('Borewright');
  document.setCreator('Borewright');
  document.setCreationDate(NO_DATE);
  document.setModificationDate(NO_DATE);
  const fonts = await Fonts.embed(document, files);
  const labels = blocks.filter((block) => block.kind === 'labels');
  if (labels.length > 0) {
    for (const one of labels) labelPages(document, fonts, one);
    if (document.getPageCount() > 0) return document.save({ useObjectStreams: true });
  }
  draw(document, title, allPieces(title, blocks, fonts, roomOn(page)), fonts, page);
  return document.save({ useObjectStreams: true });
}

/** Places all pieces, then draws them, with what a reader is led by: list of contents, bookmarks, page numbers. */
function draw(document: PDFDocument, title: string, pieces: readonly Piece[], fonts: Fonts, size: PageSize): void {
  const room = roomOn(size);
  let laid = placed(packed(pieces, room), room);
  const targetOf = (mark: Mark): Placed => laid.find(({ piece }) => piece.mark === mark)!;
  const listed = withContents(pieces, laid, fonts, room, (mark) => targetOf(mark).page);
  laid = placed(packed(listed, room), room);
  const pages = Math.max(1, (laid.at(-1)?.page ?? 0) + 1);
  const pens = Array.from({ length: pages }, () => {
    const page = document.addPage([size.width * POINTS_PER_MM, size.height * POINTS_PER_MM]);
    return new Pen(page, fonts);
  });
  for (const { piece, page, y } of laid) {
    piece.draw(pens[page]!, MARGIN, y);
    if (isContentsLine(piece))
      addLink(document, page, { x: MARGIN, y, width: room.width, height: piece.height }, targetOf(piece.leadsTo));
  }
  addOutline(
    document,
    laid.flatMap(({ piece: { mark }, page, y }) => (mark === undefined ? [] : [{ mark, page, y }])),
  );
  pens.forEach((pen, index) => {
    const foot = size.height - MARGIN + 2;
    const look = { size: TEXT * 0.9, colour: hex('#555555') };
    const number = `${index + 1} / ${pages}`;
    const beside = room.width - fonts.width(number, look.size, false) - 6;
    pen.text(fonts.wrapped(title, look.size, false, beside)[0]!, MARGIN, foot, look);
    pen.text(number, size.width - MARGIN, foot, { ...look, anchor: 'end' });
  });
}

const isContentsLine = (piece: Piece): piece is ContentsLine => 'leadsTo' in piece;

/**
 * What stands under a heading of the third level goes to the next page with it where a page has room for all of it; where none has,
 * at least what stands before its picture goes there with the picture.
 */
function allPieces(title: string, blocks: readonly Block<string>[], fonts: Fonts, room: Room): readonly Piece[] {
  const [first] = blocks;
  const opens: readonly Block<string>[] =
    title === '' || (first?.kind === 'heading' && first.level === 1)
      ? blocks
      : [{ kind: 'heading', level: 1, text: title, aside: '' } satisfies Heading<string>, ...blocks];
  const pieces: Piece[] = [];
  let group: Piece[] = [];
  let picture = 0;
  const close = (): void => {
    const led = heightOf(group) <= room.height ? group.length - 1 : picture;
    pieces.push(...group.map((one, i) => (i < led ? { ...one, leads: true } : one)));
    group = [];
    picture = 0;
  };
  let grouping = false;
  opens.forEach((block, index) => {
    if (block.kind === 'heading') {
      close();
      grouping = block.level === 3;
    }
    if (block.kind === 'picture' && picture === 0) picture = group.length;
    const made = piecesOf(block, fonts, room);
    // What is said just before a table is said of it.
    const leads = block.kind === 'paragraph' && opens[index + 1]?.kind === 'table';
    (grouping ? group : pieces).push(...(leads ? made.map((one) => ({ ...one, leads })) : made));
  });
  close();
  return pieces;
}
