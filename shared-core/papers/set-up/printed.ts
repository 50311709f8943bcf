import type { MachineScene } from '../../drawing/machine-view/scene.js';
import { IN_PANE, ON_PAGE, type TableRoom } from '../../drawing/machine-view/stage.js';
import { boxOf, contains } from '../../drawing/scene/boxes.js';
import { textBox } from '../../drawing/scene/lettering.js';
import type { Reader } from '../../length/reader.js';
import type { Run, SetUp } from '../../machining/set-up.js';
import type { BoredWithin } from '../../tolerance/bores.js';
import { tell } from '../../words/message.js';
import { asItIs } from '../../words/told.js';
import { paragraph, type Block, type Picture } from '../paper.js';
import { pictureScene } from '../picture-scene.js';
import { checkTable } from './check-table.js';
import { say } from './messages.js';
import type { JobWords } from './words.js';

/** What the set-up list has on paper beside its words. */
export interface OnPaper {
  /** The machine at a step of a run, as its operator sees it; null where it cannot be drawn. */
  readonly machine: (setUp: SetUp, run: Run, step: number, room: TableRoom) => MachineScene | null;
  /** The holes of a run with their limits; null where it cannot be carried out. */
  readonly bored: (setUp: SetUp, run: Run) => readonly BoredWithin[] | null;
}

/** About a picture, in millimetres of lettering: a page has blank space of its own. */
const MARGIN = 1;
/** How many pictures a set-up has at most: one for each stop that panels come to. */
const MOST_PICTURES = 2;
/** The least that names the panel's face on the panel is enough; where none does, no larger one tells more. */
const ROOMS: readonly TableRoom[] = [ON_PAGE, { ...ON_PAGE, y: 56 }, IN_PANE];

/** The machine with its stops and spindles, once for each stop that panels come to, with what is seen there. */
export function machinePictures(setUp: SetUp, { machine }: OnPaper, reader: Reader): readonly Block[] {
  const seen = new Set<string>();
  return setUp.runs.flatMap((run) =>
    run.steps.flatMap((step, index): readonly Block[] => {
      if (seen.has(step.stop) || seen.size >= MOST_PICTURES) return [];
      const scene = largeEnough((room) => machine(setUp, run, index, room));
      if (scene === null) return [];
      seen.add(step.stop);
      return [pictureOf(scene, run, index, reader)];
    }),
  );
}

/** The picture in the least room that will do; a larger one is drawn only where that does not. */
function largeEnough(drawnIn: (room: TableRoom) => MachineScene | null): MachineScene | null {
  let least: MachineScene | null = null;
  for (const room of ROOMS) {
    const scene = drawnIn(room);
    if (scene !== null && namesFaceOnPanel(scene)) return scene;
    least ??= scene;
  }
  return least;
}

/** False where the panel comes out too small for it, so that a larger picture may tell more. */
function namesFaceOnPanel({ shapes, scale }: MachineScene): boolean {
  const face = shapes.find(({ class: of }) => of === 'panel-name');
  const panel = shapes.find(({ class: of }) => of === 'panel');
  return face?.kind === 'text' && panel?.kind === 'path' && contains(boxOf(panel.points, 0), textBox(face, scale));
}

function pictureOf(scene: MachineScene, run: Run, step: number, reader: Reader): Picture {
  const name = tell(say.pictured({ carcass: run.carcass, panel: run.panel, step: step + 1 }), 'mm');
  return {
    kind: 'picture',
    name,
    about: asItIs(scene.words.described),
    scene: { ...pictureScene(name, scene.shapes, scene.scale, MARGIN, reader), view: 'all-panels' },
    file: null,
  };
}

/** What to measure on the first piece, with a place to write and a box to tick. */
export function firstPieceBlocks(setUp: SetUp, { bored }: OnPaper, { panel, reader }: JobWords): readonly Block[] {
  const [run] = setUp.runs;
  const piece = run && panel(run.carcass, run.panel);
  const holes = run && bored(setUp, run);
  if (run === undefined || piece === undefined || !holes || holes.length === 0) return [];
  return [
    paragraph(tell(say.checkFirst({ carcass: run.carcass, panel: run.panel }), 'mm')),
    checkTable(holes, piece, reader),
  ];
}
