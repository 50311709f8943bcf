import * as fc from 'fast-check';

// One seed for every property, so that a run of the suite can be repeated; `npm run soak` goes through others.
fc.configureGlobal({ seed: Number(process.env['BOREWRIGHT_SEED'] ?? 1) });
