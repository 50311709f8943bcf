import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { boreCarcass } from '../../../shared-core/boring/bores.js';
import { buildCarcass } from '../../../shared-core/carcass/build.js';
import { cutJob } from '../../../shared-core/document/cut.js';
import type { Drawn } from '../../../shared-core/drawing/drawn.js';
import { readCarcass } from '../../../shared-core/carcass/read.js';
import { readHead } from '../../../shared-core/job/head.js';
import { readShop } from '../../../shared-core/shop/read.js';
import type { Shop } from '../../../shared-core/shop/model.js';

/** Tests run in the root of the repository. */
const folder = join(process.cwd(), 'test', 'fixtures');
export const demoText = (name: string): string => readFileSync(join(folder, name), 'utf8');
export const demoShop = (): Shop => readShop(demoText('shed.shop.yaml')).shop;

/** What can be drawn of a job text. */
export function drawnOf(text: string, shop: Shop): Drawn[] {
  const parts = cutJob(text);
  const { head, defaults } = readHead(parts);
  return parts.carcasses.flatMap((part) => {
    const { spec } = readCarcass(part, head, defaults, shop);
    if (spec === null) return [];
    const { carcass } = buildCarcass(spec, shop);
    if (carcass === null) return [];
    const boring = boreCarcass(spec, carcass, shop);
    return [{ name: spec.name.value, carcass, boring, findings: [], reader: head.unit }];
  });
}
