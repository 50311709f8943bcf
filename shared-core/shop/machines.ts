import type { Entry } from '../schema/schema.js';
import type { HoldingClamp, Machine, PanelRange, Stop } from './model.js';
import type { Names } from './names.js';
import type { ShopInput } from './schema.js';

type Input = ShopInput['value'];
type EntriesOf<K extends keyof Input> =
  NonNullable<Input[K]> extends { readonly value: readonly (infer E)[] } ? E : never;
type PanelInput =
  EntriesOf<'vertical-heads'> extends Entry<infer R>
    ? NonNullable<R extends { value: infer V } ? (V extends { panel?: infer P } ? P : never) : never>
    : never;
type StopsInput =
  EntriesOf<'vertical-heads'> extends Entry<infer R> ? (R extends { value: { stops: infer S } } ? S : never) : never;
type HeadInput = EntriesOf<'vertical-heads' | 'horizontal-heads' | 'line-drills'>;

/** The machines of a shop file by name; a name that is taken is told, and the first one counts. */
export function machinesOf(input: Input, names: Names): ReadonlyMap<string, Machine> {
  const machines = new Map<string, Machine>();
  const add = (entry: Entry<unknown>, machine: Machine): void => names.add(machines, entry, machine, 'machine');

  for (const entry of input['vertical-heads']?.value ?? []) {
    const head = entry.value.value;
    add(entry, {
      kind: 'vertical',
      ...headOf(entry, names),
      fence: head.fence.value,
      from: head.from.value,
      fenceOffset: head['fence-offset'].value,
      extension: head.extension?.value ?? 0,
    });
  }
  for (const entry of input['horizontal-heads']?.value ?? []) {
    add(entry, { kind: 'horizontal', ...headOf(entry, names), height: entry.value.value.height.value });
  }
  for (const entry of input['line-drills']?.value ?? []) {
    const drill = entry.value.value;
    add(entry, {
      kind: 'line',
      ...headOf(entry, names),
      fence: drill.fence.value,
      from: drill.from.value,
      heads: drill.heads.value,
      setback: drill.setback.value,
      headDistance: drill['head-distance']?.value ?? null,
      throat: drill.throat.value,
      indexPins: drill['index-pins'].value,
      indexRange: drill['index-range']?.value ?? null,
      meetsHolesTwice: drill['meets-holes-twice']?.value ?? false,
    });
  }
  for (const entry of input['cup-borers']?.value ?? []) {
    const borer = entry.value.value;
    add(entry, {
      kind: 'cup',
      ...named(entry, names),
      body: borer.body?.value ?? entry.name.value,
      distance: borer.distance.value,
      depth: borer.depth.value,
      stops: stopsOf(borer.stops, names),
      panel: panelOf(borer.panel),
    });
  }
  for (const entry of input['panel-saws']?.value ?? []) {
    const { kerf, rip, crosscut } = entry.value.value;
    add(entry, {
      kind: 'saw',
      ...named(entry, names),
      kerf: kerf.value,
      rip: rip?.value ?? null,
      crosscut: crosscut?.value ?? null,
    });
  }
  for (const entry of input['edge-banders']?.value ?? []) {
    const bander = entry.value.value;
    add(entry, {
      kind: 'bander',
      ...named(entry, names),
      band: bander.band?.value ?? null,
      thickness: bander.thickness?.value ?? null,
      shortestEdge: bander['shortest-edge']?.value ?? null,
      narrowestPanel: bander['narrowest-panel']?.value ?? null,
    });
  }
  for (const entry of input['case-clamps']?.value ?? []) {
    const { width, height, depth } = entry.value.value;
    add(entry, {
      kind: 'clamp',
      ...named(entry, names),
      width: width?.value ?? null,
      height: height?.value ?? null,
      depth: depth?.value ?? null,
    });
  }
  return machines;
}

function named(entry: Entry<unknown>, names: Names) {
  return { name: entry.name.value, place: names.place(entry) };
}

/** What every head of spindles has. */
function headOf(entry: HeadInput, names: Names) {
  const head = entry.value.value;
  return {
    ...named(entry, names),
    body: head.body?.value ?? entry.name.value,
    spindles: head.spindles.value,
    pitch: head.pitch.value,
    depth: head.depth.value,
    depthStops: head['depth-stops']?.value ?? null,
    panel: panelOf(head.panel),
    clamps: (head.clamps?.value ?? []).map((clamp): HoldingClamp => ({
      ...named(clamp, names),
      along: clamp.value.value.along.value,
      across: clamp.value.value.across.value,
    })),
    stops: stopsOf(head.stops, names),
  };
}

function panelOf(panel: PanelInput | undefined): PanelRange {
  return {
    length: panel?.value.length?.value ?? null,
    width: panel?.value.width?.value ?? null,
    thickness: panel?.value.thickness?.value ?? null,
  };
}

function stopsOf(stops: StopsInput | undefined, names: Names): readonly Stop[] {
  return (stops?.value ?? []).map((stop) => ({
    ...named(stop, names),
    side: stop.value.value.side.value,
    range: stop.value.value.range.value,
    lowers: stop.value.value.lowers?.value ?? false,
  }));
}
