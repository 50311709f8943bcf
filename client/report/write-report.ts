import * as vscode from 'vscode';
import type { Heard } from './heard.js';
import { NAMES, say } from './messages.js';
import { reportText, type Facts, type OpenFiles } from './text.js';

const SECTION = 'borewright';

interface Manifest {
  readonly version: string;
  readonly contributes: { readonly configuration: { readonly properties: Readonly<Record<string, Property>> } };
}
interface Property {
  readonly type: string;
  readonly enum?: readonly unknown[];
  readonly properties?: Readonly<Record<string, unknown>>;
}

/** Opens a report that may be sent, as a document of its own that its reader looks through first. Sends and writes nothing. */
export async function writeReport(extension: vscode.Extension<unknown>, heard: Heard): Promise<void> {
  // The editor checks the manifest when it loads the extension.
  const manifest = extension.packageJSON as Manifest;
  const content = reportText(factsOf(manifest, heard), { NAMES, say });
  await vscode.window.showTextDocument(await vscode.workspace.openTextDocument({ language: 'plaintext', content }));
}

function factsOf({ version, contributes }: Manifest, heard: Heard): Facts {
  const { properties } = contributes.configuration;
  const rules = new Set(Object.keys(properties['borewright.findings.severity']?.properties ?? {}));
  return {
    versions: { program: version, editor: `${vscode.version} (${vscode.env.language})`, system: system() },
    trusted: vscode.workspace.isTrusted,
    settings: Object.entries(properties).flatMap(([key, property]) => changed(key, property)),
    files: (['jobs', 'shops'] as const).map((sort): OpenFiles => ({ sort, lines: linesOf(sort) })),
    findings: countsBy(rules),
    waits: heard.waits,
    starts: heard.starts,
    faults: heard.faults,
  };
}

/** In a browser there is no process. */
function system(): string {
  return typeof process === 'object' ? `${process.platform} ${process.arch}, Node ${process.version}` : 'web';
}

const linesOf = (sort: OpenFiles['sort']): readonly number[] =>
  vscode.workspace.textDocuments
    .filter(({ languageId }) => languageId === (sort === 'jobs' ? 'borewright-job' : 'borewright-shop'))
    .map(({ lineCount }) => lineCount);

/** The setting where it is not as it comes; its value where it is a number, a switch, or one of the words to choose from. */
function changed(key: string, property: Property): readonly (readonly [string, string | null])[] {
  const settings = vscode.workspace.getConfiguration(SECTION);
  const name = key.slice(SECTION.length + 1);
  const value: unknown = settings.get(name);
  if (JSON.stringify(value) === JSON.stringify(settings.inspect(name)?.defaultValue)) return [];
  const isPlain = typeof value === 'number' || typeof value === 'boolean' || property.enum?.includes(value) === true;
  return [[key, isPlain ? String(value) : null]];
}

/** Findings of all files by the names of rules that the extension has; another name could be anything. */
function countsBy(rules: ReadonlySet<string>): ReadonlyMap<string, number> {
  const counts = new Map<string, number>();
  for (const [, found] of vscode.languages.getDiagnostics()) {
    for (const { source, code } of found) {
      const rule = String(typeof code === 'object' ? code.value : code);
      if (source === 'borewright' && rules.has(rule)) counts.set(rule, (counts.get(rule) ?? 0) + 1);
    }
  }
  return counts;
}
