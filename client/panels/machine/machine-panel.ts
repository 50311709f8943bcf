import { Latest, wordsOf } from '../latest.js';
import * as vscode from 'vscode';
import type { MachineStepParams, StepAddress } from '../../../shared-core/drawing/messages/machine-view.js';
import type { SetUpsParams, SetUpsReply } from '../../../shared-core/drawing/messages/set-ups.js';
import { pageHtml, pageOptions } from '../page.js';
import type { Ticks } from './ticks.js';
import {
  type FromMachinePage,
  type MachineSubject,
  type ToMachinePage,
  isFromMachinePage,
  isStepReply,
} from '../../webview/messages/machine.js';
import { isSetUpsReply } from '../../webview/messages/set-ups.js';
import type { Nearer } from '../../webview/messages/common.js';

/** Asks the server; undefined where it has no answer for the present text and will say so again when it has. */
export interface AskForSetUps {
  readonly setUps: (params: SetUpsParams) => Promise<unknown>;
  readonly step: (params: MachineStepParams) => Promise<unknown>;
}

/** A plan is sought anew when the keys have rested so long: the machines of a job do not change with every key. */
const REST_MS = 250;

/**
 * One machine view with its set-up list: keeps them in step with the text, keeps what is ticked off, and leads back to the
 * text. It computes nothing: set-ups and scenes come from the server, the page shows them.
 */
export class MachinePanel {
  private reply: SetUpsReply | null = null;
  private pageReady = false;
  private readonly latest = new Latest(
    () => this.update(),
    () => this.disposed,
  );
  private disposed = false;
  private rest: ReturnType<typeof setTimeout> | null = null;
  /** The last stroke that the page wants; an answer to an earlier wish is dropped. */
  private wanted: { readonly address: StepAddress; readonly nearer: Nearer } | null = null;
  private asksStep = false;

  constructor(
    private readonly panel: vscode.WebviewPanel,
    extension: vscode.Uri,
    private readonly ask: AskForSetUps,
    private readonly ticks: Ticks,
    private subject: MachineSubject,
    onClosed: () => void,
  ) {
    const { webview } = panel;
    webview.options = pageOptions(extension);
    const subscription = webview.onDidReceiveMessage((message: unknown) => {
      if (isFromMachinePage(message)) void this.receive(message);
    });
    panel.onDidDispose(() => {
      this.disposed = true;
      if (this.rest !== null) clearTimeout(this.rest);
      subscription.dispose();
      onClosed();
    });
    webview.html = pageHtml(webview, extension, { name: 'machine', title: 'Machine view' });
    void this.refresh();
  }

  get uri(): string {
    return this.subject.uri;
  }

  /** Shows something else than the page shows now. */
  show(subject: MachineSubject): void {
    const other = subject.uri !== this.subject.uri;
    this.subject = subject;
    if (other) this.reply = null;
    this.post({ type: 'subject', subject });
    this.postTicks();
    void this.refresh();
  }

  reveal(): void {
    this.panel.reveal(undefined, false);
  }

  /** The server has worked out a new text of the file, or another shop file for it. */
  changed(uri: string): void {
    if (uri !== this.subject.uri) return;
    if (this.rest !== null) clearTimeout(this.rest);
    this.rest = setTimeout(() => void this.refresh(), REST_MS);
  }

  trouble(message: string): void {
    this.post({ type: 'trouble', message });
  }

  /** Asks for the set-ups of the present text. */
  refresh(): Promise<void> {
    return this.latest.refresh();
  }

  private async update(): Promise<void> {
    const { uri } = this.subject;
    try {
      await this.open();
      const reply = await this.ask.setUps({ uri });
      if (this.disposed || uri !== this.subject.uri || !isSetUpsReply(reply) || reply.uri !== uri) return;
      this.reply = reply;
      this.entitle();
      this.post({ type: 'set-ups', reply });
    } catch (fault) {
      this.trouble(`The set-ups could not be worked out: ${wordsOf(fault)}`);
    }
  }

