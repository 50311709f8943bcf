import type { Unit } from '../length/units.js';
import type { Skeleton } from '../schema/skeleton.js';

/** A shop with one board, one band and one dowel. The figures are such as are common; every shop measures its own. */
export function newShop(unit: Unit): Skeleton {
  const mm = unit === 'mm';
  return {
    label: `new shop in ${mm ? 'millimetres' : 'inches'}`,
    about: 'A shop with one board, one band and one dowel.',
    text: [
      'title: ${1:Bench by the window}',
      `unit: ${unit}`,
      '',
      'boards:',
      '  ${2:birch-18}:',
      `    thickness: \${3:${mm ? '18' : '18 mm'}}`,
      '',
      'bands:',
      '  ${4:birch-tape}:',
      `    thickness: \${5:${mm ? '0.5' : '0.5 mm'}}`,
      '',
      'dowels:',
      '  ${6:dowel-8}:',
      `    diameter: \${7:${mm ? '8' : '8 mm'}}`,
      `    length: \${8:${mm ? '35' : '35 mm'}}`,
      `    in-face: \${9:${mm ? '12' : '12 mm'}}`,
      '',
      'habits:',
      '  board: $2',
      '  back-board: $2',
      '  band: $4',
      '  joint: $6',
      '',
    ].join('\n'),
  };
}
