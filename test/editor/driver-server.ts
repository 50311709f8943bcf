// The driver's side that holds the browser page. The suite, inside the extension host, asks over loopback HTTP.
import { createServer } from 'node:http';
import { mkdirSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import type { Frame, Page } from 'playwright-core';
import type { DriverRequest, DriverReply } from './driver-protocol.js';

/** How long an action waits for its webview or element. */
const WAIT_MS = 15_000;

/** The pages that extensions put into webviews: each is the inner frame of a frame of the workbench. */
function webviewFrames(page: Page): Frame[] {
  return page.frames().filter((frame) => frame.parentFrame()?.parentFrame() === page.mainFrame());
}

/** Waits for the webview whose page has an element that the selector finds. */
async function webviewWith(page: Page, selector: string): Promise<Frame> {
  const until = Date.now() + WAIT_MS;
  do {
    for (const frame of webviewFrames(page)) {
      const found = await frame.$(selector).catch(() => null);
      if (found !== null) return frame;
    }
    await page.waitForTimeout(50);
  } while (Date.now() < until);
  throw new Error(`no webview has ${selector}; there are ${webviewFrames(page).length} webviews`);
}

async function act(page: Page, request: DriverRequest, problems: readonly string[]): Promise<unknown> {
  switch (request.action) {
    case 'screenshot': {
      const path = join(resolve(process.env.BOREWRIGHT_EDITOR_SHOTS ?? '.'), `${request.name}.png`);
      mkdirSync(dirname(path), { recursive: true });
      if (request.webview === undefined) {
        await page.screenshot({ path, animations: 'disabled', caret: 'hide' });
      } else {
        const frame = await webviewWith(page, request.webview);
        await frame.locator(request.webview).first().screenshot({ path, animations: 'disabled' });
      }
      return path;
    }
    case 'evaluate-in-webview': {
      const frame = await webviewWith(page, request.webview);
      return frame.evaluate(`(${request.source})(${JSON.stringify(request.argument ?? null)})`);
    }
    case 'evaluate-in-workbench':
      return page.evaluate(`(${request.source})(${JSON.stringify(request.argument ?? null)})`);
    case 'click-in-webview': {
      const frame = await webviewWith(page, request.selector);
      await frame
        .locator(request.selector)
        .first()
        .click({ timeout: WAIT_MS, force: request.force ?? false });
      return null;
    }
    case 'hover-in-webview': {
      const frame = await webviewWith(page, request.selector);
      await frame.locator(request.selector).first().hover({ timeout: WAIT_MS });
      return null;
    }
    case 'drag-in-webview': {
      const frame = await webviewWith(page, request.selector);
      const box = (await frame.locator(request.selector).first().boundingBox({ timeout: WAIT_MS }))!;
      const from = { x: box.x + box.width / 2, y: box.y + box.height / 2 };
      await page.mouse.move(from.x, from.y);
      await page.mouse.down();
      await page.mouse.move(from.x + request.x, from.y + request.y, { steps: 6 });
      await page.mouse.up();
      return null;
    }
    case 'focus-webview': {
      const frame = await webviewWith(page, request.selector);
      await frame.locator(request.selector).first().focus({ timeout: WAIT_MS });
      return null;
    }
    case 'hover-in-workbench':
      await page.locator(request.selector).first().hover({ timeout: WAIT_MS });
      return null;
    case 'press-key':
      await page.keyboard.press(request.key);
      return null;
    case 'type-text':
      for (const letter of request.text) {
        const rest = new Promise((done) => setTimeout(done, request.everyMs ?? 0));
        // As `keyboard.type` does it: a letter without a key of its own comes as text.
        await page.keyboard.type(letter);
        await rest;
      }
      return null;
    case 'resize-window':
      await page.setViewportSize({ width: request.width, height: request.height });
      return null;
    case 'problems':
      return problems;
  }
}

/** Serves the suite's requests on a port of its own. */
export async function serveDriver(page: Page): Promise<{ readonly url: string; close(): void }> {
  // What a page in a webview complains of: a broken content policy, an error nobody caught.
  const problems: string[] = [];
  page.on('console', (message) => {
    const text = message.text();
    if (message.type() === 'error' && /Content Security Policy|vscode-webview|webview/i.test(text)) problems.push(text);
    if (process.env.BOREWRIGHT_EDITOR_VERBOSE !== undefined) process.stdout.write(`[page] ${text}\n`);
  });
  page.on('pageerror', (error) => problems.push(error.stack ?? error.message));
  const server = createServer((request, response) => {
    const chunks: Buffer[] = [];
    request.on('data', (chunk: Buffer) => chunks.push(chunk));
    request.on('end', () => {
      const body = Buffer.concat(chunks).toString('utf8');
      const reply = (value: DriverReply): void => {
        response.setHeader('content-type', 'application/json');
        response.end(JSON.stringify(value));
      };
      Promise.resolve()
        .then(() => act(page, JSON.parse(body) as DriverRequest, problems))
        .then(
          (value) => reply({ ok: true, value: value ?? null }),
          (error: unknown) => reply({ ok: false, error: error instanceof Error ? error.message : String(error) }),
        );
    });
  });
  await new Promise<void>((done) => server.listen(0, '127.0.0.1', done));
  const address = server.address();
  const port = typeof address === 'object' && address !== null ? address.port : 0;
  return { url: `http://127.0.0.1:${port}/`, close: () => void server.close() };
}
