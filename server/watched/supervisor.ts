import type { Worker } from 'node:worker_threads';
import {
  DiagnosticSeverity,
  ErrorCodes,
  LSPErrorCodes,
  type InitializeParams,
  type Message,
  type MessageReader,
  type MessageWriter,
  type NotificationMessage,
  type PublishDiagnosticsParams,
  type RequestMessage,
  type ResponseMessage,
} from 'vscode-languageserver/node';
import { languageOf } from '../../shared-core/words/language.js';
import { tell } from '../../shared-core/words/message.js';
import { speak } from '../../shared-core/words/spoken.js';
import { say } from '../messages.js';
import { FAULT, toldFault, type ToldFault } from '../told-fault.js';
import { wordsBeside } from '../words-beside.js';
import { LifeCycle } from './life-cycle.js';
import { OpenProgress } from './open-progress.js';
import { opening, OpenTexts } from './open-texts.js';
import { isReport } from './report.js';

/** How long is waited, in milliseconds. */
export interface Patience {
  /** For a sign of life of the thread, before it is ended and another takes its place. */
  readonly stuck: number;
  /** For the thread's answer to `shutdown`, before the client gets one all the same. */
  readonly shutdown: number;
}

/** So often it is looked, in that time, whether anything was heard. */
const LOOKS = 8;

/** So many threads in a row that end by themselves are a fault that another thread does not mend. */
const MOST_ENDS = 5;

/** To the thread: a file that it is not to look at unless it is opened. */
const LEAVE_OUT = 'borewright/leaveOut';

type Id = RequestMessage['id'];

/**
 * Stands between a client and the language server, which works in a thread: passes messages on, and where the thread gives no
 * sign of life puts another in its place. The document that it was at work on is set aside with a finding until it is edited;
 * all others go on. So one text can never keep the server from answering, nor from ending.
 */
export class Supervisor {
  readonly #texts = new OpenTexts();
  readonly #progress = new OpenProgress();
  /** Documents that no thread is told of. */
  readonly #aside = new Set<string>();
  /** Files that are not open and that no thread came to an end with: each new thread is told to leave them. */
  readonly #leftOut = new Set<string>();
  /** Requests of the client that a thread has not answered yet. */
  readonly #asked = new Map<Id, string>();
  #thread: Worker;
  #generation = 0;
  #ends = 0;
  /** How often nothing was heard since the look before: a clock goes on while a computer sleeps, and this does not. */
  #silent = 0;
  #atWork: string | null = null;
  #initialize: RequestMessage | null = null;
  #isInitialized = false;
  readonly #life = new LifeCycle();
  #isLeft = false;
  readonly #watch: ReturnType<typeof setInterval>;

  readonly #writer: MessageWriter;
  readonly #start: () => Worker;
  readonly #patience: Patience;
  readonly #end: (code: number) => void;

