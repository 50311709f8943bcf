import * as vscode from 'vscode';
import type { DrawingParams, DrawingReply, TextRange } from '../../../shared-core/drawing/messages/drawing.js';
import type { PictureParams, PictureUse } from '../../../shared-core/drawing/messages/picture.js';
import type { MoveShelfParams } from '../../../shared-core/drawing/messages/shelves.js';
import type { Pane } from '../../../shared-core/drawing/scene/scene.js';
import type { Nearer } from '../../webview/messages/common.js';
import {
  isFromPage,
  isMoveShelfReply,
  isPicture,
  isReply,
  type FromPage,
  type Subject,
  type ToPage,
} from '../../webview/messages/preview.js';
import { wordsOf } from '../latest.js';
import { say, TITLES } from '../messages.js';
import { Panel } from '../panel.js';
import type { ListShare } from './list-share.js';
import { printPicture, savePicture } from './pictures.js';
import { WRITE_PAPERS } from '../../papers/write-papers.js';
import { editorOf, fileName, goTo, keysOnLine, openText } from '../text.js';

/** Asks the server; undefined where it has no answer for the present text and will say so again when it has. */
export interface AskForDrawings {
  readonly drawing: (params: DrawingParams, outdated: AbortSignal) => Promise<unknown>;
  readonly picture: (params: PictureParams) => Promise<unknown>;
  readonly moveShelf: (params: MoveShelfParams) => Promise<unknown>;
}

/** The findings of what is drawn already are asked for when the keys have rested: the next key comes first. */
const REST_MS = 150;

/** What a preview works with. */
interface Means {
  readonly ask: AskForDrawings;
  readonly share: ListShare;
  /** A folder of ours for what is printed. */
  readonly printStore: vscode.Uri;
  /** Opens one more preview. */
  readonly another: (kept: Subject, column: vscode.ViewColumn) => void;
  readonly onClosed: () => void;
}

/** What the page is like. */
interface Screen {
  readonly nearer: Nearer;
  readonly pane: Pane;
}

/** After a click on a bore, or a choice from a list, the drawing stays while the cursor stays on its line. */
interface Held {
  readonly line: number;
  readonly carcass: string;
  readonly panel: string | null;
}

/**
 * One preview: keeps the drawing in step with the text and the cursor, and leads clicks back to the text. It computes
 * nothing: drawings come from the server, the page shows them.
 */
export class Preview extends Panel<Subject, FromPage, ToPage> {
  readonly #means: Means;
  #reply: DrawingReply | null = null;
  /** How near the reader has zoomed in, the room that the page has, and what the reply was asked for with. */
  #screen: Screen | null = null;
  #replyScreen: Screen | null = null;
  #drawnLast = '';
  #held: Held | null = null;
  /** While the cursor is on its way to where a thing drawn comes from. */
  #isLeading = false;
  #resting: ReturnType<typeof setTimeout> | undefined;
  /** Where the cursor last stood in the file, for while no editor shows it. */
  #lastCursor: vscode.Position | null;

