import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { root } from './client.js';

/** The command line as built. */
export const CLI = join(root, 'dist', 'server', 'cli.js');

/** What a command left. */
export interface Ran {
  readonly code: number | null;
  readonly out: string;
  readonly err: string;
}

/** Runs `borewright ARGS` in a folder. */
export function borewright(folder: string, ...args: string[]): Ran {
  const { status, stdout, stderr } = spawnSync(process.execPath, [CLI, ...args], {
    cwd: folder,
    encoding: 'utf8',
    maxBuffer: 1e8,
  });
  return { code: status, out: stdout, err: stderr };
}
