import { say } from '../messages.js';
import type { Mark, Piece, Placed, Room } from './flow.js';
import type { Fonts } from './fonts.js';
import { hex } from './pen.js';
import { headingPiece, LEAD, TEXT } from './text-pieces.js';
import { tell } from '../../../words/message.js';

/** A paper of fewer pages, or with fewer parts, is found one's way in without. */
const FEWEST_PAGES = 4;
const FEWEST_PARTS = 4;

/** A line of the list: the part, and where it begins is told when all is placed. */
export interface ContentsLine extends Piece {
  readonly leadsTo: Mark;
}

/** The pieces with a list of the parts before the first of them, where the paper is long enough for one. */
export function withContents(
  pieces: readonly Piece[],
  laid: readonly Placed[],
  fonts: Fonts,
  room: Room,
  pageOf: (mark: Mark) => number,
): readonly Piece[] {
  const [first] = pieces;
  const marked = pieces.filter(({ mark }) => mark !== undefined && mark !== first?.mark);
  // Few large parts are found without a list, but what is in them is not.
  const large = marked.filter(({ mark }) => mark!.level < 3);
  const parts = large.length < FEWEST_PARTS ? marked : large;
  const pages = (laid.at(-1)?.page ?? 0) + 1;
  if (pages < FEWEST_PAGES || parts.length < FEWEST_PARTS) return pieces;
  const at = pieces.indexOf(parts[0]!);
  const { mark: _, ...head } = headingPiece(
    { kind: 'heading', level: 2, text: tell(say.contents(), 'mm'), aside: '' },
    fonts,
    room.width,
  );
  const lines = parts.map(({ mark }) => line(mark!, fonts, room, pageOf));
  return [...pieces.slice(0, at), head, ...lines, ...pieces.slice(at)];
}

function line(mark: Mark, fonts: Fonts, { width }: Room, pageOf: (mark: Mark) => number): ContentsLine {
  const inset = (mark.level - 1) * 4;
  const words = fonts.wrapped(mark.text, TEXT, false, width - inset - 14)[0]!;
  return {
    height: TEXT * LEAD + 0.6,
    above: 0,
    leads: false,
    leadsTo: mark,
    draw(pen, x, y) {
      const base = y + 0.8 * TEXT * LEAD;
      const from = x + inset + fonts.width(words, TEXT, false) + 2;
      pen.text(words, x + inset, base, { size: TEXT });
      pen.text(String(pageOf(mark) + 1), x + width, base, { size: TEXT, anchor: 'end' });
      if (from < x + width - 10)
        pen.line(from, base - 0.2, x + width - 10, base - 0.2, {
          width: 0.2,
          colour: hex('#999999'),
          dash: [0.3, 1.2],
        });
    },
  };
}