  constructor(panel: vscode.WebviewPanel, extension: vscode.Uri, subject: Subject, means: Means) {
    super(panel, extension, subject, {
      page: { name: 'preview', title: TITLES.boreMap },
      isFromPage,
      failure: say.drawingFailed,
      takesFocus: false,
      subscriptions: [
        vscode.window.onDidChangeActiveTextEditor((editor) => this.#editorChanged(editor)),
        vscode.window.onDidChangeTextEditorSelection(({ textEditor }) => this.#cursorMoved(textEditor)),
        vscode.workspace.onDidChangeTextDocument(({ document }) => this.#textChanged(document)),
      ],
      onClosed: means.onClosed,
    });
    this.#means = means;
    this.#entitle();
    this.#lastCursor = editorOf(subject.uri)?.selection.active ?? null;
    void this.refresh();
  }

  /** Where no cursor is followed, the drawing stays on its panel. */
  override get isKept(): boolean {
    return !this.subject.follow;
  }

  show(subject: Subject): void {
    this.#change(subject);
  }

  /** The cursor that a key moves has asked for the new text already; what comes now can only be other findings. */
  override changed(uri: string, version: number | null): void {
    if (uri !== this.uri) return;
    clearTimeout(this.#resting);
    if (version === null || this.#reply?.uri !== uri || this.#reply.version !== version) void this.refresh();
    else this.#resting = setTimeout(() => void this.refresh(), REST_MS);
  }

  protected override closed(): void {
    clearTimeout(this.#resting);
  }

  /** Stays on what was chosen, until the cursor moves to another line. */
  hold(carcass: string, panel: string | null): void {
    const cursor = this.#cursor();
    if (this.subject.follow && cursor !== null) this.#held = { line: cursor.line, carcass, panel };
  }

  /** Opens one more preview, which stays on what this one shows. */
  another(): void {
    // Beside this one, which would else be covered by it.
    const { One, Two, Three, Four, Five } = vscode.ViewColumn;
    const columns = [One, Two, Three, Four, Five];
    const next = columns[columns.findIndex((column) => column === this.column) + 1];
    this.#means.another({ ...this.#drawn(), follow: false }, next ?? vscode.ViewColumn.Beside);
  }

  /** Has the drawing made for paper, and saves, copies or prints it. */
  async picture(use: PictureUse): Promise<void> {
    const { uri, view, carcass, panel } = this.#drawn();
    try {
      const reply = await this.#means.ask.picture({ uri, view, carcass, panel });
      if (!isPicture(reply)) return;
      if (reply.kind === 'nothing') this.trouble(reply.reason);
      else if (use === 'svg') await savePicture(uri, reply.name, 'svg', new TextEncoder().encode(reply.svg));
      else if (use === 'print') await printPicture(this.#means.printStore, reply.name, reply.svg);
      else this.post({ type: 'paint', use, name: reply.name, svg: reply.svg });
    } catch (fault) {
      this.trouble(say.pictureFailed(wordsOf(fault)));
    }
  }

  /** What is shown, with the panel that the cursor has led to. */
  #drawn(): Subject {
    const reply = this.#reply;
    if (reply?.kind !== 'drawing' || reply.uri !== this.subject.uri) return this.subject;
    return { ...this.subject, carcass: reply.carcass, panel: reply.panel };
  }

  /** Shows another subject, or the same in another view. */
  #change(by: Partial<Subject>): void {
    this.#held = null;
    this.subject = { ...this.subject, ...by };
    this.#entitle();
    void this.refresh();
  }

  protected async update(outdated: AbortSignal): Promise<void> {
    const subject = this.subject;
    const screen = this.#screen;
    // The page is asked first how much room it has.
    if (screen === null) return;
    await openText(subject.uri);
    const reply = await this.#means.ask.drawing(this.#params(screen), outdated);
    // A newer subject or text has its own request behind this one.
    if (this.isClosed || subject !== this.subject || !isReply(reply) || reply.uri !== subject.uri) return;
    this.#reply = reply;
    this.#replyScreen = screen;
    // When the findings of a text have come it is asked for again; where they change nothing, it is not drawn again.
    const drawn = JSON.stringify([subject, screen, reply]);
    if (drawn === this.#drawnLast) return;
    this.#drawnLast = drawn;
    this.#postReply();
    this.#postCursor();
  }

  #params({ nearer, pane }: Screen): DrawingParams {
    const { uri, view, follow } = this.subject;
    const shown = this.#reply?.kind === 'drawing' && this.#reply.uri === uri ? this.#reply : null;
    const cursor = follow ? this.#cursor() : null;
    if (this.#held !== null && cursor !== null && (this.#isLeading || cursor.line === this.#held.line)) {
      const { carcass, panel } = this.#held;
      return { uri, view, position: null, medium: 'screen', carcass, panel, nearer, pane };
    }
    this.#held = null;
    return {
      uri,
      view,
      position: cursor === null ? null : { line: cursor.line, character: cursor.character },
      carcass: (follow ? shown?.carcass : null) ?? this.subject.carcass,
      panel: (follow ? shown?.panel : null) ?? this.subject.panel,
      medium: 'screen',
      nearer,
      pane,
    };
  }

  #cursor(): vscode.Position | null {
    return editorOf(this.subject.uri)?.selection.active ?? this.#lastCursor;
  }

  #editorChanged(editor: vscode.TextEditor | undefined): void {
    if (!this.subject.follow || editor?.document.languageId !== 'borewright-job') return;
    const uri = editor.document.uri.toString();
    this.#lastCursor = editor.selection.active;
    if (uri !== this.subject.uri) this.#change({ uri, carcass: null, panel: null });
  }

  /** Where the cursor is not followed, nothing else asks for the new text as soon. */
  #textChanged(document: vscode.TextDocument): void {
    if (!this.subject.follow && document.uri.toString() === this.subject.uri) void this.refresh();
  }

  #cursorMoved(editor: vscode.TextEditor): void {
    if (editor.document.uri.toString() !== this.subject.uri) return;
    this.#lastCursor = editor.selection.active;
    if (!this.#isLeading && this.#held?.line !== editor.selection.active.line) this.#held = null;
    if (this.subject.follow && this.#held === null) void this.refresh();
    this.#postCursor();
  }

  protected async receive(message: FromPage): Promise<void> {
    switch (message.type) {
      case 'ready':
        this.post({ type: 'lists', share: this.#means.share.get() });
        // A page that is new sees the whole first.
        this.#drawnLast = '';
        this.#screen = { nearer: 1, pane: message.pane };
        if (isSameScreen(this.#screen, this.#replyScreen)) {
          this.#postReply();
          this.#postCursor();
        } else void this.refresh();
        return;
      case 'subject': {
        const { view, follow, carcass, panel } = message;
        this.#change({ view, follow, carcass, panel });
        if (carcass !== null) this.hold(carcass, panel);
        return;
      }
      case 'nearer':
        if (this.#screen !== null) this.#screen = { ...this.#screen, nearer: message.nearer };
        void this.refresh();
        return;
      case 'pane':
        if (this.#screen !== null) this.#screen = { ...this.#screen, pane: message.pane };
        void this.refresh();
        return;
      case 'share':
        this.#means.share.set(message.share);
        return;
      case 'reveal':
        await this.#goTo(message.source);
        return;
      case 'move-shelf':
        await this.#moveShelf(message.shelf, message.holes);
        return;
      case 'another':
        this.another();
        return;
      case 'papers':
        await vscode.commands.executeCommand(WRITE_PAPERS, this.uri);
        return;
      case 'picture':
        await this.picture(message.use);
        return;
      case 'painted':
        await this.#savePainted(message);
        return;
    }
  }

  /** Puts the cursor where the thing drawn comes from. */
  async #goTo(source: string): Promise<void> {
    const reply = this.#reply;
    if (reply?.kind !== 'drawing') return;
    const range = Object.hasOwn(reply.ranges, source) ? reply.ranges[source] : undefined;
    if (range === undefined) {
      void vscode.window.setStatusBarMessage(say.boreElsewhere(), 4000);
      return;
    }
    this.#held = { line: range.start.line, carcass: reply.carcass, panel: reply.panel };
    // Until the cursor has come to the line, it stands on another one, which is not to be followed.
    this.#isLeading = true;
    try {
      await goTo(reply.uri, range.start);
    } finally {
      this.#isLeading = false;
    }
  }

  /** Has the text changed so that a shelf stands elsewhere: one edit, which the editor can undo. */
  async #moveShelf(shelf: string, holes: number): Promise<void> {
    const { uri, carcass } = this.#drawn();
    if (carcass === null) return;
    const reply = await this.#means.ask.moveShelf({ uri, carcass, shelf, holes });
    const document = await openText(uri);
    // What is for an older text would change something else.
    if (!isMoveShelfReply(reply) || reply.version !== document.version) return;
    const edit = new vscode.WorkspaceEdit();
    for (const { range, text } of reply.edits) edit.replace(document.uri, rangeOf(range), text);
    await vscode.workspace.applyEdit(edit);
  }

  async #savePainted({ name, png }: { readonly name: string; readonly png: string }): Promise<void> {
    try {
      await savePicture(
        this.subject.uri,
        name,
        'png',
        Uint8Array.from(atob(png), (one) => one.charCodeAt(0)),
      );
    } catch (fault) {
      this.trouble(say.saveFailed(wordsOf(fault)));
    }
  }

  /** What is shown and of which file; of a preview that is kept on a panel, that too. */
  #entitle(): void {
    const { view, uri, follow, carcass, panel } = this.subject;
    const words = view === 'all-panels' ? TITLES.allPanels : TITLES.boreMap;
    const kept = follow ? [] : [carcass, view === 'panel' ? panel : null].filter((name) => name !== null);
    this.entitle(say.titled(words, kept.join(', '), fileName(uri)));
  }

  #postReply(): void {
    if (this.#reply === null || this.#replyScreen === null) return;
    this.post({ type: 'reply', subject: this.subject, ...this.#replyScreen, reply: this.#reply });
  }

  /** Tells the page which things drawn come from the line of the cursor. */
  #postCursor(): void {
    const reply = this.#reply;
    const cursor = this.#cursor();
    if (reply?.kind !== 'drawing' || cursor === null) return;
    this.post({ type: 'cursor', sources: keysOnLine(reply.ranges, cursor.line) });
  }
}

function isSameScreen(a: Screen, b: Screen | null): boolean {
  return b !== null && a.nearer === b.nearer && a.pane.width === b.pane.width && a.pane.height === b.pane.height;
}

const rangeOf = ({ start, end }: TextRange): vscode.Range =>
  new vscode.Range(start.line, start.character, end.line, end.character);
