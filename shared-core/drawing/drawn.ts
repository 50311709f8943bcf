import type { Bore, BoreMap } from '../boring/model.js';
import type { Carcass, Panel } from '../carcass/model.js';
import type { Place } from '../document/place.js';
import { boresConcerned, type Finding } from '../findings/finding.js';
import type { Reader } from '../length/reader.js';
import type { SceneFinding, SourceKey } from './scene/scene.js';
import { sourceKey } from './scene/source.js';
import { tell } from '../words/message.js';

/** What a drawing is made of: one carcass with its bores and what was found in it. */
export interface Drawn {
  readonly name: string;
  readonly carcass: Carcass;
  readonly boring: BoreMap;
  readonly findings: readonly Finding[];
  /** What the owner wants every paper of the carcass to say; left out or '' for nothing. */
  readonly note?: string;
  /** Whom every figure on the drawing is for. */
  readonly reader: Reader;
}

/** The bores of one panel. */
export function boresOf(drawn: Drawn, panel: Panel): readonly Bore[] {
  return drawn.boring.bores.filter((bore) => bore.panel === panel.key);
}

/** The face to show: the one with more blind bores; the inside one where they are even. */
export function faceToShow(bores: readonly Bore[]): 'inside' | 'outside' {
  const blind = (face: 'inside' | 'outside'): number =>
    bores.filter((bore) => bore.face === face && !bore.through).length;
  return blind('outside') > blind('inside') ? 'outside' : 'inside';
}

/** Collects the places that a scene refers to. */
export class Sources {
  readonly #places = new Map<SourceKey, Place>();

  key(place: Place): SourceKey {
    const key = sourceKey(place);
    this.#places.set(key, place);
    return key;
  }

  record(): Record<SourceKey, Place> {
    return Object.fromEntries(this.#places);
  }
}

/** The findings that a drawing of these panels shows: those of the panels, of their bores, and of the carcass as a whole. */
export function findingsFor(drawn: Drawn, panels: readonly Panel[], sources: Sources): SceneFinding[] {
  const keys = new Set(panels.map(({ key }) => key));
  const ids = new Set(drawn.boring.bores.filter(({ panel }) => keys.has(panel)).map(({ id }) => id));
  const counted = new Map<string, number>();
  return drawn.findings.flatMap((finding) => {
    const bores = boresConcerned(finding).filter((id) => ids.has(id));
    const wanted = bores.length > 0 || finding.panel === undefined || keys.has(finding.panel);
    const count = (counted.get(finding.rule) ?? 0) + 1;
    counted.set(finding.rule, count);
    if (!wanted) return [];
    return [
      {
        key: `${finding.rule}#${count}`,
        rule: finding.rule,
        severity: finding.severity,
        message: tell(finding.message, drawn.reader),
        panel: finding.panel ?? null,
        bores,
        source: sources.key(finding.place),
      },
    ];
  });
}
