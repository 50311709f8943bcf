import * as vscode from 'vscode';
import type { MachineStepParams, StepAddress } from '../../../shared-core/drawing/messages/machine-view.js';
import type { SetUpsParams, SetUpsReply } from '../../../shared-core/drawing/messages/set-ups.js';
import type { Nearer } from '../../webview/messages/common.js';
import {
  isFromMachinePage,
  isStepReply,
  type FromMachinePage,
  type MachineSubject,
  type ToMachinePage,
} from '../../webview/messages/machine.js';
import { isSetUpsReply } from '../../webview/messages/set-ups.js';
import { WRITE_PAPERS } from '../../papers/write-papers.js';
import { wordsOf } from '../latest.js';
import { say, TITLES } from '../messages.js';
import { Panel } from '../panel.js';
import { fileName, goTo, openText } from '../text.js';
import type { Ticks } from './ticks.js';

/** Asks the server; undefined where it has no answer for the present text and will say so again when it has. */
export interface AskForSetUps {
  readonly setUps: (params: SetUpsParams, outdated: AbortSignal) => Promise<unknown>;
  readonly step: (params: MachineStepParams) => Promise<unknown>;
}

/** A plan is sought anew when the keys have rested so long: the machines of a job do not change with every key. */
const REST_MS = 250;

/**
 * One machine view with its set-up list: keeps them in step with the text, keeps what is ticked off, and leads back to the
 * text. It computes nothing: set-ups and scenes come from the server, the page shows them.
 */
export class MachinePanel extends Panel<MachineSubject, FromMachinePage, ToMachinePage> {
  readonly #ask: AskForSetUps;
  readonly #ticks: Ticks;
  #reply: SetUpsReply | null = null;
  #rest: ReturnType<typeof setTimeout> | null = null;
  /** The last stroke that the page wants; an answer to an earlier wish is dropped. */
  #wanted: { readonly address: StepAddress; readonly nearer: Nearer } | null = null;
  #asksStep = false;
  #room: Promise<void> = Promise.resolve();

  constructor(
    panel: vscode.WebviewPanel,
    extension: vscode.Uri,
    ask: AskForSetUps,
    ticks: Ticks,
    subject: MachineSubject,
    onClosed: () => void,
  ) {
    super(panel, extension, subject, {
      page: { name: 'machine', title: TITLES.machineView },
      isFromPage: isFromMachinePage,
      failure: say.setUpsFailed,
      takesFocus: true,
      subscriptions: [],
      onClosed,
    });
    this.#ask = ask;
    this.#ticks = ticks;
    this.#entitle();
    void this.refresh();
  }

  protected override closed(): void {
    if (this.#rest !== null) clearTimeout(this.#rest);
  }

  /** Shows something else than the page shows now. */
  show(subject: MachineSubject): void {
    if (subject.uri !== this.subject.uri) this.#reply = null;
    this.subject = subject;
    this.#entitle();
    this.post({ type: 'subject', subject });
    this.#postTicks();
    void this.refresh();
  }

  override changed(uri: string): void {
    if (uri !== this.subject.uri) return;
    if (this.#rest !== null) clearTimeout(this.#rest);
    this.#rest = setTimeout(() => void this.refresh(), REST_MS);
  }

  protected async update(outdated: AbortSignal): Promise<void> {
    const { uri } = this.subject;
    await openText(uri);
    const reply = await this.#ask.setUps({ uri }, outdated);
    if (this.isClosed || uri !== this.subject.uri || !isSetUpsReply(reply) || reply.uri !== uri) return;
    this.#reply = reply;
    this.post({ type: 'set-ups', reply });
  }

  protected async receive(message: FromMachinePage): Promise<void> {
    switch (message.type) {
      case 'ready':
        // A page that was hidden comes back with what it showed then; a command may have asked for something else since.
        this.post({ type: 'subject', subject: this.subject });
        this.#postTicks();
        if (this.#reply !== null) this.post({ type: 'set-ups', reply: this.#reply });
        return;
      case 'subject':
        if (message.subject.uri === this.subject.uri) this.subject = message.subject;
        this.#entitle();
        return;
      case 'step':
        this.#wanted = { address: message.address, nearer: message.nearer };
        await this.#showStep();
        return;
      case 'tick':
        await this.#ticks.set(this.subject.uri, message.ticks, message.on, this.#contents());
        this.#postTicks();
        return;
      case 'floor':
        await this.#giveRoom(message.on);
        return;
      case 'papers':
        await vscode.commands.executeCommand(WRITE_PAPERS, this.uri);
        return;
      case 'reveal':
        await this.#goTo(message.carcass, message.panel);
        return;
    }
  }

  /** Answers the page's last wish for a stroke; wishes that come meanwhile are answered by one more request. */
  async #showStep(): Promise<void> {
    if (this.#asksStep) return;
    this.#asksStep = true;
    try {
      while (this.#wanted !== null && !this.isClosed) {
        const { address, nearer } = this.#wanted;
        this.#wanted = null;
        const { uri } = this.subject;
        const reply = await this.#ask.step({ uri, ...address, nearer });
        if (uri === this.subject.uri && this.#wanted === null && isStepReply(reply))
          this.post({ type: 'step', nearer, reply });
      }
    } catch (fault) {
      this.trouble(say.machineFailed(wordsOf(fault)));
    } finally {
      this.#asksStep = false;
    }
  }

  /** At the machine nothing else is looked at: the view gets all the room that the editor has. */
  async #giveRoom(all: boolean): Promise<void> {
    const command = all ? 'workbench.action.maximizeEditorHideSidebar' : 'workbench.action.evenEditorWidths';
    // In and out at once are done one after the other, also after one that failed; both commands take the keys from the page.
    const before = this.#room.catch(() => undefined);
    this.#room = before.then(async () => {
      if (this.isClosed) return;
      this.reveal();
      await vscode.commands.executeCommand(command);
      if (!this.isClosed) this.reveal();
    });
    await this.#room;
  }

  /** Puts the cursor where the panel comes from. */
  async #goTo(carcass: string, panel: string): Promise<void> {
    const runs = this.#reply?.kind === 'set-ups' ? this.#reply.setUps.flatMap((one) => one.runs) : [];
    const range = runs.find((run) => run.carcass === carcass && run.panel === panel)?.range ?? null;
    if (range === null) {
      void vscode.window.setStatusBarMessage(say.panelElsewhere(), 4000);
      return;
    }
    await goTo(this.subject.uri, range.start);
  }

  #contents(): ReadonlySet<string> {
    const setUps = this.#reply?.kind === 'set-ups' ? this.#reply.setUps : [];
    return new Set(setUps.flatMap(({ content, runs }) => [content, ...runs.map((run) => run.content)]));
  }

  #entitle(): void {
    const { side, uri } = this.subject;
    this.entitle(say.titled(side === 'list' ? TITLES.setUpList : TITLES.machineView, '', fileName(uri)));
  }

  #postTicks(): void {
    this.post({ type: 'ticks', ticks: this.#ticks.of(this.subject.uri) });
  }
}
