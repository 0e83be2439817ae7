// What a tasting asks for unless the maker says otherwise.

export interface AttributeDefault {
  readonly name: string;
  readonly low: number;
  readonly high: number;
  readonly lowWord: string;
  readonly highWord: string;
}

/**
 * Tang, fizz, sweetness, fruit and vinegar note from 0 to 10 with words at both ends (common practice, no source), and liking
 * on the nine-point hedonic scale (Peryam and Pilgrim, Food Technology 11 (1957) 9).
 */
export const defaultAttributes: readonly AttributeDefault[] = [
  { name: 'tang', low: 0, high: 10, lowWord: 'not tangy', highWord: 'very tangy' },
  { name: 'fizz', low: 0, high: 10, lowWord: 'flat', highWord: 'very fizzy' },
  { name: 'sweetness', low: 0, high: 10, lowWord: 'dry', highWord: 'very sweet' },
  { name: 'fruit', low: 0, high: 10, lowWord: 'no fruit', highWord: 'full of fruit' },
  { name: 'vinegar note', low: 0, high: 10, lowWord: 'none', highWord: 'strong' },
  { name: 'liking', low: 1, high: 9, lowWord: 'dislike extremely', highWord: 'like extremely' },
];
