import type { Finding } from '../document/finding.js';
import { orEmpty } from '../schema/fields.js';
import { things, type Entry, type Field, type Infer, type NamedSchema } from '../schema/schema.js';
import { errorAt } from '../schema/tell.js';
import type { FittingKind } from './names.js';
import { fittingKinds, kindOf, type Definition, type Fitting, type ListedFittings } from './kinds.js';

type Sections = {
  readonly [D in ListedFittings as D['section']]: Field<
    NamedSchema<D['item'], { readonly of: 'fitting'; readonly kind: D['kind'] }>,
    false,
    { readonly as: 'empty' }
  >;
};
type Said = { readonly [S in keyof Sections]?: Infer<Sections[S]['schema']> };
type SaidEntry = Entry<Infer<Definition['item']>>;
type SaidSections = Readonly<Record<string, { readonly value: readonly SaidEntry[] } | undefined>>;

/** The keys of a shop file that fittings stand under, as fields of its schema. */
export const fittingSections = Object.fromEntries(
  fittingKinds.map(({ kind, section, sectionAbout, item }) => [
    section,
    orEmpty(things('fitting', kind, item.noun, sectionAbout, item)),
  ]),
) as unknown as Sections;

const entriesOf = (said: Said, { section }: Definition): readonly SaidEntry[] =>
  (said as SaidSections)[section]?.value ?? [];

/** Tells what cannot be in the fittings that a shop file writes, and gives the file with what to go on with. */
export function judgedFittings<S extends Said>(said: S, findings: Finding[]): S {
  const judged = fittingKinds.flatMap((definition): (readonly [string, unknown])[] => {
    const section = (said as SaidSections)[definition.section];
    if (section === undefined) return [];
    const value = section.value.map((entry) => {
      const { said: instead, faults } = definition.judged(entry.value.value);
      findings.push(...faults.map(({ at, message }) => errorAt('value-wrong', at.place, message)));
      return { ...entry, value: { ...entry.value, value: instead } };
    });
    return [[definition.section, { ...section, value }]];
  });
  return { ...said, ...Object.fromEntries(judged) };
}

/** A name that a fitting of the shop file gives for another one, and the kind that this must be. */
export interface SaidCompanion {
  readonly name: SaidEntry['name'];
  readonly kind: FittingKind;
}

/** The names that fittings of a shop file give for others. */
export function companionsSaid(said: Said): readonly SaidCompanion[] {
  return fittingKinds.flatMap((definition) =>
    entriesOf(said, definition).flatMap(({ value }) =>
      definition.companions.flatMap(({ key, kind }) => {
        const name = value.value[key] as SaidEntry['name'] | undefined;
        return name === undefined ? [] : [{ name, kind }];
      }),
    ),
  );
}

/** The names that a fitting gives for others. */
export function companionsOf(fitting: Fitting): readonly string[] {
  return kindOf(fitting)
    .companions.map((one) => one.named(fitting))
    .filter((name) => name !== null);
}

/** The kind that a fitting must be whose name stands at a path of the shop file; null where any will do, or none belongs. */
export function companionKindAt(path: readonly (string | number)[]): FittingKind | null {
  const [section, , key] = path;
  const definition = fittingKinds.find((one) => one.section === section);
  return definition?.companions.find((one) => one.key === key)?.kind ?? null;
}
