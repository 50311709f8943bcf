import { readdirSync, readFileSync } from 'node:fs';
import { join, relative, resolve } from 'node:path';
import ts from 'typescript';
import { describe, expect, test } from 'vitest';

const ROOT = resolve(import.meta.dirname, '../..');

/** Files that are tables of words as they stand; what they say is said nowhere else. */
const TABLES: Readonly<Record<string, string>> = {
  'messages.ts': 'a table of messages and labels',
  'shared-core/spoken/': 'the tables in other languages',
  'server/spoken/': 'the tables in other languages',
  'shared-core/carcass/roles/': 'a role’s own file says what it is called',
  'shared-core/fittings/kinds/': 'a kind’s own file says what it and its bores are called, and what its keys mean',
  'shared-core/fittings/price.ts': 'what a key means that every kind has',
  'shared-core/fittings/fitting.ts': 'how bores of every kind are counted',
  'shared-core/fittings/purposes.ts': 'the names of the bores that are of no fitting',
  'shared-core/findings/reading-rules.ts': 'what the findings of reading are about',
  'shared-core/findings/reference-page.ts': 'the page of all findings',
  'shared-core/job/schema.ts': 'what the keys of a job mean',
  'shared-core/job/reach.ts': 'where a key of a job counts',
  'shared-core/job/skeletons.ts': 'texts to begin with',
  'shared-core/shop/skeletons.ts': 'texts to begin with',
  'shared-core/shop/neutral-text.ts': 'the built-in shop file',
  'shared-core/service/reference/examples.ts': 'a job and a shop as an owner would write them',
  'shared-core/shop/schema.ts': 'what the keys of a shop mean',
  'shared-core/shop/habit-schemas.ts': 'what the keys of a shop mean',
  'shared-core/shop/machine-schemas.ts': 'what the keys of a shop mean',
  'shared-core/shop/material-schemas.ts': 'what the keys of a shop mean',
  'shared-core/shop/hinge-schemas.ts': 'what the keys of a shop mean',
  'shared-core/shop/paper-schemas.ts': 'what the keys of a shop mean',
  'shared-core/shop/angle-schemas.ts': 'what the keys of a shop mean',
  'shared-core/shop/foot-schemas.ts': 'what the keys of a shop mean',
  'shared-core/shop/wardrobe-rail-schemas.ts': 'what the keys of a shop mean',
  'shared-core/shop/bracket-schemas.ts': 'what the keys of a shop mean',
  'shared-core/shop/pull-schemas.ts': 'what the keys of a shop mean',
  'shared-core/shop/slide-schemas.ts': 'what the keys of a shop mean',
  'shared-core/shop/unused.ts': 'why a key of a shop does nothing yet',
  'shared-core/words/': 'lists, counts and names for the tables',
  'shared-core/schema/wanted-words.ts': 'what may stand where, for the messages of reading',
  'shared-core/schema/length-words.ts': 'how lengths are told to be written',
  'shared-core/findings/bores.ts': 'names of bores for the messages of rules',
  'shared-core/findings/row-grid.ts': 'clauses of the messages of rows',
  'shared-core/findings/rules/': 'clauses of the rule’s own messages; a finding takes no plain text',
  'shared-core/engine/set-ups-for-one.ts': 'clauses of its own message',
  'shared-core/service/shared-load.ts': 'clauses of its own messages',
  'shared-core/schema/model.ts': 'how a value is named in the messages of reading',
  'shared-core/schema/file-unit.ts': 'a clause of its own message',
};

/** Texts that are no words for a reader. */
const NO_WORDS: Readonly<Record<string, string>> = {
  'shared-core/drawing/render/': 'marks and classes of SVG',
  'shared-core/drawing/scene/lettering.ts': 'names of typefaces',
  'shared-core/service/reference/html.ts': 'marks and style of HTML',
  'shared-core/papers/render/html.ts': 'marks of HTML',
  'shared-core/papers/render/html-style.ts': 'style of HTML',
  'shared-core/papers/render/labels-html.ts': 'style of HTML',
  'shared-core/machining/order/request.ts': 'faults of the program, for its makers',
  'shared-core/machining/strokes/request.ts': 'faults of the program, for its makers',
  'shared-core/machining/replay/replay.ts': 'keys of what strays',
  'shared-core/machining/replay/table.ts': 'keys of what strays',
  'shared-core/tolerance/joint.ts': 'keys of what strays',
  'shared-core/papers/render/dxf/': 'names of layers, which the programs that read them look for',
  'shared-core/papers/render/pdf/pdf.ts': 'the name of the program',
  'shared-core/papers/render/pdf/outline.ts': 'names of the PDF format',
  'shared-core/length/': 'units',
  'shared-core/schema/reading/span.ts': 'how a span is written in a file',
  'shared-core/engine/repairs.ts': 'keys of places',
  'client/panels/page.ts': 'marks of HTML',
  'client/panels/preview/print-page.ts': 'marks of HTML',
  'server/cover-solver.ts': 'a linear program',
  'server/told-fault.ts': 'names of faults of the program',
  'client/report/write-report.ts': 'names of systems',
  'server/whole-workspace.ts': 'names of work for the log',
  'server/answers.ts': 'answers of the protocol, and names of work for the log',
  'server/client-side.ts': 'names of work for the log',
  'server/wiring/': 'names of work for the log',
};

