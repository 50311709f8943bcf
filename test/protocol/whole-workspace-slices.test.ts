import { expect, test } from 'vitest';
import { noFiles, type Files } from '../../server/files.js';
import { Names } from '../../server/names.js';
import { WholeWorkspace } from '../../server/whole-workspace.js';
import { Workspace } from '../../server/workspace.js';
import { knownFindings } from '../../shared-core/service.js';

const URI = 'file:///jobs/long.carcass.yaml';
const CARCASSES = Array.from({ length: 100 }, (_, index) => `  c${index}: { kind: base, width: ${400 + index} }\n`);
const FILES: Files = {
  ...noFiles,
  within: () => [URI],
  read: () => ({ ok: true, text: `carcasses:\n${CARCASSES.join('')}  odd: { kind: base, width: wide }\n` }),
};

/** A job that is not open, and what happens while it is looked at. */
function closedJob(begins: () => void) {
  const workspace = new Workspace(FILES, begins);
  const names = new Names(workspace);
  names.folders = ['file:///jobs'];
  let found = 0;
  const whole = new WholeWorkspace(
    workspace,
    names,
    {
      find: (file) => {
        found = knownFindings(file, 1000).length;
        return [];
      },
      send: () => undefined,
      progress: () => Promise.reject(new Error('nothing is shown')),
    },
    (_, fault) => {
      throw fault;
    },
  );
  return { workspace, whole, found: () => found, file: whole.closed()[0]! };
}

test('a long job that is not open is worked out in slices, and what is typed meanwhile has its turn', async () => {
  let slices = 0;
  let turns = 0;
  const { whole, file, found } = closedJob(() => (slices += 1));
  const typed = setInterval(() => (turns += 1), 1);
  expect(await whole.foundIn(file, () => true)).toEqual([]);
  clearInterval(typed);
  expect(slices).toBeGreaterThan(3);
  expect(turns).toBeGreaterThan(3);
  expect(found()).toBeGreaterThan(0);
});

test('a job that is opened meanwhile is looked at no more', async () => {
  const { whole, workspace, file, found } = closedJob(() => workspace.open(file.document));
  expect(await whole.foundIn(file, () => true)).toBeNull();
  expect(found()).toBe(0);
});
