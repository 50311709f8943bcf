import { BrowserMessageReader, BrowserMessageWriter, createConnection } from 'vscode-languageserver/browser';
import { version } from '../package.json';
import { serve } from './connection.js';
import { noFiles } from './files.js';

// The language server in a browser's worker: no disk, so a shop file counts only while it is open.
// Its library types the channel by the browser's own types, which this project is compiled without.
const channel = globalThis as never;
serve(createConnection(new BrowserMessageReader(channel), new BrowserMessageWriter(channel)), noFiles, version, null);
