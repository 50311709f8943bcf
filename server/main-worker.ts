import { BrowserMessageReader, BrowserMessageWriter, createConnection } from 'vscode-languageserver/browser';
import { version } from '../package.json';
import type { Language } from '../shared-core/words/language.js';
import type { Spoken } from '../shared-core/words/spoken.js';
import { serve } from './connection.js';
import { noFiles } from './files.js';

// The language server in a browser's worker: no disk, so a shop file counts only while it is open.
// Its library types the channel by the browser's own types, which this project is compiled without.
const channel = globalThis as never;
serve(createConnection(new BrowserMessageReader(channel), new BrowserMessageWriter(channel)), version, {
  files: noFiles,
  reference: null,
  words,
  writePapers: null,
});

/** A worker is one file: other languages lie in it, and are looked into only when they are asked for. */
async function words(language: Language): Promise<Spoken | null> {
  switch (language) {
    case 'de':
      return (await import('./spoken/de.js')).spoken;
    case 'fr':
      return (await import('./spoken/fr.js')).spoken;
    case 'en':
      return null;
  }
}
