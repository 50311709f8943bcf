// Words that newcomers try for the keys of a job. They are no keys; each leads to the one that is.

export const TRIED_OF_CARCASS = {
  shelves: { keys: ['loose-shelves', 'fixed-shelves'] },
  shelf: { keys: ['loose-shelves', 'fixed-shelves'] },
  'adjustable-shelves': { keys: ['loose-shelves'] },
  adjustable: { keys: ['loose-shelves'] },
  partition: { keys: ['dividers'] },
  partitions: { keys: ['dividers'] },
  type: { keys: ['kind'] },
  material: { keys: ['board'] },
  edge: { keys: ['band'] },
  edging: { keys: ['band'] },
  quantity: { keys: ['count'] },
  pieces: { keys: ['count'] },
  w: { keys: ['width'] },
  h: { keys: ['height'] },
  d: { keys: ['depth'] },
  feet: { keys: ['plinth'] },
  legs: { keys: ['plinth'] },
  door: { keys: ['doors'] },
  front: { keys: ['fronts', 'doors'] },
  drawer: { keys: ['fronts', 'drawers'] },
  worktop: { instead: 'Worktops are not part of a job. Remove the line.' },
} as const;

export const TRIED_OF_JOB = {
  cabinet: { keys: ['carcasses'] },
  cabinets: { keys: ['carcasses'] },
  cupboards: { keys: ['carcasses'] },
  boxes: { keys: ['carcasses'] },
  name: { keys: ['title'] },
} as const;
