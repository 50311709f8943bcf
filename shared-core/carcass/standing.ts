import type { Bay, Joint, Panel, PanelRole } from './model.js';
import type { CarcassSpec } from './spec.js';

/** The end of one panel that stands against the face of another. */
export interface Meeting {
  readonly end: Panel;
  readonly at: Joint['end'];
  readonly face: Panel;
  readonly on: Joint['face'];
  /** See `Joint`. */
  readonly stagger: boolean;
}

/** The panels of a carcass where they stand, before they are joined. */
export class Standing {
  readonly #byKey: ReadonlyMap<string, Panel>;

  constructor(
    readonly spec: CarcassSpec,
    readonly panels: readonly Panel[],
    readonly bays: readonly Bay[],
  ) {
    this.#byKey = new Map(panels.map((panel) => [panel.key, panel]));
  }

  /** The panel of a key that every carcass has, or that another panel names. */
  panel(key: string): Panel {
    return this.#byKey.get(key)!;
  }

  inRole(role: PanelRole): readonly Panel[] {
    return this.panels.filter((panel) => panel.role === role);
  }

  /** Both ends of a level panel against the inside faces of the sides. */
  betweenSides(panel: Panel): readonly Meeting[] {
    return [
      this.meeting(panel, 'reference-end', this.panel('left')),
      this.meeting(panel, 'far-end', this.panel('right')),
    ];
  }

  /** An end of each side against the inside face of a panel that lies across them. */
  acrossSides(panel: Panel, at: Joint['end']): readonly Meeting[] {
    return ['left', 'right'].map((side) => this.meeting(this.panel(side), at, panel));
  }

  /** The end of one panel against the inside face of another. */
  meeting(end: Panel, at: Joint['end'], face: Panel): Meeting {
    return { end, at, face, on: 'inside', stagger: false };
  }
}
