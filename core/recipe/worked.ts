/** An amount worked out, or a sentence why it cannot be. */
export type Worked<Value> =
  | { readonly ok: true; readonly value: Value }
  | { readonly ok: false; readonly code: 'target-out-of-reach' | 'sugar-unknown'; readonly message: string };

/** How a sentence writes a strength, such as grams per litre in the kitchen's own measures. */
export type WrittenStrength = (strength: number) => string;

/** A refusal in a sentence. */
export function outOfReach(message: string): Worked<never> {
  return { ok: false, code: 'target-out-of-reach', message };
}
