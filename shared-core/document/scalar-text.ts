export type Quotes = '' | "'" | '"';

/**
 * A value as YAML: with the quotes that stood there before, else plain where that reads back as the same text (inside
 * brackets more characters must be quoted), else in double quotes.
 */
export function scalarText(value: string, inFlow: boolean, before: Quotes = ''): string {
  if (before === "'" && !/[^\x20-\x7e\xa0-\ud7ff\ue000-\ufffd]/.test(value)) return `'${value.replaceAll("'", "''")}'`;
  if (before === '' && isPlain(value, inFlow)) return value;
  return JSON.stringify(value);
}

/** A key as YAML, chosen likewise. */
export function keyText(key: string, inFlow: boolean, before: Quotes = ''): string {
  return scalarText(key, inFlow, before);
}

/** True where a plain scalar of this text reads back as it is. Stricter than YAML in rare cases. */
function isPlain(value: string, inFlow: boolean): boolean {
  if (value === '' || value !== value.trim()) return false;
  if (/[^\x20-\x7e\xa0-\ud7ff\ue000-\ufefe\uff00-\ufffd]/.test(value)) return false;
  if (/^[\s,[\]{}#&*!|>'"%@`?:]|^-(?:\s|$)|^---|^\.\.\./.test(value)) return false;
  if (/:(?:\s|$)|\s#/.test(value)) return false;
  return !(inFlow && /[,[\]{}]/.test(value));
}
