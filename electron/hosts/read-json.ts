import type { IncomingMessage } from 'node:http';
import { phrase } from '#core/words/phrase.ts';
import { Failure } from '#shared/failure.ts';
import { jsonExcess } from '#shared/json-excess.ts';

/** The largest request: a big pasted table and its JSON escapes. */
export const bodyLimit_bytes = 48 * 1024 * 1024;

/** No request of the contract goes half as deep (a draft may have 40 levels) or names as many members. */
const bounds = { depth: 100, members: 5000, charactersEach: 0 };

/**
 * Reads a request's JSON body.
 *
 * @throws Failure `too-large` or `ill-formed-json`
 */
export async function readJson(request: IncomingMessage, limit = bodyLimit_bytes): Promise<unknown> {
  const tooLarge = new Failure(
    'too-large',
    limit < 1024 * 1024
      ? phrase`A request may have up to ${Math.floor(limit / 1024)} KB.`
      : phrase`A request may have up to ${Math.floor(limit / 1024 / 1024)} MB.`,
  );
  if (Number(request.headers['content-length'] ?? 0) > limit) throw tooLarge;
  const parts: Buffer[] = [];
  let length = 0;
  for await (const part of request as AsyncIterable<Buffer>) {
    length += part.length;
    if (length > limit) throw tooLarge;
    parts.push(part);
  }
  return parseJson(Buffer.concat(parts).toString('utf8'));
}

/** @throws Failure `ill-formed-json` (NaN, Infinity and comments are no JSON), `too-large` beyond 100 levels or 5,000 members */
export function parseJson(text: string): unknown {
  if (jsonExcess(text, bounds) !== null) {
    throw new Failure(
      'too-large',
      phrase`The input nests deeper than 100 levels or names more than 5,000 members; no request does.`,
    );
  }
  try {
    return JSON.parse(text.replace(/^\ufeff/, ''));
  } catch {
    throw new Failure(
      'ill-formed-json',
      phrase`The input is not JSON. Check quotes, commas and brackets; NaN and comments are no JSON.`,
    );
  }
}
