import { describe, expect, it } from 'vitest';
import { Ticks } from '../../client/panels/machine/ticks.js';
import { floorStepAt, floorSteps, whereToGoOn } from '../../client/webview/machine/floor-steps.js';
import { figuresOf, measuredAlike, nextWords } from '../../client/webview/machine/figures.js';
import { findAgain, soundScope, stepsOf, toSetUp, within } from '../../client/webview/machine/order.js';
import type { ListedRun, ListedSetUp, SetUpsReply } from '../../shared-core/drawing/messages/set-ups.js';
import { isFromMachinePage, isToMachinePage } from '../../client/webview/messages/machine.js';

const run = (carcass: string, panel: string, strokes: number, content = `${carcass} ${panel}`): ListedRun => ({
  carcass,
  panel,
  pieces: 1,
  size: '720 × 560 × 16 mm',
  content,
  range: null,
  steps: Array.from({ length: strokes }, () => ({
    words: 'bottom end at near-left',
    lowered: [],
    held: true,
    holes: 4,
  })),
});
const setUp = (id: string, ...runs: readonly ListedRun[]): ListedSetUp => ({
  id,
  content: id,
  machine: id.replace(/-\d+$/, ''),
  kind: 'vertical',
  kindWords: 'vertical head',
  changes: [],
  seconds: 0,
  time: 'no time',
  settings: [],
  stops: [],
  fence: [],
  height: null,
  extension: false,
  depth: 12_000,
  through: false,
  spindles: [],
  runs,
  refused: [],
  firstPiece: [{ name: 'from front edge', value: '37 mm' }],
  strokes: 0,
  holes: 0,
  lay: [],
  cautions: [],
});

const job = [
  setUp('up-1', run('a', 'left', 2), run('a', 'right', 1)),
  setUp('up-2', run('b', 'left', 1)),
  setUp('level-1', run('a', 'bottom', 2), run('b', 'left', 1, 'b left, ends')),
];
const steps = stepsOf(job);
const names = (all: readonly { carcass: string; panel: string; step: number }[]): string[] =>
  all.map(({ carcass, panel, step }) => `${carcass}/${panel}/${step}`);

describe('the steps of a job', () => {
  it('come set-up by set-up, panel by panel', () => {
    expect(names(steps)).toEqual([
      'a/left/0',
      'a/left/1',
      'a/right/0',
      'b/left/0',
      'a/bottom/0',
      'a/bottom/1',
      'b/left/0',
    ]);
    expect(steps.map(({ place }) => place)).toEqual([0, 0, 0, 1, 2, 2, 2]);
  });

  it('are those of a carcass or a panel where that is wanted, of all where it is gone', () => {
    expect(names(within(steps, { carcass: 'b', panel: 'left' }))).toEqual(['b/left/0', 'b/left/0']);
    expect(within(steps, { carcass: 'a', panel: null })).toHaveLength(5);
    expect(soundScope(steps, { carcass: 'a', panel: 'top' })).toEqual({ carcass: 'a', panel: null });
    expect(soundScope(steps, { carcass: 'c', panel: 'left' })).toEqual({ carcass: null, panel: null });
  });

  it('lead from set-up to set-up: forward to the next, back to the beginning of this one, then of the one before', () => {
    expect(toSetUp(steps, 1, 1)).toBe(3);
    expect(toSetUp(steps, 3, 1)).toBe(4);
    expect(toSetUp(steps, 5, 1)).toBe(5);
    expect(toSetUp(steps, 5, -1)).toBe(4);
    expect(toSetUp(steps, 4, -1)).toBe(3);
    expect(toSetUp(steps, 3, -1)).toBe(0);
    expect(toSetUp(steps, 0, -1)).toBe(0);
    expect(toSetUp([], 0, 1)).toBe(0);
  });

  it('are found again in a new plan by what they bore, whatever their set-up is called now', () => {
    const other = stepsOf([
      setUp('up-1', run('c', 'left', 1)),
      setUp('up-2', run('a', 'right', 1), run('a', 'left', 2)),
      setUp('level-1', run('b', 'left', 1, 'b left, longer now')),
    ]);
    expect(findAgain(other, steps[1]!)).toBe(3);
    expect(findAgain(other, steps[6]!)).toBe(4);
    expect(findAgain(other, steps[4]!)).toBe(1);
    expect(findAgain(other, null)).toBe(0);
    expect(findAgain([], steps[0]!)).toBe(0);
  });
});

