// From a key to the drawing that the browser has painted of it, in the real editor on the demo, with the parts of it.
import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';

const { status } = spawnSync(process.execPath, ['test/editor/run.mjs', '--bench'], {
  stdio: ['ignore', 'ignore', 'inherit'],
});
if (status !== 0) throw new Error(`the editor gave ${String(status)}`);
console.log(readFileSync('test/editor/out/bench.txt', 'utf8'));
