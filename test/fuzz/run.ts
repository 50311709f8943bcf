import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';
import fc from 'fast-check';
import { Reader } from './check.js';
import { damaged, type Damaged } from './documents.js';
import { ThroughServer } from './through-server.js';

/** So many documents have one seed: as many as the suite reads at seed 1. */
const BATCH = 10_000;
/** Of so many documents one goes through the built server too, which waits for quiet before it reads. */
const TO_SERVER_EVERY = 20;
/**
 * No document may keep the processor longer, in milliseconds. Where one does it is read again by itself, as garbage of those
 * before may have been taken out meanwhile.
 */
const LONGEST_MS = 1000;
/** In megabytes over what was used after the first batch. */
const MOST_GROWTH_MB = 64;

setFlagsFromString('--expose-gc');
const collect = runInNewContext('gc') as () => void;

/**
 * Reads damaged job and shop files, in this process and through the built server, and prints a line for each ten thousand.
 * @returns how many batches failed
 */
export async function readDamaged(count: number, first: number): Promise<number> {
  const server = await ThroughServer.start();
  const reader = new Reader();
  const began = performance.now();
  let [failed, slowest, usual] = [0, 0, 0];
  for (let done = 0; done < count; done += BATCH) {
    const seed = first + done / BATCH;
    const faults: string[] = [];
    const some: Damaged[] = [];
    let read = 0;
    const here = fc.check(
      fc.property(damaged, fc.nat(), (file, at) => {
        slowest = Math.max(slowest, timed(reader, file, at));
        read += 1;
        if (read % TO_SERVER_EVERY === 0) some.push(file);
      }),
      { seed, numRuns: Math.min(BATCH, count - done) },
    );
    if (here.failed) faults.push(`${String(here.errorInstance)}\n${JSON.stringify(here.counterexample)}`);
    faults.push(...(await server.read(some, LONGEST_MS)));
    collect();
    const used = Math.round(process.memoryUsage().heapUsed / 1e6);
    usual ||= used;
    if (used > usual + MOST_GROWTH_MB) faults.push(`${used} MB are kept, after the first batch it was ${usual} MB`);
    if (faults.length > 0) failed += 1;
    for (const fault of faults) console.log(`BOREWRIGHT_SEED=${seed} npx vitest run test/fuzz: ${fault}`);
    const minutes = (performance.now() - began) / 60_000;
    console.log(
      `${done + here.numRuns} documents, ${server.count} of them through the server: ${failed} batches failed; slowest ${slowest.toFixed(0)} ms; ${used} MB here, ${server.memory()} MB in the server; ${Math.round((done + here.numRuns) / minutes)} a minute`,
    );
  }
  await server.stop();
  return failed;
}

/** In milliseconds of the processor. */
function timed(reader: Reader, file: Damaged, at: number): number {
  const [first, again] = [1, 2].map((nth) => (): number => {
    const began = process.cpuUsage();
    (nth === 1 ? reader : new Reader()).read(file, at);
    const { user, system } = process.cpuUsage(began);
    return (user + system) / 1000;
  }) as [() => number, () => number];
  const took = first();
  if (took <= LONGEST_MS) return took;
  const best = Math.min(took, again());
  if (best > LONGEST_MS) throw new Error(`it takes ${best.toFixed(0)} ms`);
  return best;
}
