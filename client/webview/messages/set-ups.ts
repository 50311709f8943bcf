import type {
  ListedRun,
  ListedSetUp,
  ListedStep,
  ListedStop,
  RefusedRun,
  SetUpSetting,
  SetUpsReply,
  SetUpTotals,
  UnboredHoles,
} from '../../../shared-core/drawing/messages/set-ups.js';
import { flag, list, number, object, oneOf, orNull, text, variants, type Shape } from '../shape.js';
import { isRange } from './common.js';

const isSetting: Shape<SetUpSetting> = object({ name: text, value: text, about: text, changed: flag });

const isStop: Shape<ListedStop> = object({ name: text, side: oneOf('left', 'right'), position: number, words: text });

const isStep: Shape<ListedStep> = object({ words: text, lowered: list(text), held: flag, holes: number });

const isRun: Shape<ListedRun> = object({
  carcass: text,
  panel: text,
  pieces: number,
  size: text,
  content: text,
  range: orNull(isRange),
  steps: list(isStep),
});

const isRefused: Shape<RefusedRun> = object({
  carcass: text,
  panel: text,
  pieces: number,
  size: text,
  range: orNull(isRange),
  words: text,
});

const isSetUp: Shape<ListedSetUp> = object({
  id: text,
  content: text,
  machine: text,
  kind: oneOf('vertical', 'horizontal', 'line', 'cup'),
  kindWords: text,
  changes: list(text),
  seconds: number,
  time: text,
  settings: list(isSetting),
  stops: list(isStop),
  fence: list(number),
  height: orNull(number),
  extension: flag,
  depth: number,
  through: flag,
  spindles: list(object({ head: number, spindle: number, diameter: number })),
  runs: list(isRun),
  refused: list(isRefused),
  firstPiece: list(object({ name: text, value: text })),
  strokes: number,
  holes: number,
  lay: list(text),
  cautions: list(text),
});

const isTotals: Shape<SetUpTotals> = object({
  setUps: number,
  leastSetUps: number,
  strokes: number,
  panels: number,
  holes: number,
  seconds: number,
  leastSeconds: number,
  proven: flag,
  words: text,
});

const isUnbored: Shape<UnboredHoles> = object({
  carcass: text,
  panel: text,
  count: number,
  machine: orNull(text),
  reason: text,
});

/** What the server answers about the set-ups of a job. */
export const isSetUpsReply: Shape<SetUpsReply> = variants('kind', {
  'set-ups': {
    uri: text,
    version: number,
    stale: orNull(text),
    title: text,
    unit: oneOf('mm', 'in'),
    setUps: list(isSetUp),
    totals: isTotals,
    unbored: list(isUnbored),
    broken: list(text),
  },
  nothing: { uri: text, version: number, reason: text },
});
