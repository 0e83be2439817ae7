import type { RequestName } from '#shared/contract/all-requests.ts';

// Which answers show rows of which table: the one place that decides what is read again after a change.

const findingViews = [
  'findings:read',
  'findings:places',
  'findings:penalties',
  'findings:drivers',
  'findings:tasters',
] as const;
const trialViews = [
  'trials:list',
  'trials:open',
  'trials:timeline',
  'jars:open',
  'bases:list',
  'bases:open',
  'sips:byTrial',
] as const;
const scienceViews = ['sheets:ofTrial', 'sheets:ofJar', 'course:read'] as const;
const tastingViews = [
  'tastings:list',
  'tastings:open',
  'tastings:pour',
  'tastings:warn',
  'scores:list',
  'remarks:list',
  ...findingViews,
  'trials:list',
  'trials:open',
  'tasters:list',
  'profiles:open',
  'profiles:judge',
  'panel:experience',
] as const;
const apartViews = ['discriminations:open', 'discriminations:pour'] as const;
const dayViews = ['today:read', 'bottles:list', 'trials:calendar'] as const;
const bottleViews = ['bottles:list', 'today:read', 'sheets:ofJar'] as const;
const draftViews = ['recipes:preview'] as const;
const recipeViews = ['recipes:list', 'recipes:open', 'recipes:scale'] as const;

const shownBy: Readonly<Record<string, readonly RequestName[]>> = {
  kitchens: [],
  tasters: [...tastingViews, ...apartViews],
  ingredients: [
    ...draftViews,
    'recipes:open',
    'pantry:list',
    'trials:open',
    'jars:open',
    ...scienceViews,
    'tastings:open',
    'tastings:warn',
    ...apartViews,
  ],
  stocks: ['pantry:list'],
  cultures: ['cultures:list', 'cultures:open', 'bases:list', 'bases:open', 'course:read', 'today:read'],
  culture_log: ['cultures:list', 'cultures:open', 'today:read'],
  snoozes: ['today:read'],
  bottlings: bottleViews,
  bottle_openings: bottleViews,
  bases: [
    ...draftViews,
    'recipes:open',
    'bases:list',
    'bases:open',
    'cultures:open',
    'trials:open',
    'today:read',
    ...scienceViews,
  ],
  trials: [
    ...draftViews,
    ...trialViews,
    'photos:ofTrial',
    ...scienceViews,
    ...findingViews,
    ...dayViews,
    'recipes:open',
  ],
  levels: [...draftViews, ...trialViews, 'photos:ofTrial', ...scienceViews, ...findingViews, 'recipes:open'],
  jars: [
    ...draftViews,
    ...trialViews,
    'photos:ofTrial',
    ...scienceViews,
    ...dayViews,
    'tastings:open',
    'tastings:pour',
    ...findingViews,
    ...apartViews,
  ],
  readings: ['trials:timeline', 'jars:open', 'bases:open', 'today:read', ...scienceViews],
  sightings: [...trialViews, 'today:read', ...scienceViews],
  sips: [...draftViews, 'trials:timeline', 'jars:open', 'sips:byTrial', 'today:read'],
  tastings: [...draftViews, ...tastingViews, 'today:read', 'trials:calendar', 'trials:timeline', 'recipes:open'],
  photos: ['trials:timeline', 'photos:ofJar', 'photos:ofTrial'],
  attributes: tastingViews,
  samples: ['today:read', ...tastingViews],
  servings: tastingViews,
  scores: [...tastingViews, ...draftViews],
  remarks: tastingViews,
  wishes: ['profiles:open', 'profiles:judge'],
  set_asides: [...findingViews, 'recipes:preview', 'profiles:judge', 'panel:experience'],
  discriminations: ['today:read', 'discriminations:list', ...apartViews],
  presentations: ['discriminations:list', 'discriminations:open'],
  house_recipes: ['bottles:list', ...recipeViews],
  recipe_versions: recipeViews,
  version_sources: recipeViews,
  batches: ['bottles:list', ...recipeViews],
  erasures: [],
};

/** What every change touches, whatever its table. */
const always: readonly RequestName[] = [
  'kitchen:open',
  'undo:state',
  'history:read',
  'history:step',
  'history:row',
  'history:about',
  'history:parts',
  'bin:list',
];

/** The requests whose answers may show rows of these tables; null when a table is unknown, and so all of them. */
export function requestsShowing(tables: readonly string[]): ReadonlySet<string> | null {
  const names = new Set<string>(always);
  for (const table of tables) {
    const shown = shownBy[table];
    if (shown === undefined) return null;
    for (const name of shown) names.add(name);
  }
  return names;
}
