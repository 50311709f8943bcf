import { languageSpoken } from './spoken.js';

const NONE = { en: 'no time', de: 'keine Zeit', fr: 'aucun temps' } as const;

/** '7 min 30 s'; '2 h 50 min'; 'no time' for 0. Whole seconds. */
export function timeWords(seconds: number): string {
  const [hours, minutes, rest] = [Math.floor(seconds / 3600), Math.floor(seconds / 60) % 60, seconds % 60];
  const parts = [hours > 0 ? `${hours} h` : '', minutes > 0 ? `${minutes} min` : '', rest > 0 ? `${rest} s` : ''];
  return parts.filter((part) => part !== '').join(' ') || NONE[languageSpoken()];
}
