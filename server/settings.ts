import { HINT_CHOICES, type HintChoice, type Severity, type WantedFindings } from '../shared-core/service.js';

/** How loudly a reader wants the findings of a rule told; 'off' for not at all. */
export const SEVERITY_CHOICES = ['off', 'information', 'warning', 'error'] as const;
export type SeverityChoice = (typeof SEVERITY_CHOICES)[number];

/** What a reader has set, of the section `borewright` of the client's settings. */
export interface Settings {
  /** Which inlay hints he wants. */
  readonly hints: HintChoice;
  /** By rule; a rule that is not here keeps its own severity. */
  readonly severities: ReadonlyMap<string, SeverityChoice>;
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
    severities: new Map(
      Object.entries(severity).flatMap(([rule, choice]) => {
        const known = SEVERITY_CHOICES.find((one) => one === choice);
        return known === undefined ? [] : [[rule, known] as const];
      }),
    ),
    wholeWorkspace: findings['wholeWorkspace'] === true,
  };
}

/** The same by the severities of the core. */
export function wantedFindings(severities: Settings['severities']): WantedFindings {
  return new Map([...severities].map(([rule, choice]) => [rule, CHOSEN[choice]]));
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
