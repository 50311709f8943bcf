import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { writeAll } from '../../server/papers/write.js';

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'borewright-written-'));
});
afterEach(() => rmSync(folder, { recursive: true }));

test('what was written before a fault of the disk is known as ours, and written over the next time', () => {
  const files = (words: string) => ['a.txt', 'b.txt'].map((name) => ({ name, content: words }));
  writeAll(folder, files('first'));
  // Stands where the second file would be written, as one does that somebody else is writing.
  writeFileSync(join(folder, `b.txt.${process.pid}.part`), '');
  expect(() => writeAll(folder, files('second'))).toThrow();
  expect(readFileSync(join(folder, 'a.txt'), 'utf8')).toBe('second');
  writeAll(folder, files('third'));
  expect(['a.txt', 'b.txt'].map((name) => readFileSync(join(folder, name), 'utf8'))).toEqual(['third', 'third']);
});
