import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import ts from 'typescript';
import { keyOf } from '#core/words/phrase.ts';

/** A phrase as it stands in the source. */
export interface FoundPhrase {
  readonly key: string;
  readonly file: string;
  /** What is put into each numbered place, as the source calls it. */
  readonly puts: readonly string[];
}

const rooms = ['core', 'shared', 'electron', 'renderer'] as const;

/** The files of the program that may say something, in order. */
export function sayingFiles(root: string): string[] {
  return rooms
    .flatMap((room) => readdirSync(join(root, room), { recursive: true }).map((file) => join(room, String(file))))
    .filter((file) => /\.tsx?$/.test(file) && !file.endsWith('.d.ts'))
    .map((file) => file.replaceAll('\\', '/'))
    .sort();
}

export function parsed(root: string, file: string): ts.SourceFile {
  return ts.createSourceFile(file, readFileSync(join(root, file), 'utf8'), ts.ScriptTarget.Latest, true);
}

/** A short name of what is put into a place, which stays the same when only its making changes. */
function nameOf(put: ts.Expression): string {
  if (ts.isIdentifier(put)) return put.text;
  if (ts.isPropertyAccessExpression(put)) return put.name.text;
  if (ts.isParenthesizedExpression(put)) return nameOf(put.expression);
  if (ts.isBinaryExpression(put)) return nameOf(put.left);
  if (ts.isElementAccessExpression(put)) return nameOf(put.expression);
  if (ts.isCallExpression(put)) {
    const { expression: made, arguments: given } = put;
    const [first] = given;
    return ts.isPropertyAccessExpression(made) || first === undefined || ts.isNumericLiteral(first)
      ? nameOf(ts.isPropertyAccessExpression(made) ? made.expression : made)
      : nameOf(made);
  }
  return '…';
}

function partsOf(template: ts.TemplateLiteral): { strings: string[]; puts: string[] } {
  if (ts.isNoSubstitutionTemplateLiteral(template)) return { strings: [template.text], puts: [] };
  return {
    strings: [template.head.text, ...template.templateSpans.map(({ literal }) => literal.text)],
    puts: template.templateSpans.map(({ expression }) => nameOf(expression)),
  };
}

/** Whether a node is words with the tag `phrase`. */
export function isPhrase(node: ts.Node): node is ts.TaggedTemplateExpression {
  return ts.isTaggedTemplateExpression(node) && ts.isIdentifier(node.tag) && node.tag.text === 'phrase';
}

/** Every phrase of one file, in the order in which they stand. */
export function phrasesOf(source: ts.SourceFile): FoundPhrase[] {
  const found: FoundPhrase[] = [];
  const visit = (node: ts.Node): void => {
    if (isPhrase(node)) {
      const { strings, puts } = partsOf(node.template);
      found.push({ key: keyOf(strings), file: source.fileName, puts });
    }
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
}

/** Every phrase of the program. */
export function findPhrases(root: string): FoundPhrase[] {
  return sayingFiles(root).flatMap((file) => phrasesOf(parsed(root, file)));
}
