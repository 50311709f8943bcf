import { figure } from '../../length/show.js';
import type { Reader } from '../../length/reader.js';
import type { Micrometres } from '../../length/units.js';
import { textWidth } from '../../drawing/scene/lettering.js';
import { scaleFor } from '../../drawing/scene/scale.js';
import type { LineType, PathShape, PrintedScene, Shape, TextShape } from '../../drawing/scene/scene.js';
import type { CutSize } from '../../sheets/cut-list.js';
import type { Part } from '../../sheets/model.js';
import { letters } from '../letters.js';
import { tell } from '../../words/message.js';
import { asItIs } from '../../words/told.js';
import { say } from './messages.js';
import type { NumberedSheets } from './numbered.js';
import { pictureScene } from '../picture-scene.js';

/** Room of a sheet on paper, in millimetres. */
const ROOM = { width: 170, height: 110 };
const HEIGHT = 2.5;
/** For a piece that is too narrow for the other: still as high as the figures of a tape measure. */
const SMALL = 1.8;

/** One sheet with its pieces: letters and cut sizes of the list, what is kept of it, and what is waste (crossed). */
export function sheetScene(
  { sheet, offcuts }: NumberedSheets,
  sizes: readonly CutSize[],
  reader: Reader,
): PrintedScene {
  const { stock, part } = sheet;
  const { length, width } = part.size;
  const scale = Math.max(scaleFor(length / 1000, ROOM.width), scaleFor(width / 1000, ROOM.height));
  const shapes: Shape[] = [];
  draw(part, '', shapes, { sizes, offcuts, reader, scale, height: width });
  return pictureScene(asItIs(stock), shapes, scale, 1, reader);
}

interface Drawing {
  readonly sizes: readonly CutSize[];
  readonly offcuts: NumberedSheets['offcuts'];
  readonly reader: Reader;
  readonly scale: number;
  /** Of the sheet: y of the layout runs up, that of the page down. */
  readonly height: Micrometres;
}

function draw(part: Part, key: string, shapes: Shape[], drawing: Drawing): void {
  const { at, size } = part;
  const box = {
    left: at.x / 1000,
    right: (at.x + size.length) / 1000,
    top: (drawing.height - at.y - size.width) / 1000,
    bottom: (drawing.height - at.y) / 1000,
  };
  const path = (
    name: string,
    line: LineType,
    fill: PathShape['fill'],
    points: readonly (readonly [number, number])[],
  ): PathShape => ({
    kind: 'path',
    key: `sheet${key}:${name}`,
    class: 'panel',
    panel: '',
    line,
    fill,
    closed: points.length > 2,
    points: points.map(([x, y]) => ({ x, y })),
  });
  const around = [
    [box.left, box.top],
    [box.right, box.top],
    [box.right, box.bottom],
    [box.left, box.bottom],
  ] as const;
  switch (part.kind) {
    case 'cut':
      if (key === '') shapes.push(path('sheet', 'outline', 'paper', around));
      part.parts.forEach((inner, i) => draw(inner, `${key}.${i + 1}`, shapes, drawing));
      return;
    case 'offcut':
      shapes.push(path('offcut', 'thin', 'paper', around));
      if (part.kept) {
        const names = tell(say.offcut({ names: drawing.offcuts.get(part) ?? [] }), drawing.reader);
        label(names, sizeWords(part, drawing.reader), key, box, shapes, drawing.scale);
      } else
        shapes.push(
          path('waste', 'thin', 'none', [
            [box.left, box.bottom],
            [box.right, box.top],
          ]),
        );
      return;
    case 'piece':
      shapes.push(path('piece', 'fine', 'board', around));
      label(letters(Number(part.piece)), sizeWords(part, drawing.reader), key, box, shapes, drawing.scale);
  }
}

function sizeWords({ size }: Part, reader: Reader): string {
  return `${figure(size.length, reader)} × ${figure(size.width, reader)}`;
}

interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** In the middle of a part: the letter and under it the size, along the longer side, each where it has room; small where it has little. */
function label(first: string, second: string, key: string, box: Box, shapes: Shape[], scale: number): void {
  const [across, down] = [box.right - box.left, box.bottom - box.top];
  const turned = down > across;
  const extent = { along: (turned ? down : across) / scale, over: (turned ? across : down) / scale };
  const height = extent.over < HEIGHT * 1.6 + 1 ? SMALL : HEIGHT;
  if (extent.over < height + 0.4) return;
  const room = extent.along - (height === SMALL ? 0.6 : 2);
  const rows = Math.max(1, Math.floor((extent.over - 1) / (height * 1.6)));
  const wanted = [first, second].filter((words) => words !== '' && textWidth(words, height, words === first) <= room);
  const lines = rows < wanted.length && wanted.length === 2 ? oneLine(wanted, height, room) : wanted;
  const middle = { x: (box.left + box.right) / 2, y: (box.top + box.bottom) / 2 };
  lines.forEach((words, i) => {
    const off = ((i - (lines.length - 1) / 2) * height * 1.6 + height / 2) * scale;
    const text: TextShape = {
      kind: 'text',
      key: `sheet${key}:text-${i}`,
      class: 'label',
      panel: '',
      text: words,
      x: middle.x + (turned ? off : 0),
      y: middle.y + (turned ? 0 : off),
      height,
      anchor: 'middle',
      turn: turned ? -90 : 0,
      strong: i === 0 && words === first,
    };
    shapes.push(text);
  });
}

function oneLine(words: readonly string[], height: number, room: number): readonly string[] {
  const joined = words.join('  ');
  return textWidth(joined, height, false) <= room ? [joined] : words.slice(0, 1);
}
