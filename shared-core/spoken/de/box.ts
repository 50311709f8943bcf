import type { Show } from '../../words/show.js';
import type { Translations } from '../tables.js';
import { anzahl, quoted, und } from './words.js';

/** Was von Körpern im Raum zu sagen ist. */
export const box = {
  'box-view': {
    title: ({ carcass, size }) => `${carcass}, ${size}, mit allem, was daran ist`,
    part: ({ role, key }) => part(role, key),
    partDescribed: ({ role, key, size, board, bores, found, move }, show) =>
      [
        `${part(role, key)}: ${size}, ${board}.`,
        bores === 0 ? 'Keine Bohrungen.' : `${anzahl(bores, 'Bohrung', 'Bohrungen')}.`,
        ...(move === null ? [] : [opens(move, show)]),
        ...(found.length === 0 ? [] : [`Befunde: ${und(severities(found))}.`]),
      ].join(' '),
    described: ({ title, parts, bores, fittings, doors, drawers, found }) =>
      [
        `${title}: ${anzahl(parts.length, 'Platte', 'Platten')} (${und(parts)}), ${anzahl(bores, 'Bohrung', 'Bohrungen')}, ${anzahl(fittings, 'Beschlag', 'Beschläge')}.`,
        ...(doors + drawers === 0
          ? []
          : [
              `Zu öffnen: ${und([...(doors === 0 ? [] : [anzahl(doors, 'Tür', 'Türen')]), ...(drawers === 0 ? [] : [anzahl(drawers, 'Schubkasten', 'Schubkästen')])])}.`,
            ]),
        found.length === 0 ? 'Keine Befunde.' : `Befunde: ${und(severities(found))}.`,
      ].join(' '),
    wall: ({ wall, long, carcasses }, show) =>
      `Wand ${wall}, ${anzahl(carcasses, 'Korpus', 'Korpusse')}, ${show.length(long)} lang`,
    wallDescribed: ({ title, stands }, show) =>
      `${title}. Von links: ${stands.map((one) => stood(one, show)).join('; ')}.`,
    shopHasNoBox: () => 'Das ist eine Werkstattdatei. Öffnen Sie eine Auftragsdatei, um ihre Schränke zu sehen.',
  },
} satisfies Translations;

const ROLES: Readonly<Record<string, string>> = {
  'left side': 'Linke Seite',
  'right side': 'Rechte Seite',
  bottom: 'Unterer Boden',
  top: 'Oberer Boden',
  rail: 'Traverse',
  divider: 'Mittelwand',
  'fixed shelf': 'Fester Boden',
  'loose shelf': 'Einlegeboden',
  back: 'Rückwand',
  plinth: 'Sockel',
  door: 'Tür',
  'drawer back': 'Schubkastenrückwand',
  'drawer bottom': 'Schubkastenboden',
  'drawer front': 'Schubkastenfront',
  'drawer side': 'Schubkastenseite',
  'fixed front': 'Feste Front',
  'end panel': 'Wange',
  'blind panel': 'Blende der blinden Ecke',
  filler: 'Passleiste',
  'front of a drawer’s box': 'Vorderstück des Schubkastens',
};
const part = (role: string, key: string): string =>
  key === role ? (ROLES[role] ?? role) : `${ROLES[role] ?? role} ${quoted(key)}`;

function severities(found: readonly ('error' | 'warning' | 'info')[]): readonly string[] {
  const count = (one: string): number => found.filter((severity) => severity === one).length;
  const [errors, warnings, infos] = [count('error'), count('warning'), count('info')];
  return [
    ...(errors === 0 ? [] : [`${errors} Fehler`]),
    ...(warnings === 0 ? [] : [anzahl(warnings, 'Warnung', 'Warnungen')]),
    ...(infos === 0 ? [] : [anzahl(infos, 'Hinweis', 'Hinweise')]),
  ];
}

interface Stand {
  readonly name: string;
  readonly from: number;
  readonly above: number;
  readonly count: number;
  readonly drawn: number;
}
const stood = ({ name, from, above, count, drawn }: Stand, show: Show): string =>
  [
    `${quoted(name)} bei ${show.length(from)}`,
    ...(above === 0 ? [] : [`${show.length(above)} über dem Boden`]),
    ...(count === 1 ? [] : [`${count} nebeneinander`]),
    ...(drawn < count ? [`davon ${drawn} gezeichnet`] : []),
  ].join(', ');

type Move = { readonly kind: 'turn'; readonly degrees: number } | { readonly kind: 'pull'; readonly travel: number };
const opens = (move: Move, show: Show): string =>
  move.kind === 'turn' ? `Geht um ${move.degrees} Grad auf.` : `Kommt ${show.exact(move.travel)} weit heraus.`;
