// How a remark says that a taster did not get to a sample. People and spreadsheets read it as it stands.

const opening = 'missed';

/** Whether a remark says that the sample was missed. @example saysMissed('missed: the glass broke') // true */
export function saysMissed(words: string): boolean {
  return words === opening || words.startsWith(`${opening}:`);
}

/** The remark of a missed sample, with what was said of it before. @example missedRemark('too cold') // 'missed: too cold' */
export function missedRemark(said: string): string {
  const words = withoutMissed(said);
  return words === '' ? opening : `${opening}: ${words}`;
}

/** What a remark says besides that the sample was missed. @example withoutMissed('missed: too cold') // 'too cold' */
export function withoutMissed(words: string): string {
  return saysMissed(words) ? words.slice(opening.length).replace(/^:\s*/, '') : words;
}
