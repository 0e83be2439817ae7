/** The seven screens, in the order of the Go menu, and where the page shows each. */
export const screens = [
  { name: 'Today', act: 'go:/' },
  { name: 'Trials', act: 'go:/trials' },
  { name: 'House recipes', act: 'go:/house-recipes' },
  { name: 'Bases', act: 'go:/bases' },
  { name: 'Pantry', act: 'go:/pantry' },
  { name: 'Tasters', act: 'go:/tasters' },
  { name: 'Data', act: 'go:/data' },
] as const;
