export const words = {
  instead: (amount: string) => `Make it ${amount}`,
  meant: (amount: string) => `I mean ${amount}`,
  understood: (amount: string) => `Understood: ${amount}`,
} as const;
