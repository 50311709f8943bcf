import { readingRules } from './reading-rules.js';
import { rules } from './registry.js';
import type { ReadingRule } from './rule.js';

const SEVERITY = {
  error: 'Error: it cannot be made, or will not fit.',
  warning: 'Warning: it can be made, at a cost or a risk.',
  info: 'Information: worth knowing.',
} as const;

/** The reference of all findings as Markdown, made from what the rules say of themselves. */
export function referencePage(): string {
  return [
    '# Findings',
    '',
    'Every finding names its place, says why with the figures, and offers a repair where there is one. A repair changes only what it must and is offered only where it makes the finding go away and brings no other.',
    '',
    'What is said here does not take the place of the machine’s manual, of local rules or of licensed practice. Before boring, changing a bit or closing a clamp: machine at rest, panel held, hands clear, eyes protected. A wall or tall carcass must be fixed to a wall that bears it; see EN 14749 (domestic and kitchen storage units) and EN 15939 (strength of wall attachment devices); subjects from memory.',
    '',
    '## In the boxes and their bores',
    '',
    ...rules.flatMap(section),
    '## In the text',
    '',
    ...readingRules.flatMap(section),
  ].join('\n');
}

function section({ name, severity, about }: ReadingRule): readonly string[] {
  return [
    `### ${name}`,
    '',
    `${about.what} ${about.why}`,
    '',
    `- ${SEVERITY[severity]}`,
    `- What to do: ${about.remedy}`,
    '',
    '```yaml',
    about.example,
    '```',
    '',
    ...(about.shop === undefined ? [] : ['With this in the shop file:', '', '```yaml', about.shop, '```', '']),
  ];
}
