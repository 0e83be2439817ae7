/**
 * Keeps a figure and its unit on one line.
 *
 * @example glued('0.9 points above (95 % interval 0.1 to 1.8)') // '0.9 points above (95\u00a0% interval 0.1 to 1.8)'
 */
export function glued(sentence: string): string {
  return sentence.replace(/(\d) (?=(?:%|°\S*|[km]?g|m?L|g\/L|h)(?![\p{L}\d]))/gu, '$1\u00a0');
}
