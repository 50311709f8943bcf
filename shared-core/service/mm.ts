import { MICROMETRES_PER_MM, type Micrometres } from '../length/units.js';

/** A length as data for other programs has it. */
export const mm = (length: Micrometres): number => length / MICROMETRES_PER_MM;
