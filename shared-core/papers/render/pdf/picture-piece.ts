import { tell } from '../../../words/message.js';
import { say } from '../messages.js';
import { SCALES } from '../../../drawing/scene/scale.js';
import type { Picture } from '../../paper.js';
import { SLACK, type Piece, type Room } from './flow.js';
import type { Fonts } from './fonts.js';
import { hex } from './pen.js';
import { drawScene } from './scene.js';
import { TEXT } from './text-pieces.js';

/** So much larger is a drawing that is true to no scale, where there is room; it is never smaller than it is lettered for. */
const LARGER = 1.4;

/** A drawing at its own scale where it goes on the page, else at the next whole one; its name and scale stand under it. */
export function picturePiece({ name, scene }: Picture<string>, fonts: Fonts, room: Room): Piece {
  const { frame, scale } = scene;
  const under = TEXT * 2.2;
  const fits = Math.min(room.width / (frame.width / scale), (room.height - under - 30) / (frame.height / scale));
  const isTrue = SCALES.some((one) => one === scale);
  // What goes on no page at its own scale goes at the next whole one, so that a rule still reads it.
  const printed = isTrue ? Math.max(scale, Math.ceil(scale / fits - 1e-9)) : scale;
  const words = tell(isTrue ? say.toScale({ name, scale: printed }) : say.notToScale({ name }), 'mm');
  const drawnAt = (shrink: number): Piece => {
    const height = (frame.height / scale) * shrink;
    const left = (room.width - (frame.width / scale) * shrink) / 2;
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
  };
  if (isTrue) return drawnAt(scale / printed);
  const most = Math.min(LARGER, fits);
  const least = Math.min(1, most);
  return {
    ...drawnAt(most),
    least: (frame.height / scale) * least + under,
    within: (height) => {
      const shrink = (height - under) / (frame.height / scale);
      return shrink < least - SLACK ? null : drawnAt(Math.min(most, shrink));
    },
  };
}
