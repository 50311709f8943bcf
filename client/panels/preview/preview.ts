import { Latest, wordsOf } from '../latest.js';
import * as vscode from 'vscode';
import type { DrawingParams, DrawingReply, TextRange } from '../../../shared-core/drawing/messages/drawing.js';
import { pageHtml, pageOptions } from '../page.js';
import { type FromPage, type Subject, type ToPage, isFromPage, isReply } from '../../webview/messages/preview.js';
import type { Nearer } from '../../webview/messages/common.js';

/** Asks the server for a drawing; undefined where it has none for the present text and will say so again when it has. */
export type AskForDrawing = (params: DrawingParams) => Promise<unknown>;

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
export class Preview {
  private reply: DrawingReply | null = null;
  /** How near the reader has zoomed in, and what the reply was asked for with. */
  private nearer: Nearer = 1;
  private replyNearer: Nearer = 1;
  private pageReady = false;
  private readonly latest = new Latest(
    () => this.update(),
    () => this.disposed,
  );
  private held: Held | null = null;
  private disposed = false;
  /** Where the cursor last stood in the file, for while no editor shows it. */
  private lastCursor: vscode.Position | null = null;

  constructor(
    private readonly panel: vscode.WebviewPanel,
    extension: vscode.Uri,
    private readonly ask: AskForDrawing,
    private subject: Subject,
    onClosed: () => void,
  ) {
    const { webview } = panel;
    webview.options = pageOptions(extension);
    const subscriptions = [
      webview.onDidReceiveMessage((message: unknown) => {
        if (isFromPage(message)) void this.receive(message);
      }),
      vscode.window.onDidChangeActiveTextEditor((editor) => this.editorChanged(editor)),
      vscode.window.onDidChangeTextEditorSelection(({ textEditor }) => this.cursorMoved(textEditor)),
    ];
    panel.onDidDispose(() => {
      this.disposed = true;
      vscode.Disposable.from(...subscriptions).dispose();
      onClosed();
    });
    webview.html = pageHtml(webview, extension, { name: 'preview', title: 'Bore map' });
    this.lastCursor = this.editor()?.selection.active ?? null;
    void this.refresh();
  }

  get uri(): string {
    return this.subject.uri;
  }

  /** Shows another subject, or the same in another view. */
  show(change: Partial<Subject>): void {
    this.held = null;
    this.subject = { ...this.subject, ...change };
    void this.refresh();
  }

  reveal(): void {
    this.panel.reveal(undefined, true);
  }

  /** The server has worked out a new text of the file, or another shop file for it. */
  changed(uri: string): void {
    if (uri === this.subject.uri) void this.refresh();
  }

  trouble(message: string): void {
    this.post({ type: 'trouble', message });
  }

  /** Asks for the drawing of the present text. */
  refresh(): Promise<void> {
    return this.latest.refresh();
  }

  private async update(): Promise<void> {
    const { subject, nearer } = this;
    try {
      await this.open();
      const reply = await this.ask(this.params());
      // A newer subject or text has its own request behind this one.
      if (this.disposed || subject !== this.subject || !isReply(reply) || reply.uri !== subject.uri) return;
      if (this.reply?.uri === reply.uri && reply.version < this.reply.version) return;
      this.reply = reply;
      this.replyNearer = nearer;
      this.panel.title = titleOf(subject, reply);
      this.postReply();
      this.postCursor();
    } catch (fault) {
      this.trouble(`The drawing could not be made: ${wordsOf(fault)}`);
    }
  }

  private params(): DrawingParams {
    const { nearer } = this;
    const { uri, view, follow } = this.subject;
    const shown = this.reply?.kind === 'drawing' && this.reply.uri === uri ? this.reply : null;
    const cursor = follow ? this.cursor() : null;
    if (this.held !== null && cursor !== null && cursor.line === this.held.line) {
      return {
        uri,
        view,
        position: null,
        medium: 'screen',
        carcass: this.held.carcass,
        panel: this.held.panel,
        nearer,
      };
    }
    this.held = null;
    return {
      uri,
      view,
      position: cursor === null ? null : { line: cursor.line, character: cursor.character },
      carcass: (follow ? shown?.carcass : null) ?? this.subject.carcass,
      panel: (follow ? shown?.panel : null) ?? this.subject.panel,
      medium: 'screen',
      nearer,
    };
  }

