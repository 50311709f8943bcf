import type { NumberedHoles } from '../../papers/pins.js';
import type { BoresTold } from '../../fittings/fitting.js';
import type { BorePurpose } from '../../fittings/names.js';
import { kilograms } from '../../loads/messages.js';
import type { Micrometres, Unit } from '../../length/units.js';
import { counted, listed, quoted as inEnglishQuotes, runsOfNumbers } from '../../words/english.js';
import type { JointPanels, MixedEnd, SideName } from '../../words/names.js';
import type { Show } from '../../words/show.js';

/** Un texte de l’utilisateur entre guillemets. */
export const quoted = (text: string): string => `« ${inEnglishQuotes(text).slice(1, -1)} »`;
export const et = (words: readonly string[]): string => listed(words, 'et');
export const ou = (words: readonly string[]): string =>
  words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} ou ${words.at(-1)!}`;
/** Le premier pour un seul, le second pour tout autre nombre. */
export const nombre = (count: number, one: string, several: string): string => (count === 1 ? one : several);
export const compte = (count: number, one: string, several = `${one}s`): string => counted(count, one, several);
/** '1, 6 et 10 à 15'. */
export const runs = (numbers: readonly number[]): string => runsOfNumbers(numbers, 'à', 'et');
/** Avec la virgule de la langue. */
export const virgule = (figure: string): string => figure.replace('.', ',');
export const kg = (weight: number): string => virgule(kilograms(weight));
export const lengths = (places: readonly Micrometres[], show: Show): string => et(places.map(show.length));

/** '7 min 30 s'. */
export function temps(seconds: number): string {
  const [hours, minutes, rest] = [Math.floor(seconds / 3600), Math.floor(seconds / 60) % 60, seconds % 60];
  const parts = [hours > 0 ? `${hours} h` : '', minutes > 0 ? `${minutes} min` : '', rest > 0 ? `${rest} s` : ''];
  return parts.filter((part) => part !== '').join(' ') || 'aucun temps';
}

/** À quoi servent les perçages ; tous sont masculins. */
export const BORES: Readonly<Record<BorePurpose, readonly [one: string, several: string]>> = {
  dowel: ['perçage de tourillon', 'perçages de tourillons'],
  clearance: ['trou de passage', 'trous de passage'],
  recess: ['fraisage de tête de vis', 'fraisages de têtes de vis'],
  pilot: ['avant-trou', 'avant-trous'],
  cam: ['perçage d’excentrique', 'perçages d’excentriques'],
  'cam-bolt': ['perçage de boulon', 'perçages de boulons'],
  'cam-stud': ['perçage de goujon', 'perçages de goujons'],
  row: ['trou de rangée', 'trous de rangée'],
  cup: ['perçage de boîtier', 'perçages de boîtiers'],
  'cup-screw': ['perçage de vis près du boîtier', 'perçages de vis près des boîtiers'],
  plate: ['perçage d’embase', 'perçages d’embases'],
  slide: ['perçage de coulisse', 'perçages de coulisses'],
  'slide-in-box': ['perçage de coulisse', 'perçages de coulisses'],
  pull: ['perçage de poignée', 'perçages de poignées'],
  'plinth-clip': ['perçage d’agrafe', 'perçages d’agrafes'],
  foot: ['perçage de pied', 'perçages de pieds'],
  angle: ['perçage d’équerre', 'perçages d’équerres'],
  'angle-in-front': ['perçage d’équerre', 'perçages d’équerres'],
  'rail-socket': ['perçage de tringle', 'perçages de tringles'],
  bracket: ['perçage de suspension', 'perçages de suspension'],
  'front-clearance': ['trou de passage de la façade', 'trous de passage de la façade'],
  'front-pilot': ['avant-trou de la façade', 'avant-trous de la façade'],
  spare: ['trou vide', 'trous vides'],
};
/** 'Le perçage de tourillon dans bottom', 'Les 4 perçages de tourillons dans bottom et top'. */
export const ofBores = (purpose: BorePurpose, { count, panels }: Omit<BoresTold, 'purpose'>): string =>
  `${count === 1 ? `${BORES[purpose][0].startsWith('a') ? 'L’' : 'Le '}${BORES[purpose][0]}` : `Les ${count} ${BORES[purpose][1]}`} dans ${et(panels)}`;
export const theBores = ({ purpose, ...told }: BoresTold): string => ofBores(purpose, told);

/** 'du chant avant'. */
export const FROM: Readonly<Record<SideName | MixedEnd, string>> = {
  'front edge': 'du chant avant',
  'back edge': 'du chant arrière',
  'hinge edge': 'du chant des charnières',
  'closing edge': 'du chant de fermeture',
  'upper edge': 'du chant supérieur',
  'lower edge': 'du chant inférieur',
  'inner edge': 'du chant intérieur',
  'corner edge': 'du chant côté angle',
  'outer edge': 'du chant extérieur',
  'slanting edge': 'du chant en biais',
  'inside face': 'de la face intérieure',
  'outside face': 'de la face extérieure',
  'bottom end': 'du bout inférieur',
  'top end': 'du bout supérieur',
  'left end': 'du bout gauche',
  'right end': 'du bout droit',
  'front end': 'du bout avant',
  'back end': 'du bout arrière',
  'bottom, left or front end': 'du bout inférieur, gauche ou avant',
  'bottom or left end': 'du bout inférieur ou gauche',
};
/** 'le chant avant'. */
export const SIDES: Readonly<Record<SideName | MixedEnd, string>> = {
  'front edge': 'le chant avant',
  'back edge': 'le chant arrière',
  'hinge edge': 'le chant des charnières',
  'closing edge': 'le chant de fermeture',
  'upper edge': 'le chant supérieur',
  'lower edge': 'le chant inférieur',
  'inner edge': 'le chant intérieur',
  'corner edge': 'le chant côté angle',
  'outer edge': 'le chant extérieur',
  'slanting edge': 'le chant en biais',
  'inside face': 'la face intérieure',
  'outside face': 'la face extérieure',
  'bottom end': 'le bout inférieur',
  'top end': 'le bout supérieur',
  'left end': 'le bout gauche',
  'right end': 'le bout droit',
  'front end': 'le bout avant',
  'back end': 'le bout arrière',
  'bottom, left or front end': 'le bout inférieur, gauche ou avant',
  'bottom or left end': 'le bout inférieur ou gauche',
};
/** 'chant avant', aussi pour les noms déjà français. */
export const bare = (side: string): string =>
  side in SIDES ? SIDES[side as SideName].replace(/^(?:le|la) /, '') : side;
/** Avec l’article ; ce qui est déjà français est une face. */
export const le = (side: string): string => (side in SIDES ? SIDES[side as SideName] : `la ${side}`);
/** 'du chant avant'. */
export const from = (side: string): string => (side in FROM ? FROM[side as SideName] : `de la ${side}`);

/** 'dans la face intérieure', 'dans le bout gauche'. */
export const dans = (side: string): string => `dans ${le(side)}`;
export const unité = (unit: Unit): string => (unit === 'mm' ? 'millimètres' : 'pouces');

export const fromEnd = (end: string): string => (end in FROM ? FROM[end as SideName] : `de : ${end}`);

export const LINE = { front: 'avant', rear: 'arrière' } as const;
export const lineOf = (line: string): string => (line === 'front' ? LINE.front : line === 'rear' ? LINE.rear : line);
/** 'trou 11' ; 'trou 11 dans left et right, 10 dans divider-1'. */
export const holesTold = (holes: NumberedHoles): string =>
  holes.length === 1
    ? `trou ${holes[0]!.number}`
    : `trou ${holes.map(({ number, uprights }) => `${number} dans ${et(uprights)}`).join(', ')}`;
export const HAND = { left: 'à gauche', right: 'à droite' } as const;
export const handOf = (hand: string): string => (hand === 'left' ? HAND.left : hand === 'right' ? HAND.right : hand);

/** 'L’assemblage de bottom et left' ; deux sont nommés, les autres comptés. */
export function joints(told: readonly JointPanels[]): string {
  const [first, second] = told.map((panels) => et(panels));
  if (second === undefined) return `L’assemblage de ${first ?? ''}`;
  if (told.length === 2) return `Les assemblages de ${first!} et de ${second}`;
  return `Les assemblages de ${first!}, de ${second} et ${told.length - 2} autres`;
}

interface Noun {
  /** Avec l’article indéfini ; après ‘de’ ; sans article. */
  readonly a: string;
  readonly of: string;
  readonly bare: string;
}
const m = (bare: string): Noun => ({ a: `un ${bare}`, of: `d’un ${bare}`, bare });
const f = (bare: string): Noun => ({ a: `une ${bare}`, of: `d’une ${bare}`, bare });
const s = (bare: string): Noun => ({ a: `des ${bare}`, of: `des ${bare}`, bare });

/** Ce qui est nommé et décrit dans les fichiers. */
const NOUNS: Readonly<Record<string, Noun>> = {
  carcass: m('caisson'),
  job: m('travail'),
  shop: m('atelier'),
  'shop file': m('fichier d’atelier'),
  board: m('panneau brut'),
  band: f('bande de chant'),
  bands: s('bandes de chant'),
  fitting: f('ferrure'),
  hinge: f('charnière'),
  slide: f('coulisse'),
  'cup screws': s('vis du boîtier'),
  pull: f('poignée'),
  pulls: s('poignées'),
  bracket: f('ferrure de suspension'),
  brackets: s('ferrures de suspension'),
  'bracket bore': m('perçage de suspension'),
  'wardrobe rail': f('tringle'),
  'wardrobe-rail': f('tringle'),
  'wardrobe rail in a bay': f('tringle'),
  'wardrobe rails': s('tringles'),
  foot: m('pied'),
  angle: f('équerre'),
  'plinth clip': f('agrafe de plinthe'),
  front: f('façade'),
  machine: f('machine'),
  machines: s('machines'),
  stop: f('butée'),
  panel: m('panneau'),
  back: m('fond'),
  divider: f('séparation'),
  shelf: f('tablette'),
  doors: s('portes'),
  drawers: s('tiroirs'),
  dowel: m('tourillon'),
  'connector screw': f('vis d’assemblage'),
  'cam fitting': f('ferrure excentrique'),
  'vertical head': f('tête verticale'),
  'horizontal head': f('tête horizontale'),
  'line drill': f('perceuse en ligne'),
  'cup borer': f('perceuse de charnières'),
  'panel saw': f('scie à panneaux'),
  'edge bander': f('plaqueuse de chants'),
  'case clamp': f('cadreuse'),
  clamp: m('presseur'),
  sheet: m('panneau entier'),
  size: f('taille'),
  sizes: s('tailles'),
  standing: f('pose'),
  tolerances: s('tolérances'),
  habits: s('habitudes'),
  handling: f('manutention'),
  changeover: m('changement de réglage'),
  defaults: s('valeurs par défaut'),
  'panel range': f('plage de panneaux'),
  'label sheet': f('planche d’étiquettes'),
  'end panels': s('joues'),
  fillers: s('fileurs'),
  'row hole': m('trou de rangée'),
  'row holes': s('trous de rangée'),
  'hinge cup': m('boîtier'),
};
/** Le nom d’une chose dans un fichier ; ce qui manque ici est déjà français. */
export const noun = (english: string): Noun => NOUNS[english] ?? { a: english, of: `de ${english}`, bare: english };

/** '1 réglage, 2 descentes et 30 s'. */
export const work = ({
  setUps,
  strokes,
  seconds,
}: {
  readonly setUps: number;
  readonly strokes: number;
  readonly seconds: number;
}): string =>
  et([
    ...(setUps > 0 ? [compte(setUps, 'réglage')] : []),
    ...(strokes > 0 ? [compte(strokes, 'descente')] : []),
    ...(seconds > 0 ? [temps(seconds)] : []),
  ]);

/** Aucune erreur de l’utilisateur. */
export const OUR_FAULT = 'L’erreur vient de Borewright, pas de vous';
