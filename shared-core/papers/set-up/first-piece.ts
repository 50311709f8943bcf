import { ascending, listFigures } from '../../drawing/bore-map/hole-table.js';
import { alongFrom, edgeWord, surfaceWord } from '../../drawing/words.js';
import type { Panel } from '../../carcass/model.js';
import { unitFor, type Reader } from '../../length/reader.js';
import { tell } from '../../words/message.js';
import { asItIs, type Told } from '../../words/told.js';
import { say } from './messages.js';
import type { PlannedHole, Run } from '../../machining/set-up.js';

/** One thing to measure on a piece, and what it has to be. */
export interface PieceCheck {
  /** 'from front edge', 'diameter'; with the face before it where a piece has holes in several. */
  readonly name: Told;
  /** '37, 485 mm' */
  readonly value: Told;
}

/**
 * What is measured on the first piece that a set-up has bored, before all others are bored alike: where its holes stand, as
 * the bore map counts them, and how wide and deep they are.
 */
export function firstPiece(run: Run, panel: Panel, reader: Reader): readonly PieceCheck[] {
  const holes = run.steps.flatMap((step) => step.holes);
  const faces = [...new Set(holes.map(({ face }) => face))];
  return faces.flatMap((face) => {
    const own = holes.filter((hole) => hole.face === face);
    const onFace = faces.length > 1 ? surfaceWord(panel, face) : null;
    const figures = (those: readonly PlannedHole[], of: (hole: PlannedHole) => number): Told =>
      asItIs(`${listFigures(ascending(those.map(of)), reader)} ${unitFor(reader)}`);
    const from = (what: string): Told =>
      tell(
        onFace === null ? say.measuredFrom({ from: what }) : say.measuredOnFaceFrom({ face: onFace, from: what }),
        reader,
      );
    return [
      { name: from(edgeWord(panel, 'front')), value: figures(own, ({ u }) => u) },
      { name: from(alongFrom(panel, face)), value: figures(own, ({ v }) => v) },
      {
        name: tell(onFace === null ? say.diameter() : say.diameterOnFace({ face: onFace }), reader),
        value: figures(own, ({ diameter }) => diameter),
      },
      {
        name: tell(onFace === null ? say.depth() : say.depthOnFace({ face: onFace }), reader),
        value: depthsOf(own, (those) => figures(those, ({ depth }) => depth)),
      },
    ];
  });
}

function depthsOf(holes: readonly PlannedHole[], figures: (those: readonly PlannedHole[]) => Told): Told {
  const blind = holes.filter(({ through }) => !through);
  if (blind.length === holes.length) return figures(blind);
  return tell(blind.length === 0 ? say.allThrough() : say.someThrough({ depths: figures(blind) }), 'mm');
}