  /** The server answers only for open files; after a restart of the editor nothing may have opened this one yet. */
  private async open(): Promise<void> {
    const { uri } = this.subject;
    if (vscode.workspace.textDocuments.some((document) => document.uri.toString() === uri)) return;
    await vscode.workspace.openTextDocument(vscode.Uri.parse(uri, true));
  }

  private editor(): vscode.TextEditor | undefined {
    const { uri } = this.subject;
    const shows = (editor: vscode.TextEditor | undefined): boolean => editor?.document.uri.toString() === uri;
    const { activeTextEditor, visibleTextEditors } = vscode.window;
    return shows(activeTextEditor) ? activeTextEditor : visibleTextEditors.find(shows);
  }

  private cursor(): vscode.Position | null {
    return this.editor()?.selection.active ?? this.lastCursor;
  }

  private editorChanged(editor: vscode.TextEditor | undefined): void {
    if (!this.subject.follow || editor?.document.languageId !== 'borewright-job') return;
    const uri = editor.document.uri.toString();
    this.lastCursor = editor.selection.active;
    if (uri !== this.subject.uri) this.show({ uri, carcass: null, panel: null });
  }

  private cursorMoved(editor: vscode.TextEditor): void {
    if (editor.document.uri.toString() !== this.subject.uri) return;
    this.lastCursor = editor.selection.active;
    if (this.held !== null && this.held.line !== editor.selection.active.line) this.held = null;
    if (this.subject.follow && this.held === null) void this.refresh();
    this.postCursor();
  }

  private async receive(message: FromPage): Promise<void> {
    switch (message.type) {
      case 'ready':
        // A page that is new sees the whole first.
        this.pageReady = true;
        this.nearer = 1;
        if (this.replyNearer !== 1) {
          void this.refresh();
          return;
        }
        this.postReply();
        this.postCursor();
        return;
      case 'subject': {
        const { view, follow, carcass, panel } = message;
        this.show({ view, follow, carcass, panel });
        // What was chosen by hand stays until the cursor moves to another line.
        const cursor = this.cursor();
        if (follow && cursor !== null && carcass !== null) this.held = { line: cursor.line, carcass, panel };
        return;
      }
      case 'nearer':
        this.nearer = message.nearer;
        void this.refresh();
        return;
      case 'reveal':
        await this.goTo(message.source);
        return;
    }
  }

  /** Puts the cursor where the thing drawn comes from. */
  private async goTo(source: string): Promise<void> {
    const { reply } = this;
    if (reply?.kind !== 'drawing') return;
    const range = Object.hasOwn(reply.ranges, source) ? reply.ranges[source] : undefined;
    if (range === undefined) {
      void vscode.window.setStatusBarMessage(
        'Borewright: this comes from the shop file or from text that is no longer there.',
        4000,
      );
      return;
    }
    const document = await vscode.workspace.openTextDocument(vscode.Uri.parse(reply.uri, true));
    const start = document.validatePosition(new vscode.Position(range.start.line, range.start.character));
    this.held = { line: start.line, carcass: reply.carcass, panel: reply.panel };
    const viewColumn = this.editor()?.viewColumn ?? vscode.ViewColumn.One;
    const editor = await vscode.window.showTextDocument(document, { viewColumn, preserveFocus: false });
    editor.selection = new vscode.Selection(start, start);
    editor.revealRange(new vscode.Range(start, start), vscode.TextEditorRevealType.InCenterIfOutsideViewport);
  }

  private postReply(): void {
    if (this.reply === null) return;
    this.post({ type: 'reply', subject: this.subject, nearer: this.replyNearer, reply: this.reply });
  }

  /** Tells the page which things drawn come from the line of the cursor. */
  private postCursor(): void {
    const { reply } = this;
    const cursor = this.cursor();
    if (reply?.kind !== 'drawing' || cursor === null) return;
    const sources = Object.entries(reply.ranges).flatMap(([key, range]) => (onLine(range, cursor.line) ? [key] : []));
    this.post({ type: 'cursor', sources });
  }

  private post(message: ToPage): void {
    if (this.pageReady && !this.disposed) void this.panel.webview.postMessage(message);
  }
}

function onLine({ start, end }: TextRange, line: number): boolean {
  return start.line <= line && line <= end.line;
}

function titleOf({ view }: Subject, reply: DrawingReply): string {
  if (reply.kind === 'nothing') return 'Bore map';
  return view === 'all-panels' || reply.panel === null
    ? `All panels: ${reply.carcass}`
    : `Bore map: ${reply.carcass}, ${reply.panel}`;
}
