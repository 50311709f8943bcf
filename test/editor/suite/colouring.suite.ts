import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import * as vscode from 'vscode';
import { evaluateInWorkbench, openFile, until } from '../driver.js';
import { suite, test } from '../harness.js';

// The editor's own grammar engine, so that what is asserted is what it colours.
interface Token {
  readonly startIndex: number;
  readonly endIndex: number;
  readonly scopes: readonly string[];
}
interface Grammar {
  tokenizeLine(line: string, state: unknown): { readonly tokens: readonly Token[]; readonly ruleStack: unknown };
}
interface TextMate {
  readonly INITIAL: unknown;
  readonly Registry: new (options: object) => { loadGrammar(scope: string): Promise<Grammar | null> };
  parseRawGrammar(content: string, path: string): unknown;
}
interface Oniguruma {
  loadWASM(data: ArrayBuffer): Promise<void>;
  readonly OnigScanner: new (sources: string[]) => object;
  readonly OnigString: new (text: string) => object;
}

async function loadGrammars(): Promise<(text: string) => Token[][]> {
  const hostRequire = createRequire(join(vscode.env.appRoot, 'node_modules', 'x.js'));
  const textMate = hostRequire('vscode-textmate') as TextMate;
  const oniguruma = hostRequire('vscode-oniguruma') as Oniguruma;
  const wasm = readFileSync(hostRequire.resolve('vscode-oniguruma/release/onig.wasm'));
  await oniguruma.loadWASM(new Uint8Array(wasm).buffer);
  const files = new Map<string, string>();
  const injections: string[] = [];
  for (const extension of vscode.extensions.all) {
    const { contributes } = extension.packageJSON as {
      contributes?: { grammars?: { scopeName: string; path: string; injectTo?: string[] }[] };
    };
    for (const { scopeName, path, injectTo } of contributes?.grammars ?? []) {
      files.set(scopeName, join(extension.extensionPath, path));
      if (injectTo?.includes('source.borewright.job') === true) injections.push(scopeName);
    }
  }
  const registry = new textMate.Registry({
    onigLib: Promise.resolve({
      createOnigScanner: (sources: string[]) => new oniguruma.OnigScanner(sources),
      createOnigString: (text: string) => new oniguruma.OnigString(text),
    }),
    loadGrammar: (scope: string) => {
      const path = files.get(scope);
      return Promise.resolve(path === undefined ? null : textMate.parseRawGrammar(readFileSync(path, 'utf8'), path));
    },
    getInjections: (scope: string) => (scope.startsWith('source.borewright') ? injections : []),
  });
  const grammar = await registry.loadGrammar('source.borewright.job');
  assert.ok(grammar, 'the grammar loads');
  return (text) => {
    let state = textMate.INITIAL;
    return text.split('\n').map((line) => {
      const { tokens, ruleStack } = grammar.tokenizeLine(line, state);
      state = ruleStack;
      return [...tokens];
    });
  };
}

suite('colouring', () => {
  test('lengths, units, words and keys are told apart', async () => {
    const colour = await loadGrammars();
    /** Pieces of one line that carry a scope, joined where they touch. */
    const pieces = (line: string, scope: string): string[] => {
      const found: { text: string; end: number }[] = [];
      for (const { startIndex, endIndex, scopes } of colour(`carcasses:\n  a:\n    ${line}`)[2] ?? []) {
        if (!scopes.some((name) => name.startsWith(scope))) continue;
        const text = `    ${line}`.slice(startIndex, endIndex);
        const last = found.at(-1);
        if (last?.end === startIndex) found[found.length - 1] = { text: last.text + text, end: endIndex };
        else found.push({ text, end: endIndex });
      }
      return found.map(({ text }) => text);
    };
    const length = 'constant.numeric.length.borewright';
    const unit = 'keyword.other.unit.borewright';
    for (const written of [
      '600',
      '600 mm',
      '37.5',
      '23 5/8 in',
      '5/8"',
      `1' 11 5/8"`,
      '2 ft 3 in',
      '3-1/2 inches',
      '-20',
    ]) {
      assert.deepEqual(pieces(`width: ${written}`, length), [written], written);
      assert.deepEqual(pieces(`width: ${written} # wide`, length), [written], `${written} before a comment`);
      assert.deepEqual(pieces(`- ${written}`, length), [written], `${written} in a list`);
    }
    assert.deepEqual(pieces('dowels: [37, 69 mm,5 in]', length), ['37', '69 mm']);
    assert.deepEqual(pieces('dowels: [37, 69 mm, 5 in]', length), ['37', '69 mm', '5 in']);
    assert.deepEqual(pieces('shelf: { at: 300, setback: 20 mm }', length), ['300', '20 mm']);
    assert.deepEqual(pieces('range: 20 to 80 mm', length), ['20', '80 mm']);
    assert.deepEqual(pieces('range: 20 to 80 mm', 'keyword.operator.span.borewright'), ['to']);
    assert.deepEqual(pieces('width: 23 5/8 in', unit), ['in']);
    assert.deepEqual(pieces(`width: 1' 11 5/8"`, unit), [`'`, '"']);
    assert.deepEqual(pieces('kind: base # the usual', 'constant.language.choice'), ['base']);
    assert.deepEqual(pieces('width: 600', 'entity.name.tag.yaml'), ['width']);
    assert.deepEqual(pieces('width: 600 # 700 mm', 'comment'), ['# 700 mm']);
    for (const none of [
      'title: "600 mm"',
      'title: 600 mm of oak',
      'title: room 600',
      '# width: 600 mm',
      'base-2: x',
      'width: 60 cm',
    ]) {
      assert.deepEqual(pieces(none, length), [], none);
    }
  });

  test('a name that is known is coloured, one that is not is left, and a key that does nothing is faded', async () => {
    const editor = await openFile('pantry.carcass.yaml');
    const before = editor.document.getText();
    const lines = ['    top: over\n', '    rail-width: 90\n', '    board: birch\n', '    band: elm-1\n'];
    assert.ok(await editor.edit((edit) => edit.insert(new vscode.Position(7, 0), lines.join(''))));
    try {
      const colours = await until('the colours of the names', async () => {
        const [width, rail, birch, elm] = await evaluateInWorkbench(
          (words) => {
            const spans = [...document.querySelectorAll('.view-line span span')];
            const of = (word: string): string | null => {
              const span = spans.find(({ textContent }) => textContent.trim() === word);
              return span === undefined ? null : getComputedStyle(span).color;
            };
            return words.map(of);
          },
          ['width', 'rail-width', 'birch', 'elm-1'],
        );
        return birch !== elm && rail !== width ? { width, rail, birch, elm } : undefined;
      });
      assert.ok(
        Object.values(colours).every((colour) => colour !== null),
        JSON.stringify(colours),
      );
      assert.equal(new Set(Object.values(colours)).size, 4, JSON.stringify(colours));
    } finally {
      const whole = new vscode.Range(0, 0, editor.document.lineCount, 0);
      assert.ok(await editor.edit((edit) => edit.replace(whole, before)));
      await editor.document.save();
    }
  });
});
