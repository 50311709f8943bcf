import type { Diagnostic } from 'vscode-languageserver';
import type { TextDocument } from 'vscode-languageserver-textdocument';
import { completedInSlice, preparedInSlice } from './completing.js';
import { normalUri } from './files.js';
import { atNextTurn } from './next-turn.js';
import type { OpenFile, Workspace } from './workspace.js';
import { kindOf } from './workspace.js';
import { identityOf, matterOf, toldAlready, withoutUnfinished, type Lines, type WhileWriting } from './writing.js';

/**
 * Findings come this long after the last key: a burst of keys is analysed once, and the drawing of a key, which is asked for at
 * once, is on its way before them...
 */
const QUIET_MS = 50;
/** ...but no later than this after the first of them, however long the burst. */
const LATEST_MS = 200;
/** So long the window of who is sent a drawing is busy with painting it; what it is told of findings would hold that up. */
const PAINTING_MS = 60;

/** What slow rules say goes out with the rest where it is known this soon; else later. */
const FIRST_MS = 80;
/** What takes longer goes on when the keys have rested. */
const REST_MS = 120;
/** What is known of a text that takes long to prepare is told again when it has taken so many times as long. */
const AGAIN_AFTER = 3;
/** What the line under the cursor says comes out when the cursor leaves it, or typing has rested so long. */
const UNFINISHED_MS = 1000;

/** What a client may tell: the cursor has come to this line, of this document. */
export interface CursorParams {
  readonly uri: string;
  readonly line: number;
}

interface Writing {
  readonly lines: Lines;
  readonly timer: ReturnType<typeof setTimeout>;
}

/** When and how what is known of a text is told before all of it is. */
interface Telling {
  readonly since: number;
  /** So long after that it is due. */
  readonly after: number;
  /** So long what takes longer waits for keys that may follow. */
  readonly rest: number;
  /** Whether all but what slow rules say was told. */
  readonly isPrepared: boolean;
}

/** Findings as they were told, by how they are told apart. */
interface Shown {
  readonly told: ReadonlySet<string>;
  /** What followed elsewhere from the lines in the making, and waits. */
  readonly following: readonly string[];
  /** False where something waits. */
  readonly isAll: boolean;
}

interface Waiting {
  readonly callOff: () => void;
  readonly since: number;
}

/** What a reader is told of a file at a glance. */
export interface AboutFile {
  readonly unit: 'mm' | 'in';
  /** The shop file of a job; null where the built-in shop stands in, and for a shop file. */
  readonly shop: string | null;
}

export interface Sent {
  readonly uri: string;
  readonly version: number;
  readonly found: Diagnostic[];
  readonly about: AboutFile;
  /**
   * False where slow rules have not said all yet, or what is being written is held back: the findings of this version are sent
   * again then.
   */
  readonly complete: boolean;
}

/** Sends the findings of open files: soon after a change, of the text of that moment, never of an older one. */
export class Publisher {
  readonly #waiting = new Map<string, Waiting>();
  /** The lines in the making of documents that are being typed in. */
  readonly #writing = new Map<string, Writing>();
  /** When the last drawing of a document went out. */
  readonly #drawn = new Map<string, number>();
  /** What was told last. */
  readonly #shown = new Map<string, Shown>();

  readonly #workspace: Workspace;
  readonly #find: (file: OpenFile) => Diagnostic[];
  readonly #send: (sent: Sent) => void;
  readonly #clear: (uri: string) => void;
  readonly #log: (what: string, fault: unknown) => void;

  constructor(
    workspace: Workspace,
    find: (file: OpenFile) => Diagnostic[],
    send: (sent: Sent) => void,
    clear: (uri: string) => void,
    log: (what: string, fault: unknown) => void,
  ) {
    this.#workspace = workspace;
    this.#find = find;
    this.#send = send;
    this.#clear = clear;
    this.#log = log;
  }

