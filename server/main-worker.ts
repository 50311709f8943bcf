import { BrowserMessageReader, BrowserMessageWriter, createConnection } from 'vscode-languageserver/browser';
import { version } from '../package.json';
import { serve } from './connection.js';
import { noFiles } from './files.js';

// The language server in a browser's worker: no disk, so a shop file counts only while it is open.
const worker = globalThis as unknown as ConstructorParameters<typeof BrowserMessageReader>[0];
serve(createConnection(new BrowserMessageReader(worker), new BrowserMessageWriter(worker)), noFiles, version, null);
