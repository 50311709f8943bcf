import type { YAMLError } from 'yaml';

/** By the reader's own words, where one of its codes covers several faults. */
const BY_WORDS: readonly (readonly [RegExp, string])[] = [
  [/^Missing closing/, 'A closing quote is missing. Write it where the text ends.'],
  [/^Flow .* end with a/, 'A bracket that is opened before this is not closed. Write the ] or } that is missing.'],
  [/^Missing , between/, 'A comma is missing between two values here.'],
  [/^Missing space after :/, 'A space is missing after the colon.'],
  [/^Missing , or :/, 'A comma or a colon is missing here.'],
  [
    /^Comments must be/,
    'A # that starts a remark needs a space before it. Where it belongs to a value, put the value in quotes.',
  ],
  [/^Implicit map keys need/, 'A key must be followed by a colon. The colon may be missing: `width: 600`.'],
  [/without - indicator/, 'This has no - before it, or is indented differently than the items above.'],
  [/^Tags and anchors must/, 'A space is needed after a & name or a ! tag.'],
  [
    /directives-end/,
    'A line that starts with % is an instruction to the YAML reader and is not used here. Take it out.',
  ],
  [/extra characters/, 'Nothing else can stand on the line of a | or >. Write the text on the lines below, indented.'],
  [/^Unexpected empty item/, 'A value is missing between two commas.'],
  [/^Unexpected , /, 'There is a comma too many here.'],
];

const BY_CODE: Readonly<Record<string, string>> = {
  BAD_ALIAS: 'An alias is a * and a name without spaces. Write the value out, or put it in quotes.',
  BAD_DIRECTIVE: 'A line that starts with % is an instruction to the YAML reader and is not used here. Take it out.',
  BAD_DQ_ESCAPE:
    'A backslash in double quotes starts an escape, and this one is none. Write it twice, or use single quotes.',
  BAD_INDENT: 'This is not indented like the lines beside it. The keys of one map start in one column.',
  BAD_SCALAR_START: 'A value cannot start with this character. Put the value in quotes.',
  BLOCK_AS_IMPLICIT_KEY:
    'Two colons stand on one line. Put the inner `key: value` on a line of its own, or the value in quotes.',
  BLOCK_IN_FLOW: 'Inside [ ] or { } a list with - or an indented map cannot stand. Separate the values by commas.',
  KEY_OVER_1024_CHARS: 'This key is far too long. A closing quote or a colon may be missing.',
  MISSING_CHAR: 'Something is missing here: a colon, a comma, a space, a closing quote or a bracket.',
  MULTILINE_IMPLICIT_KEY: 'A key must stand on one line and end with a colon. The colon may be missing: `width: 600`.',
  MULTIPLE_ANCHORS: 'A value can have one & name only.',
  MULTIPLE_DOCS: 'A second document begins here (after ---). Keep one document in a file.',
  MULTIPLE_TAGS: 'A value can have one ! tag only; none is needed here.',
  TAB_AS_INDENT: 'A tab stands here as indentation. Use spaces.',
  UNEXPECTED_TOKEN:
    'This does not belong here. Look at the indentation of this line, and for a missing colon, quote or bracket.',
};

/** What is wrong and what to do, for someone who knows no YAML. */
export function explain(error: YAMLError): string {
  const words = BY_WORDS.find(([pattern]) => pattern.test(error.message))?.[1];
  return (
    words ??
    BY_CODE[error.code] ??
    'This is not well-formed YAML. Look at the indentation, colons, quotes and brackets.'
  );
}
