import type { Point, Scene, SceneShelf } from '../../../shared-core/drawing/scene/scene.js';
import type { SvgNode } from '../../../shared-core/drawing/render/svg-tree.js';
import { inPane } from '../page/pointer.js';
import type { Viewport } from '../page/viewport.js';
import { PHRASES } from './messages.js';

export interface ShelfActions {
  /** The reader has put a shelf so many holes further up, or down where negative. */
  readonly move: (shelf: string, holes: number) => void;
  /** The drawing has to show where a shelf is being drawn to. */
  readonly changed: () => void;
  /** A shelf is clicked. */
  readonly clicked: (event: MouseEvent) => void;
}

interface Grip {
  readonly shelf: SceneShelf;
  readonly from: Point;
  /** Holes from where it stands. */
  readonly by: number;
}

const KEYS: Readonly<Record<string, number>> = { ArrowUp: 1, ArrowRight: 1, ArrowDown: -1, ArrowLeft: -1 };

/** Loose shelves on the drawing, drawn or stepped from hole to hole. */
export class Shelves {
  readonly #actions: ShelfActions;
  #shelves: readonly SceneShelf[] = [];
  #grip: Grip | null = null;

  /** Listens before the drawing itself does: what begins on a shelf is no drag of the drawing, and no click. */
  constructor(svg: SVGSVGElement, viewport: Viewport, actions: ShelfActions) {
    this.#actions = actions;
    svg.addEventListener(
      'pointerdown',
      (event) => {
        const shelf = event.button === 0 ? this.#of(event.target) : undefined;
        if (shelf === undefined) return;
        this.#grip = { shelf, from: viewport.toScene(inPane(svg, event)), by: 0 };
        svg.setPointerCapture(event.pointerId);
        event.stopImmediatePropagation();
      },
      true,
    );
    svg.addEventListener(
      'pointermove',
      (event) => {
        if (this.#grip === null) return;
        event.stopImmediatePropagation();
        this.#drag(viewport.toScene(inPane(svg, event)));
      },
      true,
    );
    svg.addEventListener(
      'pointerup',
      (event) => {
        if (this.#grip === null) return;
        event.stopImmediatePropagation();
        const { shelf, by } = this.#grip;
        this.#drop();
        // What is not moved is clicked.
        if (by === 0) actions.clicked(event);
        else actions.move(shelf.panel, by);
      },
      true,
    );
    svg.addEventListener('pointercancel', () => this.#drop());
    svg.addEventListener('keydown', (event) => this.#key(event), true);
  }

  show(scene: Scene | null): void {
    this.#shelves = scene?.shelves ?? [];
    const gripped = this.#grip?.shelf.key;
    if (gripped !== undefined && !this.#shelves.some(({ key }) => key === gripped)) this.#drop();
  }

  /** What a reader who listens and one who has no pointer need of a shelf. */
  reachable(node: SvgNode): SvgNode {
    const shelf = this.#shelves.find(({ key }) => key === node.key);
    if (shelf === undefined) return node;
    const more = {
      'data-shelf': shelf.key,
      role: 'slider',
      tabindex: '0',
      'aria-label': PHRASES.looseShelf(shelf.panel),
      'aria-orientation': 'vertical',
      'aria-valuemin': '1',
      'aria-valuemax': String(shelf.holes),
      'aria-valuenow': String(shelf.hole),
      'aria-valuetext': shelf.about,
    };
    return { ...node, attributes: { ...node.attributes, ...more } };
  }

  /** Where a shelf is being drawn to: its outline there, and the hole in words. */
  nodes(drawn: readonly SvgNode[]): readonly SvgNode[] {
    const grip = this.#grip;
    const node = drawn.find(({ key }) => key === grip?.shelf.key);
    if (grip === null || grip.by === 0 || node === undefined) return [];
    const { x, y } = grip.shelf.step;
    const attributes = {
      class: 'ring shelf-to',
      d: node.attributes.d ?? '',
      transform: `translate(${x * grip.by} ${y * grip.by})`,
    };
    return [{ tag: 'path', key: 'shelf-to', attributes, children: [] }];
  }

  /** 'Hole 12 of 23' while a shelf is being drawn there; '' else. */
  get words(): string {
    const grip = this.#grip;
    return grip === null || grip.by === 0 ? '' : PHRASES.shelfHole(grip.shelf.hole + grip.by, grip.shelf.holes);
  }

  #of(target: EventTarget | null): SceneShelf | undefined {
    const key = target instanceof SVGElement ? target.dataset.shelf : undefined;
    return this.#shelves.find((shelf) => shelf.key === key);
  }

  #drag(at: Point): void {
    const grip = this.#grip!;
    const { step } = grip.shelf;
    const along = (at.x - grip.from.x) * step.x + (at.y - grip.from.y) * step.y;
    const by = within(grip.shelf, Math.round(along / (step.x ** 2 + step.y ** 2)));
    if (by === grip.by) return;
    this.#grip = { ...grip, by };
    this.#actions.changed();
  }

  #drop(): void {
    if (this.#grip === null) return;
    this.#grip = null;
    this.#actions.changed();
  }

  #key(event: KeyboardEvent): void {
    if (event.key === 'Escape' && this.#grip !== null) {
      this.#drop();
      event.stopImmediatePropagation();
      return;
    }
    const shelf = this.#of(event.target);
    const by = KEYS[event.key];
    if (shelf === undefined || by === undefined || event.ctrlKey || event.metaKey || event.altKey) return;
    event.preventDefault();
    event.stopImmediatePropagation();
    if (within(shelf, by) !== 0) this.#actions.move(shelf.panel, by);
  }
}

function within({ hole, holes }: SceneShelf, by: number): number {
  return Math.min(Math.max(by, 1 - hole), holes - hole) + 0;
}
