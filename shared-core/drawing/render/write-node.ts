import { withoutControls } from '../../words/controls.js';
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
function escape(words: string): string {
  return withoutControls(words).replace(/[&<>"]/g, (letter) => ESCAPES[letter]!);
}
