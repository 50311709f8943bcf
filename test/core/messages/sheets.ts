import { blankOf } from '../../../shared-core/machining/blank.js';
import { cupOperations } from '../../../shared-core/machining/plan/cup-operations.js';
import { headsOver } from '../../../shared-core/machining/plan/heads.js';
import { compareHoles } from '../../../shared-core/machining/replay/compare.js';
import { replayPanel } from '../../../shared-core/machining/replay/replay.js';
import type { SetUp, Step } from '../../../shared-core/machining/set-up.js';
import type { CupBorer } from '../../../shared-core/shop/model.js';
import type { Message } from '../../../shared-core/words/message.js';
import { blank, CUP, HORIZONTAL, LINE, mm, setUp, step, VERTICAL } from '../machining/replay/set-ups.js';
import { analyse } from '../findings/jobs.js';

// Sheets that nobody can carry out, and bores that no job asks for yet. Invented.

const LEFT = blank(720, 560, 16, 'right');
const BOTTOM = blank(568, 560, 16, 'left');
const lies = { down: 'outside', edge: 'front', end: 'reference-end', stop: 'near-left' } as const;
const rowLies = { ...lies, stop: 'end-left' };
const endLies = { ...lies, stop: 'square-left' };
type Setting = Partial<Parameters<typeof setUp>[1]>;

const faults = (sheet: SetUp, panel: 'left' | 'bottom'): readonly Message[] => {
  const replay = replayPanel([sheet], 'box', panel, panel === 'left' ? LEFT : BOTTOM);
  return replay.ok ? [] : replay.problems.map(({ message }) => message);
};
const onVertical = (
  setting: Setting,
  steps: readonly Step[] = [step(lies, [0], 8)],
  machine: SetUp['machine'] = VERTICAL,
) => faults(setUp(machine, { fence: [53], stops: { 'near-left': 8 }, depth: 12, ...setting }, { left: steps }), 'left');
const onLine = (setting: Setting, steps: readonly Step[] = [step(rowLies, [0], 5)], machine: SetUp['machine'] = LINE) =>
  faults(setUp(machine, { fence: [37], stops: { 'end-left': 8 }, depth: 13, ...setting }, { left: steps }), 'left');
const onHorizontal = (setting: Setting, steps: readonly Step[] = [step(endLies, [0], 8)]) =>
  faults(
    setUp(HORIZONTAL, { height: 8, stops: { 'square-left': 53 }, depth: 19, ...setting }, { bottom: steps }),
    'bottom',
  );

/** All that a replay says of sheets that it cannot carry out. */
export function faultsOfSheets(): readonly Message[] {
  const fixed = LINE.stops.map((one) => ({ ...one, lowers: false }));
  return [
    onVertical({ depth: 61 }),
    onVertical({ fence: [19] }),
    onVertical({ fence: [] }),
    onVertical({ height: 8 }),
    onVertical({ stops: { 'near-left': 61 } }),
    onVertical({ stops: { 'near-left': 8, 'far-left': 2001 }, extension: true }),
    onVertical({ stops: { 'near-left': 8, middle: 8 } }),
    onVertical({ stops: { 'near-left': 60, 'far-left': 60 } }),
    onVertical({}, [step({ ...lies, stop: 'near-right' }, [0], 8)]),
    onVertical({}, [step({ ...lies, end: 'far-end' }, [0], 8)]),
    onVertical({}, [step(lies, [21], 8)]),
    onVertical({}, [step(lies, [3, 3], 8)]),
    onVertical({}, [step(lies, [3], 0)]),
    onVertical({}, [step(lies, [], 8)]),
    onVertical({}, [step(lies, [0], 8, mm(32))]),
    onVertical({}, [step(lies, [16], 12)]),
    onVertical({}, [step(lies, [16, 17], 8)]),
    onVertical({ depth: 16 }),
    onVertical({ through: true }),
    onVertical({}, [step(lies, [0], 8), step(lies, [0], 8)]),
    onVertical({}, undefined, { ...VERTICAL, panel: { ...VERTICAL.panel, length: { min: mm(200), max: mm(700) } } }),
    faults(
      {
        ...setUp(VERTICAL, { fence: [53], stops: { 'near-left': 8 }, depth: 12 }, { left: [step(lies, [0], 8)] }),
        stops: [{ name: 'near-left', side: 'right', position: mm(8) }],
      },
      'left',
    ),
    onLine({ fence: [81] }),
    onLine({ fence: [37, 132] }),
    onLine({ fence: [132, 37] }, undefined, { ...LINE, headDistance: null }),
    onLine({ fence: [80, 701] }),
    onLine({ fence: [37, 200, 400] }),
    onLine({ extension: true }),
    onLine({}, [{ ...step(rowLies, [], 5), spindles: [{ head: 1, spindle: 0, diameter: mm(5) }] }]),
    onLine({}, [step(rowLies, [10], 5, mm(40))]),
    onLine({}, [step(rowLies, [10], 5, mm(32))]),
    onLine({}, [step(rowLies, [10], 5, mm(2016))]),
    onLine({}, [step(rowLies, [10], 5, mm(32))], { ...LINE, indexPins: 'none' }),
    onLine({}, [step(rowLies, [0], 5, mm(-32))], { ...LINE, stops: fixed }),
    onHorizontal({ height: 41 }),
    faults(
      {
        ...setUp(HORIZONTAL, { stops: { 'square-left': 53 }, depth: 19 }, { bottom: [step(endLies, [0], 8)] }),
        height: null,
      },
      'bottom',
    ),
    onHorizontal({ through: true }),
  ].flat();
}

/** What differs between holes that were made and those that were wanted. */
export function differences(): readonly Message[] {
  const hole = (u: number) =>
    ({ face: 'inside', u: mm(u), v: mm(8), diameter: mm(8), depth: mm(12), through: false }) as const;
  return [
    compareHoles([], [hole(53), hole(181)]),
    compareHoles([hole(53)], []),
    compareHoles([hole(53)], [hole(85)]),
  ].flatMap((difference) => (difference === null ? [] : [difference.message]));
}

/** What keeps machines from bores that no job has, or that another way is found for. */
export function obstacles(): readonly Message[] {
  const box = analyse('carcasses:\n  sink: { kind: wall, width: 600 }\n').carcasses[0]!;
  const panel = box.carcass!.panels[0]!;
  const [bore] = box.boring!.bores;
  const cup = (v: number) =>
    ({ ...bore!, face: 'inside', u: mm(22.5), v: mm(v), diameter: mm(35), depth: mm(12.5), purpose: 'cup' }) as const;
  const on = (borer: CupBorer, v = 96) =>
    cupOperations('door', panel, blankOf(panel), [cup(v)], borer).unreachable.map(({ reason }) => reason);
  const apart = headsOver([mm(37), mm(685)], LINE, mm(37));
  return [
    ...on({ ...CUP, stops: [] }),
    ...on(CUP, 20),
    ...on({ ...CUP, distance: { min: mm(30), max: mm(40) } }),
    ...('reason' in apart ? [apart.reason] : []),
  ];
}
