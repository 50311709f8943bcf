import type { Translations } from '../tables.js';
import { quoted, und } from './words.js';

/** Was von Griffen zu sagen ist. */
export const findingsOfPulls = {
  'pull-places': {
    usualPlace: ({ key }) => `\`${key}\` entfernen und den Griff an seine übliche Stelle setzen`,
    use: ({ pull }) => `Dort ${quoted(pull)} nehmen`,
  },
  'pull-off-front': {
    off: ({ pull, front, size, spacing }, show) =>
      `${quoted(pull)}${spacing === 0 ? '' : `, mit Schrauben ${show.exact(spacing)} auseinander,`} steht nicht auf ${front}, ${show.length(size[0])} breit und ${show.length(size[1])} hoch, sodass ${front} nicht für ihn gebohrt wird. Setzen Sie ihn weiter nach innen, lassen Sie ihn anders liegen, oder nehmen Sie einen kürzeren.`,
    beyond: ({ pull, front, size, long, by }, show) =>
      `${quoted(pull)} ist ${show.exact(long)} lang und reicht ${show.length(by)} über die Kante von ${front} hinaus, ${show.length(size[0])} breit und ${show.length(size[1])} hoch. Setzen Sie ihn weiter nach innen, oder nehmen Sie einen kürzeren.`,
  },
  'pull-screw-meets': {
    meets: ({ pull, front, others, high, room }, show) =>
      `Der Kopf einer Schraube von ${quoted(pull)} in ${front} kommt vor ${und(others)} zu liegen, wo ${room === 0 ? 'kein Raum' : `nur ${show.length(room)} Raum`} für seine ${show.exact(high)} ist. Setzen Sie den Griff anderswohin, oder nehmen Sie einen mit Schrauben von außen.`,
  },
} satisfies Translations;
