import { tell } from '../../../words/message.js';
import { say } from '../messages.js';
import { SCALES } from '../../../drawing/scene/scale.js';
import type { Picture } from '../../paper.js';
import type { Flow, Piece } from './flow.js';
import type { Fonts } from './fonts.js';
import { hex } from './pen.js';
import { drawScene } from './scene.js';
import { TEXT } from './text-pieces.js';

/** So much larger is a drawing that is true to no scale, where there is room. */
const LARGER = 1.4;

/** A drawing at its own scale where it goes on the page, else so much smaller; its name and scale stand under it. */
export function picturePiece(
  { name, scene }: Picture<string>,
  fonts: Fonts,
  room: Pick<Flow, 'width' | 'height'>,
): Piece {
  const { frame, scale } = scene;
  const under = TEXT * 2.2;
  // What is true to no scale may as well be large.
  const most = SCALES.some((one) => one === scale) ? 1 : LARGER;
  const shrink = Math.min(
    most,
    room.width / (frame.width / scale),
    (room.height - under - 30) / (frame.height / scale),
  );
  const height = (frame.height / scale) * shrink;
  const left = (room.width - (frame.width / scale) * shrink) / 2;
  const isToScale = shrink === 1 && SCALES.some((one) => one === scale);
  const words = tell(isToScale ? say.toScale({ name, scale }) : say.notToScale({ name }), 'mm');
  return {
    height: height + under,
    above: 3,
    leads: false,
    draw(pen, x, y) {
      drawScene(pen, scene, x + left, y, shrink);
      const line = fonts.wrapped(words, TEXT, false, room.width)[0]!;
      pen.text(line, x + room.width / 2, y + height + TEXT * 1.5, {
        size: TEXT,
        anchor: 'middle',
        colour: hex('#555555'),
      });
    },
  };
}
