import { createReadStream, existsSync, statSync, writeFileSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import { extname, join, normalize } from 'node:path';

const TYPES: Readonly<Record<string, string>> = {
  '.js': 'text/javascript',
  '.cjs': 'text/javascript',
  '.json': 'application/json',
  '.css': 'text/css',
};

/** What the window in the browser fetches for itself: the files of the repository, as an extension on the web is served. */
export async function serveRepository(root: string): Promise<{ readonly origin: string; close(): void }> {
  const fetched = new Set<string>();
  const server: Server = createServer((request, response) => {
    response.setHeader('Access-Control-Allow-Origin', '*');
    const { pathname } = new URL(request.url ?? '/', 'http://127.0.0.1');
    const results = process.env.BOREWRIGHT_EDITOR_RESULTS;
    if (request.method === 'POST' && pathname === '/results' && results !== undefined) {
      // The tests run where there is no disk.
      const parts: Buffer[] = [];
      request.on('data', (part: Buffer) => parts.push(part));
      request.on('end', () => {
        writeFileSync(results, Buffer.concat(parts));
        response.end();
      });
      return;
    }
    if (pathname === '/fetched') {
      // So that a test can tell what a page loads, and when.
      response.setHeader('Content-Type', 'application/json');
      response.end(JSON.stringify([...fetched]));
      return;
    }
    const path = join(root, normalize(decodeURIComponent(pathname)));
    if (!path.startsWith(root) || !existsSync(path) || !statSync(path).isFile()) {
      response.writeHead(404).end();
      return;
    }
    fetched.add(pathname);
    response.setHeader('Content-Type', TYPES[extname(path)] ?? 'application/octet-stream');
    createReadStream(path).pipe(response);
  });
  await new Promise<void>((done) => server.listen(0, '127.0.0.1', done));
  const address = server.address();
  const port = typeof address === 'object' && address !== null ? address.port : 0;
  return { origin: `http://127.0.0.1:${port}`, close: () => server.close() };
}
