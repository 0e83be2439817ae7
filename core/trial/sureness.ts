export const surenesses = ['very', 'quite', 'fairly', 'unclear', 'unknown'] as const;
/** How sure a panel is that the levels of one attribute are not all alike. */
export type Sureness = (typeof surenesses)[number];
