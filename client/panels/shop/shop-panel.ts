import * as vscode from 'vscode';
import type { ShopViewParams, ShopViewReply } from '../../../shared-core/drawing/messages/shop-view.js';
import {
  isFromShopPage,
  isShopReply,
  type FromShopPage,
  type ShopSubject,
  type ToShopPage,
} from '../../webview/messages/shop.js';
import { say, TITLES } from '../messages.js';
import { Panel } from '../panel.js';
import { editorOf, fileName, goTo, keysOnLine, openText } from '../text.js';

/** Asks the server; undefined where it has no answer for the present text and will say so again when it has. */
export type AskForShop = (params: ShopViewParams, outdated: AbortSignal) => Promise<unknown>;

/** The machines of one shop file beside its text: in step with it, and led back to it by clicks. */
export class ShopPanel extends Panel<ShopSubject, FromShopPage, ToShopPage> {
  readonly #ask: AskForShop;
  #reply: ShopViewReply | null = null;
  /** Room of the page; null before it has said. */
  #width: number | null = null;

  constructor(
    panel: vscode.WebviewPanel,
    extension: vscode.Uri,
    ask: AskForShop,
    subject: ShopSubject,
    onClosed: () => void,
  ) {
    super(panel, extension, subject, {
      page: { name: 'shop', title: TITLES.machines },
      isFromPage: isFromShopPage,
      failure: say.machinesFailed,
      takesFocus: false,
      subscriptions: [
        vscode.window.onDidChangeActiveTextEditor((editor) => this.#editorChanged(editor)),
        vscode.window.onDidChangeTextEditorSelection(({ textEditor }) => {
          if (textEditor.document.uri.toString() === this.uri) this.#postCursor();
        }),
      ],
      onClosed,
    });
    this.#ask = ask;
    this.#entitle();
  }

  show(subject: ShopSubject): void {
    this.subject = subject;
    this.#entitle();
    void this.refresh();
  }

  protected async update(outdated: AbortSignal): Promise<void> {
    const { uri } = this.subject;
    if (this.#width === null) return;
    await openText(uri);
    const reply = await this.#ask({ uri, width: this.#width }, outdated);
    if (this.isClosed || !isShopReply(reply) || reply.uri !== this.subject.uri) return;
    this.#reply = reply;
    this.#post();
  }

  #post(): void {
    if (this.#reply === null) return;
    this.post({ type: 'reply', reply: this.#reply });
    this.#postCursor();
  }

  #editorChanged(editor: vscode.TextEditor | undefined): void {
    if (editor?.document.languageId !== 'borewright-shop') return;
    const uri = editor.document.uri.toString();
    if (uri !== this.subject.uri) this.show({ uri });
  }

  protected async receive(message: FromShopPage): Promise<void> {
    switch (message.type) {
      case 'ready':
      case 'width':
        this.#width = message.width;
        await this.refresh();
        return;
      case 'reveal': {
        const reply = this.#reply;
        if (reply?.kind !== 'shop') return;
        const range = reply.ranges[nearest(message.source, reply.ranges)];
        if (range !== undefined) await goTo(reply.uri, range.start);
        return;
      }
    }
  }

  #entitle(): void {
    this.entitle(say.titled(TITLES.machines, '', fileName(this.subject.uri)));
  }

  /** Tells the page what comes from the line of the cursor. */
  #postCursor(): void {
    const cursor = editorOf(this.subject.uri)?.selection.active;
    if (this.#reply?.kind !== 'shop' || cursor === undefined) return;
    this.post({ type: 'cursor', sources: keysOnLine(this.#reply.ranges, cursor.line) });
  }
}

/** A key that is not written has its machine's place: what is drawn by it is as it is where nothing is said. */
function nearest(source: string, ranges: Readonly<Record<string, unknown>>): string {
  if (Object.hasOwn(ranges, source)) return source;
  const path: unknown = JSON.parse(source);
  return Array.isArray(path) && path.length > 2 ? nearest(JSON.stringify(path.slice(0, -1)), ranges) : source;
}
