import { tell } from '../words/message.js';
import { hint } from './messages.js';
import { listed } from '../words/english.js';
import { isFace } from '../boring/surface.js';
import { isRow } from '../fittings/purposes.js';
import type { Bore } from '../boring/model.js';
import type { Panel } from '../carcass/model.js';
import { setsGrid } from '../carcass/roles.js';
import type { Located, Place } from '../document/place.js';
import { stopCalled } from '../drawing/words.js';
import { showLength } from '../length/show.js';
import type { CarcassAnalysis, JobAnalysis } from '../engine.js';
import type { Reader } from '../length/reader.js';
import type { Micrometres } from '../length/units.js';
import { means } from '../job/panel-key.js';
import { layWords } from '../papers/set-up/lay.js';
import type { AnalysedFile } from './file.js';
import { pinNumbers } from '../papers/pins.js';
import { jointsOf, pinHoles, pinWords, stepsBoring, stepsOf, type PanelStep } from './machine-words.js';

/** Which hints the reader wants: the setting `borewright.inlayHints`. */
export type HintChoice = 'all' | 'stops' | 'holes' | 'none';
export const HINT_CHOICES: readonly HintChoice[] = ['all', 'stops', 'holes', 'none'];

interface Words {
  readonly label: string;
  /** More about it, for a reader who points at the hint; '' for nothing. */
  readonly about: string;
}
interface Hint extends Words {
  readonly place: Place;
}
/** A value of the text, and the panels' key that it makes. */
interface Cause {
  readonly key: string;
  readonly at: Located<Micrometres>;
}

/** Words to be shown behind a value. */
export interface ShownHint extends Words {
  /** The end of the value. */
  readonly at: number;
}

/**
 * Behind the values that cause them: stop positions by the shop's own stop names, and hole numbers of loose shelves. Those of
 * [from, to], in the order of the text.
 */
export function hintsIn(file: AnalysedFile, from: number, to: number, choice: HintChoice): readonly ShownHint[] {
  if (file.kind === 'shop' || choice === 'none') return [];
  const { analysis } = file;
  return analysis.carcasses.flatMap((carcass, index) => {
    const { start, end } = analysis.parts.carcasses[index]!;
    if (end < from || start > to || carcass.spec === null) return [];
    const name = carcass.spec.name.place;
    const hints = [
      ...(choice === 'holes' ? [] : stopHints(analysis, carcass)),
      ...(choice === 'stops' ? [] : holeHints(carcass)),
    ];
    return hints
      .filter(({ place, label }) => label !== '' && place.part === 'self' && place.start !== name.start)
      .map(({ place, label, about }) => ({ at: analysis.locate(place, index).end, label, about }))
      .filter(({ at }) => from <= at && at <= to)
      .sort((a, b) => a.at - b.at);
  });
}

/** Of fixed shelves and dividers, the stops of the lines that they are joined by; of the row offset, those of the rows. */
function stopHints(analysis: JobAnalysis, carcass: CarcassAnalysis): readonly Hint[] {
  const { spec, carcass: box, boring } = carcass;
  if (spec === null || box === null || boring === null) return [];
  const steps = stepsOf(analysis, carcass);
  const stopsBoring = (wanted: (bore: Bore) => boolean): Words =>
    stopWords(
      box.panels,
      stepsBoring(steps, new Set(boring.bores.filter(wanted).map(({ id }) => id))),
      analysis.shopReader,
    );
  const joined = (keys: readonly string[]): Words => {
    const joints = jointsOf(carcass, panelsOf(box.panels, keys));
    return stopsBoring(({ group, face }) => joints.has(group) && isFace(face));
  };
  const rowsOf = (keys: readonly string[]): Words => stopsBoring((bore) => isRow(bore) && keys.includes(bore.panel));

  const sides = box.panels.filter(setsGrid).map(({ key }) => key);
  const written = [spec.rowOffset, spec.rows].find(
    ({ place }) => place.part === 'self' && place.start !== spec.name.place.start,
  );
  return [
    ...byPlace([...spec.fixedShelves, ...spec.dividers], joined),
    ...(written === undefined ? [] : [{ place: written.place, ...rowsOf(sides) }]),
    ...[...spec.panels.values()].flatMap(({ key, rowOffset, rows }): Hint[] => {
      const at = rowOffset ?? rows;
      return at === undefined ? [] : [{ place: at.place, ...rowsOf([key.value]) }];
    }),
  ];
}

