import type { InlayHint, Range } from 'vscode-languageserver';
import type { Located, Place } from '../../shared-core/document/place.js';
import { figureWithUnit } from '../../shared-core/drawing/figures.js';
import { listed } from '../../shared-core/drawing/words.js';
import type { CarcassAnalysis, JobAnalysis } from '../../shared-core/engine.js';
import type { Panel } from '../../shared-core/carcass/model.js';
import type { Micrometres } from '../../shared-core/length/units.js';
import { offsetOf } from '../text.js';
import type { OpenFile } from '../workspace.js';
import { jointsOf, pinHoles, pinWords, stepsBoring, stepsOf, type PanelStep } from './machine-words.js';

/** Which hints the reader wants: the setting `borewright.inlayHints`. */
export type HintChoice = 'all' | 'stops' | 'holes' | 'none';
export const HINT_CHOICES: readonly HintChoice[] = ['all', 'stops', 'holes', 'none'];

interface Hint {
  readonly place: Place;
  readonly label: string;
}

/** Behind the values that cause them: stop positions by the shop's own stop names, and hole numbers of loose shelves. */
export function inlayHints(file: OpenFile, range: Range, choice: HintChoice): InlayHint[] {
  if (file.kind === 'shop' || choice === 'none') return [];
  const { analysis, document } = file;
  const [from, to] = [offsetOf(document, range.start), offsetOf(document, range.end)];
  return analysis.carcasses.flatMap((carcass, index) => {
    const { start, end } = analysis.parts.carcasses[index]!;
    if (end < from || start > to) return [];
    const hints = [
      ...(choice === 'holes' ? [] : stopHints(analysis, carcass)),
      ...(choice === 'stops' ? [] : holeHints(carcass)),
    ];
    return hints
      .filter(({ place, label }) => place.part === 'self' && label !== '')
      .map(({ place, label }) => ({ at: analysis.locate(place, index).end, label }))
      .filter(({ at }) => from <= at && at <= to)
      .sort((a, b) => a.at - b.at)
      .map(({ at, label }): InlayHint => ({ position: document.positionAt(at), label, paddingLeft: true }));
  });
}

/** Of fixed shelves and dividers, the stops of the lines that they are joined by; of the row offset, those of the rows. */
function stopHints(analysis: JobAnalysis, carcass: CarcassAnalysis): readonly Hint[] {
  const { spec, carcass: box, boring } = carcass;
  if (spec === null || box === null || boring === null) return [];
  const steps = stepsOf(analysis, carcass);
  const show = (length: Micrometres): string => figureWithUnit(length, analysis.unit);
  const inFaces = (panels: readonly Panel[]): string => {
    const joints = jointsOf(carcass, panels);
    const bores = boring.bores.filter(
      ({ group, face }) => joints.has(group) && (face === 'inside' || face === 'outside'),
    );
    return stopsWords(stepsBoring(steps, new Set(bores.map(({ id }) => id))), show);
  };
  const rowsOf = (keys: readonly string[]): string => {
    const bores = boring.bores.filter(({ panel, purpose }) => purpose === 'row' && keys.includes(panel));
    return stopsWords(stepsBoring(steps, new Set(bores.map(({ id }) => id))), show);
  };
  const sides = box.panels.filter(({ role }) => role === 'left-side' || role === 'right-side').map(({ key }) => key);
  const rowsAt = spec.rowOffset.place.part === 'self' ? spec.rowOffset : spec.rows;
  return [
    ...byPlace(
      [...spec.fixedShelves, ...spec.dividers].map(({ key, at }) => ({ at, key })),
      (keys) => inFaces(box.panels.filter((panel) => keys.some((key) => isOf(panel, key)))),
    ),
    { place: rowsAt.place, label: rowsOf(sides) },
    ...[...spec.panels.values()].flatMap(({ key, rowOffset, rows }): Hint[] => {
      const at = rowOffset ?? rows;
      return at === undefined ? [] : [{ place: at.place, label: rowsOf([key.value]) }];
    }),
  ];
}

/** Of loose shelves, the holes that their pins stand in. */
function holeHints(carcass: CarcassAnalysis): readonly Hint[] {
  const { spec, carcass: box } = carcass;
  if (spec === null || box === null) return [];
  const words = (key: string): string =>
    pinWords(
      pinHoles(
        carcass,
        box.panels.filter((panel) => isOf(panel, key)),
      ),
    );
  return byPlace(spec.looseShelves, (keys) =>
    keys
      .map(words)
      .filter((one) => one !== '')
      .join('; '),
  );
}

function isOf(panel: Panel, key: string): boolean {
  return panel.key === key || panel.key.startsWith(`${key}-bay-`);
}

/** One hint a place: shelves of which only the number is written share theirs. */
function byPlace(
  things: readonly { readonly key: string; readonly at: Located<Micrometres> }[],
  label: (keys: readonly string[]) => string,
): readonly Hint[] {
  const places = new Map<string, { readonly place: Place; readonly keys: string[] }>();
  for (const { key, at } of things) {
    const { part, start, end } = at.place;
    const same = places.get(`${part} ${start} ${end}`);
    if (same === undefined) places.set(`${part} ${start} ${end}`, { place: at.place, keys: [key] });
    else same.keys.push(key);
  }
  return [...places.values()].map(({ place, keys }) => ({ place, label: label(keys) }));
}

/** 'long-left and long-right 712 mm'; 'long-left 712 mm, long-right 600 mm'. In the order of the steps. */
function stopsWords(steps: readonly PanelStep[], show: (length: Micrometres) => string): string {
  const byPosition = new Map<Micrometres, Set<string>>();
  for (const { setUp, step } of steps) {
    const stop = setUp.stops.find(({ name }) => name === step.stop);
    if (stop === undefined) continue;
    const names = byPosition.get(stop.position) ?? new Set<string>();
    byPosition.set(stop.position, names.add(stop.name));
  }
  return [...byPosition].map(([position, names]) => `${listed([...names])} ${show(position)}`).join(', ');
}
