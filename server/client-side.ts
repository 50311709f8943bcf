import {
  CodeLensRefreshRequest,
  DidChangeConfigurationNotification,
  DidChangeWatchedFilesNotification,
  type Connection,
  type InitializeParams,
} from 'vscode-languageserver';
import type { Log } from './answers.js';
import { HINT_CHOICES, type HintChoice } from '../shared-core/service.js';

/** A shop that is being typed refreshes its jobs when the keys rest. */
const REFRESH_MS = 400;

/** What the server asks of its client: settings, word of changed files, and to fetch anew what it shows. */
export class ClientSide {
  /** Which inlay hints the reader wants. */
  hints: HintChoice = 'all';
  /** Tells of folders that come and go. */
  tellsFolders = false;
  #can = { watch: false, configure: false, tellSettings: false, refreshHints: false, refreshLenses: false };
  #refreshing: ReturnType<typeof setTimeout> | undefined;

  readonly #connection: Connection;
  readonly #log: Log;

  constructor(connection: Connection, log: Log) {
    this.#connection = connection;
    this.#log = log;
  }

  /** Learns what the client can do. */
  meet({ capabilities: { workspace } }: InitializeParams): void {
    this.tellsFolders = workspace?.workspaceFolders === true;
    const configure = workspace?.configuration === true;
    this.#can = {
      watch: workspace?.didChangeWatchedFiles?.dynamicRegistration === true,
      configure,
      tellSettings: configure && workspace?.didChangeConfiguration?.dynamicRegistration === true,
      refreshHints: workspace?.inlayHint?.refreshSupport === true,
      refreshLenses: workspace?.codeLens?.refreshSupport === true,
    };
  }

  /** Asks to be told of changed settings and shop files. */
  subscribe(): void {
    const { client } = this.#connection;
    if (this.#can.tellSettings) {
      client
        .register(DidChangeConfigurationNotification.type, { section: 'borewright' })
        .catch((fault: unknown) => this.#log('watching settings', fault));
    }
    if (!this.#can.watch) return;
    const watchers = [{ globPattern: '**/*.shop.{yaml,yml}' }];
    client
      .register(DidChangeWatchedFilesNotification.type, { watchers })
      .catch((fault: unknown) => this.#log('watching shop files', fault));
  }

  /** Reads the settings anew, of a client that keeps any. */
  settingsMayDiffer(): void {
    if (this.#can.configure) this.#readSettings().catch((fault: unknown) => this.#log('reading settings', fault));
  }

  /** For what a client shows of a job and asks for only when that changes: its shop has changed meanwhile. */
  refreshSoon(): void {
    clearTimeout(this.#refreshing);
    this.#refreshing = setTimeout(() => {
      const { languages } = this.#connection;
      const asked = [
        ...(this.#can.refreshHints ? [languages.inlayHint.refresh()] : []),
        ...(this.#can.refreshLenses ? [this.#connection.sendRequest(CodeLensRefreshRequest.type)] : []),
      ];
      Promise.all(asked).catch((fault: unknown) => this.#log('refreshing', fault));
    }, REFRESH_MS);
  }

  async #readSettings(): Promise<void> {
    const set: unknown = await this.#connection.workspace.getConfiguration('borewright.inlayHints');
    const choice = HINT_CHOICES.find((one) => one === set) ?? 'all';
    if (choice === this.hints) return;
    this.hints = choice;
    if (this.#can.refreshHints) await this.#connection.languages.inlayHint.refresh();
  }
}
