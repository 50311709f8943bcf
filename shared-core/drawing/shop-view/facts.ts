import { inOneNotation, nominal, showLength } from '../../length/show.js';
import type { Micrometres, Unit } from '../../length/units.js';
import type { CaseClamp, EdgeBander, Machine, PanelRange, PanelSaw } from '../../shop/model.js';
import { counted } from '../../words/english.js';
import type { Fact } from '../scene/scene.js';
import { isBoring, type BoringMachine, type Span } from './standing.js';

type Show = (length: Micrometres) => string;

/** What a machine takes and does, each a word and its value with its unit. */
export function factsOf(machine: Machine, unit: Unit): readonly Fact[] {
  const show: Show = (length) => showLength(length, unit);
  const span = ({ min, max }: Span): string => {
    const write = inOneNotation([min, max], unit);
    return `${write(min)} to ${write(max)} ${unit}`;
  };
  if (isBoring(machine)) return boringFacts(machine, unit, span, show);
  switch (machine.kind) {
    case 'saw':
      return sawFacts(machine, show);
    case 'bander':
      return banderFacts(machine, span, show);
    case 'clamp':
      return clampFacts(machine, span);
  }
}

function boringFacts(machine: BoringMachine, unit: Unit, span: (of: Span) => string, show: Show): readonly Fact[] {
  const spindles =
    machine.kind === 'cup'
      ? []
      : [{ word: 'Spindles', value: `${machine.spindles} at ${nominal(machine.pitch, unit)}` }];
  const own: readonly Fact[] = (() => {
    switch (machine.kind) {
      case 'vertical':
        return [
          { word: 'Bits come', value: `from ${machine.from}` },
          ...(machine.extension > 0 ? [{ word: 'Extension', value: show(machine.extension) }] : []),
        ];
      case 'horizontal':
        return [{ word: 'Above the table', value: span(machine.height) }];
      case 'line':
        return [
          { word: 'Heads', value: counted(machine.heads, 'head') },
          { word: 'Bits come', value: `from ${machine.from}` },
          { word: 'Reaches', value: show(machine.throat) },
          ...optional('Moves a panel on', machine.indexRange, show),
        ];
      case 'cup':
        return [{ word: 'From the edge', value: span(machine.distance) }];
    }
  })();
  return [...spindles, ...own, { word: 'Depth', value: span(machine.depth) }, ...panelFacts(machine.panel, span)];
}

function panelFacts({ length, width, thickness }: PanelRange, span: (of: Span) => string): readonly Fact[] {
  return [
    ...optional('Panel length', length, span),
    ...optional('Panel width', width, span),
    ...optional('Panel thickness', thickness, span),
  ];
}

function sawFacts({ kerf, rip, crosscut, trim }: PanelSaw, show: Show): readonly Fact[] {
  return [
    { word: 'Kerf', value: show(kerf) },
    ...optional('Widest strip', rip, show),
    ...optional('Longest piece', crosscut, show),
    { word: 'Trim', value: show(trim) },
  ];
}

function banderFacts(
  { band, thickness, shortestEdge, narrowestPanel }: EdgeBander,
  span: (of: Span) => string,
  show: Show,
): readonly Fact[] {
  return [
    ...optional('Band thickness', band, span),
    ...optional('Panel thickness', thickness, span),
    ...optional('Shortest edge', shortestEdge, show),
    ...optional('Narrowest panel', narrowestPanel, show),
  ];
}

function clampFacts({ width, height, depth }: CaseClamp, span: (of: Span) => string): readonly Fact[] {
  return [...optional('Width', width, span), ...optional('Height', height, span), ...optional('Depth', depth, span)];
}

function optional<T>(word: string, value: T | null, write: (value: T) => string): readonly Fact[] {
  return value === null ? [] : [{ word, value: write(value) }];
}
