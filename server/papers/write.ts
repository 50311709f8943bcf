import { say } from './messages.js';
import { createHash } from 'node:crypto';
import {
  accessSync,
  constants,
  existsSync,
  lstatSync,
  mkdirSync,
  opendirSync,
  readFileSync,
  renameSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import { faultOf } from '../disk.js';
import { CannotWrite, type NamedFile } from './task.js';

/** Tells on the next run which files of the folder are ours, and what we left in them. */
const LEDGER = '.borewright-written.json';

type Ledger = Readonly<Record<string, string>>;

/**
 * Writes files into a folder, each whole or not at all. A file that stands there already is
 * overwritten only where it is as we left it. Throws `CannotWrite`, before anything is written, where one is not.
 */
export function writeAll(folder: string, files: readonly NamedFile[]): void {
  try {
    makeFolder(folder);
    const ledger = readLedger(folder);
    for (const { name } of files) refuseOthers(folder, name, ledger);
    const now = new Map(Object.entries(ledger));
    try {
      for (const { name, content } of files) {
        writeWhole(join(folder, name), content);
        now.set(name, hashOf(content));
      }
    } finally {
      // Also where the disk had no room for all: those that are there are ours.
      writeWhole(join(folder, LEDGER), `${JSON.stringify(Object.fromEntries(now), null, 2)}\n`);
    }
  } catch (error) {
    if (error instanceof CannotWrite) throw error;
    throw new CannotWrite(say.fault({ path: folder, fault: faultOf(error) }));
  }
}

/** Throws `CannotWrite` where no files can come into a folder, or into one that is to be made, so that none are worked out. */
export function expectFolder(folder: string): void {
  let there = resolve(folder);
  while (!existsSync(there) && !isRoot(there)) there = dirname(there);
  try {
    opendirSync(there).closeSync();
    accessSync(there, constants.W_OK | constants.X_OK);
  } catch (error) {
    throw new CannotWrite(say.fault({ path: folder, fault: faultOf(error) }));
  }
}

/** Step by step: where a step can never be made (below `/proc`), the recursive way of Node 24 does not come back. */
function makeFolder(folder: string): void {
  if (existsSync(folder)) return;
  const whole = resolve(folder);
  if (!isRoot(whole)) makeFolder(dirname(whole));
  mkdirSync(folder);
}

/** Nothing stands above it: a drive, which need not be there. */
const isRoot = (path: string): boolean => dirname(path) === path;

function refuseOthers(folder: string, name: string, ledger: Ledger): void {
  const path = join(folder, name);
  const stat = lstatSync(path, { throwIfNoEntry: false });
  if (stat === undefined) return;
  const ours = stat.isFile() && ledger[name] !== undefined && ledger[name] === hashOf(readFileSync(path));
  if (!ours) throw new CannotWrite(say.notOurs({ path }));
}

/** A reader sees the old file or the new one, never half of one. */
function writeWhole(path: string, content: string | Uint8Array): void {
  const beside = `${path}.${process.pid}.part`;
  try {
    writeFileSync(beside, content, { flag: 'wx' });
    renameSync(beside, path);
  } catch (error) {
    rmSync(beside, { force: true });
    throw error;
  }
}

function readLedger(folder: string): Ledger {
  try {
    const read: unknown = JSON.parse(readFileSync(join(folder, LEDGER), 'utf8'));
    if (typeof read !== 'object' || read === null) return {};
    return Object.fromEntries(
      Object.entries(read).filter((entry): entry is [string, string] => typeof entry[1] === 'string'),
    );
  } catch {
    return {};
  }
}

function hashOf(content: string | Uint8Array): string {
  return createHash('sha256').update(content).digest('hex');
}
