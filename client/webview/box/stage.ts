import {
  AmbientLight,
  Box3,
  DirectionalLight,
  PerspectiveCamera,
  Raycaster,
  Scene,
  Spherical,
  Vector2,
  Vector3,
  WebGLRenderer,
} from 'three';
import { OrbitControls } from 'three/examples/jsm/controls/OrbitControls.js';
import type { BoxReply, StandingBox } from '../../../shared-core/drawing/messages/box-view.js';
import { Looks } from './looks.js';
import { Marks } from './marks.js';
import { place } from './motion.js';
import { floorLine, solidsOf, worktop, type PartSolid, type Thing } from './solids.js';

type Boxes = Extract<BoxReply, { kind: 'box' }>;

/** From where it is looked at: directions from the middle of what is shown. */
const SIGHTS = {
  corner: new Vector3(0.62, -1, 0.5),
  front: new Vector3(0, -1, 0),
  side: new Vector3(1, 0, 0),
  above: new Vector3(0, -0.001, 1),
} as const;
export type Sight = keyof typeof SIGHTS;
/** A wall is long: its corner is looked at from less aside. */
const CORNER_OF_WALL = new Vector3(0.22, -1, 0.3);

/** How far an arrow key turns, and how much nearer a step brings. */
const STEP = Math.PI / 24;
const NEARER = 0.85;
/** How far the pointer may stray in a click, in CSS pixels. */
const STRAY = 4;

export interface StageActions {
  readonly hover: (thing: Thing | null, x: number, y: number) => void;
  readonly click: (thing: Thing | null) => void;
  /** The machine has taken the picture away; the page says so. */
  readonly lost: () => void;
  /** What is looked at, or from where, has changed. */
  readonly moved: () => void;
}

/** The view itself: draws only when something has changed. Throws where the machine draws nothing in three dimensions. */
export class Stage {
  readonly canvas: HTMLCanvasElement;
  readonly #renderer: WebGLRenderer;
  readonly #scene = new Scene();
  readonly #camera = new PerspectiveCamera(28, 1, 1, 200_000);
  readonly #controls: OrbitControls;
  readonly #looks: Looks;
  readonly #marks: Marks;
  readonly #actions: StageActions;
  readonly #lamp = new DirectionalLight(0xffffff, 1.6);
  #boxes: Boxes | null = null;
  #solids: readonly PartSolid[] = [];
  #open = 0;
  #apart = 0;
  #isDue = false;
  /** Until the reader comes nearer or moves it aside. */
  #isWhole = false;

