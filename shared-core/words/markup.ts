import { withoutControls } from './controls.js';

const SIGNS: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };

/** A text as it stands in XML and HTML, between tags or in the quotes of an attribute. */
export function escaped(text: string): string {
  return withoutControls(text).replace(/[&<>"]/g, (sign) => SIGNS[sign]!);
}
