import { LETTERING } from '../scene/lettering.js';
import { EMBEDDED } from './embedded-face.js';
import { PRINTED, PRINTED_FINDINGS, PRINTED_INK, printedLines } from './print-look.js';
import { coordinate } from './svg-tree.js';

/** Drawings of several scales may stand on one page, each with a style sheet of its own. */
export function lookClass(scale: number, wide: number): string {
  return `look-${Math.round(scale * 1000)}-${Math.round(wide * 100)}`;
}

/**
 * The style sheet of a drawing in print. Inside it one unit is a millimetre of panel, so widths are multiplied by the scale.
 * @param wide width of an outline, in millimetres of paper
 */
export function printStyle(scale: number, wide: number): string {
  const w = (width: number): string => coordinate(width * scale);
  const dash = (width: number, ...steps: readonly number[]): string => steps.map((step) => w(step * width)).join(' ');
  const within = `.${lookClass(scale, wide)} `;
  const rules: readonly [string, string][] = [
    ['.paper', 'fill:#fff'],
    ['path,circle', `fill:none;stroke:${PRINTED_INK};stroke-width:${w(0.25)};stroke-linejoin:round`],
    ...Object.entries(printedLines(wide)).map(([line, { width, colour, dash: steps }]): [string, string] => [
      `.line-${line}`,
      `stroke-width:${w(width)};stroke:${colour}${steps.length > 0 ? `;stroke-dasharray:${dash(width, ...steps)}` : ''}`,
    ]),
    ['.fill-board', 'fill:#fbf7ef'],
    ['.fill-paper', 'fill:#fff'],
    ['.fill-ink', 'fill:#1f1f1f'],
    ['.code', 'fill:#000;stroke:none'],
    ['.centre-line.line-thin', 'stroke:#777'],
    ['.text', `font-family:'${EMBEDDED}',${LETTERING};fill:#1f1f1f;stroke:none`],
    [
      'text.dimension,text.label,text.panel-name',
      `paint-order:stroke;stroke:#fff;stroke-width:${w(0.9)};stroke-linejoin:round`,
    ],
    ['.note', 'fill:#444'],
    ['.strong', 'font-weight:bold'],
    ['.anchor-middle', 'text-anchor:middle'],
    ['.anchor-end', 'text-anchor:end'],
    ['circle.number', 'fill:#fff'],
    ...Object.entries(PRINTED).flatMap(([ink, colour]): [string, string][] => [
      [`.ink-${ink} path,.ink-${ink} circle`, `stroke:${colour}`],
      [`.ink-${ink} .filled`, `fill:${colour};stroke:none`],
    ]),
    ['.bore .rim', `fill:#fff;stroke-width:${w(0.3)}`],
    ['.bore.hidden .rim', 'fill:none'],
    ['.finding .ring', `stroke:${PRINTED_FINDINGS.error};stroke-width:${w(0.5)}`],
    ['.finding .flag', `fill:${PRINTED_FINDINGS.error};stroke:none`],
    ['.finding.warning .ring', `stroke:${PRINTED_FINDINGS.warning};stroke-dasharray:${dash(0.5, 3, 1.5)}`],
    ['.finding.warning .flag', `fill:${PRINTED_FINDINGS.warning}`],
    ['.finding.info .ring', `stroke:${PRINTED_FINDINGS.info};stroke-dasharray:${dash(0.5, 1, 1)}`],
    ['.finding.info .flag', `fill:${PRINTED_FINDINGS.info}`],
    ['.rule', 'stroke-width:0.18'],
    ['.rule.wide', 'stroke-width:0.4'],
    ['.rule.narrow', 'stroke:#bbb'],
  ];
  return rules
    .map(
      ([selector, look]) =>
        `${selector
          .split(',')
          .map((one) => within + one)
          .join(',')}{${look}}`,
    )
    .join('');
}
