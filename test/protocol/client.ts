import type { ChildProcessByStdio } from 'node:child_process';
import { spawn } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import type { Readable, Writable } from 'node:stream';
import { pathToFileURL } from 'node:url';
import type { MessageConnection } from 'vscode-jsonrpc/node';
import { createMessageConnection, StreamMessageReader, StreamMessageWriter } from 'vscode-jsonrpc/node';
import type {
  CodeAction,
  CompletionList,
  Diagnostic,
  DocumentSymbol,
  Hover,
  InitializeResult,
  MarkupContent,
  Position,
  PublishDiagnosticsParams,
  Range,
  TextDocumentContentChangeEvent,
  TextEdit,
  WorkspaceEdit,
} from 'vscode-languageserver-protocol';
import { TextDocument } from 'vscode-languageserver-textdocument';
import type { PictureMethod, PictureParams, PictureReply } from '../../shared-core/drawing/messages/picture.js';
import type { DrawingMethod, DrawingParams, DrawingReply } from '../../shared-core/drawing/messages/drawing.js';

export const root = resolve(import.meta.dirname, '..', '..');
const SERVER = join(root, 'dist', 'server', 'server.cjs');
const ANSWER_LIMIT_MS = 30_000;
const DRAWING: DrawingMethod = 'borewright/drawing';
const PICTURE: PictureMethod = 'borewright/picture';

export const demo = (file: string): string => readFileSync(join(root, 'test', 'fixtures', file), 'utf8');

/** A folder of files that the server can read, taken away at the end. */
export class Folder {
  readonly path = mkdtempSync(join(tmpdir(), 'borewright-protocol-'));

  write(name: string, text: string): string {
    writeFileSync(join(this.path, name), text);
    return this.uri(name);
  }

  remove(name: string): void {
    rmSync(join(this.path, name));
  }

  uri(name: string): string {
    return pathToFileURL(join(this.path, name)).href;
  }

  close(): void {
    rmSync(this.path, { recursive: true, force: true });
  }
}

const namedFolders = (folders: readonly string[] | null): object =>
  folders === null ? {} : { workspaceFolders: folders.map((uri) => ({ uri, name: uri })) };

interface Changed {
  readonly uri: string;
  readonly version: number;
  readonly complete: boolean;
}

/** A process, as far as a client asks. */
export type Launched = Pick<
  ChildProcessByStdio<Writable, Readable, null>,
  'pid' | 'stdin' | 'stdout' | 'once' | 'kill'
>;

/** An editor in small: the built server on the other end of two pipes, and the documents that it was told of. */
export class Client {
  readonly diagnostics = new Map<string, PublishDiagnosticsParams>();
  readonly changed: Changed[] = [];
  readonly errors: string[] = [];
  capabilities: InitializeResult['capabilities'] = {};
  readonly #documents = new Map<string, TextDocument>();
  #waiting: (() => void)[] = [];

  /** Starts what is to be spoken to; a run that needs the server's own modules puts another in its place. */
  static launch: (command: readonly string[]) => Launched = (command) => {
    if (!existsSync(SERVER)) throw new Error(`${SERVER} is missing: npm run build`);
    return spawn(process.execPath, command, { stdio: ['pipe', 'pipe', 'inherit'] });
  };

  private constructor(
    readonly process: Launched,
    readonly connection: MessageConnection,
  ) {}

