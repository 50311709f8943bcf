import type { TreeNode } from '../document/tree.js';
import type { Inches } from '../length/write.js';

/** How the values of a tree write inches: as decimals where one is a decimal and none a fraction. */
export function inchesOf(node: TreeNode | null): Inches {
  const texts = plainTexts(node);
  const isDecimal = texts.some((text) => /^[-+]?\d*\.\d/.test(text) && !/mm$/i.test(text));
  return isDecimal && !texts.some((text) => /\d\/\d/.test(text)) ? 'decimals' : 'fractions';
}

function plainTexts(node: TreeNode | null): readonly string[] {
  switch (node?.kind) {
    case 'scalar':
      return [node.text];
    case 'list':
      return node.items.flatMap(plainTexts);
    case 'map':
      return node.entries.flatMap(({ value }) => plainTexts(value));
    case undefined:
      return [];
  }
}
