import * as vscode from 'vscode';
import { NAMES, say } from './messages.js';

/** What the server tells of a version of a file at a glance; not to be trusted. */
interface About {
  readonly unit: 'mm' | 'in';
  readonly shop: vscode.Uri | null;
}

const LANGUAGES: ReadonlySet<string> = new Set(['borewright-job', 'borewright-shop']);

/** Unit, shop and count of findings of the file that is being edited, in the status bar. A click leads to the findings. */
export class StatusItem implements vscode.Disposable {
  readonly #item = vscode.window.createStatusBarItem('borewright.file', vscode.StatusBarAlignment.Right, 99);
  readonly #about = new Map<string, About>();
  readonly #listening: vscode.Disposable;

  constructor() {
    this.#item.name = NAMES.statusItem;
    this.#item.command = 'workbench.actions.view.problems';
    this.#listening = vscode.Disposable.from(
      vscode.window.onDidChangeActiveTextEditor(() => this.#show()),
      vscode.languages.onDidChangeDiagnostics(() => this.#show()),
      vscode.workspace.onDidCloseTextDocument(({ uri }) => this.#about.delete(uri.toString())),
    );
    this.#show();
  }

  /** What the server says of a version of a file. */
  changed(said: object & { readonly uri: string }): void {
    const unit = 'unit' in said && said.unit === 'in' ? 'in' : 'mm';
    const shop = 'shop' in said && typeof said.shop === 'string' ? vscode.Uri.parse(said.shop) : null;
    this.#about.set(vscode.Uri.parse(said.uri).toString(), { unit, shop });
    this.#show();
  }

  /** The words in the status bar; null where nothing is shown. */
  get words(): string | null {
    const document = vscode.window.activeTextEditor?.document;
    if (document === undefined || !LANGUAGES.has(document.languageId)) return null;
    const about = this.#about.get(document.uri.toString());
    if (about === undefined) return null;
    const shop = about.shop === null ? NAMES.builtInShop : nameOf(about.shop);
    const parts = [about.unit, ...(document.languageId === 'borewright-job' ? [shop] : [])];
    return [...parts, countOf(document.uri)].join(' · ');
  }

  dispose(): void {
    this.#item.dispose();
    this.#listening.dispose();
  }

  #show(): void {
    const { words } = this;
    if (words === null) {
      this.#item.hide();
      return;
    }
    this.#item.text = words;
    this.#item.tooltip = NAMES.statusMeaning;
    this.#item.show();
  }
}

function nameOf({ path }: vscode.Uri): string {
  return path.slice(path.lastIndexOf('/') + 1);
}

/** '2 errors, 1 warning'; of the gravest two kinds that there are. */
function countOf(uri: vscode.Uri): string {
  const own = vscode.languages.getDiagnostics(uri).filter(({ source }) => source === 'borewright');
  const count = (severity: vscode.DiagnosticSeverity): number => own.filter((one) => one.severity === severity).length;
  const errors = count(vscode.DiagnosticSeverity.Error);
  const warnings = count(vscode.DiagnosticSeverity.Warning);
  if (errors + warnings === 0) return NAMES.noFaults;
  return [...(errors === 0 ? [] : [say.errors(errors)]), ...(warnings === 0 ? [] : [say.warnings(warnings)])].join(
    ', ',
  );
}
