export interface Element {
  readonly tag: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly children: Element[];
  text: string;
}

/** Reads XML strictly, by the grammar of XML 1.0 as far as these files use it; throws where the text is not well-formed. */
export function readXml(xml: string): Element {
  const open: Element[] = [{ tag: '', attributes: {}, children: [], text: '' }];
  const token = /<\?xml[^?]*\?>|<([\w:-]+)((?:\s+[\w:-]+="[^"<]*")*)\s*(\/?)>|<\/([\w:-]+)>|([^<]+)/gy;
  let at = 0;
  for (const match of xml.matchAll(token)) {
    if (match.index !== at) throw new Error(`not XML at ${at}: ${xml.slice(at, at + 40)}`);
    at += match[0].length;
    const [, tag, attributes, empty, closed, text] = match;
    if (tag !== undefined) {
      const element: Element = { tag, attributes: readAttributes(attributes!), children: [], text: '' };
      open.at(-1)!.children.push(element);
      if (empty === '') open.push(element);
    } else if (closed !== undefined) {
      if (open.pop()!.tag !== closed) throw new Error(`</${closed}> closes another element`);
    } else if (text !== undefined) open.at(-1)!.text += readText(text);
  }
  if (at !== xml.length || open.length !== 1) throw new Error(`not closed at ${at}`);
  return open[0]!.children[0]!;
}
function readAttributes(text: string): Record<string, string> {
  const found: Record<string, string> = {};
  for (const [, name, value] of text.matchAll(/([\w:-]+)="([^"<]*)"/g)) {
    if (name! in found) throw new Error(`${name!} twice`);
    found[name!] = readText(value!);
  }
  return found;
}
function readText(text: string): string {
  if (/&(?!(amp|lt|gt|quot);)/.test(text)) throw new Error(`a bare & in ${text}`);
  // The characters that XML 1.0 (Char production) forbids.
  if (
    /[\u0000-\u0008\u000B\u000C\u000E-\u001F\uFFFE\uFFFF]/.test(text) ||
    /[\uD800-\uDBFF](?![\uDC00-\uDFFF])|(?<![\uD800-\uDBFF])[\uDC00-\uDFFF]/.test(text)
  )
    throw new Error(`a forbidden character in ${JSON.stringify(text)}`);
  return text.replaceAll('&lt;', '<').replaceAll('&gt;', '>').replaceAll('&quot;', '"').replaceAll('&amp;', '&');
}
export function* elements(root: Element): Generator<Element> {
  yield root;
  for (const child of root.children) yield* elements(child);
}
export const all = (root: Element, wanted: (element: Element) => boolean): Element[] =>
  [...elements(root)].filter(wanted);
export const hasClass = (element: Element, name: string): boolean =>
  (element.attributes.class ?? '').split(' ').includes(name);
