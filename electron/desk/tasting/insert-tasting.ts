import { servingDesign } from '#core/panel/serving/serving-design.ts';
import type { InputOf } from '#shared/contract/all-requests.ts';
import { defaultAttributes } from '#shared/default-attributes.ts';
import type { Columns } from '#store/tables.ts';
import type { Writer } from '#store/writer.ts';

export type BuildInput = Omit<InputOf<'tastings:build'>, 'ranked'> & { readonly ranked?: boolean };

/** Serving orders as places in the list of samples: for each sitting, for each taster. */
function ordersOf(samples: number, tasters: number, replicates: number, seed: number): (readonly number[])[][] {
  if (samples === 1) {
    return Array.from({ length: replicates }, () => Array.from({ length: tasters }, () => [0]));
  }
  return servingDesign(samples, tasters, replicates, seed).sittings.map(({ orders }) => [...orders]);
}

type NewAttribute = Omit<NonNullable<BuildInput['attributes']>[number], 'kind'> & Pick<Columns<'attributes'>, 'kind'>;

/** What is asked of each sample: its place in a ranking, or the given or usual attributes. */
function attributesOf(input: BuildInput): readonly NewAttribute[] {
  if (input.ranked) {
    const last = input.samples.length;
    return [{ name: 'place', kind: 'place', low: 1, high: last, lowWord: 'best', highWord: 'last' }];
  }
  return input.attributes ?? defaultAttributes.map((each) => ({ ...each, kind: 'scale' }));
}

/** Writes a tasting with its attributes, samples under their codes, and a serving order for each taster. */
export function insertTasting(writer: Writer, input: BuildInput, codes: readonly string[], heldAt: string): string {
  const tasting = writer.insert('tastings', {
    trial_id: input.trial ?? null,
    name: input.name,
    held_at: heldAt,
    served_C: input.served_C ?? null,
    replicates: input.replicates,
    seed: input.seed,
    closed_at: null,
    note: input.note ?? null,
  });
  attributesOf(input).forEach((each, position) => {
    writer.insert('attributes', {
      tasting_id: tasting.id,
      position: position + 1,
      name: each.name,
      kind: each.kind,
      low: each.low,
      high: each.high,
      low_word: each.lowWord ?? null,
      high_word: each.highWord ?? null,
    });
  });
  // Written in the order of their codes: ids count up, and must not tell which jar is which.
  const sampleIds = new Map(
    input.samples
      .map(({ jar, served_mL }, position) => ({ jar, served_mL, position, code: codes[position] ?? '' }))
      .sort((a, b) => a.code.localeCompare(b.code))
      .map(({ jar, served_mL, position, code }) => {
        const values = {
          tasting_id: tasting.id,
          jar_id: jar,
          blind_code: code,
          served_mL: served_mL ?? null,
          taken_out_at: null,
          taken_out_why: null,
        };
        return [position, writer.insert('samples', values).id] as const;
      }),
  );
  const sittings = ordersOf(input.samples.length, input.tasters.length, input.replicates, input.seed);
  sittings.forEach((orders, sitting) => {
    input.tasters.forEach((taster, row) => {
      (orders[row] ?? []).forEach((sample, place) => {
        writer.insert('servings', {
          tasting_id: tasting.id,
          taster_id: taster,
          sample_id: sampleIds.get(sample) ?? '',
          sitting: sitting + 1,
          place: place + 1,
        });
      });
    });
  });
  return tasting.id;
}