  constructor(canvas: HTMLCanvasElement, actions: StageActions) {
    this.canvas = canvas;
    this.#actions = actions;
    this.#renderer = new WebGLRenderer({ canvas, antialias: true });
    this.#looks = new Looks();
    this.#marks = new Marks(this.#looks);
    this.#camera.up.set(0, 0, 1);
    this.#camera.add(this.#lamp);
    this.#scene.add(this.#camera, new AmbientLight(0xffffff, 1.9));
    this.#controls = new OrbitControls(this.#camera, canvas);
    this.#controls.enableDamping = false;
    this.#controls.addEventListener('change', () => this.#draw());
    canvas.addEventListener('wheel', () => (this.#isWhole = false));
    this.#listen();
    this.retheme();
  }

  get solids(): readonly PartSolid[] {
    return this.#solids;
  }

  /** Shows these; looked at from where the last ones were looked at from where `stay`. */
  show(boxes: Boxes, stay: boolean): void {
    for (const { group, bores } of this.#solids) {
      for (const { mesh } of bores) mesh.dispose();
      this.#scene.remove(group);
    }
    this.#scene.remove(...this.#scene.children.filter(({ userData }) => userData.isOfWall === true));
    this.#boxes = boxes;
    this.#solids = boxes.boxes.flatMap((box) => solidsOf(box, this.#looks));
    for (const { group, part } of this.#solids) {
      if (part.severity !== null) group.add(this.#marks.of(part, part.severity));
      this.#scene.add(group);
    }
    this.#showWall(boxes);
    if (!stay) this.#isWhole = false;
    this.move(this.#open, this.#apart);
    if (!stay) this.look('corner');
  }

  #showWall({ what, worktops, boxes }: Boxes): void {
    if (what !== 'wall') return;
    const lines = worktops.map((one) => worktop(one, this.#looks));
    const ends = boxes.flatMap(({ at, scene }) => at.map(({ x }) => [x, x + scene.extents.x.to] as const)).flat();
    lines.push(floorLine(Math.min(...ends), Math.max(...ends), this.#looks));
    for (const one of lines) one.userData.isOfWall = true;
    this.#scene.add(...lines);
  }

  /** Doors so far open and parts so far apart, from 0 to 1. */
  move(open: number, apart: number): void {
    [this.#open, this.#apart] = [open, apart];
    for (const solid of this.#solids) place(solid, this.#boxOf(solid), open, apart);
    // Who sees the whole goes on seeing it.
    if (this.#isWhole && this.#solids.length > 0) this.look(null);
    this.#draw();
  }

  /** The whole, from one of the usual sides. */
  look(sight: Sight | null): void {
    const box = new Box3();
    for (const { face } of this.#solids) box.expandByObject(face, true);
    const middle = box.getCenter(new Vector3());
    const usual = sight === 'corner' && this.#boxes?.what === 'wall' ? CORNER_OF_WALL : SIGHTS[sight ?? 'corner'];
    const from = (
      sight === null ? this.#camera.position.clone().sub(this.#controls.target) : usual.clone()
    ).normalize();
    this.#controls.target.copy(middle);
    this.#camera.position.copy(middle).add(from);
    this.#camera.lookAt(middle);
    this.#camera.position.copy(middle).addScaledVector(from, distanceFor(cornersOf(box, middle), this.#camera));
    this.#controls.update();
    this.#isWhole = true;
    this.#draw();
  }

  /** Turns what is looked at by so many steps across and up. */
  turn(across: number, up: number): void {
    const off = this.#camera.position.clone().sub(this.#controls.target);
    // The library counts its angles about y.
    const at = new Spherical().setFromCartesianCoords(off.x, off.z, -off.y);
    at.theta -= across * STEP;
    at.phi = Math.min(Math.max(at.phi - up * STEP, 0.01), Math.PI - 0.01);
    const turned = new Vector3().setFromSpherical(at);
    this.#camera.position.copy(this.#controls.target).add(new Vector3(turned.x, -turned.z, turned.y));
    this.#controls.update();
    this.#draw();
  }

  nearer(steps: number): void {
    const { target } = this.#controls;
    this.#isWhole = false;
    this.#camera.position
      .sub(target)
      .multiplyScalar(NEARER ** steps)
      .add(target);
    this.#controls.update();
    this.#draw();
  }

  /** Stresses parts: those of the cursor, and the one that is chosen, with a bore of it. */
  stress(pointed: (solid: PartSolid) => boolean, chosen: Thing | null): void {
    for (const solid of this.#solids) {
      const isChosen = chosen !== null && chosen.carcass === solid.carcass && chosen.part.key === solid.part.key;
      solid.stress(isChosen ? 'chosen' : pointed(solid) ? 'pointed' : 'plain', isChosen ? chosen.bore : null);
    }
    this.#draw();
  }

  /** Takes the colours of the theme. */
  retheme(): void {
    this.#looks.read();
    this.#marks.read();
    this.#renderer.setClearColor(this.#looks.colour('paper'), 1);
    this.#draw();
  }

  resize(): void {
    const { clientWidth, clientHeight } = this.canvas.parentElement!;
    if (clientWidth === 0 || clientHeight === 0) return;
    this.#renderer.setPixelRatio(Math.min(devicePixelRatio, 2));
    this.#renderer.setSize(clientWidth, clientHeight, false);
    this.#camera.aspect = clientWidth / clientHeight;
    this.#camera.updateProjectionMatrix();
    if (this.#isWhole) this.look(null);
    this.#draw();
  }

  /** What is shown now as a picture. */
  async picture(): Promise<Blob> {
    this.#render();
    return new Promise((done, fail) => {
      this.canvas.toBlob((blob) => (blob === null ? fail(new Error('no picture')) : done(blob)), 'image/png');
    });
  }

  /** Where a panel stands, and where its middle is seen, in CSS pixels from the corner of the view. */
  readonly #where = ({ face, carcass, part, stressed }: PartSolid): object => {
    const box = new Box3().setFromObject(face, true);
    this.#camera.updateMatrixWorld();
    const at = box.getCenter(new Vector3()).project(this.#camera);
    const { width, height } = this.canvas.getBoundingClientRect();
    return {
      carcass,
      key: part.key,
      stress: stressed,
      min: box.min.toArray(),
      max: box.max.toArray(),
      seen: { x: ((at.x + 1) / 2) * width, y: ((1 - at.y) / 2) * height },
    };
  };

  #boxOf({ carcass }: PartSolid): StandingBox {
    return this.#boxes!.boxes.find(({ scene }) => scene.carcass === carcass)!;
  }

  #draw(): void {
    if (this.#isDue) return;
    this.#isDue = true;
    requestAnimationFrame(() => {
      this.#isDue = false;
      this.#render();
      this.#actions.moved();
    });
  }

  #render(): void {
    this.#renderer.render(this.#scene, this.#camera);
  }

  #listen(): void {
    let from: { readonly x: number; readonly y: number } | null = null;
    this.canvas.addEventListener('pointerdown', ({ clientX, clientY }) => {
      from = { x: clientX, y: clientY };
    });
    this.canvas.addEventListener('pointerup', (event) => {
      const isClick = from !== null && Math.hypot(event.clientX - from.x, event.clientY - from.y) <= STRAY;
      from = null;
      if (isClick && event.button === 0) this.#actions.click(this.#thingAt(event));
    });
    this.canvas.addEventListener('pointermove', (event) => {
      if (event.buttons === 0) this.#actions.hover(this.#thingAt(event), event.offsetX, event.offsetY);
    });
    this.canvas.addEventListener('pointerleave', () => this.#actions.hover(null, 0, 0));
    // Who tests the page asks it where things stand.
    this.canvas.addEventListener('where', (event) => {
      if (event instanceof CustomEvent && Array.isArray(event.detail))
        event.detail.push(...this.#solids.map(this.#where));
    });
    this.canvas.addEventListener('webglcontextlost', (event) => {
      event.preventDefault();
      this.#actions.lost();
    });
  }

  /** The nearest bore under the pointer, else the nearest panel. */
  #thingAt({ clientX, clientY }: PointerEvent): Thing | null {
    const { left, top, width, height } = this.canvas.getBoundingClientRect();
    const ray = new Raycaster();
    const at = new Vector2(((clientX - left) / width) * 2 - 1, 1 - ((clientY - top) / height) * 2);
    ray.setFromCamera(at, this.#camera);
    const meshes = this.#solids.flatMap((solid) => [
      ...solid.bores.map(({ mesh, bores }) => ({ solid, object: mesh, bores })),
      { solid, object: solid.face, bores: null },
    ]);
    const hits = ray.intersectObjects(
      meshes.map(({ object }) => object),
      false,
    );
    const found = hits.map(({ object, instanceId }) => {
      const { solid, bores } = meshes.find((one) => one.object === object)!;
      return { carcass: solid.carcass, part: solid.part, bore: bores?.[instanceId ?? -1] ?? null };
    });
    return found.find(({ bore }) => bore !== null) ?? found[0] ?? null;
  }
}

/** The corners of a box, from its middle. */
function cornersOf({ min, max }: Box3, middle: Vector3): readonly Vector3[] {
  const ends = [min, max];
  return ends.flatMap(({ x }) => ends.flatMap(({ y }) => ends.map(({ z }) => new Vector3(x, y, z).sub(middle))));
}

/** How far off the camera must stand, looking as it does, so that all of these are seen, with a margin. */
function distanceFor(corners: readonly Vector3[], camera: PerspectiveCamera): number {
  const up = Math.tan((camera.fov * Math.PI) / 360) * 0.94;
  const across = up * camera.aspect;
  const turned = camera.quaternion.clone().invert();
  const wanted = corners.map((corner) => {
    const { x, y, z } = corner.clone().applyQuaternion(turned);
    return z + Math.max(Math.abs(x) / across, Math.abs(y) / up);
  });
  return Math.max(100, ...wanted);
}
