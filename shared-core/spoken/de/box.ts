import type { Show } from '../../words/show.js';
import type { Translations } from '../tables.js';
import { anzahl, quoted, und } from './words.js';

/** Was von Körpern im Raum zu sagen ist. */
export const box = {
  'box-view': {
    title: ({ carcass, size }) => `${carcass}, ${size}`,
    part: ({ role, key }) => part(role, key),
    partDescribed: ({ role, key, size, board, bores, found, opens }) =>
      [
        `${part(role, key)}: ${size}, ${board}.`,
        bores === 0 ? 'Keine Bohrungen.' : `${anzahl(bores, 'Bohrung', 'Bohrungen')}.`,
        ...(opens === null ? [] : [`Geht um ${opens} Grad auf.`]),
        ...(found.length === 0 ? [] : [`Befunde: ${und(severities(found))}.`]),
      ].join(' '),
    described: ({ title, parts, bores, fittings, opening, found }) =>
      [
        `${title}: ${anzahl(parts.length, 'Platte', 'Platten')} (${und(parts)}), ${anzahl(bores, 'Bohrung', 'Bohrungen')}, ${anzahl(fittings, 'Beschlag', 'Beschläge')}.`,
        ...(opening === 0 ? [] : [`${anzahl(opening, 'Tür lässt', 'Türen lassen')} sich öffnen.`]),
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