  static async start(
    capabilities: object = CAPABILITIES,
    initializationOptions?: unknown,
    command: readonly string[] = [SERVER, '--stdio'],
    folders: readonly string[] | string | null = null,
    answers: (connection: MessageConnection) => void = () => undefined,
    locale?: string,
  ): Promise<Client> {
    const child = Client.launch(command);
    const connection = createMessageConnection(
      new StreamMessageReader(child.stdout),
      new StreamMessageWriter(child.stdin),
    );
    const client = new Client(child, connection);
    connection.onNotification('textDocument/publishDiagnostics', (params: PublishDiagnosticsParams) => {
      client.diagnostics.set(params.uri, params);
      client.#wake();
    });
    connection.onNotification('borewright/changed', (params: Changed) => {
      client.changed.push(params);
      client.#wake();
    });
    connection.onNotification('window/logMessage', ({ type, message }: { type: number; message: string }) => {
      if (type === 1) client.errors.push(message);
    });
    connection.onRequest('client/registerCapability', () => null);
    answers(connection);
    connection.listen();
    const result = await connection.sendRequest<InitializeResult>('initialize', {
      processId: process.pid,
      // An older client names one folder alone.
      ...(typeof folders === 'string' ? { rootUri: folders } : { rootUri: null, ...namedFolders(folders) }),
      capabilities,
      initializationOptions,
      ...(locale !== undefined && { locale }),
    });
    client.capabilities = result.capabilities;
    await connection.sendNotification('initialized', {});
    return client;
  }

  async stop(): Promise<number | null> {
    await this.connection.sendRequest('shutdown');
    const gone = new Promise<number | null>((done) => this.process.once('exit', done));
    await this.connection.sendNotification('exit');
    const code = await gone;
    this.connection.dispose();
    return code;
  }

  text(uri: string): string {
    return this.#documents.get(uri)!.getText();
  }

  /** Opens a document, or gives an open one a new text as a whole, and waits for its findings. */
  async open(uri: string, text: string, languageId = 'borewright-job'): Promise<Diagnostic[]> {
    const before = this.#documents.get(uri);
    if (before !== undefined) return this.change(uri, [{ text }]);
    await this.opened(uri, text, languageId);
    return this.findings(uri);
  }

  /** Opens a document, and waits for nothing. */
  async opened(uri: string, text: string, languageId = 'borewright-job'): Promise<void> {
    this.#documents.set(uri, TextDocument.create(uri, languageId, 1, text));
    await this.connection.sendNotification('textDocument/didOpen', {
      textDocument: { uri, languageId, version: 1, text },
    });
  }

  async change(uri: string, contentChanges: TextDocumentContentChangeEvent[]): Promise<Diagnostic[]> {
    await this.type(uri, contentChanges);
    return this.findings(uri);
  }

  /** Sends a change without waiting for anything. */
  async type(uri: string, contentChanges: TextDocumentContentChangeEvent[]): Promise<void> {
    const before = this.#documents.get(uri)!;
    const version = before.version + 1;
    // Made anew each time, so that nothing of the small changes' bookkeeping is shared with the server.
    const { languageId } = before;
    let text = before.getText();
    for (const change of contentChanges) {
      const document = TextDocument.create(uri, languageId, version, text);
      text =
        'range' in change
          ? text.slice(0, document.offsetAt(change.range.start)) +
            change.text +
            text.slice(document.offsetAt(change.range.end))
          : change.text;
    }
    this.#documents.set(uri, TextDocument.create(uri, languageId, version, text));
    await this.connection.sendNotification('textDocument/didChange', {
      textDocument: { uri, version },
      contentChanges,
    });
  }

  async close(uri: string): Promise<void> {
    this.#documents.delete(uri);
    this.diagnostics.delete(uri);
    this.changed.splice(0, this.changed.length, ...this.changed.filter((one) => one.uri !== uri));
    await this.connection.sendNotification('textDocument/didClose', { textDocument: { uri } });
  }

  /** All findings of the version that was sent last. */
  async findings(uri: string): Promise<Diagnostic[]> {
    const version = this.#documents.get(uri)?.version;
    await this.until(
      () => this.changed.some((one) => one.uri === uri && one.version === version && one.complete),
      `findings of version ${version} of ${uri}`,
    );
    return this.diagnostics.get(uri)!.diagnostics;
  }

