import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { allComputers, allHandlers } from '#desk/all-handlers.ts';
import { allRequests, type RequestName } from '#shared/contract/all-requests.ts';

const names = Object.keys(allRequests) as RequestName[];

interface Shape {
  type?: string;
  enum?: unknown[];
  const?: unknown;
  format?: string;
  maxLength?: number;
  maxItems?: number;
  items?: Shape | boolean;
  prefixItems?: Shape[];
  properties?: Record<string, Shape>;
  additionalProperties?: Shape | boolean;
  anyOf?: Shape[];
  allOf?: Shape[];
  oneOf?: Shape[];
}

/** Places in an input where a caller could put text or lists without an end. */
function endless(shape: Shape, path: string): string[] {
  if (shape.enum !== undefined || shape.const !== undefined) return [];
  const inner = [
    ...(shape.anyOf ?? []),
    ...(shape.allOf ?? []),
    ...(shape.oneOf ?? []),
    ...(shape.prefixItems ?? []),
  ].flatMap((each) => endless(each, path));
  if (typeof shape.items === 'object') inner.push(...endless(shape.items, `${path}[]`));
  for (const [name, each] of Object.entries(shape.properties ?? {})) inner.push(...endless(each, `${path}.${name}`));
  if (typeof shape.additionalProperties === 'object') inner.push(...endless(shape.additionalProperties, `${path}.*`));
  if (shape.type === 'string' && shape.maxLength === undefined && shape.format === undefined)
    inner.push(`${path} (text)`);
  if (shape.type === 'array' && shape.maxItems === undefined && shape.prefixItems === undefined)
    inner.push(`${path} (list)`);
  return inner;
}

describe('the contract', () => {
  it('names each request domain:verb, in words', () => {
    for (const name of names) expect(name).toMatch(/^[a-z]+:[a-z][A-Za-z]*$/);
  });

  it('has a handler for each request, and none for others', () => {
    expect([...Object.keys(allHandlers), ...Object.keys(allComputers)].sort()).toEqual([...names].sort());
    for (const name of Object.keys(allComputers) as RequestName[]) expect(allRequests[name].needs).toBe('nothing');
    for (const name of Object.keys(allHandlers) as RequestName[]) expect(allRequests[name].needs).toBe('kitchen');
  });

  it('has the requests of a fixed shape that scripts lean on', () => {
    expect(names).toEqual(
      expect.arrayContaining([
        'panel:analyse',
        'panel:discriminate',
        'panel:design',
        'jar:sheet',
        'ferment:convert',
        'ferment:acidity',
        'ferment:equivalentHours',
        'trials:plan',
        'trials:list',
        'trials:open',
        'scores:import',
        'recipes:promote',
        'recipes:list',
        'tastings:open',
        'store:check',
        'store:backup',
        'kitchen:sample',
      ]),
    );
  });

  it('caps every text and list that comes in', () => {
    const open = names.flatMap((name) => {
      const shape = z.toJSONSchema(allRequests[name].input as z.ZodType, {
        io: 'input',
        unrepresentable: 'any',
      }) as Shape;
      return endless(shape, name);
    });
    // A plan's other held things and a draft's body are checked as a whole, by their own refinements.
    expect(open.filter((place) => !place.startsWith('drafts:keep.body'))).toEqual([]);
  });

  it('would notice a text without an end', () => {
    const shape = z.toJSONSchema(z.strictObject({ name: z.string(), list: z.array(z.number()) }), {
      io: 'input',
    }) as Shape;
    expect(endless(shape, 'x')).toEqual(['x.name (text)', 'x.list (list)']);
  });

  it('lets no NaN and no endless number out', () => {
    for (const bad of [Number.NaN, Number.POSITIVE_INFINITY]) {
      const design = allRequests['ferment:acidity'].output.safeParse({ g_per_L: bad, meq_per_L: 1 });
      expect(design.success).toBe(false);
    }
  });
});