  /** A document is being changed, in these lines; null for a change that nobody types. */
  edited(uri: string, lines: Lines | null): void {
    const before = this.#writing.get(uri)?.lines;
    this.#finished(uri);
    if (lines === null) return;
    if (before?.first !== lines.first) this.#letGo(uri);
    const timer = setTimeout(() => this.#release(uri), UNFINISHED_MS);
    this.#writing.set(uri, { lines, timer });
  }

  /** What an earlier line has brought, there and in the jobs of a shop file, is not of the next one. */
  #letGo(uri: string): void {
    const document = this.#workspace.document(uri);
    const isShop = document !== undefined && kindOf(document) === 'shop';
    for (const [of, shown] of this.#shown) {
      if (of !== uri && !(isShop && !this.#writing.has(of))) continue;
      this.#shown.set(of, { ...shown, told: new Set([...shown.told, ...shown.following]) });
    }
  }

  /** The cursor has moved: whatever it has left is finished. */
  cursorAt({ uri, line }: CursorParams): void {
    this.#workspace.cursorAt(uri, line);
    for (const [of, { lines }] of this.#writing)
      if (of !== uri || line < lines.first || line > lines.last) this.#release(of);
  }

  #release(uri: string): void {
    this.#finished(uri);
    // Those of its jobs wait with a shop file.
    for (const [of, { isAll }] of this.#shown) if (!isAll && !this.#writing.has(of)) this.#soon(of);
  }

  #finished(uri: string): void {
    clearTimeout(this.#writing.get(uri)?.timer);
    this.#writing.delete(uri);
  }

  /** A drawing of a document goes out to its reader. */
  drawn(uri: string): void {
    this.#drawn.set(normalUri(uri), performance.now());
  }

  /** A document was opened or its text has changed. */
  changed(document: TextDocument): void {
    this.#soon(document.uri);
    if (kindOf(document) === 'shop') this.shopsChanged();
  }

  /** A shop file has changed, here or on the disk: every job may have to be seen anew. */
  shopsChanged(): void {
    for (const document of this.#workspace.all()) if (kindOf(document) === 'job') this.#soon(document.uri);
  }

  /** The reader wants other findings told, or told otherwise. */
  wantsDiffer(): void {
    for (const document of this.#workspace.all()) this.#soon(document.uri);
  }

  closed(document: TextDocument): void {
    this.#stop(document.uri);
    this.#finished(document.uri);
    this.#shown.delete(document.uri);
    this.#drawn.delete(normalUri(document.uri));
    this.#clear(document.uri);
    // What an open shop file said counts no more; what is on the disk does.
    if (kindOf(document) === 'shop') this.shopsChanged();
  }

  #stop(uri: string): void {
    this.#waiting.get(uri)?.callOff();
    this.#waiting.delete(uri);
  }

  #soon(uri: string): void {
    const now = performance.now();
    const since = Math.min(this.#waiting.get(uri)?.since ?? now, now);
    // Of what was just opened nobody has read anything yet, so nobody types in it.
    const isTyped = this.#shown.has(uri);
    const quiet = isTyped ? Math.max(0, Math.min(QUIET_MS, since + LATEST_MS - now)) : 0;
    this.#later(uri, quiet, since, () => this.#begin(uri, since, isTyped ? REST_MS : 0));
  }

  #begin(uri: string, since: number, rest: number): void {
    const now = performance.now();
    const painted = Math.min((this.#drawn.get(normalUri(uri)) ?? 0) + PAINTING_MS, since + LATEST_MS);
    this.#later(uri, Math.max(0, painted - now), since, () =>
      this.#workOn(uri, { since: performance.now(), after: FIRST_MS, rest, isPrepared: false }),
    );
  }

  #later(uri: string, delay: number, since: number, work: () => void): void {
    this.#stop(uri);
    const worked = (): void => {
      this.#waiting.delete(uri);
      try {
        work();
      } catch (fault) {
        this.#log('findings', fault);
      }
    };
    this.#waiting.set(uri, { since, callOff: delay > 0 ? timed(worked, delay) : atNextTurn(worked) });
  }

  /** Works on a text for a slice at a time, and tells what is known when that is due; a change takes the place of what waits. */
  #workOn(uri: string, telling: Telling): void {
    const goOn = (next: Telling, delay = 0): void =>
      this.#later(uri, delay, Number.POSITIVE_INFINITY, () => this.#workOn(uri, next));
    const isTime = (): boolean => performance.now() - telling.since > telling.after;
    if (!preparedInSlice(this.#workspace, uri)) {
      const isDue = isTime();
      if (isDue) this.#showSoFar(uri);
      // Who has not typed for so long is not waited for.
      goOn(isDue ? { ...telling, after: AGAIN_AFTER * telling.after, rest: 0 } : telling);
      return;
    }
    const file = this.#workspace.file(uri);
    if (file === null) return;
    if (file.kind === 'shop' || completedInSlice(file.analysis)) this.#show(file, true);
    else if (telling.isPrepared || !isTime()) goOn(telling);
    else {
      this.#show(file, false);
      goOn({ ...telling, isPrepared: true }, telling.rest);
    }
  }

  #showSoFar(uri: string): void {
    const file = this.#workspace.soFar(uri);
    if (file !== null) this.#show(file, false);
  }

  /** Without what follows from lines in the making, of the file itself or of the shop file of a job. */
  #finishedOf(file: OpenFile, found: Diagnostic[]): WhileWriting {
    const { uri } = file.document;
    const told = this.#shown.get(uri)?.told ?? new Set();
    const lines = this.#writing.get(uri)?.lines;
    if (lines !== undefined) return withoutUnfinished(found, lines, file, told);
    const shop = file.kind === 'job' ? file.analysis.used.uri : null;
    const isShopWritten = shop !== null && this.#shown.has(uri) && this.#writing.has(shop);
    return isShopWritten ? toldAlready(found, told) : { shown: found, following: [] };
  }

  #show(file: OpenFile, isAll: boolean): void {
    const { uri, version } = file.document;
    const found = this.#find(file);
    const { shown, following } = this.#finishedOf(file, found);
    const isAllShown = shown.length === found.length;
    this.#shown.set(uri, {
      told: new Set(shown.flatMap((one) => [identityOf(one), matterOf(one)])),
      following: following.map(identityOf),
      isAll: isAllShown,
    });
    this.#send({ uri, version, found: shown, about: aboutOf(file), complete: isAll && isAllShown });
  }
}

function timed(work: () => void, delay: number): () => void {
  const timer = setTimeout(work, delay);
  return () => clearTimeout(timer);
}

function aboutOf(file: OpenFile): AboutFile {
  if (file.kind === 'shop') return { unit: file.analysis.shop.unit, shop: null };
  return { unit: file.analysis.unit, shop: file.analysis.used.uri };
}
