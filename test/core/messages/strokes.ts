import { act } from '../../../shared-core/drawing/machine-view/strokes.js';
import { machineScene } from '../../../shared-core/drawing/machine-view/view.js';
import { firstPiece } from '../../../shared-core/papers/set-up/first-piece.js';
import {
  headName,
  leftWords,
  lieWords,
  moveWords,
  noteWords,
} from '../../../shared-core/drawing/machine-view/words.js';
import type { Place } from '../../../shared-core/document/place.js';
import type { SetUp, Step } from '../../../shared-core/machining/set-up.js';
import { handledWords, laidRuns } from '../../../shared-core/papers/set-up/lay.js';
import { readShop } from '../../../shared-core/shop/read.js';
import { NEUTRAL_SHOP_TEXT } from '../../../shared-core/shop/neutral-text.js';
import { analyse } from '../findings/jobs.js';
import { HORIZONTAL, LINE, mm, setUp, step, VERTICAL } from '../machining/replay/set-ups.js';

const lies = { down: 'outside', edge: 'front', end: 'reference-end', stop: 'near-left' } as const;
const over = { down: 'inside', edge: 'front', end: 'far-end', stop: 'near-left' } as const;
const half = { down: 'outside', edge: 'back', end: 'far-end', stop: 'near-left' } as const;
const inRow = { ...lies, stop: 'end-left' } as const;
const atHead = { ...lies, stop: 'square-left' } as const;
const CLAMP = { name: 'holder', place: {} as Place, along: mm(1500), across: mm(1500), pad: mm(40) };

/** Set-ups written by hand, for what the planner finds no reason to do with the panels of a carcass. Invented. */
export function sayHandMadeStrokes(): void {
  const [one] = analyse('carcasses:\n  box: { kind: base, width: 600 }\n').carcasses;
  const { carcass, boring } = one!;
  const told = (sheet: SetUp): void => {
    for (const { panel: key, steps } of sheet.runs) {
      const panel = carcass!.panels.find((each) => each.key === key)!;
      steps.forEach((_, index) => {
        const acted = act([sheet], sheet.id, 'box', panel, boring!, index);
        if (acted === null) throw new Error(`${sheet.id} cannot be carried out in step ${index + 1}`);
        lieWords(panel, sheet, acted.stroke.step, 'mm');
        moveWords(panel, acted, 'mm');
        noteWords(acted);
        leftWords(acted);
      });
    }
    const { handling: seconds } = readShop(NEUTRAL_SHOP_TEXT).shop;
    const words = {
      reader: 'mm',
      machineReader: 'mm',
      handling: seconds,
      panel: (_: string, key: string) => carcass!.panels.find((each) => each.key === key),
    } as const;
    for (const { steps } of laidRuns(sheet, words)) steps.forEach(({ handled }) => handledWords(handled, 'mm'));
  };
  const upright = (steps: readonly Step[], machine = VERTICAL): SetUp =>
    setUp(machine, { fence: [53], stops: { 'near-left': 8, 'near-right': 8 }, depth: 12 }, { left: steps });
  told(upright([step(lies, [0], 8), step(over, [0], 8)]));
  told(upright([step(lies, [0], 8), step(half, [0], 8)]));
  told(upright([step(lies, [0], 8), step(lies, [5], 8)]));
  told(upright([step(lies, [0], 8)], { ...VERTICAL, clamps: [CLAMP] }));
  told(
    setUp(
      LINE,
      { fence: [37], stops: { 'end-left': 8 }, depth: 13 },
      { left: [step(inRow, [10], 5, -mm(320)), step(inRow, [10], 5, -mm(160))] },
    ),
  );
  told(
    setUp(
      HORIZONTAL,
      { height: 8, stops: { 'square-left': 53, 'square-right': 53 }, depth: 19 },
      { bottom: [step(atHead, [0], 8), step({ ...atHead, stop: 'square-right', end: 'far-end' }, [0], 8)] },
    ),
  );
  told(
    setUp(
      HORIZONTAL,
      { height: 8, stops: { 'square-left': 53, 'square-right': 53 }, depth: 19 },
      { bottom: [step(atHead, [0], 8), step({ ...atHead, edge: 'back', stop: 'square-right' }, [0], 8)] },
    ),
  );
  told(
    setUp(
      LINE,
      { fence: [37], stops: { 'end-left': 8 }, depth: 13 },
      { left: [step(inRow, [10], 5, mm(160)), step(inRow, [10], 5, mm(320))] },
    ),
  );
  headName(1, 3);
  const held = upright([step(lies, [0], 8)], { ...VERTICAL, clamps: [CLAMP] });
  const drawn = { name: 'box', carcass: carcass!, boring: boring!, findings: [], reader: 'mm' } as const;
  machineScene(drawn, { setUps: [held], setUp: held.id, panel: 'left', step: 0 });
  const bottom = carcass!.panels.find(({ key }) => key === 'bottom')!;
  for (const through of [
    [true, true],
    [true, false],
    [false, false],
  ])
    for (const faces of [
      ['inside', 'inside'],
      ['reference-end', 'far-end'],
    ] as const) {
      const holes = faces.map((face, at) => ({
        face,
        u: mm(53),
        v: mm(8 + 32 * at),
        diameter: mm(8),
        depth: mm(12 + at),
        through: through[at]!,
        bore: 'none',
      }));
      firstPiece(
        { carcass: 'box', panel: 'bottom', pieces: 1, steps: [{ ...step(atHead, [0], 8), holes }] },
        bottom,
        'mm',
      );
    }
}
