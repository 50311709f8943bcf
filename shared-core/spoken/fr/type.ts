import { composed } from '../../words/french.js';
import type { Spoken } from '../../words/spoken.js';

type Templates = Spoken['messages'][string];

/** Une table de phrases, composée. */
export function inType(table: Templates): Templates {
  const told = Object.entries(table).map(([key, template]) => [
    key,
    (figures: never, show: never): string => composed(template(figures, show)),
  ]);
  // Les noms sont ceux de la table ; `Object.fromEntries` ne peut le dire.
  return Object.fromEntries(told) as Templates;
}

const each = <T>(tables: Readonly<Record<string, T>>, done: (table: T) => T): Readonly<Record<string, T>> =>
  Object.fromEntries(Object.entries(tables).map(([group, table]) => [group, done(table)]));

/** Tout ce qui se dit, composé. */
export function allInType({ language, messages, labels }: Spoken): Spoken {
  return { language, messages: each(messages, inType), labels: each(labels, (table) => each(table, composed)) };
}
