import { labels, type Told } from '../words/told.js';
import type { MachineKind } from './model.js';

/** What each kind of machine is called in a sentence. */
export const KIND_WORDS: Readonly<Record<MachineKind, Told>> = labels('machine-kinds', {
  vertical: 'vertical head',
  horizontal: 'horizontal head',
  line: 'line drill',
  cup: 'cup borer',
  saw: 'panel saw',
  bander: 'edge bander',
  clamp: 'case clamp',
});
