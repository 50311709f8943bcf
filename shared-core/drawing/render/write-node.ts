import { escaped } from '../../words/markup.js';
import type { SvgNode } from './svg-tree.js';

/** XML text of a tree. */
export function writeNode(node: SvgNode): string {
  const attributes = Object.entries(node.attributes)
    .map(([name, value]) => ` ${name}="${escaped(value)}"`)
    .join('');
  const inner = (node.text === undefined ? '' : escaped(node.text)) + node.children.map(writeNode).join('');
  return inner === '' ? `<${node.tag}${attributes}/>` : `<${node.tag}${attributes}>${inner}</${node.tag}>`;
}
