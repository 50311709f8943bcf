import { Disk } from '../../../server/disk.js';
import { serveInThread } from '../../../server/watched/thread.js';

/** A disk on which one shop file is never read to its end, and another ends the thread. */
class BadDisk extends Disk {
  override read(uri: string): ReturnType<Disk['read']> {
    if (uri.endsWith('/endless.shop.yaml')) for (;;) void 0;
    if (uri.endsWith('/deadly.shop.yaml')) process.exit(7);
    return super.read(uri);
  }
}

serveInThread(new BadDisk());
