import { strengthProblem } from '#core/ferment/strength-problem.ts';
import { phrase } from '#core/words/phrase.ts';
import type { InputOf } from '#shared/contract/all-requests.ts';
import { Failure } from '#shared/failure.ts';
import type { Kitchen } from '#store/kitchen.ts';
import { findBase, listBases } from '#store/rows/bases.ts';
import { readingsOf, sightingsOf } from '#store/rows/entries.ts';
import { storedMoment } from '#store/stored-moment.ts';
import type { Columns } from '#store/tables.ts';
import { found } from '../found.ts';
import type { Handlers } from '../handler.ts';
import { bothVolumes } from './both-volumes.ts';

interface Sugars {
  readonly sugarStart_g_per_L?: number | null | undefined;
  readonly sugarNow_g_per_L?: number | null | undefined;
}

/** Sugar dissolves only so far, and only falls while it ferments. */
function assertSugars({ sugarStart_g_per_L: start, sugarNow_g_per_L: now }: Sugars): void {
  const given = { sugarStart_g_per_L: start, sugarNow_g_per_L: now };
  for (const [name, value] of Object.entries(given)) {
    const problem = value == null ? null : strengthProblem('sugar_g_per_L', value, 20);
    if (problem !== null) throw new Failure('invalid-input', `${name}: ${problem} g/L.`, [name]);
  }
  if (start != null && now != null && now > start) {
    throw new Failure(
      'invalid-input',
      phrase`sugarNow_g_per_L (${now}) is above sugarStart_g_per_L (${start}); sugar only falls while it ferments. Allowed: 0 to ${start}.`,
      ['sugarNow_g_per_L'],
    );
  }
}

function columnsOf(input: InputOf<'bases:start'>, madeAt: string) {
  assertSugars(input);
  return {
    culture_id: input.culture ?? null,
    name: input.name,
    made_at: madeAt,
    volume_mL: input.volume_mL,
    temperature_C: input.temperature_C ?? null,
    sugar_start_g_per_L: input.sugarStart_g_per_L ?? null,
    sugar_now_g_per_L: input.sugarNow_g_per_L ?? null,
    alcohol_pctVol: input.alcohol_pctVol ?? null,
    note: input.note ?? null,
    planned_hours: input.plannedHours ?? null,
    went_in: input.wentIn ?? null,
  };
}

/** Only the columns that are given, null among them. */
function changedColumns(input: InputOf<'bases:change'>): Partial<Columns<'bases'>> {
  const columns: { [Column in keyof Columns<'bases'>]?: Columns<'bases'>[Column] | undefined } = {
    culture_id: input.culture,
    name: input.name,
    made_at: input.madeAt === undefined ? undefined : storedMoment(input.madeAt),
    volume_mL: input.volume_mL,
    temperature_C: input.temperature_C,
    sugar_start_g_per_L: input.sugarStart_g_per_L,
    sugar_now_g_per_L: input.sugarNow_g_per_L,
    alcohol_pctVol: input.alcohol_pctVol,
    note: input.note,
    planned_hours: input.plannedHours,
    went_in: input.wentIn,
  };
  return Object.fromEntries(Object.entries(columns).filter(([, value]) => value !== undefined));
}

function assertCulture(kitchen: Kitchen, culture: string | null | undefined): void {
  if (culture != null) found(kitchen.read.row('cultures', culture), 'culture', 'culture');
}

export const baseHandlers: Handlers<
  'bases:list' | 'bases:open' | 'bases:start' | 'bases:change' | 'bases:strain' | 'bases:remove'
> = {
  'bases:list': (kitchen) => ({ bases: listBases(kitchen.read) }),
  'bases:open'(kitchen, { base }) {
    return {
      ...found(findBase(kitchen.read, base), 'base', 'base'),
      readings: readingsOf(kitchen.read, 'base_id', base),
      sightings: sightingsOf(kitchen.read, 'base_id', base),
    };
  },
  'bases:start'(kitchen, input) {
    assertCulture(kitchen, input.culture);
    const madeAt = input.madeAt === undefined ? kitchen.now().toISOString() : storedMoment(input.madeAt);
    const values = { ...columnsOf(input, madeAt), strained_at: null };
    return kitchen.write({ request: 'bases:start', summary: phrase`Start base ${input.name}` }, (writer) => ({
      base: writer.insert('bases', values).id,
    }));
  },
  'bases:change'(kitchen, input) {
    const before = found(findBase(kitchen.read, input.base), 'base', 'base');
    assertCulture(kitchen, input.culture);
    if (input.volume_mL !== undefined && input.volume_mL < before.allotted_mL) {
      throw new Failure(
        'refused',
        phrase`${bothVolumes(before.allotted_mL)} of this base are allotted to jars; its volume can’t be less than that.`,
        ['volume_mL'],
      );
    }
    const { sugarStart_g_per_L = before.sugarStart_g_per_L, sugarNow_g_per_L = before.sugarNow_g_per_L } = input;
    assertSugars({ sugarStart_g_per_L, sugarNow_g_per_L });
    const madeAt = input.madeAt === undefined ? before.madeAt : storedMoment(input.madeAt);
    if (before.strainedAt !== null && before.strainedAt < madeAt) {
      throw new Failure('refused', phrase`A base can’t be made after it was strained.`, ['madeAt']);
    }
    const columns = changedColumns(input);
    if (Object.keys(columns).length === 0) return { base: input.base };
    return kitchen.write(
      { request: 'bases:change', summary: phrase`Change base ${input.name ?? before.name}` },
      (writer) => ({
        base: writer.update('bases', input.base, columns, input.revision).id,
      }),
    );
  },
  'bases:strain'(kitchen, input) {
    const base = found(findBase(kitchen.read, input.base), 'base', 'base');
    if (base.strainedAt !== null) throw new Failure('refused', phrase`${base.name} is strained already.`, ['base']);
    const { sugarNow_g_per_L: now } = input;
    if (now !== undefined && base.sugarStart_g_per_L !== null && now > base.sugarStart_g_per_L) {
      const message = phrase`sugarNow_g_per_L (${now}) is above what the base started with; allowed: 0 to ${base.sugarStart_g_per_L}.`;
      throw new Failure('invalid-input', message, ['sugarNow_g_per_L']);
    }
    const at = input.at === undefined ? kitchen.now().toISOString() : storedMoment(input.at);
    if (at < base.madeAt) throw new Failure('refused', phrase`A base can’t be strained before it was made.`, ['at']);
    return kitchen.write({ request: 'bases:strain', summary: phrase`Strain base ${base.name}` }, (writer) => ({
      base: writer.update('bases', input.base, {
        strained_at: at,
        ...(input.sugarNow_g_per_L === undefined ? {} : { sugar_now_g_per_L: input.sugarNow_g_per_L }),
      }).id,
    }));
  },
  'bases:remove'(kitchen, { base }) {
    const row = found(findBase(kitchen.read, base), 'base', 'base');
    if (kitchen.read.one('SELECT id FROM trials WHERE base_id = ? LIMIT 1', base) !== undefined) {
      throw new Failure('refused', phrase`Jars were filled from ${row.name}; it stays with their trial.`, ['base']);
    }
    return kitchen.write({ request: 'bases:remove', summary: phrase`Remove base ${row.name}` }, (writer) => {
      writer.remove('bases', base);
      return { base };
    });
  },
};
