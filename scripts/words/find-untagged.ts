import ts from 'typescript';
import { isPhrase } from './find-phrases.ts';

/** Words that stand in the source without the tag, and so could not be said in another language. */
export interface Untagged {
  readonly file: string;
  readonly line: number;
  readonly words: string;
}

/** What is no word of the screen: tables of names from elsewhere, the log for a report, files' own words, the sample's invented notes. */
const exempt =
  /^(core\/(numeric|pantry)\/|core\/units\/unit-table|electron\/(preload|hosts\/(loopback|headless|ipc)\/|store\/(migrations|carry\/(column-words-table|csv-metadata))|desk\/(sample-kitchen\/|kitchen\/report))|shared\/(contract\/|default-attributes|hedonic-words|just-about-right-words)|renderer\/.*csv)/;

const wordAttributes = new Set([
  'label',
  'title',
  'aria-label',
  'placeholder',
  'caption',
  'desc',
  'lead',
  'hint',
  'alt',
  'head',
]);

/** Those who are told something that no screen shows: programmers, the browser, the file system. */
const otherEars =
  /(^|\.)(OutOfDomain|Error|TypeError|RegExp|within|localeCompare|replace|split|includes|startsWith|counted)$/;

const letters = /\p{L}{2}/u;
/** A sentence, or the beginning of one: a capital, and two words more. */
const sentence = /^“?\p{Lu}\p{L}*[’,]?(\s+\S+){2,}/u;
/** What a module of words holds: words with a space between, or one with a capital. */
const words = /\p{Ll}\S*\s+\S*\p{Ll}|^\p{Lu}\p{Ll}+…?$/u;
const code = /^(\/|#|[a-z-]+:)|\b(SELECT|INSERT|UPDATE|DELETE|CREATE|WHERE|ORDER BY)\b|var\(--/;

function bareOf(node: ts.Node): string | null {
  if (ts.isStringLiteral(node) || ts.isNoSubstitutionTemplateLiteral(node)) return node.text;
  if (!ts.isTemplateExpression(node)) return null;
  return node.head.text + node.templateSpans.map(({ literal }) => `0${literal.text}`).join('');
}

function isForOtherEars(node: ts.Node): boolean {
  for (let at = node.parent; at !== undefined && !ts.isStatement(at); at = at.parent) {
    if ((ts.isCallExpression(at) || ts.isNewExpression(at)) && otherEars.test(at.expression.getText())) return true;
    if (ts.isJsxAttribute(at) && at.name.getText() === 'className') return true;
    if (ts.isFunctionLike(at)) return false;
  }
  return false;
}

function isCode(node: ts.Node): boolean {
  const { parent } = node;
  return (
    ts.isImportDeclaration(parent) ||
    ts.isLiteralTypeNode(parent) ||
    ts.isCaseClause(parent) ||
    ts.isElementAccessExpression(parent) ||
    (ts.isPropertyAssignment(parent) && parent.name === node) ||
    ts.isTaggedTemplateExpression(parent) ||
    (ts.isBinaryExpression(parent) && /^[!=]==$/.test(parent.operatorToken.getText()))
  );
}

/** Whether the place asks for words whatever they look like. */
function isPlaceOfWords(node: ts.Node): boolean {
  let { parent } = node;
  while (ts.isConditionalExpression(parent) || ts.isParenthesizedExpression(parent) || ts.isBinaryExpression(parent)) {
    parent = parent.parent;
  }
  const attribute = ts.isJsxExpression(parent) ? parent.parent : parent;
  return ts.isJsxAttribute(attribute) && wordAttributes.has(attribute.name.getText());
}

/** Every text of a file that reads like words of the screen and stands without the tag. */
export function untaggedIn(source: ts.SourceFile): Untagged[] {
  if (exempt.test(source.fileName)) return [];
  const holdsWords = /words\.ts$/.test(source.fileName);
  const found: Untagged[] = [];
  const take = (node: ts.Node, text: string): void => {
    const line = source.getLineAndCharacterOfPosition(node.getStart()).line + 1;
    found.push({ file: source.fileName, line, words: text.trim().slice(0, 80) });
  };
  const visit = (node: ts.Node): void => {
    if (ts.isJsxText(node)) {
      if (letters.test(node.text)) take(node, node.text);
      return;
    }
    const bare = bareOf(node);
    if (bare !== null && letters.test(bare) && !code.test(bare) && !isCode(node) && !isForOtherEars(node)) {
      const looks = isPlaceOfWords(node) || sentence.test(bare) || (holdsWords && words.test(bare));
      if (looks) take(node, bare);
    }
    if (isPhrase(node)) for (const span of spansOf(node)) visit(span);
    else ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
}

function spansOf({ template }: ts.TaggedTemplateExpression): ts.Expression[] {
  return ts.isTemplateExpression(template) ? template.templateSpans.map(({ expression }) => expression) : [];
}

/** Where a phrase of the desk's side would be said once and for all: each request may come in another language. */
export function saidTooSoon(source: ts.SourceFile): Untagged[] {
  if (source.fileName.startsWith('renderer/')) return [];
  const found: Untagged[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isFunctionLike(node)) return;
    if (isPhrase(node)) {
      const line = source.getLineAndCharacterOfPosition(node.getStart()).line + 1;
      found.push({ file: source.fileName, line, words: node.template.getText().slice(0, 80) });
    }
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
}
