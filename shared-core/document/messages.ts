import { counted, quoted } from '../words/english.js';
import { messages } from '../words/message.js';

interface KeyAndValue {
  readonly key: string;
  readonly value: string;
}

interface CarcassCount {
  readonly carcasses: number;
  readonly most: number;
  /** Whether of those that are alike only one is counted. */
  readonly isUnlike: boolean;
}

/** What is wrong with the text itself, for someone who knows no YAML. */
export const say = messages('text', {
  // The size of a file.
  fileTooLong: ({ length, most }: { readonly length: number; readonly most: number }) =>
    `The file is ${millions(length)} million characters long; the maximum is ${millions(most)} million. Split it into several jobs.`,
  partTooLong: ({ length, most }: { readonly length: number; readonly most: number }) =>
    `This text is ${millions(length)} million characters long; the maximum is ${millions(most)} million. Split the file.`,
  tooManyCarcasses: ({ carcasses, most, isUnlike }: CarcassCount) =>
    `The job has ${carcasses} carcasses${isUnlike ? ' that are not alike' : ''}; the maximum is ${most}. Split the file: the carcasses from here on are not read.`,
  beyondMeasure: () => 'This text cannot be read as YAML, because it nests or repeats too much. Write it plainly.',
  tooDeep: ({ most }: { readonly most: number }) =>
    `Lists and maps are nested more than ${most} deep here. Remove some levels.`,
  tooManyMarks: ({ most }: { readonly most: number }) =>
    `The file has more than ${most} values with &, * or !. Write the values out, and put texts in quotes.`,
  tooManyAliases: ({ most }: { readonly most: number }) =>
    `With this alias the file stands for more than ${most} values. Use fewer aliases.`,
  aliasUnknown: ({ name }: { readonly name: string }) =>
    `*${name} names nothing. Write &${name} before the value it stands for, above this line.`,
  aliasInItself: ({ name }: { readonly name: string }) =>
    `*${name} stands inside the value it names and would never end. Write the value out.`,

  // The layout of lines.
  carcassNameless: () => 'The carcass has no name. Write a name and a colon, such as `sink:`.',
  keyNotPlain: () =>
    'A key is a word or a few words on one line. Write it like `width: 600`, without brackets, & or *.',
  tabIndent: () => 'This line is indented with a tab. Use two spaces for each step.',
  spaceMissing: ({ key, value }: KeyAndValue) => `A space is missing after the colon. Write \`${key}: ${value}\`.`,
  colonMissing: ({ key, value }: KeyAndValue) => `A colon is missing after \`${key}\`. Write \`${key}: ${value}\`.`,
  twoColons: ({ key }: { readonly key: string }) =>
    `This line has two colons. Put the value of \`${key}\` in quotes, or the inner \`key: value\` on its own line.`,
  dashAmongKeys: ({ key }: { readonly key: string }) =>
    `This line starts with a dash, like a list item, but stands beside the key \`${key}\`. Start it with a name or a key and a colon, such as \`name:\`.`,
  tooFarIn: ({ columns, key }: { readonly columns: number; readonly key: string }) =>
    `This line is indented further than the line above it, which already has a value. Start it ${counted(columns, 'column')} further left, under \`${key}\`.`,
  belowValue: ({
    columns,
    key,
    value,
    kindKey,
  }: KeyAndValue & { readonly columns: number; readonly kindKey: string }) =>
    [
      `\`${key}\` already has the value ${quoted(value)} on its line, so no key can stand below it.`,
      key === kindKey
        ? `Start this line ${counted(columns, 'column')} further left.`
        : `Write \`${kindKey}: ${value}\` on a line below if \`${key}\` is a carcass, or start this line ${counted(columns, 'column')} further left.`,
    ].join(' '),
  betweenColumns: ({
    columns,
    deeper,
    outer,
  }: {
    readonly columns: number;
    readonly deeper: string;
    readonly outer: string;
  }) =>
    `This line starts ${counted(columns, 'column')} left of \`${deeper}\` but right of \`${outer}\`, so it belongs to neither. Start it under \`${deeper}\`, or under \`${outer}\` if it is on its own.`,

  // What the YAML reader found.
  quoteOpen: () => 'A closing quote is missing. Write it where the text ends.',
  bracketOpen: () => 'A bracket opened before this is not closed. Write the missing ] or }.',
  commaBetween: () => 'A comma is missing between two values here.',
  colonUnspaced: () => 'A space is missing after the colon.',
  commaOrColon: () => 'A comma or a colon is missing here.',
  remarkUnspaced: () =>
    'A # that starts a comment needs a space before it. Put the value in quotes if the # belongs to it.',
  colonAfterKey: () => 'A key needs a colon after it. Write it like `width: 600`.',
  dashMissing: () => 'This line has no dash, or is indented differently from the items above.',
  markUnspaced: () => 'A space is missing after a & name or a ! tag.',
  instruction: () => 'A line that starts with % is an instruction to the YAML reader and is not used here. Remove it.',
  blockLine: () => 'Nothing else can stand on the line of a | or >. Write the text on the lines below, indented.',
  valueBetween: () => 'A value is missing between two commas.',
  commaTooMany: () => 'There is one comma too many here.',
  aliasUnnamed: () => 'An alias is a * and a name without spaces. Write the value out, or put it in quotes.',
  escapeUnknown: () =>
    'A backslash in double quotes starts an escape, but this one has no meaning. Write it twice, or use single quotes.',
  notAligned: () => 'This line is not indented like the lines beside it. Start the keys of one map in the same column.',
  startsOddly: () => 'A value cannot start with this character. Put the value in quotes.',
  blockInValue: () =>
    'A key, a list item or a question mark begins inside this value. Put it on its own line, or the value in quotes.',
  blockInBrackets: () =>
    'A list with dashes or an indented map cannot stand inside [ ] or { }. Separate the values with commas.',
  keyTooLong: () => 'This key is far too long. Look for a missing closing quote or colon.',
  signMissing: () => 'A colon, comma, space, closing quote or bracket is missing here.',
  keyOverLines: () => 'A key must stand on one line, with a colon after it. Write it like `width: 600`.',
  twoAnchors: () => 'A value can have only one & name.',
  twoDocuments: () => 'A second document begins here, after ---. Keep one document in a file.',
  twoTags: () => 'A value can have only one ! tag, and none is needed here.',
  tabForSpaces: () => 'A tab cannot indent a line. Use spaces.',
  unexpected: () => 'This cannot stand here. Check the indentation, and look for a missing colon, quote or bracket.',
  notYaml: () => 'This is not well-formed YAML. Check the indentation, colons, quotes and brackets.',

  // Repairs.
  withoutTabs: () => 'Indent with spaces, two for each tab',
  addSpace: () => 'Put a space after the colon',
  addColon: () => 'Put a colon after the key',
  addQuotes: () => 'Put the value in quotes',
  indentLikeAbove: () => 'Indent it like the line above',
  indentLike: ({ key }: { readonly key: string }) => `Indent it like \`${key}\``,
  writeBelow: ({ text, key }: { readonly text: string; readonly key: string }) => `Write ${text} below ${key}`,
});

function millions(length: number): string {
  return String(Math.round(length / 100_000) / 10);
}
