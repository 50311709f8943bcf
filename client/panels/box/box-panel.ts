import * as vscode from 'vscode';
import type { BoxParams, BoxReply, StandingBox } from '../../../shared-core/drawing/messages/box-view.js';
import type { TextRange } from '../../../shared-core/drawing/messages/drawing.js';
import {
  isBoxReply,
  isFromBoxPage,
  type BoxSubject,
  type FromBoxPage,
  type Pointed,
  type ToBoxPage,
} from '../../webview/messages/box.js';
import { wordsOf } from '../latest.js';
import { say, TITLES } from '../messages.js';
import { Panel } from '../panel.js';
import { savePicture } from '../preview/pictures.js';
import { editorOf, fileName, goTo, keysOnLine, openText } from '../text.js';

/** Asks the server; undefined where it has no answer for the present text and will say so again when it has. */
export type AskForBox = (params: BoxParams, outdated: AbortSignal) => Promise<unknown>;

/** The cabinets of one job file beside its text: in step with it and its cursor, and led back to it by clicks. */
export class BoxPanel extends Panel<BoxSubject, FromBoxPage, ToBoxPage> {
  readonly #ask: AskForBox;
  #reply: BoxReply | null = null;
  #postedLast = '';
  /** After a choice from the list it stays while the cursor stays on its line. */
  #heldOn: number | null = null;

  constructor(
    panel: vscode.WebviewPanel,
    extension: vscode.Uri,
    ask: AskForBox,
    subject: BoxSubject,
    onClosed: () => void,
  ) {
    super(panel, extension, subject, {
      page: { name: 'box', title: TITLES.boxView },
      isFromPage: isFromBoxPage,
      failure: say.drawingFailed,
      takesFocus: false,
      subscriptions: [
        vscode.window.onDidChangeActiveTextEditor((editor) => this.#editorChanged(editor)),
        vscode.window.onDidChangeTextEditorSelection(({ textEditor }) => {
          if (textEditor.document.uri.toString() === this.uri) this.#cursorMoved();
        }),
      ],
      onClosed,
    });
    this.#ask = ask;
    this.#entitle();
  }

  show(subject: BoxSubject): void {
    this.#heldOn = null;
    this.subject = subject;
    this.#entitle();
    void this.refresh();
  }

  protected async update(outdated: AbortSignal): Promise<void> {
    const { subject } = this;
    await openText(subject.uri);
    const cursor = this.#heldOn === null ? this.#cursor() : undefined;
    const position = cursor === undefined ? null : { line: cursor.line, character: cursor.character };
    const reply = await this.#ask({ ...subject, position }, outdated);
    if (this.isClosed || subject !== this.subject || !isBoxReply(reply) || reply.uri !== subject.uri) return;
    this.#reply = reply;
    if (reply.kind === 'box') this.subject = { ...subject, carcass: reply.carcass };
    // When the findings of a text have come it is asked for again; where they change nothing, it is not drawn again.
    const now = JSON.stringify([this.subject, reply]);
    if (now === this.#postedLast) return;
    this.#postedLast = now;
    this.#post();
  }

  protected async receive(message: FromBoxPage): Promise<void> {
    switch (message.type) {
      case 'ready':
        this.#postedLast = '';
        await this.refresh();
        return;
      case 'choose':
        this.subject = { ...this.subject, what: message.what, carcass: message.carcass };
        this.#heldOn = this.#cursor()?.line ?? null;
        await this.refresh();
        return;
      case 'reveal':
        await this.#reveal(message.carcass, message.source);
        return;
      case 'painted':
        await this.#save(message);
        return;
    }
  }

  async #reveal(carcass: string, source: string): Promise<void> {
    const ranges = this.#boxes().find(({ scene }) => scene.carcass === carcass)?.ranges;
    const range = ranges !== undefined && Object.hasOwn(ranges, source) ? ranges[source] : undefined;
    if (range === undefined) void vscode.window.setStatusBarMessage(say.boreElsewhere(), 4000);
    else await goTo(this.uri, range.start);
  }

  async #save({ name, png }: Extract<FromBoxPage, { type: 'painted' }>): Promise<void> {
    try {
      await savePicture(
        this.uri,
        name,
        'png',
        Uint8Array.from(atob(png), (one) => one.charCodeAt(0)),
      );
    } catch (fault) {
      this.trouble(say.saveFailed(wordsOf(fault)));
    }
  }

  #post(): void {
    if (this.#reply === null) return;
    this.post({ type: 'reply', subject: this.subject, reply: this.#reply });
    this.#postCursor();
  }

  #boxes(): readonly StandingBox[] {
    return this.#reply?.kind === 'box' ? this.#reply.boxes : [];
  }

  #cursor(): vscode.Position | undefined {
    return editorOf(this.uri)?.selection.active;
  }

  #editorChanged(editor: vscode.TextEditor | undefined): void {
    if (editor?.document.languageId !== 'borewright-job') return;
    const uri = editor.document.uri.toString();
    if (uri !== this.uri) this.show({ uri, what: this.subject.what, carcass: null });
  }

  #cursorMoved(): void {
    const line = this.#cursor()?.line;
    if (line === undefined) return;
    if (this.#heldOn !== line) this.#heldOn = null;
    const reply = this.#reply;
    const at =
      reply?.kind === 'box' ? reply.carcasses.find(({ range }) => range !== null && holds(range, line)) : undefined;
    const isShown = this.#boxes().some(({ scene }) => scene.carcass === at?.name);
    if (reply?.kind !== 'box' || (this.#heldOn === null && at !== undefined && !isShown)) void this.refresh();
    this.#postCursor();
  }

  /** Tells the page what the line of the cursor speaks of. */
  #postCursor(): void {
    const line = this.#cursor()?.line;
    if (line === undefined) return;
    const pointed = this.#boxes().map(({ scene, ranges, spoken }): Pointed => ({
      carcass: scene.carcass,
      parts: spoken.findLast(({ range }) => holds(range, line))?.parts ?? [],
      sources: keysOnLine(ranges, line),
    }));
    this.post({ type: 'cursor', pointed });
  }

  #entitle(): void {
    this.entitle(say.titled(TITLES.boxView, '', fileName(this.uri)));
  }
}

/** The line that a range ends at the beginning of is none of its own. */
function holds({ start, end }: TextRange, line: number): boolean {
  return start.line <= line && (line < end.line || (line === end.line && (end.character > 0 || start.line === line)));
}
