import type { PDFDocument } from '@cantoo/pdf-lib';
import type { Labels } from '../../paper.js';
import { POINTS_PER_MM, type Fonts } from './fonts.js';
import { Pen } from './pen.js';
import { drawScene } from './scene.js';

/** Sheets of labels, true to size and with nothing else on them. */
export function labelPages(document: PDFDocument, fonts: Fonts, { sheet, labels }: Labels<string>): void {
  const many = sheet.places.length;
  labels.forEach(({ shapes }, index) => {
    if (index % many === 0) document.addPage([sheet.width * POINTS_PER_MM, sheet.height * POINTS_PER_MM]);
    const pen = new Pen(document.getPage(document.getPageCount() - 1), fonts);
    const { x, y, width, height } = sheet.places[index % many]!;
    drawScene(pen, { view: 'panel', scale: 1, frame: { x: 0, y: 0, width, height }, shapes }, x, y, 1);
  });
}
