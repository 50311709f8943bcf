import type { Unit } from '../length/units.js';
import type { Skeleton } from '../schema/skeleton.js';

/** The carcasses that a job is usually made of, each under a name that is not taken yet. */
export function carcassSkeletons(unit: Unit, taken: ReadonlySet<string>): readonly Skeleton[] {
  const width = (mm: string, inch: string): string => (unit === 'mm' ? mm : inch);
  const carcass = (
    word: string,
    kind: string,
    about: string,
    wide: string,
    ...more: readonly (readonly [key: string, usual: string])[]
  ): Skeleton => {
    let number = 1;
    while (taken.has(`${word}-${number}`)) number += 1;
    const lines = [
      `\${1:${word}-${number}}:`,
      `  kind: ${kind}`,
      `  width: \${2:${wide}}`,
      ...more.map(([key, usual], i) => `  ${key}: \${${i + 3}:${usual}}`),
    ];
    return { label: `${word} carcass`, about, text: lines.join('\n') };
  };
  return [
    carcass('base', 'base', 'A base carcass with loose shelves.', width('600', '24'), ['loose-shelves', '1']),
    carcass('wall', 'wall', 'A carcass that hangs on the wall.', width('600', '24'), ['loose-shelves', '2']),
    carcass(
      'tall',
      'tall',
      'A tall carcass with a fixed shelf and loose ones.',
      width('600', '24'),
      ['fixed-shelves', '1'],
      ['loose-shelves', '4'],
    ),
    carcass('drawer', 'for-drawers', 'A carcass that drawers go into.', width('450', '18')),
    carcass('open', 'open', 'A carcass without fronts, with fixed shelves.', width('400', '16'), [
      'fixed-shelves',
      '2',
    ]),
  ];
}

/** A whole job with one base carcass, in the unit asked for. */
export function newJob(unit: Unit): Skeleton {
  const [base] = carcassSkeletons(unit, new Set());
  const carcass = base!.text
    .replace(/\$\{(\d+):/g, (_, place: string) => `\${${Number(place) + 1}:`)
    .replaceAll(/^/gm, '  ');
  return {
    label: `new job in ${unit === 'mm' ? 'millimetres' : 'inches'}`,
    about: 'A job with one base carcass.',
    text: ['title: ${1:Kitchen by the garden}', `unit: ${unit}`, '', 'carcasses:', carcass, ''].join('\n'),
  };
}
