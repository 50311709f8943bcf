import {
  CodeLensRefreshRequest,
  DidChangeConfigurationNotification,
  DidChangeWatchedFilesNotification,
  type Connection,
  type InitializeParams,
} from 'vscode-languageserver';
import type { Log } from './answers.js';
import { settingsFrom, type Settings } from './settings.js';

/** A shop that is being typed refreshes its jobs when the keys rest. */
const REFRESH_MS = 400;

/** What the server asks of its client: settings, word of changed files, and to fetch anew what it shows. */
export class ClientSide {
  settings: Settings = settingsFrom(null);
  /** Tells of folders that come and go. */
  tellsFolders = false;
  /** Shows how far a piece of work has come. */
  showsProgress = false;
  #can = {
    watch: false,
    configure: false,
    tellSettings: false,
    refreshHints: false,
    refreshTokens: false,
    refreshLenses: false,
    refreshFindings: false,
  };
  #refreshing: ReturnType<typeof setTimeout> | undefined;

  readonly #connection: Connection;
  readonly #log: Log;
  readonly #changed: (before: Settings) => void;

  /** @param changed is told when the reader has set something else, and what was set before */
  constructor(connection: Connection, log: Log, changed: (before: Settings) => void) {
    this.#connection = connection;
    this.#log = log;
    this.#changed = changed;
  }

  /** Learns what the client can do. */
  meet({ capabilities: { workspace, window, textDocument }, initializationOptions: options }: InitializeParams): void {
    // A client that keeps no settings may say them at the start.
    const said: unknown = options;
    if (typeof said === 'object' && said !== null && 'settings' in said) this.settings = settingsFrom(said.settings);
    this.showsProgress = window?.workDoneProgress === true;
    this.tellsFolders = workspace?.workspaceFolders === true;
    const configure = workspace?.configuration === true;
    this.#can = {
      watch: workspace?.didChangeWatchedFiles?.dynamicRegistration === true,
      configure,
      tellSettings: configure && workspace?.didChangeConfiguration?.dynamicRegistration === true,
      refreshHints: workspace?.inlayHint?.refreshSupport === true,
      refreshTokens: workspace?.semanticTokens?.refreshSupport === true,
      refreshFindings: workspace?.diagnostics?.refreshSupport === true && textDocument?.diagnostic !== undefined,
      refreshLenses: workspace?.codeLens?.refreshSupport === true,
    };
  }

  /** Asks to be told of changed settings and files. */
  subscribe(): void {
    const { client } = this.#connection;
    if (this.#can.tellSettings) {
      client
        .register(DidChangeConfigurationNotification.type, { section: 'borewright' })
        .catch((fault: unknown) => this.#log('watching settings', fault));
    }
    if (!this.#can.watch) return;
    const watchers = [{ globPattern: '**/*.{shop,carcass}.{yaml,yml}' }];
    client
      .register(DidChangeWatchedFilesNotification.type, { watchers })
      .catch((fault: unknown) => this.#log('watching files', fault));
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
        ...(this.#can.refreshTokens ? [languages.semanticTokens.refresh()] : []),
        ...(this.#can.refreshFindings ? [languages.diagnostics.refresh()] : []),
        ...(this.#can.refreshLenses ? [this.#connection.sendRequest(CodeLensRefreshRequest.type)] : []),
      ];
      Promise.all(asked).catch((fault: unknown) => this.#log('refreshing', fault));
    }, REFRESH_MS);
  }

  /** Whether the client asks for hints again when it is told to. */
  get canRefreshHints(): boolean {
    return this.#can.refreshHints;
  }

  refreshHints(): void {
    const { languages } = this.#connection;
    languages.inlayHint.refresh().catch((fault: unknown) => this.#log('refreshing', fault));
  }

  async #readSettings(): Promise<void> {
    const said: unknown = await this.#connection.workspace.getConfiguration('borewright');
    const before = this.settings;
    this.settings = settingsFrom(said);
    this.#changed(before);
    if (before.hints !== this.settings.hints && this.#can.refreshHints)
      await this.#connection.languages.inlayHint.refresh();
  }
}
