import type { Diagnostic } from 'vscode-languageserver';
import type { TextDocument } from 'vscode-languageserver-textdocument';
import type { OpenFile, Workspace } from './workspace.js';
import { kindOf } from './workspace.js';

/** Findings come this long after the last key, so that a burst of keys is analysed once... */
const QUIET_MS = 25;
/** ...but no later than this after the first of them, however long the burst. */
const LATEST_MS = 200;

interface Waiting {
  readonly timer: ReturnType<typeof setTimeout>;
  readonly since: number;
}

/** Sends the findings of open files: soon after a change, of the text of that moment, never of an older one. */
export class Publisher {
  private readonly waiting = new Map<string, Waiting>();

  constructor(
    private readonly workspace: Workspace,
    private readonly find: (file: OpenFile) => Diagnostic[],
    private readonly send: (uri: string, version: number, found: Diagnostic[]) => void,
    private readonly clear: (uri: string) => void,
    private readonly log: (what: string, fault: unknown) => void,
  ) {}

  /** A document was opened or its text has changed. */
  changed(document: TextDocument): void {
    this.later(document.uri);
    if (kindOf(document) === 'shop') this.shopsChanged();
  }

  /** A shop file has changed, here or on the disk: every job may have to be seen anew. */
  shopsChanged(): void {
    for (const document of this.workspace.all()) if (kindOf(document) === 'job') this.later(document.uri);
  }

  closed(document: TextDocument): void {
    const waiting = this.waiting.get(document.uri);
    if (waiting !== undefined) clearTimeout(waiting.timer);
    this.waiting.delete(document.uri);
    this.clear(document.uri);
    // What an open shop file said counts no more; what is on the disk does.
    if (kindOf(document) === 'shop') this.shopsChanged();
  }

  private later(uri: string): void {
    const now = performance.now();
    const before = this.waiting.get(uri);
    if (before !== undefined) clearTimeout(before.timer);
    const since = before?.since ?? now;
    const delay = Math.max(0, Math.min(QUIET_MS, since + LATEST_MS - now));
    this.waiting.set(uri, { since, timer: setTimeout(() => this.publish(uri), delay) });
  }

  private publish(uri: string): void {
    this.waiting.delete(uri);
    const document = this.workspace.document(uri);
    if (document === undefined) return;
    try {
      const file = this.workspace.file(uri);
      if (file !== null) this.send(document.uri, document.version, this.find(file));
    } catch (fault) {
      this.log('findings', fault);
    }
  }
}
