import { Disk } from '../../../server/disk.js';
import { serveInThread } from '../../../server/watched/thread.js';

/** A disk on which one shop file is never read to its end, another ends the thread, and a third is a fault that nobody catches. */
class BadDisk extends Disk {
  override read(uri: string): ReturnType<Disk['read']> {
    if (uri.endsWith('/endless.shop.yaml')) for (;;) void 0;
    if (uri.endsWith('/deadly.shop.yaml')) process.exit(7);
    if (uri.endsWith('/uncaught.shop.yaml')) queueMicrotask(() => fail(uri));
    return super.read(uri);
  }
}

function fail(uri: string): never {
  throw new RangeError(`no room for ${uri}`);
}

serveInThread(new BadDisk());
