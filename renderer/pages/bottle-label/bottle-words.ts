import { ingredientName } from '#core/trial/formula.ts';
import { dateWords } from '#renderer/format/moments.ts';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { words } from './words.ts';

type Version = ValueOf<'recipes:open'>['versionList'][number];
type PantryIngredient = Pick<ValueOf<'pantry:list'>['ingredients'][number], 'name' | 'aliases' | 'allergens'>;

/** What the owner writes. */
export interface BottleDraft {
  readonly name: string;
  readonly base: string;
  readonly volume: string;
  /** A day, YYYY-MM-DD, or empty. */
  readonly bestBefore: string;
  readonly lot: string;
  readonly maker: string;
}

/** One piece of the list of ingredients; an allergen is marked. */
export interface Piece {
  readonly text: string;
  readonly isAllergen: boolean;
}

export interface BottleWords {
  readonly name: string;
  /** In order of weight, each in pieces. */
  readonly ingredients: readonly (readonly Piece[])[];
  readonly contains: readonly string[];
  readonly lines: readonly string[];
  readonly facts: readonly { readonly name: string; readonly value: string }[];
  /** Ingredients whose allergens nobody has written down. */
  readonly unknown: readonly string[];
}

/** Words in CAPITALS, three letters and more, are marked. */
function piecesOf(text: string): Piece[] {
  return text
    .split(/(\b\p{Lu}{3,}\b)/u)
    .filter((part) => part !== '')
    .map((part) => ({ text: part, isAllergen: /^\p{Lu}{3,}$/u.test(part) }));
}

/** Without commas, which part the ingredients from each other. @example inOneGo('apricots, dried') // 'dried apricots' */
function inOneGo(name: string): string {
  return name
    .split(/\s*,\s*/)
    .reverse()
    .join(' ');
}

function findIn(pantry: readonly PantryIngredient[], name: string): PantryIngredient | undefined {
  const asked = name.trim().toLowerCase();
  return pantry.find(({ name: own, aliases }) => [own, ...aliases].some((each) => each.toLowerCase() === asked));
}

/** Everything that the label says, from the version and what the owner wrote. */
export function bottleWords(version: Version, draft: BottleDraft, pantry: readonly PantryIngredient[]): BottleWords {
  const additions = version.formula.additions.map((addition) => {
    const name = ingredientName(addition.ingredient);
    const known = findIn(pantry, name);
    const allergens = known?.allergens ?? [];
    const strained = addition.leftIn === false ? ` (${words.strained})` : '';
    // The allergen itself is said beside a name that does not hold it.
    const said = allergens.filter((allergen) => !name.toLowerCase().includes(allergen.replace(/s$/, '')));
    const brackets = said.length === 0 ? [] : [{ text: ` (${said.join(', ')})`, isAllergen: true }];
    return {
      mass_g: addition.mass_g,
      allergens,
      unknown: known === undefined ? [name] : [],
      pieces: [
        { text: inOneGo(name), isAllergen: allergens.length > 0 },
        ...brackets,
        ...(strained === '' ? [] : [{ text: strained, isAllergen: false }]),
      ],
    };
  });
  const base = { mass_g: version.base_mL, pieces: piecesOf(draft.base.trim()) };
  const inBase = base.pieces.filter(({ isAllergen }) => isAllergen).map(({ text }) => text.toLowerCase());
  const codes = new Set(version.cautions.map(({ code }) => code));
  return {
    name: draft.name.trim(),
    ingredients: [base, ...additions].sort((a, b) => b.mass_g - a.mass_g).map(({ pieces }) => pieces),
    contains: [...new Set([...inBase, ...additions.flatMap(({ allergens }) => allergens)])],
    lines: [
      words.keepCold,
      words.open,
      ...Object.entries(words.alcohol).flatMap(([code, line]) => (codes.has(code) ? [line] : [])),
      ...(codes.has('honey-infants') ? [words.honey] : []),
    ],
    facts: [
      { name: words.bestBefore, value: draft.bestBefore === '' ? words.blank : dateWords(`${draft.bestBefore}T12:00`) },
      { name: words.lot, value: draft.lot.trim() || words.blank },
      ...(draft.maker.trim() === '' ? [] : [{ name: words.maker, value: draft.maker.trim() }]),
    ],
    unknown: [...new Set(additions.flatMap(({ unknown }) => unknown))],
  };
}

/** The label as plain text: what is bold there stands in capitals here. */
export function bottleText(label: BottleWords, volume: string): string {
  const ingredients = label.ingredients
    .map((pieces) => pieces.map(({ text, isAllergen }) => (isAllergen ? text.toUpperCase() : text)).join(''))
    .join(', ');
  return [
    label.name,
    `${words.ingredients}: ${ingredients}.`,
    ...(label.contains.length === 0 ? [] : [`${words.contains}: ${label.contains.join(', ').toUpperCase()}.`]),
    ...label.lines,
    ...label.facts.map(({ name, value }) => `${name}: ${value}`),
    volume,
  ].join('\n');
}
