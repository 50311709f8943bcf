import * as vscode from 'vscode';
import { pageOptions } from './page.js';

/** What a panel shows of a file. */
interface OfFile {
  readonly uri: string;
}

/** A view that is in a panel. */
export interface Shown<Subject> extends OfFile {
  show(subject: Subject): void;
  reveal(): void;
  changed(uri: string): void;
  trouble(message: string): void;
  refresh(): Promise<void>;
}

/** A kind of panel of which the window has one. */
export interface PanelKind<Subject, View extends Shown<Subject>> {
  /** By this name the editor knows the panel when it opens a window anew. */
  readonly type: string;
  readonly title: string;
  /** Whether the keys go to the panel when it opens. */
  readonly takesFocus: boolean;
  readonly isSubject: (kept: unknown) => kept is Subject;
  readonly make: (panel: vscode.WebviewPanel, subject: Subject, onClosed: () => void) => View;
}

/** The one panel of a kind that the window has: opened beside the text, and brought back after a restart of the editor. */
export class OnePanel<Subject extends OfFile, View extends Shown<Subject>> implements vscode.WebviewPanelSerializer {
  readonly #kind: PanelKind<Subject, View>;
  readonly #extension: vscode.Uri;
  #view: View | null = null;

  constructor(extension: vscode.Uri, kind: PanelKind<Subject, View>) {
    this.#extension = extension;
    this.#kind = kind;
  }

  get type(): string {
    return this.#kind.type;
  }

  /** The job file of the active editor, else the one that the panel shows; null where there is neither. */
  job(): string | null {
    const document = vscode.window.activeTextEditor?.document;
    return document?.languageId === 'borewright-job' ? document.uri.toString() : (this.#view?.uri ?? null);
  }

  show(subject: Subject): void {
    if (this.#view !== null) {
      this.#view.show(subject);
      this.#view.reveal();
      return;
    }
    const { type, title, takesFocus } = this.#kind;
    const column = { viewColumn: vscode.ViewColumn.Beside, preserveFocus: !takesFocus };
    const options = { ...pageOptions(this.#extension), enableFindWidget: true };
    this.#attach(vscode.window.createWebviewPanel(type, title, column, options), subject);
  }

  /** The page's own state says what it showed; a state that is not sound closes the panel. */
  deserializeWebviewPanel(panel: vscode.WebviewPanel, state: unknown): Promise<void> {
    const subject: unknown = typeof state === 'object' && state !== null && 'subject' in state ? state.subject : null;
    if (this.#view !== null || !this.#kind.isSubject(subject)) panel.dispose();
    else this.#attach(panel, subject);
    return Promise.resolve();
  }

  /** The server has worked out a new text of a file, or another shop file for it. */
  changed(uri: string): void {
    this.#view?.changed(uri);
  }

  trouble(message: string): void {
    this.#view?.trouble(message);
  }

  refresh(): void {
    void this.#view?.refresh();
  }

  #attach(panel: vscode.WebviewPanel, subject: Subject): void {
    const view = this.#kind.make(panel, subject, () => {
      if (this.#view === view) this.#view = null;
    });
    this.#view = view;
  }
}
