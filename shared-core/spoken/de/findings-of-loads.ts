import type { Translations } from '../tables.js';
import { kg, quoted, und, zahl } from './words.js';

const KEINE_FREIGABE =
  'Das ist eine Schätzung nach veröffentlichten Werten und kein Standsicherheitsnachweis: Wand, Befestigung und Last beurteilt jemand, der das kann.';

/** Befunde über Gewichte und Lasten. */
export const findingsOfLoads = {
  loads: {
    weighs: ({ weight, load, doors }) =>
      `${[
        `Er wiegt ${kg(weight)}, Beschläge nicht gerechnet`,
        ...(doors.length === 0 ? [] : [`davon ${und(doors.map((door) => `${door.name} ${kg(door.weight)}`))}`]),
        ...(load === 0 ? [] : [`und ${kg(load)} stehen darin`]),
      ].join('; ')}.`,
    sags: ({ panel, sag, limit, weight }, show) =>
      `${panel} biegt sich ${show.length(sag)} durch unter ${kg(weight)}, das eigene Gewicht gerechnet; die Grenze ist ${show.length(limit)}.`,
    reckoned: ({ creep }) =>
      `Kriechen ist mit dem ${creep}-Fachen der ersten Durchbiegung gerechnet. ${KEINE_FREIGABE}`,
    noApproval: () => KEINE_FREIGABE,
  },
  'shelf-sags': {
    sags: ({ shelves, worst, load, creep, sag, limit, caution }, show) =>
      `${shelves.length === 1 ? worst : `${und(shelves)} biegen sich zu weit durch: ${worst}`} biegt sich ${show.length(sag)} durch unter ${lasten(load)} und dem eigenen Gewicht, Kriechen mit dem ${creep}-Fachen der ersten Durchbiegung gerechnet; die Grenze ist ${show.length(limit)}. Machen Sie die Spannweite mit einer Mittelwand kürzer oder den Boden mit einer dickeren Platte oder einem Anleimer steifer. ${show.tell(caution)}`,
    thicker: ({ shelves, board }) => `${und(shelves)} aus ${quoted(board)} machen`,
    divider: () => 'Eine Mittelwand einsetzen',
    lipping: ({ height }, show) => `Den Böden einen Anleimer von ${show.exact(height)} geben`,
  },
  'door-too-heavy': {
    heavy: ({ doors, weight, hinges, hinge, rating, caution }, show) =>
      `${und(doors)} ${zahl(doors.length, 'wiegt', 'wiegen')} ${doors.length > 1 ? 'je ' : ''}${kg(weight)}; ${hinges} Bänder ${quoted(hinge)} tragen höchstens ${kg(rating * hinges)}. Nehmen Sie eine leichtere Platte, mehr Bänder (\`hinges-by-weight\`) oder ein Band mit größerem \`rating\`. ${show.tell(caution)}`,
    use: ({ hinge }) => `Die Türen mit ${quoted(hinge)} anschlagen`,
    lighter: ({ board }) => `Die Türen aus ${quoted(board)} machen`,
  },
  'hangs-too-heavy': {
    hangs: ({ weight, load, rating, bracket, caution }, show) =>
      `Der Korpus wiegt ${kg(weight)}${load > 0 ? `, und ${kg(load)} stehen darin` : ''}; seine Aufhänger tragen zusammen ${kg(rating)} (${bracket === null ? '\`bracket-rating\`' : quoted(bracket)}). Machen Sie ihn kleiner oder aus leichterer Platte, stellen Sie weniger hinein, oder nehmen Sie andere Aufhänger. ${show.tell(caution)}`,
  },
  'tips-when-open': {
    tips: ({ doors, drawers, open, before, weight, behind, caution }, show) => {
      const offen = und([...(doors > 0 ? ['Türen'] : []), ...(drawers > 0 ? ['Schubkästen'] : [])]);
      const schmaler = doors > 0 ? ' oder die Türen schmaler' : '';
      return `Leer und mit offenen ${offen} kippt der Korpus nach vorn: Die ${offen} (${kg(open)}) haben ihren Schwerpunkt ${show.length(before)} vor der Kippkante, der Rest (${kg(weight)}) hat seinen ${show.length(behind)} dahinter. Befestigen Sie ihn an der Wand, bevor Sie die ${offen} einsetzen, oder machen Sie ihn tiefer${schmaler}. ${show.tell(caution)}`;
    },
  },
} satisfies Partial<Translations>;

function lasten({ spread, middle }: { readonly spread: number; readonly middle: number }): string {
  return und([
    ...(spread > 0 ? [`${kg(spread)} gleichmäßig verteilt`] : []),
    ...(middle > 0 ? [`${kg(middle)} in der Mitte`] : []),
  ]);
}
