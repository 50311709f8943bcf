import { expect, test } from 'vitest';
import { type Client, demo, type Folder, wordsOf } from './client.js';
import { session } from './session.js';

let client: Client;
let folder: Folder;
let count = 0;
session((one) => {
  ({ client, folder } = one);
});

const job = `unit: mm
carcasses:
  sink:
    kind: base
    width: 600
  hob:
    kind: base
    width: 600
`;

async function opened(text: string): Promise<string> {
  count += 1;
  const uri = folder.uri(`writing-${count}.carcass.yaml`);
  await client.open(uri, text);
  return uri;
}
/** Rules of what is shown of errors now. */
const errors = (uri: string): string[] =>
  client.diagnostics.get(uri)!.diagnostics.flatMap(({ code, severity }) => (severity === 1 ? [String(code)] : []));
/** Types before the first time that `before` stands in the text, and waits until something of that text was sent. */
async function typed(uri: string, before: string, text: string): Promise<void> {
  const at = client.at(uri, before);
  const sent = client.changed.length;
  await client.type(uri, [{ range: { start: at, end: at }, text }]);
  await client.until(() => client.changed.length > sent, 'the findings of a key');
}
const line = (uri: string, piece: string): number => client.at(uri, piece).line;

test('what the line in the making says comes when typing rests, and no sooner', async () => {
  const uri = await opened(job.replace('width: 600\n  hob', 'width: \n  hob'));
  await typed(uri, '\n  hob', '8');
  expect(errors(uri)).toEqual([]);
  expect(client.changed.at(-1)!.complete).toBe(false);
  expect((await client.findings(uri)).some(({ severity }) => severity === 1)).toBe(true);
});

test('it comes at once where the cursor leaves the line', async () => {
  const uri = await opened(job);
  await typed(uri, 'base\n    width: 600\n  hob', 'x');
  expect(errors(uri)).toEqual([]);
  await client.connection.sendNotification('borewright/cursor', { uri, line: line(uri, 'kind') });
  await client.connection.sendNotification('borewright/cursor', { uri, line: line(uri, 'unit') });
  await client.until(() => errors(uri).length > 0, 'the finding of the line that was left');
  expect(errors(uri)).toEqual(['value-wrong']);
});

test('what is said elsewhere is not held back', async () => {
  const uri = await opened(`${job}defaults:\n  height: \n`);
  const at = client.at(uri, 'kind: base');
  await client.type(uri, [{ range: { start: at, end: at }, text: 'board: nothing\n    ' }]);
  await client.findings(uri);
  // A height in the defaults that no carcass can have is told at the carcasses, too.
  const shown = client.diagnostics.get(uri)!.diagnostics.filter(({ code }) => code === 'name-unknown');
  await typed(uri, '  hob:', '# a remark\n');
  expect(client.diagnostics.get(uri)!.diagnostics.filter(({ code }) => code === 'name-unknown')).toHaveLength(
    shown.length,
  );
});

const box = 'carcasses:\n  sink:\n    kind: base\n    width: 600\n';
const wide = `carcasses:
  bench:
    kind: base
    width: 800
    dividers: [400]
    doors: { bays: [left, right] }
  twin:
    like: bench
    height: 760
  other:
    kind: base
    width: 600
    doors: left
`;

test('what follows elsewhere from a figure in the making waits with it', async () => {
  const uri = await opened(wide.replace('width: 800', 'width: '));
  // 80 mm is a width that a carcass can have, and neither its divider nor its doors.
  for (const figure of ['8', '0', '0']) {
    await typed(uri, '\n    dividers', figure);
    expect(errors(uri).filter((code) => code !== 'like-unread')).toEqual([]);
  }
  expect(await client.findings(uri)).not.toContainEqual(expect.objectContaining({ severity: 1 }));
});

test('what was shown elsewhere stays, with the figures of the moment', async () => {
  // 500 mm is before no hole of the rows, wherever these are.
  const uri = await opened(`${box}    row-offset: 50\n    loose-shelves:\n      - at: 500\n`);
  const said = (): string[] =>
    client.diagnostics.get(uri)!.diagnostics.flatMap((one) => (one.code === 'shelf-off-grid' ? [wordsOf(one)] : []));
  const before = said();
  expect(before).toHaveLength(1);
  await typed(uri, '\n    loose', '.5');
  expect(said()).toHaveLength(1);
  expect(said()).not.toEqual(before);
});

