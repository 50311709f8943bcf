import { PDFDocument } from '@cantoo/pdf-lib';
import type { Block, Heading, Paper } from '../../paper.js';
import { Flow, MARGIN, type Piece } from './flow.js';
import { Fonts, type FontFiles } from './fonts.js';
import type { PageSize } from '../page-size.js';
import { labelPages } from './label-pages.js';
import { hex } from './pen.js';
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
 * A paper as a PDF to be printed: fonts embedded, each part on a page of its own, tables with their heads on every page, page
 * numbers, and bookmarks of its headings. Same paper, same bytes. A drawing is true to its scale where a page has room for it.
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
  const flow = new Flow(document, fonts, page);
  flow.add(allPieces(title, blocks, fonts, flow));
  if (flow.pages === 0) flow.open();
  for (let index = 0; index < flow.pages; index += 1) {
    const foot = page.height - MARGIN + 2;
    const look = { size: TEXT * 0.9, colour: hex('#555555') };
    const pen = flow.pen(index);
    const number = `${index + 1} / ${flow.pages}`;
    const room = flow.width - fonts.width(number, look.size, false) - 6;
    pen.text(fonts.wrapped(title, look.size, false, room)[0]!, MARGIN, foot, look);
    pen.text(number, page.width - MARGIN, foot, { ...look, anchor: 'end' });
  }
  return document.save({ useObjectStreams: true });
}

/** What stands under a heading of the third level goes to the next page with it where the page has room for all of it. */
function allPieces(title: string, blocks: readonly Block<string>[], fonts: Fonts, flow: Flow): readonly Piece[] {
  const [first] = blocks;
  const opens: readonly Block<string>[] =
    title === '' || (first?.kind === 'heading' && first.level === 1)
      ? blocks
      : [{ kind: 'heading', level: 1, text: title, aside: '' } satisfies Heading<string>, ...blocks];
  const pieces: Piece[] = [];
  let group: Piece[] = [];
  const close = (): void => {
    const height = group.reduce((sum, one) => sum + one.above + one.height, 0);
    const isWhole = height <= flow.height;
    pieces.push(...group.map((one, i) => (isWhole && i < group.length - 1 ? { ...one, leads: true } : one)));
    group = [];
  };
  let grouping = false;
  for (const block of opens) {
    if (block.kind === 'heading') {
      close();
      grouping = block.level === 3;
    }
    const made = piecesOf(block, fonts, flow);
    if (grouping) group.push(...made);
    else pieces.push(...made);
  }
  close();
  return pieces;
}