describe('the figures of a step', () => {
  const setting = (name: string, changed = false) => ({ name, value: `${name} value`, about: '', changed });
  const stop = (name: string) => ({ name, side: 'left' as const, position: 8000, words: '8 mm' });
  const settings = ['fence', 'near', 'long', 'depth', 'bits'].map((name) => setting(name));

  it('begin with the stop that it uses, and end with those that it does not', () => {
    const figures = figuresOf({ settings, stops: [stop('near'), stop('long')] }, 'long');
    expect(figures[0]).toMatchObject({ used: true, aside: false });
    expect(figures.map(({ name }) => name)).toEqual(['long', 'fence', 'depth', 'bits', 'near']);
    expect(figures.filter(({ aside }) => aside).map(({ name }) => name)).toEqual(['near']);
    expect(settings.map(({ name }) => name)).toEqual(['fence', 'near', 'long', 'depth', 'bits']);
  });

  it('know a stop that is shown with its noun', () => {
    const shown = [setting('depth'), setting('stop A'), setting('stop C')];
    const figures = figuresOf({ settings: shown, stops: [stop('A'), stop('C')] }, 'C');
    expect(figures.map(({ name, used, aside }) => [name, used, aside])).toEqual([
      ['stop C', true, false],
      ['depth', false, false],
      ['stop A', false, true],
    ]);
  });

  it('say once what every stop is measured to', () => {
    const measured = (name: string, about: string) => ({ ...setting(name), about });
    const stops = [stop('near'), stop('long')];
    const to = 'from its face to the line of spindles';
    const alike = [measured('fence', 'to spindle 1'), measured('near', to), measured('long', to)];
    expect(measuredAlike({ settings: alike, stops })).toBe(to);
    expect(measuredAlike({ settings: alike.slice(0, 2), stops })).toBeNull();
    expect(measuredAlike({ settings: [...alike.slice(0, 2), measured('long', 'to spindle 23')], stops })).toBeNull();
    expect(measuredAlike({ settings, stops })).toBeNull();
  });

  it('say what comes next: the same panel, another one, or another set-up', () => {
    expect(nextWords(steps, 0)).toBe('bottom end at near-left.');
    expect(nextWords(steps, 1)).toBe('a, right. Bottom end at near-left.');
    expect(nextWords(steps, 2)).toBe('set-up 2 on up, b, left.');
    expect(nextWords(steps, steps.length - 1)).toBeNull();
    expect(nextWords([], 0)).toBeNull();
    // Of one panel alone: the next set-up that has it.
    expect(nextWords(within(steps, { carcass: 'b', panel: 'left' }), 0)).toBe('set-up 3 on level, b, left.');
  });
});

/** The editor's memory, as far as ticks ask. */
function memory(): ConstructorParameters<typeof Ticks>[0] & { readonly kept: Map<string, unknown> } {
  const kept = new Map<string, unknown>();
  return {
    kept,
    keys: () => [...kept.keys()],
    get: (key: string, otherwise?: unknown) => kept.get(key) ?? otherwise,
    update: (key: string, value: unknown) => {
      if (value === undefined) kept.delete(key);
      else kept.set(key, value);
      return Promise.resolve();
    },
  } as ReturnType<typeof memory>;
}

describe('ticks', () => {
  it('are kept by job, and gone when they are taken off', async () => {
    const state = memory();
    const ticks = new Ticks(state);
    await ticks.set('file:///one', ['a', 'b'], true, new Set());
    await ticks.set('file:///two', ['c'], true, new Set());
    await ticks.set('file:///one', ['a'], false, new Set());
    expect(new Ticks(state).of('file:///one')).toEqual(['b']);
    expect(ticks.of('file:///two')).toEqual(['c']);
    await ticks.set('file:///two', ['c'], false, new Set());
    expect(state.kept.size).toBe(1);
  });

  it('of work that the job has are never dropped; of other work the oldest go when there are too many', async () => {
    const ticks = new Ticks(memory());
    const old = Array.from({ length: 4000 }, (_, index) => `old-${index}`);
    await ticks.set('job', old, true, new Set());
    await ticks.set('job', ['new-1', 'new-2'], true, new Set(['old-0', 'new-1', 'new-2']));
    const kept = new Set(ticks.of('job'));
    expect(kept.size).toBe(4000);
    expect(['old-0', 'new-1', 'new-2', 'old-3', 'old-3999'].map((one) => kept.has(one))).toEqual([
      true,
      true,
      true,
      true,
      true,
    ]);
    expect(['old-1', 'old-2'].map((one) => kept.has(one))).toEqual([false, false]);
  });

  it('that do not look like ticks count for nothing', () => {
    const state = memory();
    state.kept.set('borewright.ticks:job', ['a', 7, null, { b: 1 }]);
    state.kept.set('borewright.ticks:other', 'a');
    expect(new Ticks(state).of('job')).toEqual(['a']);
    expect(new Ticks(state).of('other')).toEqual([]);
  });
});

