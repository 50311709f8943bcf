import { stepsOf } from '../../steps.js'; // First, so that it counts in all that follows.
import { expect, it } from 'vitest';
import { toleranceOf } from '../../../shared-core/tolerance/tolerance.js';
import { mm } from '../specs.js';
import { box } from './boxes.js';

const REAL = { thickness: 200, width: 200, length: 200, squareness: 300, stop: 50, drill: 50, dowelPlay: 60 };
const steps = (dowels: number): number => {
  const made = box(REAL, { depth: mm(2000), dowels: Array.from({ length: dowels }, (_, i) => mm(40 + 32 * i)) });
  let joints = 0;
  const counted = stepsOf(() => {
    ({ length: joints } = toleranceOf(made).joints);
  });
  expect(joints).toBeGreaterThanOrEqual(4);
  return counted;
};

it('50 dowels in a joint cost no more than their triples, each looked at a few times', () => {
  const [some, twice] = [steps(25), steps(50)];
  // The triples grow by 8.5, the square of them (what all variables at all triples would cost) by 17.
  expect(twice / some).toBeLessThan(10);
  expect(twice).toBeLessThan(25_000_000);
});
