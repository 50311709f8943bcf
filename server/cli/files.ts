import { say } from './messages.js';
import { readFileSync, statSync } from 'node:fs';
import { resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { TextDocument } from 'vscode-languageserver-textdocument';
import { filesBelow } from '../below.js';
import { Disk, faultOf } from '../disk.js';
import { isJob, isShop, normalUri, type FileReading } from '../files.js';
import type { OpenFile, OpenJob } from '../workspace.js';
import { Workspace } from '../workspace.js';
import { CouldNotRun, orElse } from './run.js';

/** The paths of files, and a message for each thing that is not there. */
export interface Expanded {
  readonly paths: readonly string[];
  readonly missing: readonly string[];
}

/** The files themselves, and of folders every job file below them (or shop file, where there are none), in the order given and then by name; each once. */
export function expandAll(paths: readonly string[]): Expanded {
  const missing: string[] = [];
  const all = paths.flatMap((path) =>
    orElse(
      () => expand(path),
      (why) => {
        missing.push(why);
        return [];
      },
    ),
  );
  return { paths: [...new Set(all)], missing };
}

/** Stands for a job that comes by standard input. */
export const INPUT = '-';

function readInput(): FileReading {
  try {
    return { ok: true, text: readFileSync(0, 'utf8').replace(/^\uFEFF/, '') };
  } catch (error) {
    return { ok: false, fault: faultOf(error) };
  }
}

/** Opens one job file from disk. Throws `CouldNotRun` where there is none. */
export function openJob(path: string): OpenJob {
  if (statOf(path).isDirectory()) throw new CouldNotRun(say.isFolder({ path }));
  if (isShop(path)) throw new CouldNotRun(say.isShop({ path }));
  const file = open(new Workspace(new Disk()), path);
  if (file.kind !== 'job') throw new CouldNotRun(say.notOpened({ path }));
  return file;
}

/** Opens one shop file from disk. Throws `CouldNotRun` where there is none. */
export function openShop(path: string): OpenFile {
  if (!isShop(path)) throw new CouldNotRun(say.notAShop({ path }));
  return open(new Workspace(new Disk()), path);
}

function expand(path: string): readonly string[] {
  if (path === INPUT || !statOf(path).isDirectory()) return [path];
  const jobs = below(path, isJob);
  // Of a folder of shop files alone those are meant.
  const files = jobs.length > 0 ? jobs : below(path, isShop);
  if (files.length === 0) throw new CouldNotRun(say.noJobIn({ path }));
  return files;
}

function statOf(path: string) {
  try {
    return statSync(path);
  } catch (error) {
    throw new CouldNotRun(say.fault({ path, fault: faultOf(error) }));
  }
}

function below(folder: string, isWanted: (path: string) => boolean): readonly string[] {
  return filesBelow(folder, isWanted, (path, fault) => {
    throw new CouldNotRun(say.fault({ path, fault: faultOf(fault) }));
  });
}

/** Opens one file from disk, or from standard input. Throws `CouldNotRun` where there is none. */
export function open(workspace: Workspace, path: string): OpenFile {
  // What comes by standard input is read as if it lay where the command is run.
  const lies = path === INPUT ? 'standard-input.carcass.yaml' : path;
  const uri = normalUri(pathToFileURL(resolve(lies)).href);
  const reading = path === INPUT ? readInput() : workspace.files.read(uri);
  if (!reading.ok) throw new CouldNotRun(say.fault({ path, fault: reading.fault }));
  const language = isShop(path) ? 'borewright-shop' : 'borewright-job';
  workspace.open(TextDocument.create(uri, language, 0, reading.text));
  const file = workspace.file(uri);
  if (file === null) throw new CouldNotRun(say.notOpened({ path }));
  return file;
}
