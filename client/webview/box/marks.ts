import { CanvasTexture, Sprite, SpriteMaterial, SRGBColorSpace } from 'three';
import type { Severity } from '../../../shared-core/findings/finding.js';
import type { BoxPart } from '../../../shared-core/drawing/box-view/scene.js';
import type { Looks } from './looks.js';

const SIZE = 64;
/** Of the height of the view. */
const LARGE = 0.035;

/** Signs at panels that have findings: form tells the gravity as well as colour does. */
export class Marks {
  readonly #looks: Looks;
  readonly #materials: Readonly<Record<Severity, SpriteMaterial>>;

  constructor(looks: Looks) {
    this.#looks = looks;
    const material = () => new SpriteMaterial({ depthTest: false, sizeAttenuation: false });
    this.#materials = { error: material(), warning: material(), info: material() };
    this.read();
  }

  /** Paints them anew in the colours of the theme. */
  read(): void {
    for (const severity of ['error', 'warning', 'info'] as const) {
      const material = this.#materials[severity];
      material.map?.dispose();
      material.map = new CanvasTexture(painted(severity, this.#looks));
      material.map.colorSpace = SRGBColorSpace;
      material.needsUpdate = true;
    }
  }

  /** In the middle of the panel. */
  of({ extents: { x, y, z } }: BoxPart, severity: Severity): Sprite {
    const sprite = new Sprite(this.#materials[severity]);
    sprite.position.set((x.from + x.to) / 2000, (y.from + y.to) / 2000, (z.from + z.to) / 2000);
    sprite.scale.setScalar(LARGE);
    sprite.renderOrder = 2;
    return sprite;
  }
}

/** A disc for an error, a triangle for a warning, a ring for what is only worth knowing. */
function painted(severity: Severity, looks: Looks): HTMLCanvasElement {
  const canvas = document.createElement('canvas');
  canvas.width = SIZE;
  canvas.height = SIZE;
  const pen = canvas.getContext('2d')!;
  const ink = looks.colour(severity).getStyle();
  const paper = looks.colour('paper').getStyle();
  const middle = SIZE / 2;
  pen.lineWidth = 6;
  pen.lineJoin = 'round';
  pen.strokeStyle = severity === 'info' ? ink : paper;
  pen.fillStyle = severity === 'info' ? paper : ink;
  pen.beginPath();
  if (severity === 'warning') {
    pen.moveTo(middle, 7);
    pen.lineTo(SIZE - 5, SIZE - 9);
    pen.lineTo(5, SIZE - 9);
    pen.closePath();
  } else pen.arc(middle, middle, middle - 6, 0, 2 * Math.PI);
  pen.fill();
  pen.stroke();
  pen.fillStyle = severity === 'info' ? ink : paper;
  pen.font = `${SIZE * 0.6}px sans-serif`;
  pen.textAlign = 'center';
  pen.textBaseline = 'middle';
  pen.fillText(severity === 'info' ? 'i' : '!', middle, severity === 'warning' ? middle + 7 : middle + 2);
  return canvas;
}
