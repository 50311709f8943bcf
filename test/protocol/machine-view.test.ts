import { expect, test } from 'vitest';
import type {
  MachineStepMethod,
  MachineStepParams,
  MachineStepReply,
} from '../../shared-core/drawing/messages/machine-view.js';
import type { SetUpsMethod, SetUpsReply } from '../../shared-core/drawing/messages/set-ups.js';
import { isStepReply } from '../../client/webview/messages/machine.js';
import { type Client, covered, demo, type Folder } from './client.js';
import { session } from './session.js';

const MACHINE_STEP: MachineStepMethod = 'borewright/machineStep';
const SET_UPS: SetUpsMethod = 'borewright/setUps';

/** Few set-ups, so that their order is found at once. */
const JOB = `unit: mm
shop: shed.shop.yaml
carcasses:
  pots:
    kind: base
    width: 600
    fixed-shelves: [360]
  pans:
    kind: base
    width: 800
`;

let client: Client;
let folder: Folder;
let uri: string;
session(async (one) => {
  ({ client, folder } = one);
  folder.write('shed.shop.yaml', demo('shed.shop.yaml'));
  uri = folder.uri('pots.carcass.yaml');
  await client.open(uri, JOB);
});

const step = (params: object): Promise<MachineStepReply | null> =>
  client.connection.sendRequest<MachineStepReply | null>(MACHINE_STEP, params);
const list = async (): Promise<Extract<SetUpsReply, { kind: 'set-ups' }>> => {
  const reply = await client.connection.sendRequest<SetUpsReply>(SET_UPS, { uri });
  if (reply.kind === 'nothing') throw new Error(reply.reason);
  return reply;
};
async function shown(params: object): Promise<Extract<MachineStepReply, { kind: 'step' }>> {
  const reply = await step(params);
  expect(isStepReply(reply), 'what the client lets pass').toBe(true);
  if (reply?.kind !== 'step') throw new Error(reply?.reason ?? 'no reply');
  return reply;
}
/** Address of the first step of a panel. */
async function first(carcass: string, panel: string): Promise<MachineStepParams> {
  const { setUps } = await list();
  const setUp = setUps.find(({ runs }) => runs.some((run) => run.carcass === carcass && run.panel === panel))!;
  return { uri, setUp: setUp.id, carcass, panel, step: 0 };
}

test('every step in the list can be shown, and the holes add up to the bore map', async () => {
  const { setUps, stale, totals } = await list();
  expect(stale).toBeNull();
  let holes = 0;
  for (const { id, runs } of setUps) {
    for (const { carcass, panel, steps } of runs) {
      for (const [index, listed] of steps.entries()) {
        const { scene, version } = await shown({ uri, setUp: id, carcass, panel, step: index });
        expect(version).toBe(1);
        expect(scene.title).toBe(`${carcass}, ${panel}`);
        const now = scene.holes.filter(({ state }) => state === 'now').length;
        expect(now).toBe(listed.holes);
        holes += now;
      }
    }
  }
  expect(holes).toBe(totals.holes);
});

test('a step leads to the text that makes the panel', async () => {
  const { range } = await shown(await first('pots', 'shelf-1'));
  expect(covered(client.text(uri), range!)).toBe('360');
});

test('a reader who goes nearer gets smaller letters; anything else than a number is the whole', async () => {
  const address = await first('pots', 'left');
  const { scene } = await shown(address);
  expect((await shown({ ...address, nearer: 4 })).scene.scale).toBeCloseTo(scene.scale / 4, 9);
  expect((await shown({ ...address, nearer: 'very' })).scene.scale).toBe(scene.scale);
  expect((await shown({ ...address, nearer: -3 })).scene.scale).toBe(scene.scale);
});

test('a step that is not there is told so', async () => {
  const address = await first('pots', 'left');
  expect(await step({ ...address, step: 50 })).toMatchObject({
    kind: 'nothing',
    reason: expect.stringContaining('step 51') as string,
  });
  expect(await step({ ...address, carcass: 'pits' })).toMatchObject({
    kind: 'nothing',
    reason: expect.stringContaining('pits') as string,
  });
  expect(await step({ uri, setUp: 7, carcass: null, panel: {}, step: 'one' })).toMatchObject({ kind: 'nothing' });
});

test('while the text is broken the last good plan stays, and says so', async () => {
  const address = await first('pots', 'left');
  const good = await list();
  const before = await shown(address);
  await client.open(uri, JOB.replace('width: 800', 'width: 8oo'));
  const broken = await list();
  expect(broken.stale).toContain('The text of ‘pans’ cannot be worked out as it stands; this is the last good plan.');
  expect(broken.setUps).toEqual(good.setUps);
  const after = await shown(address);
  expect(after.stale).toBe(broken.stale);
  expect(after.scene).toEqual(before.scene);
  await client.open(uri, 'carcasses: [');
  expect((await list()).stale).toContain('last good plan');
  await client.open(uri, JOB);
  expect((await list()).stale).toBeNull();
});

test('work is known by its content: stops that move do not undo it, holes that move do', async () => {
  const contents = async (): Promise<Map<string, string>> => {
    const { setUps } = await list();
    return new Map(
      setUps.flatMap(({ runs }) =>
        runs.map(({ carcass, panel, content }) => [content, `${carcass} ${panel}`] as const),
      ),
    );
  };
  const before = await contents();
  await client.open(uri, JOB.replace('width: 800', 'width: 700'));
  const wider = await contents();
  const gone = new Set([...before].filter(([content]) => !wider.has(content)).map(([, name]) => name));
  // Sides are bored as they were; only what is as long as the carcass is wide is other work.
  expect([...gone].sort()).toEqual(['pans bottom', 'pans rail-back', 'pans rail-front']);
  await client.open(uri, JOB.replace('[360]', '[392]'));
  const moved = await contents();
  const other = new Set([...before].filter(([content]) => !moved.has(content)).map(([, name]) => name));
  expect([...other].sort()).toEqual(['pots left', 'pots right']);
  await client.open(uri, JOB);
});

test('a shop file has no steps', async () => {
  const shop = folder.uri('shed.shop.yaml');
  await client.open(shop, demo('shed.shop.yaml'), 'borewright-shop');
  expect(await step({ uri: shop, setUp: 'a', carcass: 'b', panel: 'c', step: 0 })).toBeNull();
});
