import { demoText } from '../jobs.js';
import { rule } from './rule-tests.js';

/** The demo's shop with the clamps of its upright head so far from the fence, or without them. */
const shedWith = (across: number | null): string => {
  const clamps = /    clamps:\n      left-clamp:.*\n      right-clamp:.*\n/;
  const shed = demoText('shed.shop.yaml');
  if (!clamps.test(shed)) throw new Error('the demo’s shop has changed');
  return across === null ? shed.replace(clamps, '') : shed.replaceAll('across: 60', `across: ${across}`);
};

rule('clamp-misses-panel', {
  tells: [
    {
      // Rails for cams are bored in a face; they are 100 wide, and a pad of 40 that stands 150 out begins at 130.
      carcass: 'kind: base\nwidth: 600\nrail-width: «100»\njoint: cam-15',
      shop: shedWith(150),
      says: 'No clamp of ‘borer-up’ comes down on rail-front and rail-back: they are 100 mm wide, and the nearest clamp stands 150 mm from the fence. Hold them in a fixture, or set a clamp to at most 80 mm (`across`).',
      severity: 'warning',
      panel: 'rail-front',
    },
    {
      // From 70 to 110 from the fence, and the rail ends at 100.
      carcass: 'kind: base\nwidth: 600\nrail-width: «100»\njoint: cam-15',
      shop: shedWith(90),
      says: 'The clamps of ‘borer-up’ come down on rail-front and rail-back only in part: they are 100 mm wide, and the nearest clamp stands 90 mm from the fence. Hold them in a fixture, or set a clamp to at most 80 mm (`across`).',
      panel: 'rail-front',
    },
  ],
  sound: [
    { carcass: 'kind: base\nwidth: 600\nrail-width: 100\njoint: cam-15', shop: shedWith(80) },
    // No clamps, nothing known.
    { carcass: 'kind: base\nwidth: 600\nrail-width: 100\njoint: cam-15', shop: shedWith(null) },
  ],
});
