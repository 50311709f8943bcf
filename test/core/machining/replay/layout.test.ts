import { describe, expect, it } from 'vitest';
import { layOut, type TableLayout } from '../../../../shared-core/machining/replay/layout.js';
import { strokesOf } from '../../../../shared-core/machining/replay/replay.js';
import type { Blank, SetUp } from '../../../../shared-core/machining/set-up.js';
import { blank, HORIZONTAL, LINE, mm, setUp, step, VERTICAL } from './set-ups.js';
import { inWords } from '../../../in-words.js';

function layoutOf(given: SetUp, panel: string, of: Blank): TableLayout {
  const read = strokesOf([given], 'box', panel, of);
  if (!read.ok) throw new Error(inWords(read.problems[0]!.message));
  return layOut(read.strokes[0]!);
}
const corners = ({ panel }: TableLayout): number[][] => panel.map(([x, y]) => [x / 1000, y / 1000]);
const LEFT = blank(720, 560, 16, 'right');

describe('the table as the operator sees it', () => {
  /** The side of the first worked example of the replay: bottom end at X = -8, front edge at Y = 0, toward the operator to -560. */
  it('a left side on the vertical head', () => {
    const machine = {
      ...VERTICAL,
      clamps: [
        { name: 'on', along: mm(100), across: mm(300), pad: mm(40), place: VERTICAL.place },
        // The front edge lies at the fence, so that half of its pad hangs over it.
        { name: 'half', along: mm(100), across: 0, pad: mm(40), place: VERTICAL.place },
        { name: 'just', along: mm(12), across: mm(20), pad: mm(40), place: VERTICAL.place },
        { name: 'off', along: mm(-100), across: mm(300), pad: mm(40), place: VERTICAL.place },
      ],
    };
    const layout = layoutOf(
      setUp(
        machine,
        { fence: [53], stops: { 'near-left': 8, 'near-right': 8 }, depth: 12 },
        {
          left: [step({ down: 'outside', edge: 'front', end: 'reference-end', stop: 'near-left' }, [0, 15], 8)],
        },
      ),
      'left',
      LEFT,
    );
    expect(corners(layout)).toEqual([
      [-8, 0],
      [712, 0],
      [712, -560],
      [-8, -560],
    ]);
    expect([layout.up, layout.fence]).toEqual(['inside', 'far']);
    expect(layout.stops.map(({ name, x, used, lowered }) => [name, x / 1000, used, lowered])).toEqual([
      ['near-left', -8, true, false],
      ['near-right', 8, false, true],
    ]);
    expect(layout.spindles).toHaveLength(21);
    expect(
      layout.spindles.filter(({ diameter }) => diameter !== null).map(({ at }) => at.map((x) => x / 1000)),
    ).toEqual([
      [0, -53, 0],
      [0, -533, 0],
    ]);
    expect(layout.clamps.map(({ name, x, y, holds }) => [name, x / 1000, y / 1000, holds])).toEqual([
      ['on', 100, -300, true],
      ['half', 100, -0, false],
      ['just', 12, -20, true],
      ['off', -100, -300, false],
    ]);
  });

  it('a bottom pressed against a horizontal head lies away from its plate, front edge left', () => {
    const layout = layoutOf(
      setUp(
        HORIZONTAL,
        { height: 8, stops: { 'square-left': 53, 'square-right': 53 }, depth: 19 },
        {
          bottom: [step({ down: 'outside', edge: 'front', end: 'reference-end', stop: 'square-left' }, [5], 8)],
        },
      ),
      'bottom',
      blank(568, 560, 16, 'left'),
    );
    expect(corners(layout)).toEqual([
      [-53, 0],
      [-53, -568],
      [507, -568],
      [507, 0],
    ]);
    expect(layout.stops.map(({ x, lowered }) => [x / 1000, lowered])).toEqual([
      [-53, false],
      [693, false],
    ]);
    expect(layout.spindles.find(({ diameter }) => diameter !== null)!.at).toEqual([mm(160), 0, mm(8)]);
  });

  it('a panel that was moved along lies over its own stop; a near fence has it on the other side', () => {
    const layout = layoutOf(
      setUp(
        { ...LINE, fence: 'near', from: 'below' },
        { fence: [37, 453], stops: { 'end-left': 8 }, depth: 13 },
        {
          left: [step({ down: 'inside', edge: 'front', end: 'reference-end', stop: 'end-left' }, [0], 5, mm(-64))],
        },
      ),
      'left',
      LEFT,
    );
    expect(corners(layout)).toEqual([
      [-72, 0],
      [648, 0],
      [648, 560],
      [-72, 560],
    ]);
    expect([layout.up, layout.fence]).toEqual(['outside', 'near']);
    expect(layout.stops.map(({ used, lowered }) => [used, lowered])).toEqual([[true, true]]);
    expect(layout.spindles).toHaveLength(42);
    expect(layout.spindles[21]!.at).toEqual([0, mm(453), 0]);
  });
});
