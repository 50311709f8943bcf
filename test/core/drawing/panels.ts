import { boreMapOf } from './bore-map-of.js';
import type { BorePurpose } from '../../../shared-core/fittings/names.js';
import type { Bore, Row, Surface } from '../../../shared-core/boring/model.js';
import type { Carcass, Joint, Panel, PanelRole, Pose } from '../../../shared-core/carcass/model.js';
import type { Drawn } from '../../../shared-core/drawing/drawn.js';
import type { Finding } from '../../../shared-core/findings/finding.js';
import { half } from '../../../shared-core/length/units.js';
import type { Dowel } from '../../../shared-core/fittings/kinds/dowel.js';
import type { Board } from '../../../shared-core/shop/model.js';
import { asMessage } from '../../in-words.js';

// Panels set out by hand, without the code that builds carcasses: invented data.

export const um = (millimetres: number): number => Math.round(millimetres * 1000);
const place = { part: 'self', start: 0, end: 4 } as const;
const board: Board = {
  name: 'board-16',
  place,
  thickness: um(16),
  nominal: um(16),
  sheetLength: null,
  sheetWidth: null,
  price: null,
  sheets: [],
  grain: 'none',
  material: 'particleboard',
  density: null,
  modulus: null,
};
const dowel: Dowel = {
  name: 'dowel-8x30',
  place,
  kind: 'dowel',
  diameter: um(8),
  length: um(30),
  inFace: um(12),
  price: null,
};

const POSES: Readonly<Partial<Record<PanelRole, Pose>>> = {
  'left-side': { origin: { x: 0, y: 0, z: 0 }, u: '+y', v: '+z', t: '+x' },
  'right-side': { origin: { x: um(600), y: 0, z: 0 }, u: '+y', v: '+z', t: '-x' },
  bottom: { origin: { x: um(16), y: 0, z: 0 }, u: '+y', v: '+x', t: '+z' },
  top: { origin: { x: um(16), y: 0, z: um(720) }, u: '+y', v: '+x', t: '-z' },
};

function panel(key: string, role: PanelRole, length: number, width: number, more: Partial<Panel> = {}): Panel {
  return {
    key,
    role,
    length: um(length),
    width: um(width),
    thickness: um(16),
    cutLength: um(length),
    cutWidth: um(width - 1),
    pose: POSES[role] ?? POSES.bottom!,
    board,
    bands: {
      front: { name: 'band-1', place, thickness: um(1), height: null, price: null },
      back: null,
      'reference-end': null,
      'far-end': null,
    },
    seen: ['front'],
    grooves: [],
    place,
    path: [],
    ...more,
  };
}

export function bore(
  id: string,
  owner: string,
  face: Surface,
  u: number,
  v: number,
  diameter: number,
  depth: number,
  purpose: BorePurpose,
  group: string,
  start = 0,
): Bore {
  const at = { part: 'self', start, end: start + 3 } as const;
  return {
    id,
    panel: owner,
    face,
    u: um(u),
    v: um(v),
    diameter: um(diameter),
    depth: um(depth),
    through: false,
    purpose,
    group,
    fitting: purpose === 'row' ? null : 'dowel-8x30',
    place: at,
  };
}

function joint(endPanel: string, facePanel: string, end: Joint['end']): Joint {
  return {
    id: `${endPanel}/${facePanel}`,
    facePanel,
    face: 'inside',
    endPanel,
    end,
    fitting: dowel,
    faceFitting: dowel,
    stagger: false,
    place,
    path: [],
  };
}

const DOWELS = [53, 213, 373, 501];

/** A base unit 600 x 720 x 560 of two sides, a bottom and a top, with rows in the sides. */
export function handMade(findings: readonly Finding[] = [], unit: 'mm' | 'in' = 'mm'): Drawn {
  const grooves = [{ kind: 'groove', from: um(541), to: um(544), depth: um(8) }] as const;
  const panels = [
    panel('left', 'left-side', 720, 560, { grooves }),
    panel('right', 'right-side', 720, 560, { grooves }),
    panel('bottom', 'bottom', 568, 560, { grooves }),
    panel('top', 'top', 568, 560, { grooves }),
  ];
  const joints = (['bottom', 'top'] as const).flatMap((end) => [
    joint(end, 'left', 'reference-end'),
    joint(end, 'right', 'far-end'),
  ]);
  const bores: Bore[] = [];
  joints.forEach(({ id, facePanel, endPanel, end }, index) => {
    const v = (endPanel === 'bottom' ? half(um(16)) : um(720) - half(um(16))) / 1000;
    DOWELS.forEach((u, k) => {
      bores.push(bore(`${facePanel}:${id}:${k}`, facePanel, 'inside', u, v, 8, 12, 'dowel', id, 10 * index));
      bores.push(bore(`${endPanel}:${id}:${k}`, endPanel, end, u, 8, 8, 19, 'dowel', id, 10 * index));
    });
  });
  const rows: Row[] = ['left', 'right'].flatMap((side) =>
    (['front', 'rear'] as const).map((line): Row => ({
      id: `${side}:row-${line}`,
      panel: side,
      face: 'inside',
      line,
      u: um(line === 'front' ? 37 : 485),
      offset: um(8),
      pitch: um(32),
      count: 23,
      diameter: um(5),
      depth: um(13),
      through: false,
      place,
      path: [],
    })),
  );
  for (const { id, panel: side, u, count } of rows) {
    for (let k = 0; k < count; k += 1)
      bores.push(bore(`${id}:${k}`, side, 'inside', u / 1000, 8 + 32 * k, 5, 13, 'row', id, 50));
  }
  const line = { first: um(53), pitch: um(32), count: 24, reached: 24, nearest: 0, shared: null };
  const carcass: Carcass = {
    count: 1,
    panels,
    joints,
    bays: [],
    doors: [],
    drawers: [],
    appliances: [],
    back: 'grooved',
    line,
    diagonal: null,
  };
  const boring = boreMapOf(rows, bores);
  return { name: 'sink', carcass, boring, findings, reader: unit };
}

export const unmatched: Finding = {
  rule: 'dowels-unmatched',
  severity: 'error',
  message: asMessage('The bore of bottom at 213 mm from the front edge has no mate in left.'),
  place: { part: 'self', start: 3, end: 9 },
  related: [],
  panel: 'left',
  bores: ['left:bottom/left:1'],
  repairs: [],
};
