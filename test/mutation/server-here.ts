import { PassThrough } from 'node:stream';
import { StreamMessageReader, StreamMessageWriter } from 'vscode-jsonrpc/node';
import { createConnection } from 'vscode-languageserver/node';
import { serve } from '../../server/connection.js';
import { Disk } from '../../server/disk.js';
import { spoken as german } from '../../server/spoken/de.js';
import { spoken as french } from '../../server/spoken/fr.js';
import { Client, type Launched } from '../protocol/client.js';

// The server among the tests instead of in a process of its own: only the modules here are changed.
const WORDS = { de: german, fr: french, en: null };

// A connection that is told to exit ends its process.
process.exit = () => undefined as never;

Client.launch = () => {
  const [stdin, stdout] = [new PassThrough(), new PassThrough()];
  serve(createConnection(new StreamMessageReader(stdin), new StreamMessageWriter(stdout)), '0', {
    files: new Disk(),
    reference: null,
    words: (language) => WORDS[language],
    writePapers: null,
  });
  const once = (_: string, done: (code: number) => void): unknown => setTimeout(done, 0, 0);
  return { stdin, stdout, once, kill: () => true } as unknown as Launched;
};
