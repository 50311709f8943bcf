import { showLength } from '../../length/show.js';
import type { Reader } from '../../length/reader.js';
import type { Micrometres } from '../../length/units.js';
import type { CaseClamp, EdgeBander, Machine, PanelRange, PanelSaw } from '../../shop/model.js';
import { tell } from '../../words/message.js';
import { asItIs, type Told } from '../../words/told.js';
import { FACTS, say } from './messages.js';
import type { Fact } from '../scene/scene.js';
import { isBoring, type BoringMachine, type Span } from './standing.js';

type Show = (length: Micrometres) => Told;

/** What a machine takes and does, each a word and its value with its reader. */
export function factsOf(machine: Machine, reader: Reader): readonly Fact[] {
  const show: Show = (length) => asItIs(showLength(length, reader));
  const span = (of: Span): Told => tell(say.span(of), reader);
  if (isBoring(machine)) return boringFacts(machine, reader, span, show);
  switch (machine.kind) {
    case 'saw':
      return sawFacts(machine, show);
    case 'bander':
      return banderFacts(machine, span, show);
    case 'clamp':
      return clampFacts(machine, span);
  }
}

function boringFacts(machine: BoringMachine, reader: Reader, span: (of: Span) => Told, show: Show): readonly Fact[] {
  const spindles = machine.kind === 'cup' ? [] : [{ word: FACTS.spindles, value: tell(say.spindles(machine), reader) }];
  const own: readonly Fact[] = (() => {
    switch (machine.kind) {
      case 'vertical':
        return [
          { word: FACTS.bitsCome, value: tell(say.bitsFrom({ from: machine.from }), reader) },
          ...(machine.extension > 0 ? [{ word: FACTS.extension, value: show(machine.extension) }] : []),
        ];
      case 'horizontal':
        return [{ word: FACTS.aboveTable, value: span(machine.height) }];
      case 'line':
        return [
          { word: FACTS.heads, value: tell(say.heads({ heads: machine.heads }), reader) },
          { word: FACTS.bitsCome, value: tell(say.bitsFrom({ from: machine.from }), reader) },
          { word: FACTS.reaches, value: show(machine.throat) },
          ...optional(FACTS.movesOn, machine.indexRange, show),
        ];
      case 'cup':
        return [{ word: FACTS.fromEdge, value: span(machine.distance) }];
    }
  })();
  return [...spindles, ...own, { word: FACTS.depth, value: span(machine.depth) }, ...panelFacts(machine.panel, span)];
}

function panelFacts({ length, width, thickness }: PanelRange, span: (of: Span) => Told): readonly Fact[] {
  return [
    ...optional(FACTS.panelLength, length, span),
    ...optional(FACTS.panelWidth, width, span),
    ...optional(FACTS.panelThickness, thickness, span),
  ];
}

function sawFacts({ kerf, rip, crosscut, trim }: PanelSaw, show: Show): readonly Fact[] {
  return [
    { word: FACTS.kerf, value: show(kerf) },
    ...optional(FACTS.widestStrip, rip, show),
    ...optional(FACTS.longestPiece, crosscut, show),
    { word: FACTS.trim, value: show(trim) },
  ];
}

function banderFacts(
  { band, thickness, shortestEdge, narrowestPanel, preMilling }: EdgeBander,
  span: (of: Span) => Told,
  show: Show,
): readonly Fact[] {
  return [
    ...optional(FACTS.bandThickness, band, span),
    ...optional(FACTS.panelThickness, thickness, span),
    ...optional(FACTS.shortestEdge, shortestEdge, show),
    ...optional(FACTS.narrowestPanel, narrowestPanel, show),
    ...optional(FACTS.preMilling, preMilling === 0 ? null : preMilling, show),
  ];
}

function clampFacts({ width, height, depth }: CaseClamp, span: (of: Span) => Told): readonly Fact[] {
  return [
    ...optional(FACTS.width, width, span),
    ...optional(FACTS.height, height, span),
    ...optional(FACTS.depth, depth, span),
  ];
}

function optional<T>(word: Told, value: T | null, write: (value: T) => Told): readonly Fact[] {
  return value === null ? [] : [{ word, value: write(value) }];
}
