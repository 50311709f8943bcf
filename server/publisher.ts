import type { Diagnostic } from 'vscode-languageserver';
import type { TextDocument } from 'vscode-languageserver-textdocument';
import type { JobAnalysis } from '../shared-core/engine.js';
import type { OpenFile, Workspace } from './workspace.js';
import { kindOf } from './workspace.js';

/** Findings come this long after the last key, so that a burst of keys is analysed once... */
const QUIET_MS = 25;
/** ...but no later than this after the first of them, however long the burst. */
const LATEST_MS = 200;

/** What slow rules say goes out with the rest where it is known this soon; else later, worked out a slice at a time. */
const FIRST_MS = 80;
const SLICE_MS = 30;
/** The slices begin when the keys have rested. */
const REST_MS = 120;

interface Waiting {
  readonly timer: ReturnType<typeof setTimeout>;
  readonly since: number;
}

export interface Sent {
  readonly uri: string;
  readonly version: number;
  readonly found: Diagnostic[];
  /** False where slow rules have not said all yet: the findings of this version are sent again then. */
  readonly complete: boolean;
}

/** Sends the findings of open files: soon after a change, of the text of that moment, never of an older one. */
export class Publisher {
  private readonly waiting = new Map<string, Waiting>();

  constructor(
    private readonly workspace: Workspace,
    private readonly find: (file: OpenFile) => Diagnostic[],
    private readonly send: (sent: Sent) => void,
    private readonly clear: (uri: string) => void,
    private readonly log: (what: string, fault: unknown) => void,
  ) {}

  /** A document was opened or its text has changed. */
  changed(document: TextDocument): void {
    this.soon(document.uri);
    if (kindOf(document) === 'shop') this.shopsChanged();
  }

  /** A shop file has changed, here or on the disk: every job may have to be seen anew. */
  shopsChanged(): void {
    for (const document of this.workspace.all()) if (kindOf(document) === 'job') this.soon(document.uri);
  }

  closed(document: TextDocument): void {
    this.stop(document.uri);
    this.clear(document.uri);
    // What an open shop file said counts no more; what is on the disk does.
    if (kindOf(document) === 'shop') this.shopsChanged();
  }

  private stop(uri: string): void {
    const waiting = this.waiting.get(uri);
    if (waiting !== undefined) clearTimeout(waiting.timer);
    this.waiting.delete(uri);
  }

  private soon(uri: string): void {
    const now = performance.now();
    const since = Math.min(this.waiting.get(uri)?.since ?? now, now);
    this.later(uri, Math.max(0, Math.min(QUIET_MS, since + LATEST_MS - now)), since, () => this.publish(uri));
  }

  private later(uri: string, delay: number, since: number, work: () => void): void {
    this.stop(uri);
    const timer = setTimeout(() => {
      this.waiting.delete(uri);
      try {
        work();
      } catch (fault) {
        this.log('findings', fault);
      }
    }, delay);
    this.waiting.set(uri, { since, timer });
  }

  private publish(uri: string): void {
    const file = this.workspace.file(uri);
    if (file === null) return;
    const complete = file.kind === 'shop' || within(file.analysis, FIRST_MS);
    this.send({ uri: file.document.uri, version: file.document.version, found: this.find(file), complete });
    if (!complete) this.goOn(uri, REST_MS);
  }

  /** Works out a slice more; a change of the text takes the place of what is waiting here. */
  private goOn(uri: string, delay: number): void {
    this.later(uri, delay, Number.POSITIVE_INFINITY, () => {
      const file = this.workspace.job(uri);
      if (file === null) return;
      if (!within(file.analysis, SLICE_MS)) {
        this.goOn(uri, 0);
        return;
      }
      const { uri: own, version } = file.document;
      this.send({ uri: own, version, found: this.find(file), complete: true });
    });
  }
}

function within(analysis: JobAnalysis, milliseconds: number): boolean {
  const start = performance.now();
  return analysis.complete(() => performance.now() - start > milliseconds);
}
