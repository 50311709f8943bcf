import { DxfWriter, LWPolylineFlags, point2d, point3d, Units } from '@tarikjabiri/dxf';
import type { Bore } from '../../../boring/model.js';
import { isFace } from '../../../boring/surface.js';
import { sawnAt } from '../../../carcass/footprint.js';
import type { Panel } from '../../../carcass/model.js';
import { handedness } from '../../../carcass/pose.js';
import { PURPOSES } from '../../../fittings/purposes.js';
import { figure } from '../../../length/show.js';
import { MICROMETRES_PER_MM } from '../../../length/units.js';

/** Layers that every file has, whatever is bored. */
const OUTLINE = 'panel';
const GROOVE = 'groove';
/** The line that a corner is sawn off along, once all is bored. */
const CUT = 'corner cut';
/** Colour numbers of the format: 7 is drawn black or white, 8 is grey; bores take 1 to 6 in turn. */
const BLACK = 7;
const GREY = 8;
const BORE_COLOURS = 6;

const mm = (length: number): number => length / MICROMETRES_PER_MM;

/**
 * One panel as DXF, in millimetres: seen on its inside face, the reference end down, its lower left corner at 0, 0. A bore in a face
 * is a circle, one in an end the rectangle that it takes in the panel. Every kind and depth of bore on each surface has a layer of its
 * own, such as `inside dowel bore 8 deep 12`. Same panel, same bytes.
 */
export function panelDxf(panel: Panel, bores: readonly Bore[]): string {
  const writer = new DxfWriter();
  writer.setUnits(Units.Millimeters);
  const drawing = new Drawing(writer, panel);
  drawing.outline();
  for (const bore of bores) if (bore.panel === panel.key) drawing.bore(bore);
  return writer.stringify();
}

class Drawing {
  readonly #layers = new Set<string>();
  readonly #isMirrored: boolean;

  readonly #writer: DxfWriter;
  readonly #panel: Panel;

  constructor(writer: DxfWriter, panel: Panel) {
    this.#writer = writer;
    this.#panel = panel;
    this.#isMirrored = handedness(panel.pose) === 'left';
  }

  outline(): void {
    const { width, length, grooves } = this.#panel;
    this.#rectangle(OUTLINE, BLACK, 0, width, 0, length);
    for (const { from, to, along } of grooves) {
      this.#rectangle(GROOVE, GREY, from, to, along?.from ?? 0, along?.to ?? length);
    }
    const { corner } = this.#panel;
    if (corner === undefined) return;
    const { u, v } = sawnAt(corner);
    const at = (along: number): number => (corner.end === 'reference-end' ? along : length - along);
    this.#on(CUT, GREY);
    this.#writer.addLWPolyline([{ point: point2d(this.#x(0), mm(at(v))) }, { point: point2d(this.#x(u), mm(at(0))) }]);
  }

  bore(bore: Bore): void {
    const { face, u, v, diameter, depth } = bore;
    const layer = layerOf(bore);
    const colour = (this.#layers.size % BORE_COLOURS) + 1;
    if (isFace(face)) {
      this.#on(layer, colour);
      this.#writer.addCircle(point3d(this.#x(u), mm(v), 0), mm(diameter) / 2);
      return;
    }
    const { length } = this.#panel;
    const [from, to] = face === 'reference-end' ? [0, depth] : [length - depth, length];
    this.#rectangle(layer, colour, u - diameter / 2, u + diameter / 2, from, to);
  }

  #rectangle(layer: string, colour: number, u1: number, u2: number, v1: number, v2: number): void {
    this.#on(layer, colour);
    const corners = [
      [u1, v1],
      [u2, v1],
      [u2, v2],
      [u1, v2],
    ] as const;
    const vertices = corners.map(([u, v]) => ({ point: point2d(this.#x(u), mm(v)) }));
    this.#writer.addLWPolyline(vertices, { flags: LWPolylineFlags.Closed });
  }

  /** The inside face is seen from the inside, so that a left-handed panel has its front edge on the right. */
  #x(u: number): number {
    return mm(this.#isMirrored ? this.#panel.width - u : u);
  }

  #on(layer: string, colour: number): void {
    if (!this.#layers.has(layer)) {
      this.#layers.add(layer);
      this.#writer.addLayer(layer, colour, 'CONTINUOUS');
    }
    this.#writer.setCurrentLayerName(layer);
  }
}

/** 'inside dowel bore 8 deep 12', 'far-end dowel bore 8 deep 23', 'outside screw bore 7 through' */
export function layerOf({ face, purpose, diameter, depth, through }: Bore): string {
  const [noun] = PURPOSES[purpose].nouns;
  return `${face} ${noun} ${figure(diameter, 'mm')} ${through ? 'through' : `deep ${figure(depth, 'mm')}`}`;
}
