import { cutJob, type JobParts } from '../../../shared-core/document/cut.js';
import type { Finding } from '../../../shared-core/document/finding.js';
import type { ReadCarcass } from '../../../shared-core/carcass/read.js';
import { readCarcass } from '../../../shared-core/carcass/read.js';
import type { ReadHead } from '../../../shared-core/job/head.js';
import { readHead } from '../../../shared-core/job/head.js';
import type { Shop } from '../../../shared-core/shop/model.js';
import { neutralShop } from '../../../shared-core/shop/neutral.js';

export interface ReadJob {
  readonly parts: JobParts;
  readonly head: ReadHead;
  readonly carcasses: readonly ReadCarcass[];
  readonly findings: readonly Finding[];
}

export function readAll(text: string, shop: Shop = neutralShop): ReadJob {
  const parts = cutJob(text);
  const head = readHead(parts);
  const carcasses = parts.carcasses.map((part) => readCarcass(part, head.head, head.defaults, shop));
  return { parts, head, carcasses, findings: [...head.findings, ...carcasses.flatMap((carcass) => carcass.findings)] };
}

/** A model without the places of its values: what of it must not depend on how the text is laid out. */
export function values(model: unknown): unknown {
  if (model instanceof Map) return [...model].map(values);
  if (Array.isArray(model)) return model.map(values);
  if (typeof model !== 'object' || model === null) return model;
  return Object.fromEntries(
    Object.entries(model).flatMap(([key, value]) => (key === 'place' ? [] : [[key, values(value)]])),
  );
}
