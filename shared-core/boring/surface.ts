import type { Surface } from './model.js';

/** Whether a surface is a face of the panel; otherwise it is one of its ends. */
export const isFace = (surface: Surface): surface is 'inside' | 'outside' =>
  surface === 'inside' || surface === 'outside';
