import { isFace } from '../boring/surface.js';
import type { Surface } from '../boring/model.js';
import type { Panel } from '../carcass/model.js';
import { edgeNamed, endNamed, roleOf, ROLES } from '../carcass/roles.js';
import type { EdgeName } from '../job/model.js';
import { tell } from '../words/message.js';
import { FACES } from '../words/names.js';
import { asItIs, joined, worded, type Told } from '../words/told.js';
import { FACE_COLUMN, say } from './messages.js';

/** 'bottom end' of a side, 'left end' of a horizontal. */
export function endWord(panel: Pick<Panel, 'role'>, end: 'reference-end' | 'far-end'): Told {
  return endNamed(panel, end);
}

/** 'inside face', 'left end'; of a divider 'inside (right) face'. */
export function surfaceWord(panel: Pick<Panel, 'role'>, surface: Surface): Told {
  if (!isFace(surface)) return endNamed(panel, surface);
  const { looks } = roleOf(panel);
  return looks === null ? FACES[surface] : tell(say.faceThatLooks({ face: surface, looks: looks[surface] }), 'mm');
}

/** What v of the bores in a surface counts from: the outside face in an end, the reference end in a face. */
export function alongFrom(panel: Pick<Panel, 'role'>, surface: Surface): Told {
  return isFace(surface) ? endWord(panel, 'reference-end') : surfaceWord(panel, 'outside');
}

/** A surface for a column headed 'Face': 'inside', 'left end'; of a shelf 'outside (lower)'. */
export function faceWord(panel: Pick<Panel, 'role'>, surface: Surface): Told {
  if (!isFace(surface)) return worded('sides', endNamed(panel, surface));
  const { looks } = roleOf(panel);
  return looks === null ? FACE_COLUMN[surface] : tell(say.faceInColumn({ face: surface, looks: looks[surface] }), 'mm');
}

/** What inside and outside mean of panels that have an inside of the box on both; none where there is none among them. */
export function facesExplained(panels: readonly Pick<Panel, 'role'>[]): Told | null {
  const here = new Set(panels.map(roleOf));
  const said = Object.values(ROLES).flatMap((role) =>
    role.looks !== null && here.has(role) ? [worded('explained', role.looks.explained)] : [],
  );
  return said.length === 0 ? null : joined([...new Set(said)], ' ');
}

/** 'front edge', 'back edge', or an end as `endWord` has it. */
export function edgeWord(panel: Pick<Panel, 'role'>, edge: EdgeName): Told {
  return edge === 'front' || edge === 'back' ? edgeNamed(panel, edge) : endNamed(panel, edge);
}

/** 'near-left'; a name so short that it would pass for a figure or a letter of the text gets its noun: 'stop 7'. */
export function stopCalled(name: string): Told {
  return name.length > 2 ? asItIs(name) : tell(say.stopNamed({ name }), 'mm');
}
