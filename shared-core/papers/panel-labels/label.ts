import { CAP_HEIGHT, DESCENT, fitText, textWidth } from '../../drawing/scene/lettering.js';
import type { CodeShape, Shape } from '../../drawing/scene/scene.js';
import type { Panel } from '../../carcass/model.js';
import { QUIET } from './code.js';
import { pictogram } from './pictogram.js';

/** A line of a label, before it is known how much room there is. */
export interface Line {
  readonly text: string;
  /** Height of its capitals, in millimetres. */
  readonly height: number;
  readonly strong: boolean;
}

export interface LabelContent {
  readonly panel: Panel;
  /** From the top; the first names the panel. */
  readonly lines: readonly Line[];
  readonly code: CodeShape['dark'] | null;
}

/** Kept free about what a label says, as no printer meets a label to the millimetre. */
const PAD = 2.5;
/** A camera at arm's length reads squares of 0.4 mm (common practice, no source); a code never needs to be larger. */
const CODE = { share: 0.55, most: 25 };
const LEADING = 1.55;
/** How much larger or smaller the lettering is made to fill the label, before words are cut off. */
const SIZES = [1.4, 1.2, 1, 0.9, 0.8, 0.7, 0.62, 0.55] as const;

/**
 * One label, in millimetres from its top left corner: at the left what is to be read, at the right the panel in small and under it
 * the code.
 */
export function labelShapes({ panel, lines, code }: LabelContent, width: number, height: number): readonly Shape[] {
  const size = Math.min(height * CODE.share, width * 0.35, CODE.most);
  const right = width - PAD - size;
  const shapes: Shape[] = [
    ...pictogram(panel, { x: right, y: PAD, width: size, height: height - 2 * PAD - size - 0.5 }),
    ...written(lines, right - PAD - 2, height - 2 * PAD),
  ];
  if (code !== null) {
    // The blank border is counted in; at its outer side it may lie in the margin of the label.
    const square = size / (code.length + QUIET);
    shapes.push({
      kind: 'code',
      key: 'code',
      class: 'code',
      panel: panel.key,
      x: right + (QUIET - 1) * square,
      y: height - PAD - size + (QUIET - 1) * square,
      size: code.length * square,
      dark: code,
    });
  }
  return shapes;
}

/** The lines one under the other, broken and made smaller until they go into the room; only then cut off. */
function written(lines: readonly Line[], width: number, height: number): readonly Shape[] {
  const step = ({ height: capitals }: Line, by: number): number => capitals * LEADING * by;
  const broken = (by: number): readonly Line[] =>
    lines.flatMap((line) =>
      wrapped(line.text, width, line.height * by, line.strong).map((text) => ({ ...line, text })),
    );
  const needed = (by: number): number => broken(by).reduce((sum, line) => sum + step(line, by), 0);
  const by = SIZES.find((one) => needed(one) <= height) ?? SIZES[SIZES.length - 1]!;
  const shapes: Shape[] = [];
  let y = PAD;
  broken(by).forEach((line, index, all) => {
    const capitals = line.height * by;
    const next = all[index + 1];
    if (y + step(line, by) > PAD + height + 1e-9) return;
    const isCut = next !== undefined && y + step(line, by) + step(next, by) > PAD + height + 1e-9;
    shapes.push({
      kind: 'text',
      key: `line-${index}`,
      class: 'panel-name',
      panel: '',
      text: fitText(isCut ? `${line.text} …` : line.text, capitals, line.strong, width),
      x: PAD,
      y: y + capitals + (step(line, by) - capitals * (1 + DESCENT / CAP_HEIGHT)) / 2,
      height: capitals,
      anchor: 'start',
      turn: 0,
      strong: line.strong,
    });
    y += step(line, by);
  });
  return shapes;
}

/** Lines no wider than `room`; a word that is wider by itself is broken within. */
function wrapped(text: string, room: number, capitals: number, strong: boolean): readonly string[] {
  const fits = (line: string): boolean => textWidth(line, capitals, strong) <= room;
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(' ')) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (fits(longer)) {
      line = longer;
      continue;
    }
    if (line !== '') lines.push(line);
    line = '';
    for (const letter of word) {
      if (line !== '' && !fits(line + letter)) {
        lines.push(line);
        line = '';
      }
      line += letter;
    }
  }
  return [...lines, line];
}
