import type { OnFace, RunningDrawer, SlideAt } from '../hung/model.js';
import { takesScrew } from './in-row.js';
import type { Bore } from './model.js';

/**
 * The bores that slides need: in the uprights where no hole of a row takes the screw, and in the sides of the drawers. Where two
 * slides want one place of a divider from both faces, one bore goes through for both.
 * @param rows the holes of the rows of the carcass
 */
export function boreSlides(running: readonly RunningDrawer[], rows: readonly Bore[]): readonly Bore[] {
  const all = running.flatMap((one) => one.slides.map((slide) => ({ one, slide })));
  const made: Bore[] = [];
  for (const { one, slide } of all) {
    slide.holes.forEach((at, i) => {
      const bore = holeOf(one, slide, at, i);
      if (rows.some((hole) => takesScrew(hole, bore)) || made.some((other) => takesScrew(other, bore))) return;
      const across = all.some((other) => isBehind(other.slide, slide, at) && other.one !== one);
      made.push(across ? { ...bore, face: 'inside', depth: slide.upright.thickness, through: true } : bore);
    });
  }
  return [...made, ...all.flatMap(({ one, slide }) => slide.boxHoles.map((at, i) => boxHoleOf(one, slide, at, i)))];
}

/** Whether a slide on the other face of the same upright has a screw at the same place. */
function isBehind(other: SlideAt, { upright, face }: SlideAt, { u, v }: OnFace): boolean {
  return other.upright.key === upright.key && other.face !== face && other.holes.some((at) => at.u === u && at.v === v);
}

function holeOf({ drawer }: RunningDrawer, { upright, face, hand }: SlideAt, at: OnFace, i: number): Bore {
  const { slide, key } = drawer;
  return {
    id: `${upright.key}:${key}:${hand}-${i + 1}`,
    panel: upright.key,
    face,
    ...at,
    diameter: slide.diameter,
    depth: slide.depth,
    through: false,
    purpose: 'slide',
    group: key,
    fitting: slide.name,
    place: drawer.place,
  };
}

function boxHoleOf({ drawer }: RunningDrawer, { side }: SlideAt, at: OnFace, i: number): Bore {
  const { slide, key } = drawer;
  return {
    id: `${side.key}:slide-${i + 1}`,
    panel: side.key,
    face: 'outside',
    ...at,
    diameter: slide.boxDiameter,
    depth: slide.boxDepth,
    through: false,
    purpose: 'slide-in-box',
    group: key,
    fitting: slide.name,
    place: drawer.place,
  };
}
