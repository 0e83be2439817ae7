import type { z } from 'zod';
import { phrase } from '#core/words/phrase.ts';
import { Failure } from '#shared/failure.ts';

type Issue = z.core.$ZodIssue;

function at(input: unknown, path: readonly PropertyKey[]): unknown {
  return path.reduce<unknown>((inner, key) => {
    if (typeof inner !== 'object' || inner === null) return undefined;
    return (inner as Record<PropertyKey, unknown>)[key];
  }, input);
}

/** A field's path as a person reads it: `levels[1].value`. A member's name may come from the caller, however long. */
function field(path: readonly PropertyKey[]): string {
  return path.reduce<string>((text, key) => {
    if (typeof key === 'number') return `${text}[${key}]`;
    const name = String(key).slice(0, 60);
    return text === '' ? name : `${text}.${name}`;
  }, '');
}

const kinds: Readonly<Record<string, string>> = {
  string: 'words',
  get number() {
    return phrase`a finite number`;
  },
  get int() {
    return phrase`a whole number`;
  },
  get boolean() {
    return phrase`true or false`;
  },
  get array() {
    return phrase`a list`;
  },
  get object() {
    return phrase`an object with named members`;
  },
  get record() {
    return phrase`an object with named members`;
  },
  get tuple() {
    return phrase`a list`;
  },
};

function bound(origin: string, limit: unknown, kind: 'least' | 'most', inclusive: boolean): string {
  const value = Number(limit);
  if (origin === 'string')
    return kind === 'least'
      ? value === 1
        ? phrase`needs at least ${value} character`
        : phrase`needs at least ${value} characters`
      : phrase`may have at most ${value} characters`;
  if (origin === 'array' || origin === 'set')
    return kind === 'least'
      ? value === 1
        ? phrase`needs at least ${value} entry`
        : phrase`needs at least ${value} entries`
      : phrase`may have at most ${value} entries`;
  if (kind === 'least') return inclusive ? phrase`must be ${value} or more` : phrase`must be more than ${value}`;
  return inclusive ? phrase`must be ${value} or less` : phrase`must be less than ${value}`;
}

function sentence(issue: Issue, input: unknown): string {
  const name = field(issue.path) || phrase`the input`;
  switch (issue.code) {
    case 'invalid_type':
      return at(input, issue.path) === undefined
        ? phrase`${name} is missing; it must be ${kinds[issue.expected] ?? issue.expected}.`
        : phrase`${name} must be ${kinds[issue.expected] ?? issue.expected}.`;
    case 'too_small':
      return `${name} ${bound(issue.origin, issue.minimum, 'least', issue.inclusive ?? true)}.`;
    case 'too_big':
      return `${name} ${bound(issue.origin, issue.maximum, 'most', issue.inclusive ?? true)}.`;
    case 'invalid_value':
      return phrase`${name} must be one of: ${issue.values.map(String).join(', ')}.`;
    case 'unrecognized_keys':
      return phrase`${name === 'the input' ? phrase`The input` : name} has a member the request does not know: ${issue.keys
        .slice(0, 10)
        .map((key) => key.slice(0, 60))
        .join(', ')}.`;
    case 'invalid_format':
      return issue.format === 'datetime'
        ? phrase`${name} must be a moment with its offset, such as 2026-05-01T09:00:00+02:00.`
        : phrase`${name} must be ${issue.message.startsWith('Invalid') ? phrase`of the form ${issue.format}` : issue.message}.`;
    default:
      return `${name}: ${issue.message}.`;
  }
}

/** Of a union's complaints, those of the branch that came furthest say the most. */
function mostTelling(issue: Issue): Issue {
  if (issue.code !== 'invalid_union' || issue.errors.length === 0) return issue;
  const branches = issue.errors.map((branch) => branch[0]).filter((first) => first !== undefined);
  const deepest = branches.sort((a, b) => b.path.length - a.path.length)[0];
  return deepest === undefined ? issue : mostTelling({ ...deepest, path: [...issue.path, ...deepest.path] });
}

/** The failure for an ill-formed input: a sentence that names the field and what it may be, and the field's path. */
export function inputFailure(error: z.ZodError, input: unknown): Failure {
  const first = error.issues[0];
  if (first === undefined) return new Failure('invalid-input', phrase`The input is not of the request’s form.`);
  const issue = mostTelling(first as Issue);
  const path = issue.path.map((key) => (typeof key === 'symbol' ? String(key) : key));
  return new Failure('invalid-input', sentence(issue, input), path);
}
