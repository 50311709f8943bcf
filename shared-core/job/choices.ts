// What an owner may choose from; the schema of the job says the same with a sentence for each.
export type { BackHow } from '../shop/back.js';
export type RowChoice = 'none' | 'front' | 'both';
export type TopHow = 'between' | 'over' | 'rails';
export type BottomHow = 'between' | 'under';
export type HungWord = 'none' | 'left' | 'right' | 'pair';
export type FrontWord = 'drawer' | 'left' | 'right' | 'pair' | 'fixed' | 'open' | 'appliance';
export type FrontHeights = 'equal' | 'on-pitch' | 'stepped';
export type DrawerBottom = 'grooved' | 'applied';
export type DoorHow = 'overlay' | 'inset';
export type PullLies = 'upright' | 'level';
export type PullEnd = 'top' | 'bottom' | 'middle';
export type EndPanelsOn = 'none' | 'left' | 'right' | 'both';
export type EndName = 'reference-end' | 'far-end';
export type EdgeName = 'front' | 'back' | EndName;
