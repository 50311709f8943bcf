/** The kinds of fittings; each is a file in `kinds`. */
export type FittingKind = 'dowel' | 'screw' | 'cam';

/** What a bore is for. */
export type BorePurpose =
  | 'dowel'
  | 'clearance'
  | 'recess'
  | 'pilot'
  | 'cam'
  | 'cam-bolt'
  | 'cam-stud'
  | 'row'
  | 'cup'
  | 'cup-screw'
  | 'plate'
  | 'slide'
  | 'slide-in-box'
  | 'pull'
  | 'bracket'
  | 'rail-socket'
  | 'foot'
  | 'plinth-clip'
  | 'angle'
  | 'angle-in-front'
  | 'front-clearance'
  | 'front-pilot'
  | 'spare';
