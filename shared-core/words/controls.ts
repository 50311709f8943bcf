/**
 * A text without what no reader sees and a terminal would obey: control characters but tab and line ends (C0, DEL and C1 of
 * ISO/IEC 6429), halves of surrogate pairs, and what XML 1.0 cannot hold at all.
 */
export function withoutControls(text: string): string {
  return text.replace(
    /[\u0000-\u0008\u000B\u000C\u000E-\u001F\u007F-\u009F\uFFFE\uFFFF]|[\uD800-\uDBFF](?![\uDC00-\uDFFF])|(?<![\uD800-\uDBFF])[\uDC00-\uDFFF]/g,
    '',
  );
}
