import { tellerTo } from '../../words/message.js';
import { joined } from '../../words/told.js';
import { NAMES, say, SIGNS } from './messages.js';
import { described } from '../../machining/described.js';
import type { Panel } from '../../carcass/model.js';
import type { SetUp } from '../../machining/set-up.js';
import { frameOf, shapeBox } from '../scene/extent.js';
import { around, grow } from '../scene/boxes.js';
import type { Drawn } from '../drawn.js';
import type { Box } from '../scene/scene.js';
import { drawElevation } from './elevation.js';
import { drawMove } from './moves.js';
import { nameEdges } from './edge-names.js';
import { nameFace } from './face-name.js';
import { drawLevelHead } from './level-head.js';
import { aboutHoles, drawHoles, drawPanelOnTable } from './panel.js';
import type { MachineScene, Sign, StepWords } from './scene.js';
import { aboutSpindles, drawHeads, drawSpindleLines, drawTags, spindleTags, tagRoom } from './spindles.js';
import { IN_PANE, Stage, type TableRoom } from './stage.js';
import { drawStopPositions, lanesReach } from './stop-positions.js';
import { act, type Acted } from './strokes.js';
import { drawClamps, drawStops, drawTable, drawZone, handsClear, nameClamps, nameZone } from './table.js';
import { boreWords, leftWords, lieWords, moveWords, noteWords } from './words.js';

/** Which stroke of the job is looked at. */
export interface MachineViewOf {
  /** All set-ups of the job, in the order to run. */
  readonly setUps: readonly SetUp[];
  readonly setUp: string;
  readonly panel: string;
  /** Which of the panel's steps in the set-up, from 0. */
  readonly step: number;
}

/**
 * One stroke as the operator sees it, drawn from what the replay does with the panel; null where the panel has no such step,
 * or the replay cannot make it.
 * @param nearer lettering so many times smaller, for a reader who has zoomed in; the machine and its signs stay as they are
 */
export function machineScene(
  drawn: Drawn,
  of: MachineViewOf,
  nearer = 1,
  room: TableRoom = IN_PANE,
): MachineScene | null {
  const panel = drawn.carcass.panels.find(({ key }) => key === of.panel);
  if (panel === undefined) return null;
  const acted = act(of.setUps, of.setUp, drawn.name, panel, drawn.boring, of.step);
  if (acted === null) return null;
  const stage = new Stage(acted, nearer, room);
  const { setUp } = acted.stroke;
  const title = `${drawn.name}, ${panel.key}`;
  const level = described(setUp.machine).bores === 'ends';
  const side = tagSide(acted);
  const tags = level ? [] : spindleTags(stage, drawn.reader, side);
  const table = tableBox(stage, side, tagRoom(stage, tags));
  const reach = lanesReach(stage);

  drawTable(stage, table, level ? 1 : side);
  drawPanelOnTable(stage, panel);
  drawStops(stage);
  drawSpindleLines(stage, reach + (level ? 0 : stage.p(1)));
  drawHoles(stage, panel);
  if (level) drawLevelHead(stage);
  else drawHeads(stage);
  drawClamps(stage);
  drawZone(stage);
  drawStopPositions(stage, drawn.reader);
  if (level) drawElevation(stage, stage.y(0) - reach - stage.p(8), table, drawn.reader);
  else drawTags(stage, tags, table, side, drawn.reader);
  drawMove(stage, table, drawn.reader);
  nameFace(stage, panel, title, table);
  nameEdges(stage, panel, table);
  nameClamps(stage);
  nameZone(stage);

  const { pen } = stage;
  const below = around(pen.shapes.map((shape) => shapeBox(shape, pen.scale)))!;
  const stands = { key: 'operator', class: 'label' } as const;
  pen.text(stands, NAMES.operator, table.x + table.width / 2, below.y + below.height + pen.paper(4), {
    anchor: 'middle',
  });
  const shapes = pen.painted();
  return {
    view: 'machine',
    title,
    reader: drawn.reader,
    stop: acted.stroke.step.stop,
    scale: pen.scale,
    frame: grow(frameOf(shapes, pen.scale), pen.paper(3)),
    shapes,
    words: wordsOf(acted, drawn, panel),
    spindles: aboutSpindles(stage, drawn),
    holes: aboutHoles(stage, drawn, panel),
    signs: signsOf(stage, panel),
  };
}

