/** The five steps of a just-about-right answer, from −2 to 2 (common practice, no source). */
export const justAboutRightWords = [
  'much too little',
  'too little',
  'just right',
  'too much',
  'much too much',
] as const;

/** The word for an answer; null between two steps and outside them. @example justAboutRightWord(-1) // 'too little' */
export function justAboutRightWord(answer: number): string | null {
  return justAboutRightWords[answer + 2] ?? null;
}

/** How tables write the middle besides. */
const alsoJustRight = ['just about right', 'about right'];

/** The answer that a word stands for; null when it is none of the five. @example justAboutRightAnswer('Too much') // 1 */
export function justAboutRightAnswer(written: string): number | null {
  const plain = written
    .normalize('NFC')
    .trim()
    .toLowerCase()
    .replace(/[\s-]+/g, ' ');
  if (alsoJustRight.includes(plain)) return 0;
  const step = (justAboutRightWords as readonly string[]).indexOf(plain);
  return step < 0 ? null : step - 2;
}
