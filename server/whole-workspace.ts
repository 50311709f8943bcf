import type { Diagnostic } from 'vscode-languageserver';
import type { Log } from './answers.js';
import { completed, preparedToLookAt } from './completing.js';
import { nextTurn } from './next-turn.js';
import { normalUri } from './files.js';
import type { NamedFile, Names } from './names.js';
import type { OpenFile, Workspace } from './workspace.js';

/** A pass begins when changes have rested so long. */
const REST_MS = 300;
/** A pass over fewer files is over before anybody could read how far it has come. */
const FEWEST_TO_SHOW = 5;

/** How far a pass has come, for the reader. */
export interface Progress {
  readonly report: (done: number, of: number) => void;
  readonly done: () => void;
}

/** What it is told to the client with. */
export interface Teller {
  readonly find: (file: OpenFile) => Diagnostic[];
  readonly send: (uri: string, found: Diagnostic[]) => void;
  readonly progress: () => Promise<Progress>;
}

/**
 * Finds what is wrong in the job and shop files of the folders that are not open, while it is turned on. Works in slices, so
 * that what is typed meanwhile is not kept waiting; a change of any file begins a new pass.
 */
export class WholeWorkspace {
  #isOn = false;
  #pass = 0;
  #timer: ReturnType<typeof setTimeout> | undefined;
  /** What was sent last of each file, as text. */
  readonly #sent = new Map<string, string>();
  /** Files that the server once did not come to an end with. */
  readonly #leftOut = new Set<string>();

  readonly #workspace: Workspace;
  readonly #names: Names;
  readonly #teller: Teller;
  readonly #log: Log;

  constructor(workspace: Workspace, names: Names, teller: Teller, log: Log) {
    this.#workspace = workspace;
    this.#names = names;
    this.#teller = teller;
    this.#log = log;
  }

  turn(isOn: boolean): void {
    if (isOn === this.#isOn) return;
    this.#isOn = isOn;
    if (isOn) {
      this.soon();
      return;
    }
    this.#pass += 1;
    clearTimeout(this.#timer);
    for (const uri of this.#sent.keys()) this.#teller.send(uri, []);
    this.#sent.clear();
  }

  /** Something has changed: all is looked at again when changes rest. */
  soon(): void {
    if (!this.#isOn) return;
    this.#pass += 1;
    const pass = this.#pass;
    clearTimeout(this.#timer);
    this.#timer = setTimeout(() => {
      this.#go(pass).catch((fault: unknown) => this.#log('findings of the workspace', fault));
    }, REST_MS);
  }

  /** A document is opened or closed: what was sent of the file counts no more. */
  forget(uri: string): void {
    this.#sent.delete(normalUri(uri));
    this.#leftOut.delete(normalUri(uri));
    this.soon();
  }

  /** The server did not come to an end with a file: it is not tried again until it is opened. */
  leaveOut(uri: string): void {
    this.#leftOut.add(normalUri(uri));
  }

  /** The files that are not open, in the order of their paths. */
  closed(): readonly NamedFile[] {
    return this.#names
      .files()
      .filter(({ uri }) => this.#workspace.document(uri) === undefined && !this.#leftOut.has(uri));
  }

  /** What is wrong in a file that is not open; null where it was opened, or `goesOn` says that nobody wants to know any more. */
  async foundIn({ document }: NamedFile, goesOn: () => boolean): Promise<Diagnostic[] | null> {
    const isClosed = (): boolean => this.#workspace.document(document.uri) === undefined;
    const isWanted = (): boolean => isClosed() && goesOn();
    try {
      if (!(await preparedToLookAt(this.#workspace, document, isWanted))) return null;
      const file = this.#workspace.lookAt(document);
      if (file?.kind === 'job' && !(await completed(file.analysis, isWanted))) return null;
      return file === null ? [] : this.#teller.find(file);
    } finally {
      if (isClosed()) this.#workspace.close(document.uri);
    }
  }

  async #go(pass: number): Promise<void> {
    const goesOn = (): boolean => pass === this.#pass;
    const files = this.closed();
    const progress = files.length < FEWEST_TO_SHOW ? null : await this.#teller.progress();
    try {
      for (const [index, file] of files.entries()) {
        progress?.report(index, files.length);
        await nextTurn();
        const found = goesOn() ? await this.foundIn(file, goesOn) : null;
        if (found === null || !goesOn()) return;
        this.#tell(file, found);
      }
      const known = new Set(files.map(({ uri }) => uri));
      for (const uri of [...this.#sent.keys()].filter((one) => !known.has(one))) {
        this.#sent.delete(uri);
        if (this.#workspace.document(uri) === undefined) this.#teller.send(uri, []);
      }
    } finally {
      progress?.done();
    }
  }

  #tell({ uri, document }: NamedFile, found: Diagnostic[]): void {
    const now = JSON.stringify(found);
    const before = this.#sent.get(uri) ?? '[]';
    this.#sent.set(uri, now);
    if (now !== before) this.#teller.send(document.uri, found);
  }
}