/** The hand on which the panel reaches less far, so that the figures stand clear of it. */
function tagSide({ layout }: Acted): -1 | 1 {
  const middle = layout.spindles.reduce((sum, { at }) => sum + at[0], 0) / layout.spindles.length;
  const xs = layout.panel.map(([x]) => x);
  return Math.max(...xs) - middle < middle - Math.min(...xs) ? 1 : -1;
}

function tableBox(stage: Stage, side: -1 | 1, tags: number): Box {
  const { out } = stage;
  const furniture = stage.furniture;
  const margin = stage.sign(6);
  const line = stage.y(0);
  const zone = around(handsClear(stage))!;
  const tagged =
    tags === 0
      ? furniture
      : around([
          { ...furniture, x: side < 0 ? furniture.x - tags : furniture.x, width: furniture.width + tags },
          { x: side < 0 ? zone.x - tags : zone.x, y: zone.y, width: zone.width + tags, height: 0 },
        ])!;
  const reach = around([furniture, zone])!;
  const inner = out < 0 ? reach.y + reach.height : reach.y;
  const end = inner - out * stage.sign(5);
  return {
    x: tagged.x - margin,
    width: tagged.width + 2 * margin,
    y: Math.min(line, end),
    height: Math.abs(end - line),
  };
}

function wordsOf(acted: Acted, drawn: Drawn, panel: Panel): StepWords {
  const { stroke, layout, holes } = acted;
  const { setUp, step } = stroke;
  const { reader } = drawn;
  const told = tellerTo(reader);
  const lie = lieWords(panel, setUp, step, reader);
  const move = moveWords(panel, acted, reader);
  const bore = boreWords(acted, reader);
  const notes = noteWords(acted);
  const left = leftWords(acted);
  const stops = layout.stops.map(({ name, used, lowered }) => {
    const { position, side } = setUp.stops.find((one) => one.name === name)!;
    return { name, side, at: position, used, lowered };
  });
  const fences = described(setUp.machine).manyHeads
    ? [say.headsFromFence({ places: setUp.fence })]
    : setUp.fence.map((place) => say.firstSpindleFromFence({ place }));
  const made = holes.filter(({ state }) => state === 'made').length;
  const about = joined(
    [
      told(
        say.step({
          carcass: drawn.name,
          panel: panel.key,
          machine: setUp.machine.name,
          step: stroke.index + 1,
          of: acted.steps,
        }),
      ),
      told(say.size(panel)),
      ...(move === null ? [] : [move]),
      lie,
      told(say.stops({ stops })),
      ...(setUp.fence.length > 0 ? fences.map(told) : []),
      ...(setUp.height === null ? [] : [told(say.spindlesHigh({ height: setUp.height }))]),
      bore,
      ...(layout.clamps.length > 0 ? [told(say.clamps(layout))] : []),
      told(say.madeBefore({ made, of: holes.length })),
      ...notes,
      left,
      told(say.keepClear()),
    ],
    ' ',
  );
  return { lie, move, bore, notes, left, described: about };
}

function signsOf({ acted }: Stage, panel: Panel): { readonly sign: Sign; readonly words: string }[] {
  const { layout, holes } = acted;
  const there: Readonly<Record<Sign, boolean>> = {
    'spindle-loaded': true,
    'spindle-empty': layout.spindles.some(({ diameter }) => diameter === null),
    'hole-made': holes.some(({ state }) => state === 'made'),
    'hole-now': holes.some(({ state }) => state === 'now'),
    'hole-to-come': holes.some(({ state }) => state === 'to-come'),
    'stop-used': layout.stops.some(({ used, lowered }) => used && !lowered),
    'stop-standing': layout.stops.some(({ used, lowered }) => !used && !lowered),
    'stop-lowered': layout.stops.some(({ lowered }) => lowered),
    clamp: layout.clamps.length > 0,
    'hands-clear': true,
    band: Object.values(panel.bands).some((band) => band !== null),
  };
  return (Object.keys(SIGNS) as Sign[]).filter((sign) => there[sign]).map((sign) => ({ sign, words: SIGNS[sign] }));
}
