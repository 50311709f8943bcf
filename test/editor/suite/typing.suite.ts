import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import * as vscode from 'vscode';
import { driverAvailable, evaluateInWorkbench, openFile, pressKey, screenshot, typeText, until } from '../driver.js';
import { suite, test } from '../harness.js';

// Longer than the server waits for the next key (25 ms), so that it looks at the text of every one; far short of the second
// after which the line under the cursor counts as written.
const KEY_MS = 30;

/** The n-th block of YAML in the README. */
function readmeJob(repository: string, index: number): string {
  const blocks = [...readFileSync(join(repository, 'README.md'), 'utf8').matchAll(/```yaml\n(.*?)```/gs)];
  const text = blocks[index]?.[1];
  assert.ok(text, `the README has a job ${index}`);
  return text.trimEnd();
}

function saysRule(code: vscode.Diagnostic['code'], rule: string): boolean {
  return (typeof code === 'object' ? code.value : code) === rule;
}

/** An empty file of this name, open with the cursor in it, and the errors that are ever shown in it from then on. */
async function emptyFile(name: string): Promise<{ editor: vscode.TextEditor; errors: string[]; end: () => void }> {
  const folder = vscode.workspace.workspaceFolders![0]!.uri;
  await vscode.workspace.fs.writeFile(vscode.Uri.joinPath(folder, name), new Uint8Array());
  const editor = await openFile(name);
  await until('the focus', () => vscode.window.activeTextEditor === editor);
  const said = (): vscode.Diagnostic[] => vscode.languages.getDiagnostics(editor.document.uri);
  await until('the greeting', () => said().some(({ code }) => saysRule(code, 'nothing-yet')));
  const errors: string[] = [];
  const listener = vscode.languages.onDidChangeDiagnostics(() => {
    for (const { severity, message, range } of said())
      if (severity === vscode.DiagnosticSeverity.Error) errors.push(`line ${range.start.line + 1}: ${message}`);
  });
  const end = (): void => {
    listener.dispose();
  };
  return { editor, errors, end };
}

/**
 * Types line for line as a person does who sees the text: Enter once, then Backspace where the editor stands too far in. It
 * fails where Enter makes no line, or where a line has to be indented by hand.
 */
async function typeAsAPerson(editor: vscode.TextEditor, text: string): Promise<void> {
  const { document } = editor;
  for (const [index, line] of text.split('\n').entries()) {
    if (index > 0) {
      await pressKey('Enter');
      await until(`Enter to make line ${index + 1}`, () => document.lineCount === index + 1, 3000);
      await until('the cursor in it', () => editor.selection.active.line === index, 3000);
    }
    if (line === '') continue;
    const wanted = line.search(/\S/);
    let column = editor.selection.active.character;
    while (column > wanted) {
      await pressKey('Backspace');
      const before = column;
      column = await until('the indentation to give way', () => {
        const now = editor.selection.active.character;
        return now < before ? now + 1 : false;
      });
      column -= 1;
    }
    assert.equal(column, wanted, `line ${index + 1} ‘${line.trim()}’ starts where the editor put the cursor`);
    await typeText(line.trim(), KEY_MS);
    await until(
      `line ${index + 1} as it was typed`,
      () => document.lineAt(index).text.replace(/[\]}]+$/, '') === line.replace(/[\]}]+$/, ''),
      3000,
    ).catch((error: unknown) => {
      throw new Error(`line ${index + 1} reads ‘${document.lineAt(index).text}’`, { cause: error });
    });
  }
}

if (driverAvailable) {
  suite('typing', () => {
    test('four lines of a job, key by key', async () => {
      const { editor, errors, end } = await emptyFile('four.carcass.yaml');
      const text = readmeJob(process.env.BOREWRIGHT_EDITOR_REPOSITORY!, 0);
      await typeAsAPerson(editor, text);
      end();
      assert.equal(editor.document.getText(), text);
      assert.deepEqual(errors, []);
    });

    test('behind the key of a length the editor says what may be written, and Enter still makes a line', async () => {
      const { editor, end } = await emptyFile('lengths.carcass.yaml');
      try {
        await typeAsAPerson(editor, 'defaults:\n  plinth:');
        await typeText(' ');
        // An editor that another test left may still show a hint of its own.
        const shown = await until('the hint of the plinth', () =>
          evaluateInWorkbench(() => {
            const hints = [...document.querySelectorAll<HTMLElement>('.parameter-hints-widget.visible')];
            return hints.map(({ innerText }) => innerText).find((text) => text.includes('plinth:'));
          }),
        );
        assert.match(shown, /plinth: 120, 120\.5 mm, 4 3\/4 in/);
        assert.match(shown, /A length from 0 mm to 400 mm\./);
        await screenshot('length-hint');
        await typeText('90');
        await pressKey('Enter');
        await until('a new line', () => editor.document.lineCount === 3);
      } finally {
        end();
        await vscode.commands.executeCommand('workbench.action.files.revert');
      }
    });

    test('maps below keys that take a word too, and items of several keys, key by key', async () => {
      const { editor, errors, end } = await emptyFile('items.carcass.yaml');
      const text = `unit: in
carcasses:
  bench:
    kind: base
    width: 36
    doors:
      hung: pair
      gap: 1/8
    dividers:
      - at: 18
    loose-shelves:
      - at: 12
        bay: 1
      - at: 14
        bay: 2
    panels:
      left:
        bands:
          back: none`;
      await typeAsAPerson(editor, text);
      end();
      assert.equal(editor.document.getText(), text);
      assert.deepEqual(errors, []);
    });

    test('the long job of the README, key by key', async () => {
      const repository = process.env.BOREWRIGHT_EDITOR_REPOSITORY!;
      const folder = vscode.workspace.workspaceFolders![0]!.uri;
      const shop = readFileSync(join(repository, 'test', 'demo', 'yard.shop.yaml'));
      await vscode.workspace.fs.writeFile(vscode.Uri.joinPath(folder, 'yard.shop.yaml'), shop);
      const { editor, errors, end } = await emptyFile('long.carcass.yaml');
      const text = readmeJob(repository, 1);
      await typeAsAPerson(editor, text);
      end();
      assert.equal(editor.document.getText(), text);
      assert.deepEqual(errors, []);
    });
  });
}
