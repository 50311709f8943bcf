import * as vscode from 'vscode';
import { pageOptions } from './page.js';

/** What a panel shows of a file. */
export interface OfFile {
  readonly uri: string;
}

/** A view that is in a panel. */
export interface Shown<Subject> extends OfFile {
  /** Whether it stays with what it shows, so that another panel is opened for anything else. */
  readonly isKept: boolean;
  show(subject: Subject): void;
  reveal(): void;
  changed(uri: string, version: number | null): void;
  trouble(message: string): void;
  refresh(): Promise<void>;
}

/** A kind of panel. */
export interface PanelKind<Subject, View extends Shown<Subject>> {
  /** By this name the editor knows the panel when it opens a window anew. */
  readonly type: string;
  readonly title: string;
  /** The language of the files that it shows. */
  readonly language: 'borewright-job' | 'borewright-shop';
  /** Whether the keys go to the panel when it opens. */
  readonly takesFocus: boolean;
  readonly isSubject: (kept: unknown) => kept is Subject;
  readonly make: (panel: vscode.WebviewPanel, subject: Subject, onClosed: () => void) => View;
}

/**
 * The panels of a kind that the window has: opened beside the text, and brought back after a restart of the editor. There is
 * one that shows whatever is asked for, and those that are kept on something.
 */
export class Panels<Subject extends OfFile, View extends Shown<Subject>> implements vscode.WebviewPanelSerializer {
  readonly #kind: PanelKind<Subject, View>;
  readonly #extension: vscode.Uri;
  readonly #views = new Map<View, vscode.WebviewPanel>();

  constructor(extension: vscode.Uri, kind: PanelKind<Subject, View>) {
    this.#extension = extension;
    this.#kind = kind;
  }

  get type(): string {
    return this.#kind.type;
  }

  /** The view that the keys go to; null where that is something else. */
  get active(): View | null {
    return [...this.#views].find(([, panel]) => panel.active)?.[0] ?? null;
  }

  /** The file of the active editor, else the one that a panel shows; null where there is neither. */
  file(): string | null {
    const document = vscode.window.activeTextEditor?.document;
    if (document?.languageId === this.#kind.language) return document.uri.toString();
    return (this.active ?? [...this.#views.keys()].at(-1))?.uri ?? null;
  }

  show(subject: Subject): View {
    const free = [...this.#views.keys()].find(({ isKept }) => !isKept);
    if (free === undefined) return this.open(subject);
    free.show(subject);
    free.reveal();
    return free;
  }

  /**
   * One more panel, whatever there is.
   * @param column where it is put; beside what is being worked in where that is not said
   */
  open(subject: Subject, column: vscode.ViewColumn = vscode.ViewColumn.Beside): View {
    const { type, title, takesFocus } = this.#kind;
    const place = { viewColumn: column, preserveFocus: !takesFocus };
    const options = { ...pageOptions(this.#extension), enableFindWidget: true };
    return this.#attach(vscode.window.createWebviewPanel(type, title, place, options), subject);
  }

  /** The page's own state says what it showed; a state that is not sound closes the panel. */
  deserializeWebviewPanel(panel: vscode.WebviewPanel, state: unknown): Promise<void> {
    const subject: unknown = typeof state === 'object' && state !== null && 'subject' in state ? state.subject : null;
    if (this.#kind.isSubject(subject)) this.#attach(panel, subject);
    else panel.dispose();
    return Promise.resolve();
  }

  /** The server has worked out this version of a file, or it is to be seen anew with another shop file. */
  changed(uri: string, version: number | null): void {
    for (const view of this.#views.keys()) view.changed(uri, version);
  }

  trouble(message: string): void {
    for (const view of this.#views.keys()) view.trouble(message);
  }

  refresh(): void {
    for (const view of this.#views.keys()) void view.refresh();
  }

  #attach(panel: vscode.WebviewPanel, subject: Subject): View {
    const view = this.#kind.make(panel, subject, () => {
      this.#views.delete(view);
    });
    this.#views.set(view, panel);
    return view;
  }
}
