/** The tables that pages lead to the history of. */
export type Recorded = 'jars' | 'trials' | 'tasters' | 'house_recipes' | 'bases' | 'cultures';
