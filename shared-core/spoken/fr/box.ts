import type { Show } from '../../words/show.js';
import type { Translations } from '../tables.js';
import { compte, et, quoted } from './words.js';

/** Ce qu’il y a à dire des caissons dans l’espace. */
export const box = {
  'box-view': {
    title: ({ carcass, size }) => `${carcass}, ${size}, tout ce qui y est monté compris`,
    part: ({ role, key }) => part(role, key),
    partDescribed: ({ role, key, size, board, bores, found, move }, show) =>
      [
        `${part(role, key)} : ${size}, ${board}.`,
        bores === 0 ? 'Aucun perçage.' : `${compte(bores, 'perçage')}.`,
        ...(move === null ? [] : [opens(move, show)]),
        ...(found.length === 0 ? [] : [`Constats : ${et(severities(found))}.`]),
      ].join(' '),
    described: ({ title, parts, bores, fittings, doors, drawers, found }) =>
      [
        `${title} : ${compte(parts.length, 'panneau', 'panneaux')} (${et(parts)}), ${compte(bores, 'perçage')}, ${compte(fittings, 'ferrure')}.`,
        ...(doors + drawers === 0
          ? []
          : [
              `À ouvrir : ${et([...(doors === 0 ? [] : [compte(doors, 'porte')]), ...(drawers === 0 ? [] : [compte(drawers, 'tiroir')])])}.`,
            ]),
        found.length === 0 ? 'Aucun constat.' : `Constats : ${et(severities(found))}.`,
      ].join(' '),
    wall: ({ wall, long, carcasses }, show) =>
      `Mur ${wall}, ${compte(carcasses, 'caisson')}, ${show.length(long)} de long`,
    wallDescribed: ({ title, stands }, show) =>
      `${title}. Depuis la gauche : ${stands.map((one) => stood(one, show)).join(' ; ')}.`,
    shopHasNoBox: () => 'Ceci est un fichier d’atelier. Ouvrez un fichier de travail pour voir ses meubles.',
  },
} satisfies Translations;

const ROLES: Readonly<Record<string, string>> = {
  'left side': 'Côté gauche',
  'right side': 'Côté droit',
  bottom: 'Bas',
  top: 'Dessus',
  rail: 'Traverse',
  divider: 'Séparation',
  'fixed shelf': 'Tablette fixe',
  'loose shelf': 'Tablette mobile',
  back: 'Fond',
  plinth: 'Socle',
  door: 'Porte',
  'drawer back': 'Arrière de tiroir',
  'drawer bottom': 'Fond de tiroir',
  'drawer front': 'Façade de tiroir',
  'drawer side': 'Côté de tiroir',
  'fixed front': 'Façade fixe',
  'end panel': 'Joue',
  'blind panel': 'Panneau aveugle',
  filler: 'Fileur',
  'front of a drawer’s box': 'Devant de la caisse du tiroir',
};
const part = (role: string, key: string): string =>
  key === role ? (ROLES[role] ?? role) : `${ROLES[role] ?? role} ${quoted(key)}`;

function severities(found: readonly ('error' | 'warning' | 'info')[]): readonly string[] {
  const count = (one: string): number => found.filter((severity) => severity === one).length;
  const [errors, warnings, infos] = [count('error'), count('warning'), count('info')];
  return [
    ...(errors === 0 ? [] : [compte(errors, 'erreur')]),
    ...(warnings === 0 ? [] : [compte(warnings, 'avertissement')]),
    ...(infos === 0 ? [] : [compte(infos, 'remarque')]),
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
    `${quoted(name)} à ${show.length(from)}`,
    ...(above === 0 ? [] : [`${show.length(above)} au-dessus du sol`]),
    ...(count === 1 ? [] : [`${count} côte à côte`]),
    ...(drawn < count ? [`dont ${drawn} dessinés`] : []),
  ].join(', ');

type Move = { readonly kind: 'turn'; readonly degrees: number } | { readonly kind: 'pull'; readonly travel: number };
const opens = (move: Move, show: Show): string =>
  move.kind === 'turn' ? `S’ouvre de ${move.degrees} degrés.` : `Sort de ${show.exact(move.travel)}.`;