  /** @param end leaves the process */
  constructor(
    reader: MessageReader,
    writer: MessageWriter,
    start: () => Worker,
    patience: Patience,
    end: (code: number) => void,
  ) {
    this.#writer = writer;
    this.#start = start;
    this.#patience = patience;
    this.#end = end;
    this.#thread = this.#started();
    reader.listen((message) => this.#fromClient(message));
    reader.onClose(() => this.#leave(this.#life.isEnding ? 0 : 1));
    this.#watch = setInterval(() => this.#look(), Math.max(20, patience.stuck / LOOKS));
  }

  #started(): Worker {
    const thread = this.#start();
    this.#silent = 0;
    this.#atWork = null;
    thread.on('message', (message: unknown) => {
      if (thread === this.#thread) this.#fromThread(message);
    });
    thread.on('error', (fault: unknown) => this.#tellFault(toldFault('ended', fault)));
    thread.on('exit', () => {
      if (thread === this.#thread) this.#lost();
    });
    return thread;
  }

  #fromClient(message: Message): void {
    if (isRequest(message)) {
      const refusal = this.#life.refusal(message);
      if (refusal !== null) {
        void this.#writer.write(refusal);
        return;
      }
      if (message.method === 'initialize') {
        this.#initialize = message;
        speak(wordsBeside(languageOf((message.params as Partial<InitializeParams> | undefined)?.locale)));
      }
      if (message.method === 'shutdown') setTimeout(() => this.#answerFor(message.id), this.#patience.shutdown);
      this.#asked.set(message.id, message.method);
    } else if (isNotification(message)) {
      if (!this.#life.hears(message)) return;
      if (message.method === 'exit') {
        this.#leave(this.#life.isEnding ? 0 : 1);
        return;
      }
      if (message.method === 'initialized') this.#isInitialized = true;
      const uri = this.#texts.heard(message);
      if (uri !== null && this.#aside.has(uri)) {
        this.#takeBack(uri);
        return;
      }
    } else if (isResponse(message)) {
      const own = ownId(message.id, this.#generation);
      // An answer that a thread asked for which is gone.
      if (own === null) return;
      this.#thread.postMessage({ ...message, id: own });
      return;
    }
    this.#thread.postMessage(message);
  }

  /** The document has another text, which may do; a closed one is told of no more. */
  #takeBack(uri: string): void {
    this.#aside.delete(uri);
    const document = this.#texts.get(uri);
    if (document === undefined) void this.#writer.write(diagnosticsOf(uri, undefined, []));
    else this.#thread.postMessage(opening(document));
  }

  #fromThread(message: unknown): void {
    this.#silent = 0;
    if (isReport(message)) {
      this.#atWork = message.watch === 'begins' ? message.uri : null;
      return;
    }
    const spoken = message as Message;
    if (isResponse(spoken)) {
      // The answer to an `initialize` that was said again, or to what was answered in its place.
      if (spoken.id === null || !this.#asked.delete(spoken.id)) return;
      this.#ends = 0;
      void this.#writer.write(spoken);
    } else if (isRequest(spoken)) {
      void this.#writer.write({ ...spoken, id: `${this.#generation}:${String(spoken.id)}` } as RequestMessage);
    } else {
      if (isNotification(spoken)) this.#progress.told(spoken);
      void this.#writer.write(spoken);
    }
  }

  #look(): void {
    this.#silent += 1;
    if (this.#silent < LOOKS) return;
    this.#tellFault(toldFault('stuck', null));
    this.#replace(this.#atWork);
  }

  /** The thread has ended by itself: out of memory, or by a fault of ours. */
  #lost(): void {
    this.#ends += 1;
    if (this.#life.isEnding || this.#isLeft) return;
    if (this.#ends > MOST_ENDS) this.#leave(1);
    else this.#replace(this.#atWork);
  }

  /** For a report that the owner may send. */
  #tellFault(fault: ToldFault): void {
    if (this.#isInitialized)
      void this.#writer.write({ jsonrpc: '2.0', method: FAULT, params: fault } as NotificationMessage);
  }

  #replace(blamed: string | null): void {
    const old = this.#thread;
    this.#generation += 1;
    this.#thread = this.#started();
    void old.terminate();
    for (const end of this.#progress.ends()) void this.#writer.write(end);
    for (const [id, method] of this.#asked) {
      if (method !== 'shutdown') this.#refuse(id);
    }
    if (this.#initialize !== null) this.#thread.postMessage(this.#initialize);
    if (this.#isInitialized) this.#thread.postMessage({ jsonrpc: '2.0', method: 'initialized', params: {} });
    const document = blamed === null ? undefined : this.#texts.get(blamed);
    if (document !== undefined) {
      this.#aside.add(document.uri);
      void this.#writer.write(stopped(document.uri, document.version, this.#patience.stuck));
    } else if (blamed !== null) {
      this.#leftOut.add(blamed);
      void this.#writer.write(stopped(blamed, undefined, this.#patience.stuck));
    }
    for (const uri of this.#leftOut) this.#thread.postMessage({ jsonrpc: '2.0', method: LEAVE_OUT, params: { uri } });
    for (const one of this.#texts.all()) if (!this.#aside.has(one.uri)) this.#thread.postMessage(opening(one));
  }

  #refuse(id: Id): void {
    this.#asked.delete(id);
    const isFirst = id !== null && this.#initialize?.id === id;
    const code = isFirst ? ErrorCodes.InternalError : LSPErrorCodes.ServerCancelled;
    const message = tell(say.startedAnew(), 'mm');
    void this.#writer.write({ jsonrpc: '2.0', id, error: { code, message } } as ResponseMessage);
  }

  /** The client asked to shut down: it gets its answer, whatever the thread does. */
  #answerFor(id: Id): void {
    if (!this.#asked.delete(id)) return;
    void this.#writer.write({ jsonrpc: '2.0', id, result: null } as ResponseMessage);
  }

  #leave(code: number): void {
    clearInterval(this.#watch);
    this.#isLeft = true;
    void this.#thread.terminate();
    this.#end(code);
  }
}

/** The finding in the place of all others of a document that was set aside. */
function stopped(uri: string, version: number | undefined, milliseconds: number): NotificationMessage {
  const seconds = Math.max(1, Math.round(milliseconds / 1000));
  return diagnosticsOf(uri, version, [
    {
      range: { start: { line: 0, character: 0 }, end: { line: 0, character: 1 } },
      severity: DiagnosticSeverity.Error,
      source: 'borewright',
      code: ANALYSIS_STOPPED,
      message: tell(say.stopped({ seconds }), 'mm'),
    },
  ]);
}

/** See the rule of this name in `findings/reading-rules.ts`. */
const ANALYSIS_STOPPED = 'analysis-stopped';

function diagnosticsOf(
  uri: string,
  version: number | undefined,
  diagnostics: PublishDiagnosticsParams['diagnostics'],
): NotificationMessage {
  const params: PublishDiagnosticsParams = { uri, diagnostics, ...(version !== undefined && { version }) };
  return { jsonrpc: '2.0', method: 'textDocument/publishDiagnostics', params };
}

/** The id that the thread knows a request of its own by; null where another thread asked. */
function ownId(id: ResponseMessage['id'], generation: number): number | string | null {
  const [, asker, own] = /^(\d+):(.*)$/s.exec(String(id)) ?? [];
  if (own === undefined || Number(asker) !== generation) return null;
  return /^\d+$/.test(own) ? Number(own) : own;
}

const isRequest = (message: Message): message is RequestMessage => 'method' in message && 'id' in message;
const isNotification = (message: Message): message is NotificationMessage => 'method' in message && !('id' in message);
const isResponse = (message: Message): message is ResponseMessage => !('method' in message) && 'id' in message;
