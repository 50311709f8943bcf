import type { Range, SemanticTokens, SemanticTokensDelta, SemanticTokensLegend } from 'vscode-languageserver';
import { tokensOf, type Token, type TokenSort } from '../../shared-core/service.js';
import { normalUri } from '../files.js';
import { named, type Names } from '../names.js';
import { offsetOf } from '../text.js';
import type { OpenFile } from '../workspace.js';

/** Types of the protocol, for which every editor and theme has a colour. */
const TYPES: Readonly<Record<TokenSort, string>> = {
  carcass: 'class',
  panel: 'variable',
  board: 'type',
  band: 'enumMember',
  fitting: 'interface',
  machine: 'function',
  stop: 'parameter',
  clamp: 'parameter',
  'unused-key': 'property',
};
const MODIFIERS = ['declaration', 'defaultLibrary', 'unused'] as const;

export const LEGEND: SemanticTokensLegend = {
  tokenTypes: [...new Set(Object.values(TYPES))],
  tokenModifiers: [...MODIFIERS],
};

interface Told {
  readonly resultId: string;
  readonly data: number[];
}

/** Colours of names by what they name, and of keys that do nothing; remembers what it told of each document last. */
export class TokenTeller {
  readonly #told = new Map<string, Told>();
  #count = 0;

  constructor(readonly names: Names) {}

  all(file: OpenFile): SemanticTokens {
    return this.#tell(file);
  }

  /** What has changed since the result of that id; all where another was told last. */
  since(file: OpenFile, id: string): SemanticTokens | SemanticTokensDelta {
    const before = this.#told.get(normalUri(file.document.uri));
    const now = this.#tell(file);
    return before?.resultId === id ? { resultId: now.resultId, edits: change(before.data, now.data) } : now;
  }

  within(file: OpenFile, range: Range): SemanticTokens {
    const from = offsetOf(file.document, range.start);
    const to = offsetOf(file.document, range.end);
    const inside = this.#tokens(file).filter(({ start, end }) => from <= end && start <= to);
    return { data: encoded(file, inside) };
  }

  forget(uri: string): void {
    this.#told.delete(normalUri(uri));
  }

  #tell(file: OpenFile): Told {
    this.#count += 1;
    const told = { resultId: String(this.#count), data: encoded(file, this.#tokens(file)) };
    this.#told.set(normalUri(file.document.uri), told);
    return told;
  }

  #tokens(file: OpenFile): readonly Token[] {
    return tokensOf(file, this.names.in(named(file)));
  }
}

/** Five figures a token, its place counted from the token before. */
function encoded({ document }: OpenFile, tokens: readonly Token[]): number[] {
  let last = { line: 0, character: 0 };
  return tokens.flatMap((token) => {
    const at = document.positionAt(token.start);
    const lines = at.line - last.line;
    const characters = lines === 0 ? at.character - last.character : at.character;
    last = at;
    return [lines, characters, token.end - token.start, LEGEND.tokenTypes.indexOf(TYPES[token.sort]), modifiers(token)];
  });
}

function modifiers({ sort, gives, builtIn }: Token): number {
  const has = { declaration: gives, defaultLibrary: builtIn, unused: sort === 'unused-key' };
  return MODIFIERS.reduce((bits, modifier, i) => (has[modifier] ? bits | (1 << i) : bits), 0);
}

/** The one run that differs: what is alike at both ends stays. */
function change(before: readonly number[], now: readonly number[]): SemanticTokensDelta['edits'] {
  const shorter = Math.min(before.length, now.length);
  let start = 0;
  while (start < shorter && before[start] === now[start]) start += 1;
  let alike = 0;
  while (alike < shorter - start && before.at(-1 - alike) === now.at(-1 - alike)) alike += 1;
  const deleteCount = before.length - alike - start;
  const data = now.slice(start, now.length - alike);
  return deleteCount === 0 && data.length === 0 ? [] : [{ start, deleteCount, data }];
}