test('a job is not told of what is being written in its shop file', async () => {
  const shopUri = folder.uri('written.shop.yaml');
  await client.open(shopUri, demo('shed.shop.yaml'), 'borewright-shop');
  const uri = await opened(`shop: written.shop.yaml\n${job.replace('unit: mm\n', '')}`);
  expect(errors(uri)).toEqual([]);
  // From 16 mm to 1 mm, and to 19 mm: of 1 mm nothing can be bored.
  const six = client.at(shopUri, 'thickness: 16', 'thickness: 1'.length);
  const sent = client.changed.length;
  await client.type(shopUri, [{ range: { start: six, end: { ...six, character: six.character + 1 } }, text: '' }]);
  await client.until(() => client.changed.slice(sent).some((one) => one.uri === uri), 'the job with its new shop');
  expect(errors(uri)).toEqual([]);
  await client.connection.sendNotification('borewright/cursor', { uri: shopUri, line: six.line + 1 });
  await client.until(() => errors(uri).length > 0, 'what is wrong with it');
  await client.close(shopUri);
});

test('it comes where the cursor leaves the figure, also while one writes on in the same carcass', async () => {
  const uri = await opened(wide);
  const at = client.at(uri, '0\n    dividers');
  const end = { ...at, character: at.character + 1 };
  await client.type(uri, [{ range: { start: at, end }, text: '' }]);
  await client.until(() => !client.changed.at(-1)!.complete, 'what is held back');
  expect(errors(uri)).toEqual([]);
  await typed(uri, '\n    dividers', '\n    plinth: 9');
  expect(errors(uri)).not.toEqual([]);
});

test('what was shown of a line stays while one goes on in it', async () => {
  const uri = await opened(job.replace('kind: base', 'kind: bose'));
  expect(errors(uri)).toEqual(['value-wrong']);
  await typed(uri, '\n    width: 600\n  hob', ' # as it is');
  expect(errors(uri)).toEqual(['value-wrong']);
});

test('a text that is put in as a whole is judged as a whole', async () => {
  const uri = await opened('');
  const sent = client.changed.length;
  await client.type(uri, [{ text: job.replaceAll('kind: base', 'kind: bse') }]);
  await client.until(() => client.changed.length > sent, 'its findings');
  expect(errors(uri)).toEqual(['value-wrong', 'value-wrong']);
});

test.each([
  ['', ['Begin with a job in millimetres', 'Begin with a job in inches']],
  ['title: Kitchen\n', ['Begin with a base carcass']],
  ['# mine\ncarcasses:\n', ['Begin with a base carcass']],
  ['carcasses: # those of the window\r\n', ['Begin with a base carcass']],
])('a job of which nothing is there yet (%j) offers a beginning without a fault', async (text, titles) => {
  const uri = await opened(text);
  expect((await client.findings(uri)).map(({ code, severity }) => [code, severity])).toContainEqual(['nothing-yet', 3]);
  const end = client.at(uri, text === '' ? '' : text.trimEnd().split('\n').at(-1)!);
  const actions = await client.codeActions(uri, { start: end, end });
  expect(actions.map(({ title }) => title)).toEqual(expect.arrayContaining(titles));
  for (const { title, edit } of actions.filter((one) => titles.includes(one.title))) {
    const after = client.applied(uri, edit!);
    expect(after.startsWith(text), title).toBe(true);
    if (text.includes('\r\n')) expect(after.replaceAll('\r\n', '')).not.toContain('\n');
    expect(
      (await client.open(await opened(after), after)).filter(({ severity }) => severity === 1).map(wordsOf),
    ).toEqual([]);
  }
});

