import type { SvgNode } from '../../../shared-core/drawing/render/svg-tree.js';

const SVG = 'http://www.w3.org/2000/svg';
const known = new WeakMap<Element, SvgNode>();

/**
 * Makes the children of an element show these nodes, touching only what differs: an element stays the same object as long
 * as a node of its key is there, so focus, hover and the eye stay where they are. Returns how many elements were changed.
 */
export function patch(parent: Element, nodes: readonly SvgNode[]): number {
  let changes = 0;
  const before = new Map<string, Element>();
  const wanted = new Map(nodes.map((node) => [node.key, node]));
  for (const child of [...parent.children]) {
    const node = known.get(child);
    if (node !== undefined && wanted.get(node.key)?.tag === node.tag) before.set(node.key, child);
    else {
      child.remove();
      changes += 1;
    }
  }
  let next = parent.firstElementChild;
  for (const node of nodes) {
    const old = before.get(node.key);
    const element = old ?? document.createElementNS(SVG, node.tag);
    changes += update(element, node);
    if (element === next) next = next.nextElementSibling;
    else parent.insertBefore(element, next);
  }
  return changes;
}

function update(element: Element, node: SvgNode): number {
  const before = known.get(element);
  if (before === node) return 0;
  known.set(element, node);
  let changed = before === undefined;
  for (const name of Object.keys(before?.attributes ?? {})) {
    if (node.attributes[name] !== undefined) continue;
    element.removeAttribute(name);
    changed = true;
  }
  for (const [name, value] of Object.entries(node.attributes)) {
    if (before?.attributes[name] === value) continue;
    element.setAttribute(name, value);
    changed = true;
  }
  if (node.text !== undefined) {
    if (before?.text !== node.text) {
      element.textContent = node.text;
      changed = true;
    }
    return Number(changed);
  }
  return Number(changed) + patch(element, node.children);
}
