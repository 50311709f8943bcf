import assert from 'node:assert/strict';
import * as vscode from 'vscode';
import { openFile, until } from '../driver.js';
import { suite, test } from '../harness.js';

/** What the extension shows its tests. */
interface Extension {
  readonly status: { readonly words: string | null };
}

const FAULT = '    widht: 600\n';

/** A job with a key that is misspelt, and the finding of it. */
async function faulty(): Promise<{ editor: vscode.TextEditor; finding: () => vscode.Diagnostic | undefined }> {
  const editor = await openFile('pantry.carcass.yaml');
  assert.ok(await editor.edit((edit) => edit.insert(new vscode.Position(6, 0), FAULT)));
  const finding = (): vscode.Diagnostic | undefined =>
    vscode.languages.getDiagnostics(editor.document.uri).find(({ code }) => codeOf(code) === 'key-unknown');
  await until('the finding', finding);
  return { editor, finding };
}

/** The editor may have saved it meanwhile. */
async function mended(editor: vscode.TextEditor): Promise<void> {
  assert.ok(await editor.edit((edit) => edit.delete(new vscode.Range(6, 0, 7, 0))));
  await editor.document.save();
}

const codeOf = (code: vscode.Diagnostic['code']): unknown => (typeof code === 'object' ? code.value : code);

suite('settings', () => {
  test('the status bar shows unit, shop and findings of the file that is edited', async () => {
    const extension = vscode.extensions.getExtension<Extension>('borewright.borewright');
    assert.ok(extension);
    const { status } = await extension.activate();
    await openFile('pantry.carcass.yaml');
    await until('the words of a sound job', () => status.words === 'mm · pantry.shop.yaml · no errors or warnings');
    const { editor } = await faulty();
    await until('the words of a faulty job', () => status.words === 'mm · pantry.shop.yaml · 1 error');
    await mended(editor);
    await openFile('pantry.shop.yaml');
    await until(
      'the words of a shop file',
      () => status.words?.startsWith('mm · ') === true && !status.words.includes('.shop'),
    );
    await openFile('notes.yaml');
    await until('nothing of other files', () => status.words === null);
  });

  test('a severity that is set shows at once, and off takes the finding away', async () => {
    const settings = vscode.workspace.getConfiguration('borewright');
    const { editor, finding } = await faulty();
    const set = (value: object | undefined): Thenable<void> =>
      settings.update('findings.severity', value, vscode.ConfigurationTarget.Global);
    try {
      await set({ 'key-unknown': 'information' });
      await until('the severity that is set', () => finding()?.severity === vscode.DiagnosticSeverity.Information);
      await set({ 'key-unknown': 'off' });
      await until('no finding', () => finding() === undefined);
    } finally {
      await set(undefined);
    }
    await until('the severity of the rule', () => finding()?.severity === vscode.DiagnosticSeverity.Error);
    await mended(editor);
  });

  test('the unit that is set is shown at once, and the file keeps its own', async () => {
    const settings = vscode.workspace.getConfiguration('borewright');
    const editor = await openFile('pantry.carcass.yaml');
    const text = editor.document.getText();
    const name = editor.document.positionAt(text.indexOf('carcasses:') + 'carcasses:\n  '.length);
    const isShownIn = async (unit: string): Promise<boolean> => {
      const found = await vscode.commands.executeCommand<vscode.Hover[]>(
        'vscode.executeHoverProvider',
        editor.document.uri,
        name,
      );
      const words = found.flatMap(({ contents }) => contents as vscode.MarkdownString[]);
      return words
        .map(({ value }) => value)
        .join('\n')
        .includes(` ${unit} over all`);
    };
    await until('the unit of the file', () => isShownIn('mm'));
    try {
      await settings.update('lengths.unit', 'inches', vscode.ConfigurationTarget.Global);
      await until('the unit that is set', () => isShownIn('in'));
    } finally {
      await settings.update('lengths.unit', undefined, vscode.ConfigurationTarget.Global);
    }
    await until('the unit of the file again', () => isShownIn('mm'));
    assert.equal(editor.document.getText(), text);
  });

  test('the task checks the folder, and its findings are problems', async () => {
    const [task] = await vscode.tasks.fetchTasks({ type: 'borewright' });
    assert.ok(task, 'a task of the command line');
    const [folder] = vscode.workspace.workspaceFolders ?? [];
    assert.ok(folder);
    const file = vscode.Uri.joinPath(folder.uri, 'faulty.carcass.yaml');
    await vscode.workspace.fs.writeFile(
      file,
      new TextEncoder().encode('carcasses:\n  a: { kind: base, width: wide }\n'),
    );
    const ended = new Promise<number | undefined>((done) => {
      const listening = vscode.tasks.onDidEndTaskProcess(({ execution, exitCode }) => {
        if (execution.task.name !== task.name) return;
        listening.dispose();
        done(exitCode);
      });
    });
    await vscode.tasks.executeTask(task);
    // A fault on the disk: the file is not open.
    assert.equal(await ended, 1);
    await until('the problem of the task', () =>
      vscode.languages
        .getDiagnostics(file)
        .find(({ source, code }) => source === 'borewright check' && codeOf(code) === 'length-impossible'),
    );
    await vscode.workspace.fs.delete(file);
  });

  test('a shop file leads to its job, and the job to its shop file', async () => {
    await openFile('pantry.shop.yaml');
    await vscode.commands.executeCommand('borewright.openJobOfShop');
    await until(
      'the job',
      () => vscode.window.activeTextEditor?.document.fileName.endsWith('pantry.carcass.yaml') === true,
    );
    await vscode.commands.executeCommand('borewright.openShop');
    await until(
      'the shop file',
      () => vscode.window.activeTextEditor?.document.fileName.endsWith('pantry.shop.yaml') === true,
    );
  });
});
