import { readdirSync, readFileSync, realpathSync, statSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { filesBelow } from './below.js';
import type { FileReading, Files } from './files.js';
import { isJob, isShop, normalUri } from './files.js';
import type { FileFault } from './messages.js';

/** No job or shop file of a workshop comes near this; a greater one is refused unread. */
const GREATEST_FILE = 20_000_000;

/** A folder with more in it (a whole disk, opened by mistake) is not searched to its end. */
const MOST_ENTRIES = 50_000;

interface Kept {
  readonly stamp: string;
  readonly text: string;
}

/** The files on the disk. A text is kept until its time stamp or size changes. */
export class Disk implements Files {
  readonly #kept = new Map<string, Kept>();

  read(uri: string): FileReading {
    try {
      const path = fileURLToPath(uri);
      const stat = statSync(path);
      if (!stat.isFile()) return { ok: false, fault: 'not-a-file' };
      if (stat.size > GREATEST_FILE) return { ok: false, fault: 'too-large' };
      const stamp = `${stat.mtimeMs} ${stat.size} ${stat.ino}`;
      const kept = this.#kept.get(uri);
      if (kept?.stamp === stamp) return { ok: true, text: kept.text };
      const text = readFileSync(path, 'utf8').replace(/^\uFEFF/, '');
      this.#kept.set(uri, { stamp, text });
      return { ok: true, text };
    } catch (error) {
      this.#kept.delete(uri);
      return { ok: false, fault: faultOf(error) };
    }
  }

  beside(uri: string): readonly string[] {
    try {
      const folder = dirname(fileURLToPath(uri));
      return readdirSync(folder)
        .sort()
        .map((name) => normalUri(pathToFileURL(join(folder, name)).href));
    } catch {
      return [];
    }
  }

  real(uri: string): string {
    try {
      return normalUri(pathToFileURL(realpathSync(fileURLToPath(uri))).href);
    } catch {
      return normalUri(uri);
    }
  }

  within(folder: string): readonly string[] {
    try {
      const wanted = (name: string): boolean => isJob(name) || isShop(name);
      const found = filesBelow(fileURLToPath(folder), wanted, () => undefined, MOST_ENTRIES);
      return found.map((path) => normalUri(pathToFileURL(path).href));
    } catch {
      return [];
    }
  }
}

export function faultOf(error: unknown): FileFault {
  const code = error instanceof Error && 'code' in error ? error.code : undefined;
  if (code === 'ENOENT' || code === 'ENOTDIR') return 'missing';
  if (code === 'EACCES' || code === 'EPERM') return 'forbidden';
  if (code === 'EISDIR') return 'folder';
  if (code === 'ENAMETOOLONG') return 'name-too-long';
  if (code === 'ELOOP') return 'link-loop';
  if (code === 'ENOSPC') return 'disk-full';
  return { words: error instanceof Error ? error.message : String(error) };
}
