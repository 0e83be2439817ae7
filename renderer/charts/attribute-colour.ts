const known = ['tang', 'fizz', 'sweetness', 'liking'];

/** The token that draws an attribute; its name always stands beside it. */
export function attributeColour(attribute: string): string {
  const name = attribute.toLowerCase();
  return known.includes(name) ? `var(--chart-${name})` : 'var(--chart-other)';
}

/** The four usual attributes first, in the order of the score sheet. */
export function attributesInOrder(attributes: readonly string[]): string[] {
  const place = (name: string) => {
    const at = known.indexOf(name.toLowerCase());
    return at === -1 ? known.length : at;
  };
  return [...attributes].sort((a, b) => place(a) - place(b));
}
