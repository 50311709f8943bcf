import * as vscode from 'vscode';
import { suite, test } from '../registry.js';

function equal<T>(found: T, wanted: T, what: string): void {
  const [a, b] = [JSON.stringify(found), JSON.stringify(wanted)];
  if (a !== b) throw new Error(`${what}: ${a}, not ${b}`);
}

async function until<T>(
  what: string,
  look: () => T | undefined | null | false | PromiseLike<T | undefined>,
): Promise<T> {
  const end = Date.now() + 20_000;
  while (Date.now() < end) {
    const value = await look();
    if (value !== undefined && value !== null && value !== false) return value;
    await new Promise((done) => setTimeout(done, 50));
  }
  throw new Error(`waited for ${what}`);
}

const openJob = async (text: string): Promise<vscode.TextDocument> => {
  const document = await vscode.workspace.openTextDocument({ language: 'borewright-job', content: text });
  await vscode.window.showTextDocument(document);
  return document;
};

suite('web', () => {
  test('the extension runs in the worker of the browser, with its server in another', async () => {
    const extension = vscode.extensions.getExtension('borewright.borewright');
    if (extension === undefined) throw new Error('the extension is not there');
    equal(extension.extensionUri.scheme, 'http', 'where the extension is served');
    equal(vscode.env.uiKind, vscode.UIKind.Web, 'the window');
    equal(typeof globalThis.process?.versions?.node, 'undefined', 'Node');
    await openJob('carcasses:\n  desk: { kind: base, width: 600 }\n');
    await until('the extension', () => extension.isActive);
  });

  test('findings with repairs, hovers, hints, colours and the bore map work there', async () => {
    const document = await openJob(
      'carcasses:\n  desk:\n    kind: base\n    width: 600\n    hight: 720\n    loose-shelves: 1\n',
    );
    const found = await until('the finding', () =>
      vscode.languages.getDiagnostics(document.uri).find(({ message }) => message.includes('hight')),
    );
    const actions = await vscode.commands.executeCommand<vscode.CodeAction[]>(
      'vscode.executeCodeActionProvider',
      document.uri,
      found.range,
    );
    if (!actions.some(({ title }) => title.includes('height'))) throw new Error('no repair');
    const hovers = await vscode.commands.executeCommand<vscode.Hover[]>(
      'vscode.executeHoverProvider',
      document.uri,
      document.positionAt(document.getText().indexOf('width') + 1),
    );
    const words = hovers.flatMap(({ contents }) => contents as vscode.MarkdownString[]).map(({ value }) => value);
    if (!words.some((one) => one.includes('Overall width of the carcass.'))) throw new Error(`hover: ${words.join()}`);
    if (!words.some((one) => one.includes('command:borewright.openReference'))) throw new Error('no reference');
    const tokens = await vscode.commands.executeCommand<vscode.SemanticTokens | undefined>(
      'vscode.provideDocumentSemanticTokens',
      document.uri,
    );
    equal((tokens?.data.length ?? 0) > 0, true, 'colours');
    await vscode.commands.executeCommand('borewright.showBoreMap');
    await until('the preview', () =>
      vscode.window.tabGroups.all
        .flatMap(({ tabs }) => tabs)
        .some(({ input }) => input instanceof vscode.TabInputWebview),
    );
  });

  test('the box view is fetched when it is opened, and not before', async () => {
    const { authority } = vscode.extensions.getExtension('borewright.borewright')!.extensionUri;
    const fetched = async (): Promise<boolean> => {
      const paths = (await (await fetch(`http://${authority}/fetched`)).json()) as readonly string[];
      return paths.some((path) => path.endsWith('/box.js'));
    };
    await openJob('carcasses:\n  desk: { kind: base, width: 600, doors: pair }\n');
    equal(await fetched(), false, 'the box view before it is opened');
    await vscode.commands.executeCommand('borewright.showBoxView');
    await until('the box view', fetched);
  });

  test('a shop file counts while it is open', async () => {
    const folder = vscode.workspace.workspaceFolders?.[0];
    if (folder === undefined) throw new Error('no folder is open');
    const open = (name: string): Thenable<vscode.TextDocument> =>
      vscode.workspace.openTextDocument(vscode.Uri.joinPath(folder.uri, name));
    const job = await open('pantry.carcass.yaml');
    const rules = (): unknown[] =>
      vscode.languages.getDiagnostics(job.uri).map(({ code }) => (typeof code === 'object' ? code.value : code));
    await vscode.window.showTextDocument(job);
    await until('the shop to be missed', () => rules().includes('shop-missing'));
    await vscode.window.showTextDocument(await open('pantry.shop.yaml'));
    await until('the shop to be found', () => !rules().includes('shop-missing'));
  });
});
