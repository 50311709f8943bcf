import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import * as vscode from 'vscode';
import type { BoxReply } from '../../../shared-core/drawing/messages/box-view.js';
import { boxesOf, Engine } from '../../../shared-core/service.js';
import { violations } from '../audit.js';
import {
  clickInWebview,
  driverAvailable,
  evaluateInWebview,
  evaluateInWorkbench,
  focusInWebview,
  openFile,
  pageProblems,
  pressKey,
  readyToType,
  resizeWindow,
  screenshot,
  setTheme,
  until,
} from '../driver.js';
import { suite, test } from '../harness.js';
import { pageOfWidth, WINDOW } from '../page-size.js';
import { closePreview, lineOf, setCursor } from '../preview-page.js';

const PAGE = 'canvas.view';
const FILE = 'survey.carcass.yaml';
const THEMES = ['light', 'dark', 'high-contrast', 'high-contrast-light'] as const;

/** Where the page has a panel in its view, in millimetres, and where that is seen. */
interface Where {
  readonly carcass: string;
  readonly key: string;
  readonly stress: string;
  readonly min: readonly number[];
  readonly max: readonly number[];
  readonly seen: { readonly x: number; readonly y: number };
}
const where = (): Promise<readonly Where[]> =>
  evaluateInWebview(PAGE, () => {
    const found: Where[] = [];
    document.querySelector('canvas')!.dispatchEvent(new CustomEvent('where', { detail: found }));
    return found;
  });
const title = (): Promise<string> => evaluateInWebview(PAGE, () => document.querySelector('h1')?.textContent ?? '');
const drawn = (what: string, name: string): Promise<unknown> =>
  until(what, async () => (await title()).startsWith(name) && (await where()).length > 0);
const slide = (name: 'open' | 'apart', percent: number): Promise<void> =>
  evaluateInWebview(
    PAGE,
    (to: readonly [string, number]) => {
      const input = document.querySelector<HTMLInputElement>(`#${to[0]}`)!;
      input.value = String(to[1]);
      input.dispatchEvent(new Event('input'));
    },
    [name, percent] as const,
  );

/** The same from the core, asked without the extension. */
function expected(text: string, what: 'carcass' | 'wall', carcass: string): Extract<BoxReply, { kind: 'box' }> {
  const engine = new Engine({ readShop: () => ({ ok: true, uri: 'file:///s', text: '' }) });
  const analysis = engine.analyse('file:///j', text);
  const at = { line: 0, character: 0 };
  const document = { uri: 'file:///j', version: 1, toRange: () => ({ start: at, end: at }) };
  const reply = boxesOf({ kind: 'job', analysis }, document, { uri: '', what, position: null, carcass }, null);
  if (reply.kind !== 'box') throw new Error(reply.reason);
  return reply;
}
const near = (a: number, b: number, what: string): void =>
  assert.ok(Math.abs(a - b) < 0.01, `${what}: ${a} on the page, ${b} in the core`);

/** Compares every panel of the page with the core's, moved and turned as `moved` says. */
async function standAs(
  { boxes }: ReturnType<typeof expected>,
  moved: (part: (typeof boxes)[number]['scene']['parts'][number], corner: readonly number[]) => readonly number[],
): Promise<void> {
  const found = await where();
  const wanted = boxes.flatMap(({ scene, at }) =>
    at.flatMap((origin) => scene.parts.map((part) => ({ scene, origin, part }))),
  );
  assert.equal(found.length, wanted.length);
  wanted.forEach(({ scene, origin, part }, i) => {
    const { carcass, key, min, max } = found[i]!;
    assert.deepEqual([carcass, key], [scene.carcass, part.key]);
    const { x, y, z } = part.extents;
    const corners = [x.from, x.to].flatMap((a) =>
      [y.from, y.to].flatMap((b) => [z.from, z.to].map((c) => moved(part, [a / 1000, b / 1000, c / 1000]))),
    );
    [origin.x, origin.y, origin.z].forEach((off, axis) => {
      const along = corners.map((corner) => corner[axis]! + off / 1000);
      near(min[axis]!, Math.min(...along), `${carcass} ${key}, low end of axis ${axis}`);
      near(max[axis]!, Math.max(...along), `${carcass} ${key}, high end of axis ${axis}`);
    });
  });
}

