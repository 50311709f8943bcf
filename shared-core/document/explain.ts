import type { YAMLError } from 'yaml';
import type { Message } from '../words/message.js';
import { say } from './messages.js';

/** By the reader's own words, where one of its codes covers several faults. */
const BY_WORDS: readonly (readonly [RegExp, () => Message])[] = [
  [/^Missing closing/, say.quoteOpen],
  [/^Flow .* end with a/, say.bracketOpen],
  [/^Missing , between/, say.commaBetween],
  [/^Missing space after :/, say.colonUnspaced],
  [/^Missing , or :/, say.commaOrColon],
  [/^Comments must be/, say.remarkUnspaced],
  [/^Implicit map keys need/, say.colonAfterKey],
  [/without - indicator/, say.dashMissing],
  [/^Tags and anchors must/, say.markUnspaced],
  [/directives-end/, say.instruction],
  [/extra characters/, say.blockLine],
  [/^Unexpected empty item/, say.valueBetween],
  [/^Unexpected , /, say.commaTooMany],
];

const BY_CODE: Readonly<Record<string, () => Message>> = {
  BAD_ALIAS: say.aliasUnnamed,
  BAD_DIRECTIVE: say.instruction,
  BAD_DQ_ESCAPE: say.escapeUnknown,
  BAD_INDENT: say.notAligned,
  BAD_SCALAR_START: say.startsOddly,
  BLOCK_AS_IMPLICIT_KEY: say.blockInValue,
  BLOCK_IN_FLOW: say.blockInBrackets,
  KEY_OVER_1024_CHARS: say.keyTooLong,
  MISSING_CHAR: say.signMissing,
  MULTILINE_IMPLICIT_KEY: say.keyOverLines,
  MULTIPLE_ANCHORS: say.twoAnchors,
  MULTIPLE_DOCS: say.twoDocuments,
  MULTIPLE_TAGS: say.twoTags,
  TAB_AS_INDENT: say.tabForSpaces,
  UNEXPECTED_TOKEN: say.unexpected,
};

/** What is wrong and what to do, for someone who knows no YAML. */
export function explain(error: YAMLError): Message {
  const said = BY_WORDS.find(([pattern]) => pattern.test(error.message))?.[1];
  return (said ?? BY_CODE[error.code] ?? say.notYaml)();
}
