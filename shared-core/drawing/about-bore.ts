import type { Bore, BoreMap } from '../boring/model.js';
import { isFace } from '../boring/surface.js';
import type { Carcass, Panel } from '../carcass/model.js';
import { nominal, showLength } from '../length/show.js';
import type { Micrometres, Unit } from '../length/units.js';
import { purposeOf } from '../fittings/purposes.js';
import { endWord, sentence, surfaceWord } from './words.js';

/** Everything about one bore in words, with units: for a reader who points at it or hears it. */
export function aboutBore(carcass: Carcass, boring: BoreMap, panel: Panel, bore: Bore, unit: Unit): string {
  const show = (length: Micrometres): string => showLength(length, unit);
  const onFace = isFace(bore.face);
  const depth = bore.through ? 'through' : `${show(bore.depth)} deep`;
  const from = onFace ? endWord(panel, 'reference-end') : 'outside face';
  const row = boring.rows.find(({ id }) => id === bore.group);
  const place =
    row !== undefined && row.pitch > 0
      ? `, hole ${Math.round((bore.v - row.offset) / row.pitch) + 1} of ${row.count}`
      : '';
  const fitting = bore.fitting === null ? '' : `, ${bore.fitting}`;
  return (
    `${sentence(useOf(carcass, boring, panel, bore))}${place}${fitting}: Ø ${nominal(bore.diameter, unit)}, ${depth}. ` +
    `${sentence(surfaceWord(panel, bore.face))}, ${show(bore.u)} from the front edge, ${show(bore.v)} from the ${from}.`
  );
}

/** What a bore is for: 'dowel to bottom', 'front row'. */
export function useOf(carcass: Carcass, boring: BoreMap, panel: Panel, bore: Bore): string {
  const row = boring.rows.find(({ id }) => id === bore.group);
  if (row !== undefined) return `${row.line} row`;
  const joint = carcass.joints.find(({ id }) => id === bore.group);
  if (joint === undefined) return purposeOf(bore).use;
  return `${purposeOf(bore).use} to ${joint.facePanel === panel.key ? joint.endPanel : joint.facePanel}`;
}
