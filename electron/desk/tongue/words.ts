import type { Computers } from '../handler.ts';
import { layTongue } from './tongue.ts';
import { languagesThere, translationOf, translationProblem } from './translation-files.ts';

export const wordsComputers: Computers<'words:languages' | 'words:read'> = {
  'words:languages': () => ({
    languages: languagesThere().map((language) => ({ language, problem: translationProblem(language) })),
  }),
  'words:read'({ language }) {
    const read = translationOf(language);
    // A file that was changed since is said from now on, by the desk too.
    layTongue(read.language, read);
    return { language: read.language, words: { ...read.words }, total: read.total, unknown: read.unknown };
  },
};
