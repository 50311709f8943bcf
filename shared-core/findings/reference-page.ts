import examples from './examples.json';
import { readingRules } from './reading-rules.js';
import { rules } from './registry.js';
import type { ReadingRule } from './rule.js';

const SEVERITY = {
  error: 'Error: it cannot be made, or will not fit.',
  warning: 'Warning: it can be made, at a cost or a risk.',
  info: 'Info: worth knowing.',
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
    ...otherMessages(),
  ].join('\n');
}

const WORDS: Readonly<Record<string, string>> = examples.words;
const OF_RULES: Readonly<
  Record<
    string,
    { readonly findings: Readonly<Record<string, string>>; readonly repairs: Readonly<Record<string, string>> }
  >
> = examples.rules;

/** What a rule says, and what its repairs are called, with an example of each template. */
function messagesOf(rule: string): readonly string[] {
  const { findings = {}, repairs = {} } = OF_RULES[rule] ?? {};
  const list = (head: string, words: readonly string[]): readonly string[] =>
    words.length === 0 ? [] : [head, '', ...words.map(bullet), ''];
  return [...list('Messages:', Object.values(findings)), ...list('Repairs:', Object.values(repairs))];
}

/** What is not the message of a finding or the title of its repair: places beside it, machines, sheets, hovers. */
function otherMessages(): readonly string[] {
  const said = new Set(
    Object.values(OF_RULES).flatMap(({ findings, repairs }) => Object.keys({ ...findings, ...repairs })),
  );
  const others = Object.keys(WORDS).filter((id) => !said.has(id));
  const groups = [...new Set(others.map(groupOf))];
  return [
    '## Other messages',
    '',
    'What stands inside a finding or beside it, on papers, or where nothing can be shown.',
    '',
    ...groups.flatMap((group) => [
      `### ${group}`,
      '',
      ...others.filter((id) => groupOf(id) === group).map((id) => bullet(WORDS[id]!)),
      '',
    ]),
  ];
}

const groupOf = (id: string): string => id.slice(0, id.indexOf('.'));
const bullet = (words: string): string => `- ${words}`;

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
    ...messagesOf(name),
  ];
}