  private async receive(message: FromMachinePage): Promise<void> {
    switch (message.type) {
      case 'ready':
        this.pageReady = true;
        // A page that was hidden comes back with what it showed then; a command may have asked for something else since.
        this.post({ type: 'subject', subject: this.subject });
        this.postTicks();
        if (this.reply !== null) this.post({ type: 'set-ups', reply: this.reply });
        return;
      case 'subject':
        if (message.subject.uri === this.subject.uri) this.subject = message.subject;
        this.entitle();
        return;
      case 'step':
        this.wanted = { address: message.address, nearer: message.nearer };
        await this.showStep();
        return;
      case 'tick':
        await this.ticks.set(this.subject.uri, message.ticks, message.on, this.contents());
        this.postTicks();
        return;
      case 'reveal':
        await this.goTo(message.carcass, message.panel);
        return;
    }
  }

  /** Answers the page's last wish for a stroke; wishes that come meanwhile are answered by one more request. */
  private async showStep(): Promise<void> {
    if (this.asksStep) return;
    this.asksStep = true;
    try {
      while (this.wanted !== null && !this.disposed) {
        const { address, nearer } = this.wanted;
        this.wanted = null;
        const { uri } = this.subject;
        const reply = await this.ask.step({ uri, ...address, nearer });
        if (uri === this.subject.uri && this.wanted === null && isStepReply(reply))
          this.post({ type: 'step', nearer, reply });
      }
    } catch (fault) {
      this.trouble(`The machine could not be drawn: ${wordsOf(fault)}`);
    } finally {
      this.asksStep = false;
    }
  }

  /** Puts the cursor where the panel comes from. */
  private async goTo(carcass: string, panel: string): Promise<void> {
    const { reply } = this;
    const runs = reply?.kind === 'set-ups' ? reply.setUps.flatMap((one) => one.runs) : [];
    const range = runs.find((run) => run.carcass === carcass && run.panel === panel)?.range ?? null;
    if (range === null) {
      void vscode.window.setStatusBarMessage('Borewright: this panel has no line of its own in the job file.', 4000);
      return;
    }
    const document = await vscode.workspace.openTextDocument(vscode.Uri.parse(this.subject.uri, true));
    const start = document.validatePosition(new vscode.Position(range.start.line, range.start.character));
    const shown = vscode.window.visibleTextEditors.find(
      (editor) => editor.document.uri.toString() === this.subject.uri,
    );
    const viewColumn = shown?.viewColumn ?? vscode.ViewColumn.One;
    const editor = await vscode.window.showTextDocument(document, { viewColumn, preserveFocus: false });
    editor.selection = new vscode.Selection(start, start);
    editor.revealRange(new vscode.Range(start, start), vscode.TextEditorRevealType.InCenterIfOutsideViewport);
  }

  /** The server answers only for open files; after a restart of the editor nothing may have opened this one yet. */
  private async open(): Promise<void> {
    const { uri } = this.subject;
    if (vscode.workspace.textDocuments.some((document) => document.uri.toString() === uri)) return;
    await vscode.workspace.openTextDocument(vscode.Uri.parse(uri, true));
  }

  private contents(): ReadonlySet<string> {
    const setUps = this.reply?.kind === 'set-ups' ? this.reply.setUps : [];
    return new Set(setUps.flatMap(({ content, runs }) => [content, ...runs.map((run) => run.content)]));
  }

  private entitle(): void {
    this.panel.title = this.subject.side === 'list' ? 'Set-up list' : 'Machine view';
  }

  private postTicks(): void {
    this.post({ type: 'ticks', ticks: this.ticks.of(this.subject.uri) });
  }

  private post(message: ToMachinePage): void {
    if (this.pageReady && !this.disposed) void this.panel.webview.postMessage(message);
  }
}