if (driverAvailable) {
  suite('box view', () => {
    let text = '';
    let editor: vscode.TextEditor;

    async function shown(at: string): Promise<void> {
      const folder = vscode.workspace.workspaceFolders![0]!.uri;
      const demo = readFileSync(join(process.env.BOREWRIGHT_EDITOR_REPOSITORY!, 'test/demo/office.carcass.yaml'));
      await vscode.workspace.fs.writeFile(vscode.Uri.joinPath(folder, FILE), demo);
      text = new TextDecoder().decode(demo);
      editor = await openFile(FILE);
      setCursor(editor, at);
      await pressKey('Control+k');
      await pressKey('v');
    }

    test('panels stand on the page where the core has them: closed, open and apart, and along the wall', async () => {
      const before = await pageProblems();
      await shown('files:');
      await drawn('the cabinet of the cursor', 'files, ');
      const files = expected(text, 'carcass', 'files');
      await standAs(files, (_, corner) => corner);

      await slide('apart', 100);
      await standAs(files, ({ apart }, [x, y, z]) => [x! + apart.x / 1000, y! + apart.y / 1000, z! + apart.z / 1000]);
      await slide('apart', 0);

      await slide('open', 50);
      const [{ scene }] = files.boxes as [(typeof files.boxes)[number]];
      assert.equal(scene.moves.length, 2);
      // 55 of 110 degrees about the outer corners, by the formula of a turn and nothing of the page's library.
      await standAs(files, ({ key }, [x, y, z]) => {
        const move = scene.moves.find(({ parts }) => parts.includes(key));
        if (move?.kind !== 'turn') return [x!, y!, z!];
        const angle = ((55 * Math.PI) / 180) * (move.way === 'clockwise' ? -1 : 1);
        const [dx, dy] = [x! - move.axis.x / 1000, y! - move.axis.y / 1000];
        return [
          move.axis.x / 1000 + dx * Math.cos(angle) - dy * Math.sin(angle),
          move.axis.y / 1000 + dx * Math.sin(angle) + dy * Math.cos(angle),
          z!,
        ];
      });
      await slide('open', 0);

      await clickInWebview('.switch button:last-child');
      await drawn('the wall', 'Wall 1, ');
      await standAs(expected(text, 'wall', 'files'), (_, corner) => corner);
      assert.deepEqual((await pageProblems()).slice(before.length), []);
      await closePreview();
    });

    test('drawers come out on the page by as much as the core says, each with all its panels', async () => {
      await shown('folders:');
      await drawn('the cabinet of the cursor', 'folders, ');
      const folders = expected(text, 'carcass', 'folders');
      const { moves } = folders.boxes[0]!.scene;
      assert.deepEqual(moves.map(({ kind }) => kind).sort(), ['pull', 'pull', 'pull', 'turn']);
      for (const percent of [0, 25, 100]) {
        await slide('open', percent);
        const found = await where();
        for (const move of moves) {
          if (move.kind !== 'pull') continue;
          assert.equal(move.parts.length, 6);
          for (const key of move.parts) {
            const { extents } = folders.boxes[0]!.scene.parts.find((part) => part.key === key)!;
            const { min, max } = found.find((one) => one.key === key)!;
            const out = (move.travel * percent) / 100;
            (['x', 'y', 'z'] as const).forEach((axis, i) => {
              const by = axis === 'y' ? out : 0;
              near(min[i]!, (extents[axis].from - by) / 1000, `${key} at ${percent} %, low end of ${axis}`);
              near(max[i]!, (extents[axis].to - by) / 1000, `${key} at ${percent} %, high end of ${axis}`);
            });
          }
        }
      }
      await slide('open', 0);
      await closePreview();
    });

    test('follows the cursor, and leads a click and the keys back to the line', async () => {
      await shown('coats:');
      await drawn('the cabinet of the cursor', 'coats, ');
      setCursor(editor, 'fixed-shelves: [1737.5]');
      await until('the shelf of the line', async () =>
        (await where()).some(({ key, stress }) => key === 'shelf-1' && stress === 'chosen'),
      );
      setCursor(editor, 'dividers: 1');
      await drawn('another cabinet', 'instruments, ');
      await until('its divider', async () =>
        (await where()).some(({ key, stress }) => key === 'divider-1' && stress === 'chosen'),
      );

      // A click on the door goes to the line of the doors.
      const door = (await where()).find(({ key }) => key === 'door-2')!;
      const clickAt = (at: { readonly x: number; readonly y: number }): Promise<void> =>
        evaluateInWebview(
          PAGE,
          ({ x, y }: { readonly x: number; readonly y: number }) => {
            const view = document.querySelector('canvas')!;
            const { left, top } = view.getBoundingClientRect();
            const where = { clientX: left + x, clientY: top + y, button: 0, bubbles: true, pointerId: 1 };
            for (const type of ['pointerdown', 'pointerup']) view.dispatchEvent(new PointerEvent(type, where));
          },
          at,
        );
      await clickAt(door.seen);
      await until('the line of the doors', () => lineOf(editor).includes('doors: { bays: [left, right] }'));

      await readyToType(editor, editor.selection.active);
      await focusInWebview(PAGE);
      await pressKey('Home');
      for (let i = 0; i < 3; i += 1) await pressKey('PageDown');
      const spoken = await evaluateInWebview(
        PAGE,
        () => document.querySelector('p.unseen[role="status"]')!.textContent,
      );
      assert.match(spoken, /: \d+ × \d+ × \d+ mm, board-19\./);
      const turned = (await where())[0]!.seen;
      await pressKey('ArrowLeft');
      await until('the view to turn', async () => (await where())[0]!.seen.x !== turned.x);
      await pressKey('o');
      assert.equal(
        await evaluateInWebview(PAGE, () => document.querySelector<HTMLInputElement>('#open')!.value),
        '100',
      );
      await closePreview();
    });

    test('is saved as a picture', async () => {
      await shown('maps:');
      await drawn('the cabinet of the cursor', 'maps, ');
      await clickInWebview('.out button:last-child');
      await until('the dialog', () =>
        evaluateInWorkbench(
          () =>
            document
              .querySelector<HTMLInputElement>('.quick-input-widget:not([style*="display: none"]) input')
              ?.value.endsWith('maps-box.png') === true,
        ),
      );
      await pressKey('Enter');
      const folder = vscode.workspace.workspaceFolders![0]!.uri;
      const png = await until('the picture', () =>
        vscode.workspace.fs.readFile(vscode.Uri.joinPath(folder, 'maps-box.png')),
      );
      assert.equal(new TextDecoder().decode(png.subarray(1, 4)), 'PNG');
      // A picture with nothing in it is packed to next to nothing.
      assert.ok(png.length > 5000, `${png.length} bytes`);
      await closePreview();
    });

    test('looks well in four themes at three widths, with nothing for axe-core to find', async () => {
      try {
        await shown('files:');
        await drawn('the cabinet of the cursor', 'files, ');
        await slide('open', 60);
        const found = new Set<string>();
        for (const width of [350, 720, 1200]) {
          await pageOfWidth(PAGE, width, 900);
          for (const theme of THEMES) {
            await setTheme(theme);
            await new Promise((done) => setTimeout(done, 300));
            await screenshot(`box-${width}-${theme}`, 'body');
            for (const one of await violations(PAGE)) found.add(`${theme}, ${width}: ${one}`);
          }
          const wide = await evaluateInWebview(PAGE, () => document.documentElement.scrollWidth - innerWidth);
          assert.ok(wide <= 0, `${wide} pixels too wide at ${width}`);
        }
        await clickInWebview('.switch button:last-child');
        await drawn('the wall', 'Wall 1, ');
        for (const theme of THEMES) {
          await setTheme(theme);
          await new Promise((done) => setTimeout(done, 300));
          await screenshot(`box-wall-${theme}`, 'body');
          for (const one of await violations(PAGE)) found.add(`${theme}, wall: ${one}`);
        }
        assert.deepEqual([...found], []);
      } finally {
        await resizeWindow(WINDOW.width, WINDOW.height);
        await setTheme('dark');
        await closePreview();
      }
    });

    test('where the machine takes the picture away, says so, and the lists go on', async () => {
      await shown('files:');
      await drawn('the cabinet of the cursor', 'files, ');
      await evaluateInWebview(PAGE, () => {
        document.querySelector('canvas')!.getContext('webgl2')!.getExtension('WEBGL_lose_context')!.loseContext();
      });
      const words = await until('the message', () =>
        evaluateInWebview('.lists', () => document.querySelector('.empty:not([hidden])')?.textContent ?? ''),
      );
      assert.match(words, /WebGL/);
      await screenshot('box-without-depth', 'body');
      setCursor(editor, 'coats:');
      await until('the lists of another cabinet', () =>
        evaluateInWebview('.lists', () => document.querySelector('.lists')!.textContent.includes('shelf-1')),
      );
      assert.deepEqual(await violations('.lists'), []);
      await closePreview();
    });
  });
}