test('an empty shop file offers a beginning without a fault', async () => {
  const uri = folder.uri('empty.shop.yaml');
  const [greeting] = await client.open(uri, '', 'borewright-shop');
  expect(greeting).toMatchObject({ code: 'nothing-yet', severity: 3 });
  const start = { line: 0, character: 0 };
  const actions = await client.codeActions(uri, { start, end: start });
  expect(actions).toHaveLength(3);
  for (const [index, { edit }] of actions.entries()) {
    const begun = folder.uri(`begun-${index}.shop.yaml`);
    const found = await client.open(begun, client.applied(uri, edit!), 'borewright-shop');
    expect(found.filter(({ severity }) => severity !== 3).map(wordsOf)).toEqual([]);
  }
});

test.each([
  ['shelves: 2', ['Rename to loose-shelves', 'Rename to fixed-shelves']],
  ['shelf: 1', ['Rename to loose-shelves', 'Rename to fixed-shelves']],
  ['hight: 720', ['Rename to height']],
  ['material: board-18', ['Rename to board']],
  ['toe-kick: 100', ['Rename to plinth']],
  ['weight: 20', ['Rename to load']],
  ['handles: none', ['Rename to pulls']],
  ['uprights: 1', ['Rename to dividers']],
  ['hinges: none', []],
  ['worktop: 2', ['Remove ‘worktop’']],
])('the word %s leads to what is meant', async (written, titles) => {
  const uri = await opened(`${box}    ${written}\n`);
  const [found] = (await client.findings(uri)).filter(({ code }) => code === 'key-unknown');
  expect(wordsOf(found!)).not.toContain('. Use ');
  const actions = await client.codeActions(uri, found!.range);
  expect(actions.map(({ title }) => title)).toEqual(titles);
  for (const { edit } of actions) {
    const after = await client.open(await opened(''), client.applied(uri, edit!));
    expect(after.filter(({ severity }) => severity === 1).map(wordsOf)).toEqual([]);
  }
});

test.each([
  ['doors: one', ['Write left', 'Write right']],
  ['doors: Double', ['Write pair']],
  ['doors: { bays: [2] }', ['Write pair']],
  ['back: no', ['Write none']],
  ['rows: yes', ['Write both', 'Write front']],
])('the value %s leads to what is meant', async (written, titles) => {
  const uri = await opened(`${box}    ${written}\n`);
  const [found] = (await client.findings(uri)).filter(({ code }) => code === 'value-wrong');
  const actions = await client.codeActions(uri, found!.range);
  expect(actions.map(({ title }) => title)).toEqual(titles);
  for (const { edit } of actions) {
    const after = await client.open(await opened(''), client.applied(uri, edit!));
    expect(after.filter(({ severity }) => severity === 1).map(wordsOf)).toEqual([]);
  }
  // Where there is a choice, nothing is taken without asking.
  const all = await client.codeActions(uri, found!.range, ['source.fixAll']);
  expect(all).toHaveLength(titles.length === 1 ? 1 : 0);
});

test('a word that newcomers try finds its key in completion', async () => {
  const uri = await opened(`${box}    she\n`);
  const list = await client.completion(uri, client.at(uri, 'she', 3));
  const found = (list?.items ?? []).filter(({ filterText }) => filterText?.split(' ').includes('shelf'));
  expect(found.map(({ label }) => label)).toEqual(['fixed-shelves', 'loose-shelves']);
});

test('skeletons of carcasses are offered where a carcass stands, and nowhere else', async () => {
  const labels = async (text: string, piece: string): Promise<string[]> => {
    const uri = await opened(text);
    const list = await client.completion(uri, client.at(uri, piece, piece.length));
    return (list?.items ?? []).map(({ label }) => label);
  };
  expect(await labels(`${box}  dra\n`, 'dra')).toContain('drawer carcass');
  expect((await labels(`${box}    d\n`, '    d')).filter((label) => / carcass$/.test(label))).toEqual([]);
  expect(await labels('j', 'j')).toEqual(expect.arrayContaining(['new job in millimetres', 'new job in inches']));
});

test('lines that are indented with tabs get spaces', async () => {
  const uri = await opened('carcasses:\n\tsink:\n\t\tkind: base\n\t\twidth: 600\n');
  const [found] = await client.findings(uri);
  const [action] = await client.codeActions(uri, found!.range);
  expect(client.applied(uri, action!.edit!)).toBe(box);
});
