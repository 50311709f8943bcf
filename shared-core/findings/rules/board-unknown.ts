import { besideNamed } from '../lookups.js';
import { hasFronts, keysOfKind } from '../../carcass/fronts/asked.js';
import type { CarcassRule } from '../rule.js';
import { unknownNames } from '../unknown-names.js';

export const boardUnknown: CarcassRule = {
  name: 'board-unknown',
  severity: 'error',
  hides: true,
  about: {
    what: 'A board is named that the shop does not have.',
    why: 'The thickness decides every joint. Until the name is right, the panels are drawn with the shop’s usual board.',
    remedy: 'Use a board of the shop file, or add this one there.',
    example: 'kind: base\nwidth: 600\nboard: bord-16',
  },
  check({ spec, shop }) {
    const parts = [...spec.dividers, ...spec.fixedShelves, ...spec.looseShelves, ...spec.panels.values()];
    const back = spec.back.how.value === 'none' && !spec.back.board.written ? null : spec.back.board;
    const ofBeside = besideNamed(spec).map(({ board }) => board);
    const doors = hasFronts(spec) ? spec.doors.board : null;
    const { drawers } = spec;
    const ofDrawers = keysOfKind(spec, 'drawer').length === 0 ? [] : [drawers.board, drawers.bottomBoard];
    return unknownNames(
      [spec.board, back, doors, ...ofDrawers, ...ofBeside, ...parts.map((part) => part.board)],
      [...shop.boards.keys()],
      'board',
    );
  },
};
