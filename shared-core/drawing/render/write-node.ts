import type { SvgNode } from './svg-tree.js';

/** XML text of a tree. */
export function writeNode(node: SvgNode): string {
  const attributes = Object.entries(node.attributes)
    .map(([name, value]) => ` ${name}="${escape(value)}"`)
    .join('');
  const inner = (node.text === undefined ? '' : escape(node.text)) + node.children.map(writeNode).join('');
  return inner === '' ? `<${node.tag}${attributes}/>` : `<${node.tag}${attributes}>${inner}</${node.tag}>`;
}

const ESCAPES: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };
/** Also drops what XML 1.0 cannot hold at all: control characters and halves of surrogate pairs. */
function escape(words: string): string {
  return words
    .replace(/[&<>"]/g, (letter) => ESCAPES[letter]!)
    .replace(
      /[\u0000-\u0008\u000B\u000C\u000E-\u001F\uFFFE\uFFFF]|[\uD800-\uDBFF](?![\uDC00-\uDFFF])|(?<![\uD800-\uDBFF])[\uDC00-\uDFFF]/g,
      '',
    );
}
