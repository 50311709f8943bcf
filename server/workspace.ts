import type { TextDocument } from 'vscode-languageserver-textdocument';
import {
  Engine,
  nearestName,
  type JobAnalysis,
  type ShopAnalysis,
  type ShopReading,
  type Wishes,
} from '../shared-core/service.js';
import type { Files } from './files.js';
import { say } from './messages.js';
import { baseName, isJob, isShop, normalUri, shopUri } from './files.js';
import { offsetOf } from './text.js';

/** A job or shop file that is open, with what is known of its present text. */
export interface OpenJob {
  readonly kind: 'job';
  readonly document: TextDocument;
  readonly analysis: JobAnalysis;
}
export interface OpenShop {
  readonly kind: 'shop';
  readonly document: TextDocument;
  readonly analysis: ShopAnalysis;
}
export type OpenFile = OpenJob | OpenShop;

/** What is known this soon is part of an answer that cannot wait. */
const AT_ONCE_MS = 5;

/**
 * The open documents and the files around them, joined with the engine. What it gives is always of the present text: the
 * engine keeps what did not change, so asking again costs next to nothing.
 */
export class Workspace {
  readonly #engine: Engine;
  readonly #documents = new Map<string, TextDocument>();

  /** The lines that the cursor was seen in last. */
  readonly #cursors = new Map<string, number>();

  readonly #begins: (uri: string) => void;

  /** @param begins is told of a document before it is worked on */
  constructor(
    readonly files: Files,
    begins: (uri: string) => void = () => undefined,
  ) {
    this.#begins = begins;
    this.#engine = new Engine({ readShop: (jobUri, reference) => this.#readShop(jobUri, reference) });
  }

  /** What the reader of all that is told from now on wants. */
  takeWishes(wishes: Wishes): void {
    this.#engine.wishes = wishes;
  }

  open(document: TextDocument): void {
    this.#documents.set(normalUri(document.uri), document);
  }

  close(uri: string): void {
    this.#documents.delete(normalUri(uri));
    this.#cursors.delete(normalUri(uri));
    this.#engine.forget(uri);
  }

  cursorAt(uri: string, line: number): void {
    this.#cursors.set(normalUri(uri), line);
  }

  /** Open documents in the order in which they were opened. */
  all(): readonly TextDocument[] {
    return [...this.#documents.values()];
  }

  document(uri: string): TextDocument | undefined {
    return this.#documents.get(normalUri(uri));
  }

  /** Null where the document is not open, or is neither a job nor a shop file. */
  file(uri: string): OpenFile | null {
    const document = this.document(uri);
    return document === undefined ? null : this.lookAt(document);
  }

  /** A document, be it open or not; whoever looks at one that is not closes it again. */
  lookAt(document: TextDocument): OpenFile | null {
    this.#begins(document.uri);
    switch (kindOf(document)) {
      case 'job':
        return { kind: 'job', document, analysis: this.#engine.analyse(document.uri, document.getText()) };
      case 'shop':
        return { kind: 'shop', document, analysis: this.#engine.analyseShop(document.uri, document.getText()) };
      case null:
        return null;
    }
  }

  job(uri: string): OpenJob | null {
    const file = this.file(uri);
    return file?.kind === 'job' ? file : null;
  }

  /**
   * Works on the present text of a document, around its cursor first, until `file` has little left to do (true) or `enough`
   * says so. At least one carcass is done.
   */
  prepare(uri: string, enough: () => boolean): boolean {
    const document = this.document(uri);
    return document === undefined || this.prepareToLookAt(document, enough);
  }

  /** The same for `lookAt`: the document need not be open. */
  prepareToLookAt(document: TextDocument, enough: () => boolean): boolean {
    if (kindOf(document) !== 'job') return true;
    const { uri } = document;
    this.#begins(uri);
    const near = offsetOf(document, { line: this.#cursors.get(normalUri(uri)) ?? 0, character: 0 });
    return this.#engine.prepare(uri, document.getText(), near, enough);
  }

  /** The document, with all that is known of it or, where that would take long, with the carcass at a line. */
  near(uri: string, line: number): OpenFile | null {
    this.cursorAt(uri, line);
    const document = this.#jobAt(uri);
    if (document === null) return this.file(uri);
    this.#begins(document.uri);
    const at = offsetOf(document, { line, character: 0 });
    return { kind: 'job', document, analysis: this.#engine.near(document.uri, document.getText(), at) };
  }

  /**
   * A file with its set-ups where they are known at once, else what is known without those of hundreds of other carcasses.
   * @param near as `near` gave it
   */
  withSetUps(near: OpenFile): { readonly file: OpenFile; readonly areKnown: boolean } {
    const { kind, document } = near;
    const { uri } = document;
    if (kind === 'shop') return { file: near, areKnown: true };
    if (!this.#engine.isAnalysed(uri, document.getText())) return { file: near, areKnown: false };
    const ready = this.readySetUps(uri);
    return ready === null ? { file: this.soFar(uri) ?? near, areKnown: false } : { file: ready, areKnown: true };
  }

  /** A file with its set-ups where they are known at once; null where that takes longer, or it is not open. */
  readySetUps(uri: string): OpenFile | null {
    if (!this.prepare(uri, () => true)) return null;
    const file = this.file(uri);
    if (file?.kind !== 'job') return file;
    const start = performance.now();
    return file.analysis.sortSetUps(() => performance.now() - start > AT_ONCE_MS) ? file : null;
  }

  /** What is known of a job that is being prepared, to be told meanwhile. */
  soFar(uri: string): OpenJob | null {
    const document = this.#jobAt(uri);
    return document && { kind: 'job', document, analysis: this.#engine.soFar(document.uri, document.getText()) };
  }

  #jobAt(uri: string): TextDocument | null {
    const document = this.document(uri);
    return document !== undefined && kindOf(document) === 'job' ? document : null;
  }

  #readShop(jobUri: string, reference: string): ShopReading {
    const uri = shopUri(jobUri, reference);
    if (uri === null && /^untitled:/i.test(jobUri) && isShop(reference)) {
      return { ok: false, message: say.notSaved({ reference }) };
    }
    const meant = (): { readonly instead?: string } => {
      const beside = this.files.beside(jobUri).map(baseName).filter(isShop);
      const near = nearestName(reference, beside) ?? nearestName(`${reference}.shop.yaml`, beside);
      return near === null ? {} : { instead: near };
    };
    if (uri === null) return { ok: false, message: say.noShopFile({ reference }), ...meant() };
    const open = this.document(uri);
    if (open !== undefined) return { ok: true, uri: open.uri, text: open.getText() };
    const reading = this.files.read(uri);
    if (reading.ok) return { ok: true, uri, text: reading.text };
    return { ok: false, message: say.unreadable({ reference, fault: reading.fault }), ...meant() };
  }
}

/** By the language that the editor gave it, else by its name. */
export function kindOf(document: TextDocument): 'job' | 'shop' | null {
  if (document.languageId === 'borewright-job') return 'job';
  if (document.languageId === 'borewright-shop') return 'shop';
  const name = baseName(document.uri);
  return isJob(name) ? 'job' : isShop(name) ? 'shop' : null;
}
