import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { catalogueOf, catalogueText } from './catalogue.ts';
import { findPhrases } from './find-phrases.ts';

// npm run words: writes words/en.json, the one catalogue of what the screens say.

const root = join(import.meta.dirname, '..', '..');
const catalogue = catalogueOf(findPhrases(root));
writeFileSync(join(root, 'words', 'en.json'), catalogueText(catalogue));
console.log(`words/en.json: ${Object.keys(catalogue).length} phrases.`);
