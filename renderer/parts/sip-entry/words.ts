export const words = {
  sip: (label: string) => `A sip of jar ${label}`,
  hint: 'Tang, fizz, sweetness, liking: four digits, such as 5637. With a 10, put spaces between: 10 6 3 7. A dash leaves one out.',
  keep: 'Keep this sip',
  kept: (label: string) => `A sip of jar ${label} is kept.`,
  reads: (said: string) => `That is: ${said}.`,
  note: 'A word on it',
} as const;
