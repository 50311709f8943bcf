import type { Bore, BoreMap } from '../boring/model.js';
import { isFace } from '../boring/surface.js';
import type { Carcass, Panel } from '../carcass/model.js';
import type { Reader } from '../length/reader.js';
import { purposeOf } from '../fittings/purposes.js';
import { tell } from '../words/message.js';
import { FACES } from '../words/names.js';
import { worded, type Told } from '../words/told.js';
import { say } from './messages.js';
import { edgeWord, endWord, surfaceWord } from './words.js';

/** Everything about one bore in words, with units: for a reader who points at it or hears it. */
export function aboutBore(carcass: Carcass, boring: BoreMap, panel: Panel, bore: Bore, reader: Reader): Told {
  const row = boring.rows.find(({ id }) => id === bore.group);
  return tell(
    say.bore({
      use: useOf(carcass, boring, panel, bore),
      place:
        row !== undefined && row.pitch > 0
          ? { hole: Math.round((bore.v - row.offset) / row.pitch) + 1, of: row.count }
          : null,
      fitting: bore.fitting,
      diameter: bore.diameter,
      depth: bore.through ? null : bore.depth,
      surface: surfaceWord(panel, bore.face),
      u: bore.u,
      edge: edgeWord(panel, 'front'),
      v: bore.v,
      from: isFace(bore.face) ? endWord(panel, 'reference-end') : FACES.outside,
    }),
    reader,
  );
}

/** What a bore is for: 'dowel to bottom', 'front row'. */
export function useOf(carcass: Carcass, boring: BoreMap, panel: Panel, bore: Bore): Told {
  const row = boring.rows.find(({ id }) => id === bore.group);
  if (row !== undefined) return tell(say.rowHole({ line: row.line }), 'mm');
  const use = worded('uses', purposeOf(bore).use);
  const joint = carcass.joints.find(({ id }) => id === bore.group);
  if (joint === undefined) return use;
  const other = joint.facePanel === panel.key ? joint.endPanel : joint.facePanel;
  return tell(say.joinedTo({ use, panel: other }), 'mm');
}
