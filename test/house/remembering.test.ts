import { readdirSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import ts from 'typescript';
import { expect, test } from 'vitest';

// What is worked out once belongs to a store (`derived/derived.ts`) that somebody owns: a module of the core keeps nothing
// between two calls, so that two engines know nothing of each other and what is no longer asked for can go.

const core = resolve(import.meta.dirname, '..', '..', 'shared-core');
const STORES: ReadonlySet<string> = new Set(['WeakMap', 'WeakSet', 'WeakRef', 'Derived']);
const TABLES: ReadonlySet<string> = new Set(['Map', 'Set', 'Array']);

/** What a module could remember in: names declared at its top, or static in its classes, that can change. */
function rememberedIn(name: string, text: string): readonly string[] {
  const file = ts.createSourceFile(name, text, ts.ScriptTarget.Latest, true);
  const found: string[] = [];
  const look = (node: ts.Node): void => {
    if (ts.isFunctionLike(node)) return;
    if (ts.isVariableDeclaration(node) || ts.isPropertyDeclaration(node)) {
      const isConst = ts.isVariableDeclaration(node)
        ? (ts.getCombinedNodeFlags(node) & ts.NodeFlags.Const) !== 0
        : (ts.getCombinedModifierFlags(node) & ts.ModifierFlags.Readonly) !== 0;
      const isOfModule =
        ts.isVariableDeclaration(node) || (ts.getCombinedModifierFlags(node) & ts.ModifierFlags.Static) !== 0;
      if (isOfModule && (!isConst || canChange(node))) found.push(node.name.getText(file));
      // What a class has for each of its objects is their own.
      if (!isOfModule) return;
    }
    ts.forEachChild(node, look);
  };
  look(file);
  return found;
}

/** A table that is written `Readonly…`, or only ever used as such, is no memory. */
function canChange({ type, initializer }: ts.VariableDeclaration | ts.PropertyDeclaration): boolean {
  if (initializer === undefined) return false;
  const saysReadonly = type !== undefined && /^(?:Readonly|readonly)/.test(type.getText());
  if (ts.isNewExpression(initializer)) {
    const made = initializer.expression.getText();
    return STORES.has(made) || (TABLES.has(made) && !saysReadonly);
  }
  const isEmpty =
    (ts.isArrayLiteralExpression(initializer) && initializer.elements.length === 0) ||
    (ts.isObjectLiteralExpression(initializer) && initializer.properties.length === 0);
  return isEmpty && !saysReadonly;
}

const files = readdirSync(core, { recursive: true, encoding: 'utf8' }).filter((file) => file.endsWith('.ts'));

test('no module of the core remembers', () => {
  expect(files.length).toBeGreaterThan(300);
  const remembering = files.flatMap((file) =>
    rememberedIn(file, readFileSync(join(core, file), 'utf8')).map((name) => `${file}: ${name}`),
  );
  expect(remembering).toEqual([]);
});

test.each([
  'const known = new Map<string, number>();',
  'export const known = new WeakMap<object, number>();',
  'const known: ReadonlyMap<object, number> = new WeakMap();',
  'let last: string | null = null;',
  'const list: string[] = [];',
  'const byName: Record<string, number> = {};',
  'class Known { static readonly all = new Set<string>(); }',
  'class Known { static last = 0; }',
])('%s is found', (text) => {
  expect(rememberedIn('a.ts', text)).toHaveLength(1);
});

test.each([
  "const WORDS: ReadonlySet<string> = new Set(['a']);",
  'function count() { const seen = new Map(); let n = 0; return [seen, n]; }',
  'class Known { readonly #all = new Map(); last = 0; }',
  'const make = () => new Map();',
  'const NONE: readonly string[] = [];',
])('%s is none', (text) => {
  expect(rememberedIn('a.ts', text)).toEqual([]);
});