describe('messages', () => {
  const address = { setUp: 'up-1', carcass: 'a', panel: 'left', step: 0 };
  const subject = { uri: 'file:///job', side: 'list', carcass: null, panel: null };

  it('of the page are known by their form', () => {
    for (const sound of [
      { type: 'ready', subject: null },
      { type: 'ready', subject },
      { type: 'step', address, nearer: 2 },
      { type: 'tick', ticks: ['a'], on: true },
      { type: 'reveal', carcass: 'a', panel: 'left' },
    ])
      expect(isFromMachinePage(sound), JSON.stringify(sound)).toBe(true);
    for (const unsound of [
      null,
      'ready',
      { type: 'ready' },
      { type: 'subject', subject: { ...subject, side: 'back' } },
      { type: 'step', address: { ...address, step: -1 }, nearer: 2 },
      { type: 'step', address: { ...address, step: 0.5 }, nearer: 2 },
      { type: 'step', address, nearer: 3 },
      { type: 'tick', ticks: [1], on: true },
      { type: 'reveal', carcass: 'a', panel: null },
      { type: 'run', command: 'anything' },
    ])
      expect(isFromMachinePage(unsound), JSON.stringify(unsound)).toBe(false);
  });

  it('of the extension are known by their form', () => {
    const reply = { kind: 'nothing', uri: 'file:///job', version: 1, reason: 'no carcass' };
    expect(isToMachinePage({ type: 'set-ups', reply })).toBe(true);
    expect(isToMachinePage({ type: 'step', nearer: 1, reply: { ...reply, address } })).toBe(true);
    expect(isToMachinePage({ type: 'step', nearer: 1, reply })).toBe(false);
    expect(isToMachinePage({ type: 'ticks', ticks: 'a' })).toBe(false);
    const list: SetUpsReply = {
      kind: 'set-ups',
      uri: 'file:///job',
      version: 1,
      stale: null,
      title: '',
      unit: 'mm',
      setUps: job,
      totals: {
        setUps: 3,
        leastSetUps: 3,
        strokes: 6,
        panels: 4,
        holes: 0,
        seconds: 0,
        leastSeconds: 0,
        proven: true,
        words: '',
      },
      unbored: [],
      broken: [],
    };
    const passes = (reply: unknown): boolean => isToMachinePage({ type: 'set-ups', reply });
    expect(passes(list)).toBe(true);
    for (const key of Object.keys(list)) expect(passes({ ...list, [key]: undefined }), key).toBe(false);
    const [first] = job;
    for (const key of Object.keys(first!))
      expect(passes({ ...list, setUps: [{ ...first!, [key]: undefined }] }), `${key} of a set-up`).toBe(false);
  });
});

describe('at the machine', () => {
  const floors = floorSteps(steps);
  const told = floors.map(({ kind, at, content }) => `${kind} ${at} ${content ?? '-'}`);

  it('the machine is set, the first panel bored and checked, then the others', () => {
    expect(told).toEqual([
      'set 0 up-1',
      'stroke 0 -',
      'stroke 1 a left',
      'check 1 up-1:check',
      'stroke 2 a right',
      'set 3 up-2',
      'stroke 3 b left',
      'check 3 up-2:check',
      'set 4 level-1',
      'stroke 4 -',
      'stroke 5 a bottom',
      'check 5 level-1:check',
      'stroke 6 b left, ends',
    ]);
    expect(floors.filter((one) => one.isFirstOfMachine).map(({ at }) => at)).toEqual([0, 4]);
  });

  it('work goes on at the first thing that is not ticked off, a panel from its first stroke', () => {
    const after = (...ticks: readonly string[]): string => told[whereToGoOn(floors, new Set(ticks))]!;
    expect(after()).toBe('set 0 up-1');
    expect(after('up-1')).toBe('stroke 0 -');
    expect(after('up-1', 'a left')).toBe('check 1 up-1:check');
    expect(after('up-1', 'a left', 'up-1:check', 'a right', 'up-2', 'b left', 'up-2:check', 'level-1')).toBe(
      'stroke 4 -',
    );
    const all = floors.flatMap(({ content }) => (content === null ? [] : [content]));
    expect(after(...all)).toBe('stroke 6 b left, ends');
    expect(whereToGoOn([], new Set())).toBe(0);
  });

  it('a first piece is checked only where it is bored: not in the steps of another panel', () => {
    const own = floorSteps(within(steps, { carcass: 'a', panel: 'right' }));
    expect(own.map(({ kind }) => kind)).toEqual(['set', 'stroke']);
  });

  it('a thing is found again by its kind and stroke', () => {
    expect(told[floorStepAt(floors, 'check', 3)]).toBe('check 3 up-2:check');
    expect(told[floorStepAt(floors, 'set', 2)]).toBe('stroke 2 a right');
  });
});
