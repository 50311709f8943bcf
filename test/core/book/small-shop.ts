import { readFileSync } from 'node:fs';
import { expect } from 'vitest';
import { readShop } from '../../../shared-core/shop/read.js';
import type { Shop } from '../../../shared-core/shop/model.js';

const SHED = readFileSync(new URL('../../fixtures/shed.shop.yaml', import.meta.url), 'utf8');

export interface Small {
  readonly spindles: number;
  readonly spacing: number;
  /** Depths of base and wall units. */
  readonly depths: readonly [number, number];
}

/** The shed with short heads and shallow carcasses; `batch` of base and wall units, where it is told. */
export function smallShop(
  { spindles, spacing, depths }: Small,
  own: readonly string[],
  batch: readonly [number, number] | null = null,
): Shop {
  const size = (index: 0 | 1, isBatched: boolean): string =>
    `{ depth: ${depths[index]}${batch && isBatched ? `, batch: ${batch[index]}` : ''} }`;
  const habits = `habits:
  dowel-spacing: ${spacing}
  sizes: { base: ${size(0, true)}, tall: ${size(0, false)}, for-drawers: ${size(0, false)}, wall: ${size(1, true)}, open: ${size(1, false)} }
${own.map((line) => `  ${line}\n`).join('')}`;
  const { shop, findings } = readShop(
    SHED.replaceAll('spindles: 21', `spindles: ${spindles}`).replace('habits:\n', habits),
  );
  expect(findings.filter(({ severity }) => severity !== 'info')).toEqual([]);
  return shop;
}
