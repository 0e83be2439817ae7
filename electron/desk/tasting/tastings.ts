import { phrase } from '#core/words/phrase.ts';
import { Failure } from '#shared/failure.ts';
import type { Kitchen } from '#store/kitchen.ts';
import { findJar, type Jar } from '#store/rows/jars.ts';
import {
  findTasting,
  listTastings,
  type Serving,
  samplesOf,
  servingsOf,
  type TastingWhole,
} from '#store/rows/tastings.ts';
import { storedMoment } from '#store/stored-moment.ts';
import { found } from '../found.ts';
import type { Handlers } from '../handler.ts';
import { freeCodes } from './free-codes.ts';
import { type BuildInput, insertTasting } from './insert-tasting.ts';
import { tastingWarnings } from './tasting-warnings.ts';

function jarsToTaste(kitchen: Kitchen, input: BuildInput): Jar[] {
  const seen = new Set<string>();
  return input.samples.map(({ jar: id }, position) => {
    const path = ['samples', position, 'jar'];
    const jar = findJar(kitchen.read, id);
    if (jar === undefined) throw new Failure('not-found', phrase`There is no such jar in this kitchen.`, path);
    if (seen.has(id))
      throw new Failure(
        'refused',
        phrase`Jar ${jar.label} stands twice among the samples; for repeats raise “replicates”.`,
        path,
      );
    seen.add(id);
    if (input.trial !== undefined && jar.trial !== input.trial) {
      throw new Failure(
        'refused',
        phrase`Jar ${jar.label} belongs to another trial; leave the trial out to mix trials.`,
        path,
      );
    }
    if (jar.state === 'discarded') {
      throw new Failure(
        'refused',
        phrase`Jar ${jar.label} was discarded (${jar.discardReason ?? ''}); it is not served to anybody.`,
        path,
      );
    }
    if (jar.state === 'planned') {
      throw new Failure('refused', phrase`Jar ${jar.label} has not been started; there is nothing to taste yet.`, path);
    }
    return jar;
  });
}

function ordersByTaster(servings: readonly Serving[], warnings: Map<string, string[]>): TastingWhole['orders'] {
  const byTaster = new Map<string, TastingWhole['orders'][number]>();
  for (const { taster, name, sitting, code } of servings) {
    const order = byTaster.get(taster) ?? { taster, name, sittings: [], warnings: warnings.get(taster) ?? [] };
    byTaster.set(taster, order);
    const last = order.sittings.at(-1);
    if (last?.sitting === sitting) last.codes.push(code);
    else order.sittings.push({ sitting, codes: [code] });
  }
  return [...byTaster.values()];
}

function assertUnlike(names: readonly string[], what: string, field: string): void {
  const twin = names.findIndex((name, position) => names.indexOf(name) !== position);
  if (twin >= 0) throw new Failure('invalid-input', phrase`The same ${what} stands twice in the list.`, [field, twin]);
}

export const tastingHandlers: Handlers<
  | 'tastings:build'
  | 'tastings:list'
  | 'tastings:open'
  | 'tastings:pour'
  | 'tastings:warn'
  | 'tastings:close'
  | 'tastings:remove'
> = {
  'tastings:build'(kitchen, input) {
    if (input.trial !== undefined) found(kitchen.read.row('trials', input.trial), 'trial', 'trial');
    const jars = jarsToTaste(kitchen, input);
    assertUnlike(input.tasters, 'taster', 'tasters');
    if (input.ranked && (input.attributes !== undefined || input.replicates > 1 || jars.length < 2)) {
      const message = phrase`A ranking asks only for the order of two samples or more, each served once: leave attributes and replicates out.`;
      throw new Failure('invalid-input', message, ['ranked']);
    }
    assertUnlike(
      (input.attributes ?? []).map(({ name }) => name.toLowerCase()),
      'attribute',
      'attributes',
    );
    input.tasters.forEach((taster, position) => {
      if (kitchen.read.row('tasters', taster) === undefined) {
        throw new Failure('not-found', phrase`There is no such taster in this kitchen.`, ['tasters', position]);
      }
    });
    const said = jars.flatMap(({ label, levelName }) => [label, levelName]);
    const codes = freeCodes(kitchen, jars.length, input.seed, said);
    const heldAt = input.heldAt === undefined ? kitchen.now().toISOString() : storedMoment(input.heldAt);
    const tasting = kitchen.write(
      { request: 'tastings:build', summary: phrase`Build the tasting “${input.name}”` },
      (writer) => insertTasting(writer, input, codes, heldAt),
    );
    const warnings = tastingWarnings(
      kitchen,
      input.tasters,
      input.samples.map(({ jar }) => jar),
    );
    return {
      tasting,
      codes: Object.fromEntries(jars.map(({ id }, position) => [id, codes[position] ?? ''])),
      warnings: [...warnings.values()].flat(),
    };
  },
  'tastings:list'(kitchen, { after, ...part }) {
    const behind = after === undefined ? undefined : found(kitchen.read.row('tastings', after), 'tasting', 'after');
    const { rows, more } = listTastings(kitchen.read, {
      ...part,
      after: behind && { at: behind.held_at, id: behind.id },
    });
    return { tastings: rows, ...(more ? { more: true as const } : {}) };
  },
  'tastings:open'(kitchen, { tasting }) {
    const { row: _, ...whole } = found(findTasting(kitchen.read, tasting), 'tasting', 'tasting');
    const servings = servingsOf(kitchen.read, tasting);
    const tasters = [...new Set(servings.map(({ taster }) => taster))];
    const jars = [...new Set(servings.map(({ jar }) => jar))];
    return { ...whole, orders: ordersByTaster(servings, tastingWarnings(kitchen, tasters, jars)) };
  },
  'tastings:pour'(kitchen, { tasting }) {
    found(kitchen.read.row('tastings', tasting), 'tasting', 'tasting');
    return { sampleList: samplesOf(kitchen.read, tasting, false) };
  },
  'tastings:warn'(kitchen, { jars, tasters }) {
    const warnings = tastingWarnings(kitchen, tasters, jars);
    return { warnings: [...warnings].map(([taster, lines]) => ({ taster, lines })) };
  },
  'tastings:close'(kitchen, { tasting }) {
    const row = found(kitchen.read.row('tastings', tasting), 'tasting', 'tasting');
    if (row.closed_at !== null) throw new Failure('refused', phrase`“${row.name}” is closed already.`, ['tasting']);
    return kitchen.write(
      {
        request: 'tastings:close',
        summary: phrase`Close the tasting “${row.name}” and reveal its codes`,
        fixedBecause: phrase`the codes have been seen, and nobody can taste blind again.`,
      },
      (writer) => {
        writer.update('tastings', tasting, { closed_at: writer.now });
        return { tasting };
      },
    );
  },
  'tastings:remove'(kitchen, { tasting }) {
    const row = found(kitchen.read.row('tastings', tasting), 'tasting', 'tasting');
    return kitchen.write(
      { request: 'tastings:remove', summary: phrase`Remove the tasting “${row.name}”` },
      (writer) => {
        writer.remove('tastings', tasting);
        return { tasting };
      },
    );
  },
};