  /** Waits until what is published makes the condition true. */
  async until(condition: () => boolean, what: string): Promise<void> {
    const limit = performance.now() + ANSWER_LIMIT_MS;
    while (!condition()) {
      if (performance.now() > limit) throw new Error(`not seen in time: ${what}`);
      await new Promise<void>((done) => {
        const timer = setTimeout(done, 200);
        this.#waiting.push(() => {
          clearTimeout(timer);
          done();
        });
      });
    }
  }

  async hover(uri: string, position: Position): Promise<string | null> {
    const hover = await this.ask<Hover | null>('textDocument/hover', { textDocument: { uri }, position });
    return hover === null ? null : (hover.contents as MarkupContent).value;
  }

  async completion(uri: string, position: Position): Promise<CompletionList | null> {
    return this.ask('textDocument/completion', { textDocument: { uri }, position });
  }

  async symbols(uri: string): Promise<DocumentSymbol[]> {
    return this.ask('textDocument/documentSymbol', { textDocument: { uri } });
  }

  async codeActions(uri: string, range: Range, only?: string[]): Promise<CodeAction[]> {
    const diagnostics = this.diagnostics.get(uri)?.diagnostics ?? [];
    return this.ask('textDocument/codeAction', {
      textDocument: { uri },
      range,
      context: { diagnostics, ...(only && { only }) },
    });
  }

  /** A code action with its edit, as an editor asks for it when it is chosen. */
  async chosen(action: CodeAction): Promise<CodeAction> {
    return action.edit === undefined ? this.ask('codeAction/resolve', action) : action;
  }

  picture(params: PictureParams): Promise<PictureReply> {
    return this.connection.sendRequest<PictureReply>(PICTURE, params);
  }

  async drawing(params: Partial<DrawingParams> & { readonly uri: string }): Promise<DrawingReply> {
    return this.ask(DRAWING, { view: 'panel', position: null, carcass: null, panel: null, ...params });
  }

  ask<R>(method: string, params: unknown): Promise<R> {
    return this.connection.sendRequest<R>(method, params);
  }

  /** The text of a document after an edit of the workspace. */
  applied(uri: string, edit: WorkspaceEdit): string {
    return TextDocument.applyEdits(this.#documents.get(uri)!, editsOf(uri, edit));
  }

  /** Where a piece of text stands in a document: the start of its `nth` occurrence, and so many characters on. */
  at(uri: string, piece: string, on = 0, nth = 0): Position {
    const document = this.#documents.get(uri)!;
    let offset = -1;
    for (let count = 0; count <= nth; count += 1) offset = document.getText().indexOf(piece, offset + 1);
    if (offset === -1) throw new Error(`‘${piece}’ is not in ${uri}`);
    return document.positionAt(offset + on);
  }

  #wake(): void {
    const woken = this.#waiting;
    this.#waiting = [];
    for (const done of woken) done();
  }
}

export function editsOf(uri: string, edit: WorkspaceEdit): TextEdit[] {
  const versioned = edit.documentChanges?.find((change) => 'textDocument' in change && change.textDocument.uri === uri);
  if (versioned !== undefined && 'edits' in versioned) return versioned.edits as TextEdit[];
  return edit.changes?.[uri] ?? [];
}

/** The words of a finding. */
export function wordsOf({ message }: Diagnostic): string {
  return typeof message === 'string' ? message : message.value;
}

/** The text that a range covers. */
export function covered(text: string, range: Range): string {
  return TextDocument.create('file:///x', 'yaml', 0, text).getText(range);
}

/** What a full-grown editor says of itself, as far as the server asks. */
export const CAPABILITIES = {
  workspace: { workspaceEdit: { documentChanges: true }, didChangeWatchedFiles: { dynamicRegistration: true } },
  textDocument: {
    publishDiagnostics: {
      relatedInformation: true,
      versionSupport: true,
      codeDescriptionSupport: true,
      dataSupport: true,
    },
    completion: { completionItem: { snippetSupport: true } },
    codeAction: { dataSupport: true, resolveSupport: { properties: ['edit'] } },
  },
};
