/** The signs that may stand before the decimals of a shown figure. */
export const decimalMarks = ['.', ','] as const;
export type DecimalMark = (typeof decimalMarks)[number];

let mark: DecimalMark = '.';

/** From now on figures are shown with this mark. Files, requests and typing are left as they are. */
export function layDecimalMark(chosen: DecimalMark): void {
  mark = chosen;
}

/** The mark with which figures are shown now. */
export function decimalMark(): DecimalMark {
  return mark;
}

/** Does a piece of work with the decimal point, as files have it, whatever was chosen. */
export async function withPoint<Made>(work: () => Promise<Made>): Promise<Made> {
  const chosen = mark;
  mark = '.';
  try {
    return await work();
  } finally {
    mark = chosen;
  }
}

function marked(figure: string): string {
  return mark === '.' ? figure : figure.replace('.', mark);
}

/** A figure as shown, with all its decimals. @example shownNumber(2.5) // '2.5', or '2,5' where that was chosen */
export function shownNumber(value: number): string {
  return marked(String(value));
}

/** A figure as shown, with so many decimals. @example fixed(2.345, 1) // '2.3', or '2,3' where that was chosen */
export function fixed(value: number, decimals: number): string {
  return marked(value.toFixed(decimals));
}

/** Thousands apart by the sign that is not the decimal mark. @example counting(12500) // '12,500', or '12.500' */
export function counting(whole: number): string {
  const text = whole.toLocaleString('en');
  return mark === '.' ? text : text.replace(/[.,]/g, (sign) => (sign === ',' ? '.' : ','));
}

/** The number that a shown figure stands for, such as 12500 for '12,500'; NaN where there is none. */
export function numberShown(figure: string | number): number {
  if (typeof figure === 'number') return figure;
  const bare = figure
    .replaceAll(mark === '.' ? ',' : '.', '')
    .replace(mark, '.')
    .replace('−', '-');
  return Number.parseFloat(bare);
}
