import { newJob } from '../job/skeletons.js';
import { newShop } from '../shop/skeletons.js';

/** A job or shop file to begin with, as a snippet with places to be filled in. */
export function templateOf(kind: 'job' | 'shop', unit: 'mm' | 'in'): string {
  return (kind === 'shop' ? newShop : newJob)(unit).text;
}
