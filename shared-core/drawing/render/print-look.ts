import type { Ink } from '../../fittings/mark.js';
import type { Severity } from '../../findings/finding.js';
import type { LineType } from '../scene/scene.js';

/** The colours of bores on paper: dark enough to be told from white in print. */
export const PRINTED: Readonly<Record<Ink, string>> = {
  black: '#1f1f1f',
  brown: '#7a3e00',
  blue: '#005a8c',
  violet: '#6b2c91',
  green: '#00695c',
};

/** The colours of findings on paper. */
export const PRINTED_FINDINGS: Readonly<Record<Severity, string>> = {
  error: '#c00000',
  warning: '#8a5a00',
  info: '#005a8c',
};

/** How a line looks in print. */
export interface PrintedLine {
  /** Millimetres of paper. */
  readonly width: number;
  readonly colour: string;
  /** Dashes and gaps, as multiples of the width; none for a line without gaps. */
  readonly dash: readonly number[];
}

/** Colour of lines and lettering where nothing else is said. */
export const PRINTED_INK = '#1f1f1f';

/**
 * Lines of ISO 128-2: wide lines 0.5 (0.35 where all panels of a carcass are shown), narrow lines half of that or less.
 * @param wide width of an outline, in millimetres of paper
 */
export function printedLines(wide: number): Readonly<Record<LineType, PrintedLine>> {
  return {
    outline: { width: wide, colour: PRINTED_INK, dash: [] },
    fine: { width: 0.3, colour: PRINTED_INK, dash: [] },
    thin: { width: 0.18, colour: '#444444', dash: [] },
    hidden: { width: 0.18, colour: PRINTED_INK, dash: [12, 3] },
    centre: { width: 0.18, colour: '#777777', dash: [24, 3, 1, 3] },
    phantom: { width: 0.18, colour: PRINTED_INK, dash: [24, 3, 1, 3, 1, 3] },
    band: { width: 0.7, colour: '#b3470a', dash: [12, 3, 1, 3] },
  };
}

/** Width of an outline in a drawing of one panel, and in one of all panels of a carcass. */
export const WIDE_LINE = { panel: 0.5, 'all-panels': 0.35 } as const;
