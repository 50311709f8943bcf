import type { Translations } from '../tables.js';
import { quoted, und, zahl } from './words.js';

/** Was von dem zu sagen ist, was neben einem Korpus steht. */
export const findingsOfBeside = {
  'front-not-held': {
    loose: ({ fronts, angle }) =>
      `Kein ${quoted(angle)} findet hinter ${und(fronts)} Platz, so dass nichts ${zahl(fronts.length, 'diese Platte', 'diese Platten')} hält. Machen Sie sie größer, die Ecke dahinter frei, oder nehmen Sie einen anderen Winkel.`,
    slants: ({ fronts, angle }) =>
      `${und(fronts)} ${zahl(fronts.length, 'steht', 'stehen')} schräg über der Ecke, und ${quoted(angle)} ist für eine rechtwinklige gemacht, so dass nichts ${zahl(fronts.length, 'diese Platte', 'diese Platten')} hält. Schreiben Sie \`angles: none\` und schrauben Sie sie von innen an Boden und Deckel.`,
    byHand: ({ fronts, angle, width, machine, least }, show) =>
      `Für ${quoted(angle)} wird gebohrt, was hinter ${und(fronts)} steht, aber nicht ${zahl(fronts.length, 'diese Platte', 'diese Platten')} selbst: ${show.length(width)} breit, und ${quoted(machine)} nimmt ${show.length(least)} und mehr (\`panel\`). Drehen Sie die Schrauben von Hand durch die Winkel, wenn sie an die Wand angepasst ${zahl(fronts.length, 'ist', 'sind')}.`,
    none: () => '`angles: none` schreiben und sie anders befestigen',
  },
  'beside-too-near': {
    near: ({ fronts, beside, gap, usual }, show) =>
      `${und(fronts)} ${zahl(fronts.length, 'steht', 'stehen')} ${show.length(gap)} neben ${beside}, und zwischen zwei Fronten sind es ${show.length(usual)} (\`gap\`). Neben einer Platte, die so weit nach vorn reicht wie die Fronten, ist die ganze Fuge nötig: Machen Sie \`reveal\` ebenso groß.`,
    reveal: ({ usual }, show) => `Die Türen ${show.exact(usual)} von den Seiten sehen lassen`,
  },
} satisfies Translations;
