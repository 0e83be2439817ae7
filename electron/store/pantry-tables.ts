/** The tables of the pantry, as `tables` lists them. */
export const pantryTables = {
  ingredients: {
    owners: [],
    columns: {
      name: 'text',
      kind: 'text',
      water_g: 'number?',
      sugars_g: 'number?',
      sucrose_g: 'number?',
      glucose_g: 'number?',
      fructose_g: 'number?',
      fibre_g: 'number?',
      protein_g: 'number?',
      fat_g: 'number?',
      ash_g: 'number?',
      allergens: 'text',
      note: 'text?',
      source: 'text?',
      measures: 'text?',
    },
  },
  stocks: {
    owners: [],
    columns: {
      name: 'text',
      on_hand_g: 'number?',
      price_per_kg: 'number?',
      price_per_L: 'number?',
      short_g: 'number?',
    },
  },
} as const;
