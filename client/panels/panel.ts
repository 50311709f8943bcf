import type * as vscode from 'vscode';
import type { Told } from '../../shared-core/words/told.js';
import { Latest, wordsOf } from './latest.js';
import { pageHtml, pageOptions, type Page } from './page.js';
import type { OfFile, Shown } from './panels.js';

/** What every page says, besides what it alone says. */
interface FromAnyPage {
  readonly type: string;
}

/** What every page is told, besides what it alone is told: that something failed, in words. */
interface Trouble {
  readonly type: 'trouble';
  readonly message: string;
}

/** What a kind of panel is, beside what it does. */
export interface PanelMake<From> {
  readonly page: Page;
  /** Whether what came out of the page is something that this page says. */
  readonly isFromPage: (message: unknown) => message is From;
  /** What is said where an update fails, and why. */
  readonly failure: (why: string) => Told;
  /** Whether the keys go to the panel when it is shown. */
  readonly takesFocus: boolean;
  /** What ends with the panel. */
  readonly subscriptions: readonly vscode.Disposable[];
  readonly onClosed: () => void;
}

/**
 * One panel beside the text with a page of ours in it: the page's messages are checked, what is told to it waits until it
 * listens, and the server is asked for one answer at a time. What is shown is the matter of each kind of panel.
 */
export abstract class Panel<
  Subject extends OfFile,
  From extends FromAnyPage,
  To extends FromAnyPage,
> implements Shown<Subject> {
  readonly #panel: vscode.WebviewPanel;
  readonly #make: PanelMake<From>;
  readonly #latest: Latest;
  #listens = false;
  #closed = false;

  constructor(
    panel: vscode.WebviewPanel,
    extension: vscode.Uri,
    protected subject: Subject,
    make: PanelMake<From>,
  ) {
    this.#panel = panel;
    this.#make = make;
    this.#latest = new Latest(
      (outdated) => this.#ask(outdated),
      () => this.#closed,
    );
    const { webview } = panel;
    webview.options = pageOptions(extension);
    const subscription = webview.onDidReceiveMessage((message: unknown) => {
      if (!make.isFromPage(message)) return;
      if (message.type === 'ready') this.#listens = true;
      this.receive(message).catch((fault: unknown) => this.trouble(make.failure(wordsOf(fault))));
    });
    panel.onDidDispose(() => {
      this.#closed = true;
      for (const one of [subscription, ...make.subscriptions]) one.dispose();
      this.closed();
      make.onClosed();
    });
    webview.html = pageHtml(webview, extension, make.page);
  }

  abstract show(subject: Subject): void;

  protected abstract receive(message: From): Promise<void>;

  /** Asks the server for what the page shows, and posts it. */
  protected abstract update(outdated: AbortSignal): Promise<void>;

  /** What is to be done where the panel is closed. */
  protected closed(): void {
    return;
  }

  get uri(): string {
    return this.subject.uri;
  }

  get isKept(): boolean {
    return false;
  }

  /** Where it stands in the window, from 1; null where it is not in sight. */
  get column(): vscode.ViewColumn | null {
    return this.#panel.viewColumn ?? null;
  }

  get isClosed(): boolean {
    return this.#closed;
  }

  /** @param _version what the server has worked out of a file; null where it does not say */
  changed(uri: string, _version: number | null): void {
    if (uri === this.uri) void this.refresh();
  }

  /** Asks for what is shown of the present text; calls that come meanwhile make one more request. */
  refresh(): Promise<void> {
    return this.#latest.refresh();
  }

  post(message: To | Trouble): void {
    if (this.#listens && !this.#closed) void this.#panel.webview.postMessage(message);
  }

  trouble(message: string): void {
    this.post({ type: 'trouble', message });
  }

  entitle(title: string): void {
    this.#panel.title = title;
  }

  /** Brings it into sight. */
  reveal(): void {
    this.#panel.reveal(undefined, !this.#make.takesFocus);
  }

  async #ask(outdated: AbortSignal): Promise<void> {
    try {
      await this.update(outdated);
    } catch (fault) {
      this.trouble(this.#make.failure(wordsOf(fault)));
    }
  }
}
