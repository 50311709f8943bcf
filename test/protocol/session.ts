import { afterAll, beforeAll, expect } from 'vitest';
import { Client, Folder } from './client.js';

/** What the tests of one file share. */
interface Session {
  readonly client: Client;
  readonly folder: Folder;
}

/**
 * One server and one folder for all tests of a file. At the end the server must have failed at nothing, and end well.
 * @param begin takes them over, and lays down what the tests need
 */
export function session(
  begin: (session: Session) => void | Promise<void>,
  start: () => Promise<Client> = () => Client.start(),
): void {
  let running: Session;
  beforeAll(async () => {
    running = { client: await start(), folder: new Folder() };
    await begin(running);
  });
  afterAll(async () => {
    const { client, folder } = running;
    expect(client.errors).toEqual([]);
    expect(await client.stop()).toBe(0);
    folder.close();
  });
}
