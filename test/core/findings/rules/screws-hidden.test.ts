import { rule } from './rule-tests.js';

rule('screws-hidden', {
  tells: [
    {
      carcass: 'kind: wall\nwidth: 900\njoint: screw-7x50\ndividers: 1\nfixed-shelves: [«360»]',
      says: 'The 6 screws of shelf-1-bay-1 and shelf-1-bay-2 go through divider-1 from both faces at the same height, so each shelf covers the screws of the one behind it. Move one of the two by a pitch of 32 mm, or hold it with another fitting (`joint` of shelf-1-bay-2).',
      severity: 'warning',
      panel: 'shelf-1-bay-2',
    },
    {
      // one count, one finding
      carcass: 'kind: tall\nwidth: 1200\ndepth: 330\njoint: screw-7x50\ndividers: 2\nfixed-shelves: «2»',
      says: 'The 24 screws of shelf-1-bay-1, shelf-1-bay-2, shelf-1-bay-3, shelf-2-bay-1, shelf-2-bay-2 and shelf-2-bay-3 go through divider-1 and divider-2 from both faces at the same height, so each shelf covers the screws of the one behind it. Move one of the two by a pitch of 32 mm, or hold it with another fitting (`joint` of shelf-1-bay-2).',
      severity: 'warning',
      panel: 'shelf-1-bay-2',
    },
  ],
  sound: [
    // One pitch apart, and with one of the two on dowels, screws through a divider can be driven.
    {
      carcass:
        'kind: wall\nwidth: 900\njoint: screw-7x50\ndividers: 1\nfixed-shelves: [{ at: 360, bay: 1 }, { at: 392, bay: 2 }]',
    },
    {
      carcass:
        'kind: wall\nwidth: 900\njoint: screw-7x50\ndividers: 1\nfixed-shelves: [360]\npanels:\n  shelf-1-bay-2: { joint: dowel-8x30 }',
    },
  ],
});
