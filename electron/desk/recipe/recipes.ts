import { scaleToVolume } from '#core/recipe/scale-to-volume.ts';
import { phrase } from '#core/words/phrase.ts';
import { Failure } from '#shared/failure.ts';
import type { Kitchen } from '#store/kitchen.ts';
import { findRecipe, listRecipes, type Version } from '#store/rows/recipes.ts';
import { storedMoment } from '#store/stored-moment.ts';
import { found } from '../found.ts';
import type { Handlers } from '../handler.ts';
import { cautionsOfVersion } from './cautions-of-version.ts';
import { draftVersion } from './draft-version.ts';
import { insertVersion } from './insert-version.ts';

/** The asked version of a recipe, or its latest. */
function versionOf(kitchen: Kitchen, recipe: string, number: number | undefined): { name: string; version: Version } {
  const whole = found(findRecipe(kitchen.read, recipe), 'house recipe', 'recipe');
  const version =
    number === undefined ? whole.versionList.at(-1) : whole.versionList.find((each) => each.number === number);
  return { name: whole.name, version: found(version, 'version', 'version') };
}

/** As much of a thing as the contract lets a formula hold. */
function isWeighable(amount: number): boolean {
  return amount >= 0.001 && amount <= 1_000_000;
}

export const recipeHandlers: Handlers<
  | 'recipes:preview'
  | 'recipes:promote'
  | 'recipes:list'
  | 'recipes:open'
  | 'recipes:scale'
  | 'recipes:remove'
  | 'batches:log'
> = {
  'recipes:preview'(kitchen, asked) {
    const { draft } = draftVersion(kitchen.read, kitchen, asked);
    return { ...draft, cautions: cautionsOfVersion(kitchen, draft) };
  },
  'recipes:promote'(kitchen, input) {
    const summary = phrase`Promote “${input.level}” to the house recipe “${input.name}”`;
    return kitchen.write({ request: 'recipes:promote', summary }, (writer) => insertVersion(writer, kitchen, input));
  },
  'recipes:list': (kitchen) => ({ recipes: listRecipes(kitchen.read) }),
  'recipes:open'(kitchen, { recipe }) {
    const whole = found(findRecipe(kitchen.read, recipe), 'house recipe', 'recipe');
    const versionList = whole.versionList.map((each) => ({ ...each, cautions: cautionsOfVersion(kitchen, each) }));
    return { ...whole, versionList };
  },
  'recipes:scale'(kitchen, input) {
    const { version } = versionOf(kitchen, input.recipe, input.version);
    const scaled = scaleToVolume({ ...version, additions: version.formula.additions }, input.volume_mL);
    if ([scaled.base_mL, ...scaled.additions.map(({ mass_g: mass }) => mass)].some((amount) => !isWeighable(amount))) {
      throw new Failure(
        'refused',
        phrase`At this volume something would come to less than a thousandth of a gram or millilitre, or to more than 1,000,000. Choose another volume.`,
        ['volume_mL'],
      );
    }
    return { recipe: input.recipe, version: version.number, ...scaled, additions: [...scaled.additions] };
  },
  'recipes:remove'(kitchen, { recipe }) {
    const row = found(kitchen.read.row('house_recipes', recipe), 'house recipe', 'recipe');
    return kitchen.write(
      { request: 'recipes:remove', summary: phrase`Remove the house recipe “${row.name}”` },
      (writer) => {
        writer.remove('house_recipes', recipe);
        return { recipe };
      },
    );
  },
  'batches:log'(kitchen, input) {
    const { name, version } = versionOf(kitchen, input.recipe, input.version);
    return kitchen.write(
      { request: 'batches:log', summary: phrase`Log a batch of “${name}”, version ${version.number}` },
      (writer) => ({
        batch: writer.insert('batches', {
          version_id: version.id,
          made_at: input.madeAt === undefined ? writer.now : storedMoment(input.madeAt),
          volume_mL: input.volume_mL,
          lot: input.lot ?? null,
          note: input.note ?? null,
        }).id,
      }),
    );
  },
};
