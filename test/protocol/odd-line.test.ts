import { expect, test } from 'vitest';
import { noFiles } from '../../server/files.js';
import { Workspace } from '../../server/workspace.js';
import { TextDocument } from 'vscode-languageserver-textdocument';

const URI = 'file:///jobs/long.carcass.yaml';

test('a line that is no whole number is that which it lies in, for the carcass that is worked out first too', () => {
  const carcasses = Array.from({ length: 300 }, (_, index) => `  c${index}: { kind: base, width: ${400 + index} }\n`);
  const knownAt = (line: number): readonly string[] => {
    const workspace = new Workspace(noFiles);
    workspace.open(TextDocument.create(URI, 'borewright-job', 1, `carcasses:\n${carcasses.join('')}`));
    const near = workspace.near(URI, line)!;
    if (near.kind !== 'job') throw new Error('it is a job');
    return near.analysis.carcasses.filter(({ spec }) => spec !== null).map(({ name }) => name);
  };
  expect(knownAt(200)).toEqual(['c199']);
  expect(knownAt(200.5)).toEqual(['c199']);
});
