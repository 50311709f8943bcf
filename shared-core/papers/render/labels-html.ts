import type { LettersUsed } from '../../drawing/render/embedded-face.js';
import { lookClass, printStyle } from '../../drawing/render/print-style.js';
import { WIDE_LINE } from '../../drawing/render/print-look.js';
import { coordinate, fileNodes, type SvgNode } from '../../drawing/render/svg-tree.js';
import { writeNode } from '../../drawing/render/write-node.js';
import type { Labels } from '../paper.js';

/** What a print of label sheets leaves out, and the size of their pages. */
export function labelStyle({ sheet }: Labels<string>): string {
  const size = `${coordinate(sheet.width)}mm ${coordinate(sheet.height)}mm`;
  return `  .label-sheet { display: block; margin: 1rem 0; border: 1px dashed #bbb; }
  @page { size: ${size}; margin: 0; }
  @media print { body { margin: 0; padding: 0; max-width: none; } h1, p { display: none; } .label-sheet { border: 0; margin: 0; break-after: page; } }
${printStyle(1, WIDE_LINE.panel)}
`;
}

/** Each sheet as a drawing of its own, as large as the sheet. */
export function labelSheetsHtml({ sheet, labels }: Labels<string>, used: LettersUsed): string {
  const many = sheet.places.length;
  return Array.from({ length: Math.ceil(labels.length / many) }, (_, at) => {
    const here = labels.slice(at * many, (at + 1) * many);
    const [width, height] = [coordinate(sheet.width), coordinate(sheet.height)];
    const root: SvgNode = {
      tag: 'svg',
      key: `sheet-${at}`,
      attributes: {
        class: `borewright-drawing ${lookClass(1, WIDE_LINE.panel)} label-sheet`,
        width: `${width}mm`,
        height: `${height}mm`,
        viewBox: `0 0 ${width} ${height}`,
      },
      children: here.map(({ about, shapes }, index): SvgNode => {
        const { x, y } = sheet.places[index]!;
        return {
          tag: 'g',
          key: `label-${index}`,
          attributes: { role: 'img', 'aria-label': about, transform: `translate(${coordinate(x)} ${coordinate(y)})` },
          children: fileNodes({ shapes, scale: 1 }),
        };
      }),
    };
    used.add(root);
    return writeNode(root);
  }).join('\n');
}
