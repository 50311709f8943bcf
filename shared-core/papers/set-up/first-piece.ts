import { ascending, listFigures } from '../../drawing/bore-map/hole-table.js';
import { edgeWord, endWord, surfaceWord } from '../../drawing/words.js';
import type { Panel } from '../../carcass/model.js';
import type { Unit } from '../../length/units.js';
import type { PlannedHole, Run } from '../../machining/set-up.js';

/** One thing to measure on a piece, and what it has to be. */
export interface PieceCheck {
  /** 'from front edge', 'diameter'; with the face before it where a piece has holes in several. */
  readonly name: string;
  /** '37, 485 mm' */
  readonly value: string;
}

/**
 * What is measured on the first piece that a set-up has bored, before all others are bored alike: where its holes stand, as
 * the bore map counts them, and how wide and deep they are.
 */
export function firstPiece(run: Run, panel: Panel, unit: Unit): readonly PieceCheck[] {
  const holes = run.steps.flatMap((step) => step.holes);
  const faces = [...new Set(holes.map(({ face }) => face))];
  return faces.flatMap((face) => {
    const own = holes.filter((hole) => hole.face === face);
    const prefix = faces.length > 1 ? `${surfaceWord(panel, face)}, ` : '';
    const isEnd = face === 'reference-end' || face === 'far-end';
    const across = isEnd ? surfaceWord(panel, 'outside') : endWord(panel, 'reference-end');
    const figures = (of: (hole: PlannedHole) => number): string =>
      `${listFigures(ascending(own.map(of)), unit)} ${unit}`;
    const depths = own.filter(({ through }) => !through);
    const depth = [
      ...(depths.length > 0 ? [`${listFigures(ascending(depths.map((hole) => hole.depth)), unit)} ${unit}`] : []),
      ...(depths.length < own.length ? ['through'] : []),
    ];
    return [
      { name: `${prefix}from ${edgeWord(panel, 'front')}`, value: figures(({ u }) => u) },
      { name: `${prefix}from ${across}`, value: figures(({ v }) => v) },
      { name: `${prefix}diameter`, value: figures(({ diameter }) => diameter) },
      { name: `${prefix}depth`, value: depth.join(' and ') },
    ];
  });
}
