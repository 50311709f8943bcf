import type * as vscode from 'vscode';
import type { Told } from '../../shared-core/words/told.js';
import { Latest, wordsOf } from './latest.js';
import { pageHtml, pageOptions, type Page } from './page.js';

/** What every page says, besides what it alone says. */
interface FromAnyPage {
  readonly type: string;
}

/** What every page is told, besides what it alone is told: that something failed, in words. */
interface Trouble {
  readonly type: 'trouble';
  readonly message: string;
}

/** What a view does for its panel; `From` and `To` are what its page says and is told. */
export interface PanelView<From> {
  readonly page: Page;
  /** Whether what came out of the page is something that this page says. */
  readonly isFromPage: (message: unknown) => message is From;
  readonly receive: (message: From) => Promise<void>;
  /** Asks the server for what the page shows, and posts it. */
  readonly update: () => Promise<void>;
  /** What is said where `update` fails, and why. */
  readonly failure: (why: string) => Told;
  readonly onClosed: () => void;
}

/**
 * One panel beside the text with a page of ours in it: the page's messages are checked, what is told to it waits until it
 * listens, and the server is asked for one answer at a time. What is shown is the view's own.
 */
export class Panel<From extends FromAnyPage, To extends FromAnyPage> {
  readonly #panel: vscode.WebviewPanel;
  readonly #latest: Latest;
  #listens = false;
  #closed = false;

  constructor(panel: vscode.WebviewPanel, extension: vscode.Uri, view: PanelView<From>) {
    this.#panel = panel;
    this.#latest = new Latest(
      () => this.#update(view),
      () => this.#closed,
    );
    const { webview } = panel;
    webview.options = pageOptions(extension);
    const subscription = webview.onDidReceiveMessage((message: unknown) => {
      if (!view.isFromPage(message)) return;
      if (message.type === 'ready') this.#listens = true;
      void view.receive(message);
    });
    panel.onDidDispose(() => {
      this.#closed = true;
      subscription.dispose();
      view.onClosed();
    });
    webview.html = pageHtml(webview, extension, view.page);
  }

  /** Where it stands in the window, from 1; null where it is not in sight. */
  get column(): vscode.ViewColumn | null {
    return this.#panel.viewColumn ?? null;
  }

  get isClosed(): boolean {
    return this.#closed;
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

  /** @param takesFocus whether the keys go to the panel from now on */
  reveal(takesFocus: boolean): void {
    this.#panel.reveal(undefined, !takesFocus);
  }

  async #update({ update, failure }: PanelView<From>): Promise<void> {
    try {
      await update();
    } catch (fault) {
      this.trouble(failure(wordsOf(fault)));
    }
  }
}
