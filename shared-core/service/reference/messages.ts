import { labels } from '../../words/told.js';

/** What the pages about the keys say beside what the schemas say of themselves. */
export const PAGE = labels({
  job: 'Job files',
  shop: 'Shop files',
  findings: 'Findings',
  reference: 'Reference of Borewright',
  seeAlso: 'See also',
  jobIntro:
    'A job file is named `NAME.carcass.yaml`. It has the carcasses of one job, each under a name of its own, and whatever is not written has a usual value: a kind and a width are enough.',
  shopIntro:
    'A shop file is named `NAME.shop.yaml`. It tells what a workshop has and how it works: its boards, bands and fittings, its machines as measured, its habits. A job names it with `shop`. What it does not mention comes from the built-in shop, which is printed at the end of this page.',
  caution:
    'Measure a machine switched off and locked, and check each figure against its manual; where the two differ, write the narrower range. What is said here does not take the place of the manual, of local rules or of licensed practice. Before boring: machine at rest while it is set, panel held, hands clear, eyes protected.',
  writing: 'How it is written',
  lines:
    'One key to a line, `key: value`; what belongs under a key stands on the lines below, two spaces further in. The same fits on one line in braces: `{ at: 300, bay: 1 }`. A list has a dash before each item, or stands in brackets: `[300, 620]`. What follows a `#` is a comment.',
  lengths:
    'A bare number is a length in the unit of the file, `mm` unless `unit` says otherwise. Either unit may be written out, also mixed in one file: `600`, `600.5 mm`, `23 5/8 in`, `23.625 in`, `1\' 11 5/8"`. A range is two lengths: `20 to 80`.',
  figures:
    'Figures are in millimetres here; the same bounds hold for a file in inches. What stands in for a key that is left out follows the habits of the shop: here those of the built-in one.',
  stands: 'Stands under',
  atTop: 'Stands at the left margin of the file.',
  aName: 'NAME',
  alsoHere: 'Written here as there',
  write: 'Write',
  required: 'It must be there.',
  onlyOf: 'Only under',
  optional: 'It may be left out.',
  ownName: 'When left out: the name that it stands under.',
  ofKind: 'For',
  formerly: 'Formerly written',
  keysOf: 'Its keys',
  whole: 'A whole file',
  withShop: 'With this in its shop file, beside what the built-in shop has',
});
