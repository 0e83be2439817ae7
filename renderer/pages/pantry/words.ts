export const words = {
  title: 'Pantry',
  lead: 'What can be weighed in, with what 100 g of it holds. Sugar and water decide the jar’s volume and what can become alcohol.',
  search: 'Search the pantry',
  none: 'Nothing in the pantry is called that.',
  own: 'your own',
  table: (kind: string) => `${kind}, per 100 g`,
  basis: 'A dash means that nobody measured it; it is never counted as zero.',
} as const;
