import {
  Color,
  DoubleSide,
  LineBasicMaterial,
  LineDashedMaterial,
  MeshBasicMaterial,
  MeshLambertMaterial,
  SRGBColorSpace,
} from 'three';
import type { BoxPart, BoxBore } from '../../../shared-core/drawing/box-view/scene.js';

const NAMES = [
  'ink',
  'paper',
  'faint',
  'panel',
  'brown',
  'blue',
  'violet',
  'green',
  'error',
  'warning',
  'info',
  'focus',
] as const;
type Name = (typeof NAMES)[number];
const INKS: Readonly<Record<BoxBore['ink'], Name>> = {
  black: 'ink',
  brown: 'brown',
  blue: 'blue',
  violet: 'violet',
  green: 'green',
};

/** How a panel stands out. */
export type Stress = 'plain' | 'pointed' | 'chosen';

/** Colours of the editor's theme, and the materials that are made of them; the materials stay the same objects. */
export class Looks {
  readonly #colours = new Map<Name, Color>();
  readonly faces: Readonly<Record<BoxPart['belongs'], MeshLambertMaterial>>;
  readonly stressedFace = face(0.34);
  readonly edges = new LineBasicMaterial();
  readonly fineEdges = new LineBasicMaterial();
  readonly stressedEdges = new LineBasicMaterial();
  readonly room = new LineDashedMaterial({ dashSize: 6, gapSize: 4 });
  readonly inks: Readonly<Record<BoxBore['ink'], MeshLambertMaterial>>;
  /** What stands in bores, lighter than these. */
  readonly bodies: Readonly<Record<BoxBore['ink'], MeshLambertMaterial>>;
  readonly rings: Readonly<Record<'error' | 'warning' | 'info' | 'focus', MeshBasicMaterial>>;

  constructor() {
    this.faces = {
      'to-box': face(0.2),
      'under-box': face(0.2),
      'before-box': face(0.13),
      'beside-box': face(0.13),
      'in-drawer': face(0.2),
    };
    const solid = () => new MeshLambertMaterial();
    const each = () => ({ black: solid(), brown: solid(), blue: solid(), violet: solid(), green: solid() });
    this.inks = each();
    this.bodies = each();
    const ring = () => new MeshBasicMaterial({ side: DoubleSide, depthTest: false, transparent: true });
    this.rings = { error: ring(), warning: ring(), info: ring(), focus: ring() };
    this.read();
  }

  /** Takes the colours from the page as its theme has them now. */
  read(): void {
    const probe = document.createElement('span');
    document.body.append(probe);
    for (const name of NAMES) {
      probe.style.color = `var(--${name})`;
      this.#colours.set(name, inDots(getComputedStyle(probe).color));
    }
    probe.remove();
    const isContrast = document.body.classList.contains('vscode-high-contrast');
    for (const [belongs, material] of Object.entries(this.faces)) {
      material.color.copy(this.colour('panel'));
      material.opacity = isContrast ? 0.06 : belongs === 'before-box' || belongs === 'beside-box' ? 0.13 : 0.2;
    }
    this.stressedFace.color.copy(this.colour('focus'));
    this.stressedFace.opacity = isContrast ? 0.25 : 0.3;
    this.edges.color.copy(this.colour('ink'));
    this.fineEdges.color.copy(this.colour('faint'));
    this.stressedEdges.color.copy(this.colour('focus'));
    this.room.color.copy(this.colour('green'));
    for (const [ink, name] of Object.entries(INKS) as [BoxBore['ink'], Name][]) {
      this.inks[ink].color.copy(this.colour(name));
      this.bodies[ink].color.copy(this.colour(name)).lerp(this.colour('paper'), 0.45);
    }
    for (const name of ['error', 'warning', 'info', 'focus'] as const) this.rings[name].color.copy(this.colour(name));
  }

  colour(name: Name): Color {
    return this.#colours.get(name) ?? new Color();
  }
}

function face(opacity: number): MeshLambertMaterial {
  return new MeshLambertMaterial({ transparent: true, opacity, depthWrite: false, side: DoubleSide });
}

/** Any colour that a style sheet can say, as the dots of a screen have it. */
function inDots(colour: string): Color {
  const canvas = document.createElement('canvas');
  canvas.width = 1;
  canvas.height = 1;
  const pen = canvas.getContext('2d', { willReadFrequently: true })!;
  pen.fillStyle = colour;
  pen.fillRect(0, 0, 1, 1);
  const [red = 0, green = 0, blue = 0] = pen.getImageData(0, 0, 1, 1).data;
  return new Color().setRGB(red / 255, green / 255, blue / 255, SRGBColorSpace);
}
