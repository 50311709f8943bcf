import { HINT_CHOICES, type HintChoice, type LengthWish, type Severity, type Wishes } from '../shared-core/service.js';

/** How loudly a reader wants the findings of a rule told; 'off' for not at all. */
export const SEVERITY_CHOICES = ['off', 'information', 'warning', 'error'] as const;
export type SeverityChoice = (typeof SEVERITY_CHOICES)[number];

/** What a reader has set, of the section `borewright` of the client's settings. */
export interface Settings {
  /** Which inlay hints he wants. */
  readonly hints: HintChoice;
  /** How he wants lengths and findings told. */
  readonly wishes: Wishes;
  /** Whether files that are not open are checked too. */
  readonly wholeWorkspace: boolean;
}

/** Reads what a client says; what is missing or odd counts as not set. Never throws. */
export function settingsFrom(said: unknown): Settings {
  const section = isRecord(said) ? said : {};
  const findings = isRecord(section['findings']) ? section['findings'] : {};
  const severity = isRecord(findings['severity']) ? findings['severity'] : {};
  return {
    hints: HINT_CHOICES.find((one) => one === section['inlayHints']) ?? 'all',
    wishes: {
      lengths: lengthWish(isRecord(section['lengths']) ? section['lengths'] : {}),
      findings: new Map(
        Object.entries(severity).flatMap(([rule, choice]) => {
          const known = SEVERITY_CHOICES.find((one) => one === choice);
          return known === undefined ? [] : [[rule, CHOSEN[known]] as const];
        }),
      ),
    },
    wholeWorkspace: findings['wholeWorkspace'] === true,
  };
}

/** The unit that a reader wants to see, whatever a file is in; 'file' for its own. */
export const UNIT_CHOICES = ['file', 'millimetres', 'inches'] as const;
/** How he wants to see inches. */
export const INCH_CHOICES = ['fractions', 'decimals'] as const;

/** Null where lengths are to be shown as they would be without him. */
function lengthWish(lengths: Readonly<Record<string, unknown>>): LengthWish | null {
  const unit = UNIT_CHOICES.find((one) => one === lengths['unit']) ?? 'file';
  const inches = INCH_CHOICES.find((one) => one === lengths['inches']) ?? 'fractions';
  if (unit === 'file' && inches === 'fractions') return null;
  return { unit: unit === 'file' ? null : unit === 'inches' ? 'in' : 'mm', inches };
}

const CHOSEN: Readonly<Record<SeverityChoice, Severity | null>> = {
  off: null,
  information: 'info',
  warning: 'warning',
  error: 'error',
};

function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