/** The first kind of text here that may stand in this file; null where none may. */
function allowed(file: string, lists: readonly Readonly<Record<string, string>>[]): string | null {
  const names = lists.flatMap((list) => Object.keys(list));
  return (
    names.find((name) => (name.includes('/') ? file.startsWith(name) : file === name || file.endsWith(`/${name}`))) ??
    null
  );
}

/** A word beside a space, or a label of one word: a capital and small letters. */
function speaks(text: string): boolean {
  return /(?:^|[^\w-])[A-Za-z][a-z]+[,.:;)’]* | [(‘]?[A-Za-z][a-z]+(?![\w-])/.test(text) || /^[A-Z][a-z]+$/.test(text);
}

/** Every text with words in a source that stands in no table of messages or labels, and is no `about` of a schema or a rule. */
function spokenIn(file: string, source: string): readonly string[] {
  const found: string[] = [];
  const tree = ts.createSourceFile(file, source, ts.ScriptTarget.Latest, true);
  const visit = (node: ts.Node): void => {
    if (ts.isCallExpression(node) && /^(?:messages|labels|phrases)$/.test(node.expression.getText(tree))) return;
    if (ts.isLiteralTypeNode(node) || ts.isImportDeclaration(node) || ts.isExportDeclaration(node)) return;
    if (ts.isPropertyAssignment(node) && /^(?:about|what|why|remedy|example|shop)$/.test(node.name.getText(tree)))
      return;
    // Classes, selectors and names of keys of a page.
    if (ts.isPropertyAssignment(node) && node.name.getText(tree) === 'class') return;
    if (ts.isCallExpression(node) && /\.(?:closest|matches|matchMedia)$/.test(node.expression.getText(tree))) return;
    if (ts.isBinaryExpression(node) && /(?:^|\.)key$/.test(node.left.getText(tree))) return;
    // Faults of the program itself.
    if (ts.isNewExpression(node) && /^(?:Type|Range)?Error$/.test(node.expression.getText(tree))) return;
    const text = textOf(node);
    if (text !== null && speaks(text)) {
      const { line } = tree.getLineAndCharacterOfPosition(node.getStart(tree));
      found.push(`${file}:${line + 1}: ${text.replace(/\s+/g, ' ')}`);
    }
    ts.forEachChild(node, visit);
  };
  visit(tree);
  return found;
}

function textOf(node: ts.Node): string | null {
  if (ts.isStringLiteral(node) || ts.isNoSubstitutionTemplateLiteral(node)) return node.text;
  if (!ts.isTemplateExpression(node)) return null;
  return node.head.text + node.templateSpans.map(({ literal }) => `0${literal.text}`).join('');
}

function sources(): readonly { readonly file: string; readonly text: string }[] {
  return ['shared-core', 'server', 'client'].flatMap((folder) =>
    readdirSync(join(ROOT, folder), { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile() && entry.name.endsWith('.ts'))
      .map((entry) => join(entry.parentPath, entry.name))
      .map((path) => ({ file: relative(ROOT, path), text: readFileSync(path, 'utf8') })),
  );
}

describe('what a reader is told stands in tables', () => {
  const LISTS = [TABLES, NO_WORDS];

  test('and nowhere else', () => {
    const beside = sources().flatMap(({ file, text }) => (allowed(file, LISTS) === null ? spokenIn(file, text) : []));
    expect(beside).toEqual([]);
  });

  test('and no exception is there for nothing', () => {
    const named = new Map<string, number>();
    for (const { file, text } of sources()) {
      const name = allowed(file, LISTS);
      if (name !== null) named.set(name, (named.get(name) ?? 0) + spokenIn(file, text).length);
    }
    const idle = LISTS.flatMap((list) => Object.keys(list)).filter((name) => (named.get(name) ?? 0) === 0);
    expect(idle).toEqual([]);
  });

  test.each([
    ["const told = 'The panel is too wide.';", 'The panel is too wide.'],
    ['const told = `${panel} to ${other}`;', '0 to 0'],
    ["const head = 'Pieces';", 'Pieces'],
    ['list.push(`The row has ${count} holes.`);', 'The row has 0 holes.'],
  ])('a text that is planted is found: %s', (source, text) => {
    expect(spokenIn('shared-core/x.ts', source)).toEqual([`shared-core/x.ts:1: ${text}`]);
  });

  test.each([
    "const say = messages('x', { wide: () => 'The panel is too wide.' });",
    "const HEADS = labels({ pieces: 'Pieces' });",
    "import { a } from './a b.js'; const key = 'front-edge';",
    "throw new Error('no such panel');",
  ])('what is none is not: %s', (source) => {
    expect(spokenIn('shared-core/x.ts', source)).toEqual([]);
  });
});
