import type { Carcass, Joint, Panel } from '../carcass/model.js';
import { alongAxis } from '../carcass/pose.js';
import type { Stray } from '../machining/replay/stray.js';

/**
 * Panels that stand between the same two faces must share one clear width. The two faces are straight and are pressed
 * against the outermost panels; so a panel between these that is too short stands off the face, and one that is too long
 * keeps the faces off the outermost two. What is too long or too short is a weighted sum of lengths.
 */
export interface Rival {
  /** By how much each panel's length counts for the gap: those that hold the faces apart count up, the one that is held off down. */
  readonly shares: readonly { readonly panel: string; readonly share: number }[];
}

/** How far the rivals hold a joint open at least, in micrometres; negative where they leave it room. */
export const heldOpen = ({ shares }: Rival, stray: Stray): number =>
  shares.reduce((sum, { panel, share }) => sum + share * stray('length', panel), 0);

interface Member {
  readonly panel: string;
  /** Where it stands between the faces. */
  readonly at: number;
}

/** The rivals of every panel that has both its ends on faces, by the key of the panel. */
export function rivalsOf({ joints, panels }: Carcass): ReadonlyMap<string, readonly Rival[]> {
  const byKey = new Map(panels.map((panel) => [panel.key, panel]));
  const rivals = new Map<string, Rival[]>();
  for (const members of groupsOf(joints, byKey)) {
    const low = members.reduce((least, one) => (one.at < least.at ? one : least));
    const high = members.reduce((greatest, one) => (one.at > greatest.at ? one : greatest));
    if (low.at === high.at) continue;
    for (const middle of members) {
      if (middle === low || middle === high) continue;
      const part = (middle.at - low.at) / (high.at - low.at);
      const faces = [
        { panel: low.panel, share: 1 - part },
        { panel: high.panel, share: part },
      ];
      push(rivals, middle.panel, { shares: [...faces, { panel: middle.panel, share: -1 }] });
      const other = faces.map(({ panel, share }) => ({ panel, share: -share }));
      for (const { panel } of [low, high]) {
        push(rivals, panel, { shares: [{ panel: middle.panel, share: 1 }, ...other] });
      }
    }
  }
  return rivals;
}

/** Panels by the two faces that they stand between; only where there are enough of them to be at odds. */
function groupsOf(joints: readonly Joint[], panels: ReadonlyMap<string, Panel>): Member[][] {
  const groups = new Map<string, Member[]>();
  for (const near of joints) {
    if (near.end !== 'reference-end') continue;
    for (const far of joints) {
      if (far.endPanel !== near.endPanel || far.end !== 'far-end') continue;
      const { key, pose } = panels.get(near.endPanel)!;
      const between = `${near.facePanel} ${near.face} ${far.facePanel} ${far.face}`;
      push(groups, between, { panel: key, at: pose.origin[alongAxis(pose.t)] });
    }
  }
  return [...groups.values()].filter((members) => members.length > 2);
}

function push<K, V>(map: Map<K, V[]>, key: K, value: V): void {
  const list = map.get(key);
  if (list === undefined) map.set(key, [value]);
  else list.push(value);
}
