import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { createContext, runInContext } from 'node:vm';
import { expect, test } from 'vitest';

const root = join(import.meta.dirname, '..', '..');

/** Whatever is asked of it, it has: classes to build on, functions to call, and more of the same. */
function anything(): unknown {
  // A function, since classes are built on some of it and others are called.
  const stub = function (): void {};
  return new Proxy(stub, {
    get: (own, name): unknown =>
      name in own ? Reflect.get(own, name) : name === Symbol.toPrimitive ? () => 'any' : anything(),
    apply: () => anything(),
  });
}

test('the extension for a browser asks for nothing but the editor, and has both ends', () => {
  const asked: string[] = [];
  const module = { exports: {} as Record<string, unknown> };
  // What the worker of an editor in a browser has; nothing of Node.
  const scope: Record<string, unknown> = {
    module,
    exports: module.exports,
    require: (name: string): unknown => {
      asked.push(name);
      if (name === 'vscode') return Object.assign(anything() as object, { env: { language: 'de' } });
      throw new Error(`there is no ${name} in a browser`);
    },
    ...{ setTimeout, clearTimeout, setInterval, clearInterval, queueMicrotask, console, performance, crypto },
    ...{ URL, TextEncoder, TextDecoder, atob },
  };
  scope['self'] = scope;
  runInContext(readFileSync(join(root, 'dist', 'client', 'browser.cjs'), 'utf8'), createContext(scope));
  expect(new Set(asked)).toEqual(new Set(['vscode']));
  expect(Object.keys(module.exports).sort()).toEqual(['activate', 'deactivate']);
});

test('no source of the extension leans on Node where both kinds of editor run it', () => {
  const bundle = readFileSync(join(root, 'dist', 'client', 'browser.cjs'), 'utf8');
  expect(bundle).not.toMatch(/\bBuffer\.from\(|require\("node:/);
});