/** Of loose shelves, the holes that their pins stand in. */
function holeHints(carcass: CarcassAnalysis): readonly Hint[] {
  const { spec, carcass: box } = carcass;
  if (spec === null || box === null) return [];
  return byPlace(spec.looseShelves, (keys) => {
    const holes = keys.map((key) => pinHoles(carcass, panelsOf(box.panels, [key])));
    const words = holes.map(pinWords);
    const numbers = holes.map(pinNumbers);
    const plain = numbers.flatMap((one) => (one.length === 1 ? [String(one[0]!.number)] : []));
    const label =
      keys.length > 1 && plain.length === keys.length
        ? tell(hint.holes({ numbers: plain }), 'mm')
        : words.filter((one) => one !== '').join('; ');
    return { label, about: tell(hint.counted(), 'mm') };
  });
}

function panelsOf(panels: readonly Panel[], keys: readonly string[]): readonly Panel[] {
  return panels.filter((panel) => keys.some((key) => means(key, panel.key)));
}

/** One hint a place: shelves of which only the number is written share theirs. */
function byPlace(causes: readonly Cause[], words: (keys: readonly string[]) => Words): readonly Hint[] {
  const places = new Map<string, { readonly place: Place; readonly keys: string[] }>();
  for (const { key, at } of causes) {
    const { part, start, end } = at.place;
    const same = places.get(`${part} ${start} ${end}`);
    if (same === undefined) places.set(`${part} ${start} ${end}`, { place: at.place, keys: [key] });
    else same.keys.push(key);
  }
  return [...places.values()].map(({ place, keys }) => ({ place, ...words(keys) }));
}

/** More positions than this stand in the tooltip only. */
const MOST_POSITIONS = 3;

/** 'long-left and long-right 712 mm'; where they differ 'long-right 360 mm (left), 344 mm (divider-1)'. */
function stopWords(panels: readonly Panel[], steps: readonly PanelStep[], reader: Reader): Words {
  const byPosition = new Map<Micrometres, { readonly stops: Set<string>; readonly panels: Set<string> }>();
  const lines: string[] = [];
  // In the order in which the shop lists its stops.
  const ordered = steps
    .map((one) => ({ ...one, rank: one.setUp.machine.stops.findIndex(({ name }) => name === one.step.stop) }))
    .sort((a, b) => a.rank - b.rank);
  for (const { setUp, step, panel: key } of ordered) {
    const stop = setUp.stops.find(({ name }) => name === step.stop);
    const panel = panels.find((one) => one.key === key);
    if (stop === undefined || panel === undefined) continue;
    const same = byPosition.get(stop.position) ?? { stops: new Set(), panels: new Set() };
    same.stops.add(stopCalled(stop.name));
    same.panels.add(key);
    byPosition.set(stop.position, same);
    lines.push(`${key}: ${layWords(setUp, step, panel)}, ${showLength(stop.position, reader)} (${setUp.machine.name})`);
  }
  const several = byPosition.size > 1;
  const parts = [...byPosition].map(
    ([position, { stops, panels: those }]) =>
      `${listed([...stops])} ${showLength(position, reader)}${several ? ` (${listed(panels.filter(({ key }) => those.has(key)).map(({ key }) => key))})` : ''}`,
  );
  const shown = parts.length > MOST_POSITIONS ? [...parts.slice(0, MOST_POSITIONS), '…'] : parts;
  return { label: shown.join(', '), about: [...new Set(lines)].join('\n') };
}
