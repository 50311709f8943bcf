import { expect, test } from 'vitest';
import type { MarkupContent, SignatureHelp } from 'vscode-languageserver-protocol';
import { parseLength } from '../../shared-core/length/parse.js';
import { type Client, type Folder } from './client.js';
import { session } from './session.js';

let client: Client;
let folder: Folder;
session((one) => {
  ({ client, folder } = one);
});

interface Help {
  readonly label: string;
  readonly about: string;
}

/** Of a text with `|` for the cursor. */
async function helpAt(marked: string, kind: 'job' | 'shop' = 'job'): Promise<Help | null> {
  const uri = folder.uri(kind === 'job' ? 'desk.carcass.yaml' : 'yard.shop.yaml');
  const at = marked.indexOf('|');
  await client.open(uri, marked.replace('|', ''), `borewright-${kind}`);
  const before = marked.slice(0, at).split('\n');
  const position = { line: before.length - 1, character: before.at(-1)!.length };
  const help = await client.ask<SignatureHelp | null>('textDocument/signatureHelp', {
    textDocument: { uri },
    position,
  });
  if (help === null) return null;
  expect(help.signatures).toHaveLength(1);
  const { label, documentation } = help.signatures[0]!;
  return { label, about: (documentation as MarkupContent).value };
}

test('at a length that is not written yet: what may be written, what it means, and the bounds', async () => {
  expect(await helpAt('carcasses:\n  desk:\n    kind: base\n    width: |\n')).toEqual({
    label: 'width: 600, 600.5 mm, 23 5/8 in',
    about: 'Overall width of the carcass.\n\nA length from 50 mm to 5000 mm.',
  });
});

test('in a file of inches a bare number is inches, and so are the bounds', async () => {
  const help = await helpAt('unit: in\ncarcasses:\n  desk:\n    kind: base\n    width: |\n');
  expect(help!.label).toBe('width: 23 5/8, 23.625 in, 1\' 11 5/8", 600 mm');
  expect(help!.about).toContain('A length from 1.969 in to 196.85 in');
});

test('while it is typed, in lists, in brackets, and for shelves that may be counted too', async () => {
  const job = (line: string): string => `carcasses:\n  desk:\n    kind: base\n    width: 600\n    ${line}\n`;
  expect((await helpAt(job('rail-width: 9|')))!.label).toBe('rail-width: 120, 120.5 mm, 4 3/4 in');
  expect((await helpAt(job('loose-shelves: [|]')))!.label).toBe('loose-shelves: 600, 600.5 mm, 23 5/8 in');
  expect((await helpAt(job('loose-shelves:\n      - |')))!.label).toBe('loose-shelves: 600, 600.5 mm, 23 5/8 in');
  expect((await helpAt(job('fixed-shelves: [{ at: |}]')))!.label).toBe('at: 600, 600.5 mm, 23 5/8 in');
  expect((await helpAt('defaults:\n  plinth: |\ncarcasses: {}\n'))!.about).toContain('from 0 mm to 400 mm');
});

test('a range of a machine in a shop file', async () => {
  const help = await helpAt('cup-borers:\n  door:\n    depth: |\n', 'shop');
  expect(help!.label).toBe('depth: 5 to 20, 1/4 in to 3/4 in');
  expect(help!.about).toContain('Two lengths from 0 mm to 50 mm');
});

test('nowhere else', async () => {
  for (const none of [
    '|',
    'title: |',
    'carcasses:\n  desk:\n    kind: |',
    'carcasses:\n  desk:\n    |',
    'carcasses: # |',
  ])
    expect(await helpAt(none), none).toBeNull();
});

test('every example is a length that the file reads, within the bounds that are told', async () => {
  for (const unit of ['mm', 'in'] as const)
    for (const [key, min, max] of [
      ['width', 50, 5000],
      ['plinth', 0, 400],
      ['rail-width', 40, 400],
      ['row-offset', 1, 500],
      ['row-setback', 5, 300],
      ['back: { groove', 1, 30],
    ] as const) {
      const help = await helpAt(`unit: ${unit}\ncarcasses:\n  desk:\n    ${key}: |${key.includes('{') ? '}' : ''}\n`);
      const examples = help!.label.slice(help!.label.indexOf(': ') + 2).split(', ');
      expect(examples.length).toBeGreaterThan(2);
      for (const example of examples) {
        const read = parseLength(example, unit);
        expect(read.ok && read.value >= min * 1000 && read.value <= max * 1000, `${key}: ${example}`).toBe(true);
      }
    }
});
