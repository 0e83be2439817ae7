import { servingDesign } from '#core/panel/serving-design.ts';
import type { InputOf } from '#shared/contract/all-requests.ts';
import { defaultAttributes } from '#shared/default-attributes.ts';
import type { Writer } from '#store/writer.ts';

export type BuildInput = InputOf<'tastings:build'>;

/** Serving orders as places in the list of samples: for each sitting, for each taster. */
function ordersOf(samples: number, tasters: number, replicates: number, seed: number): (readonly number[])[][] {
  if (samples === 1) {
    return Array.from({ length: replicates }, () => Array.from({ length: tasters }, () => [0]));
  }
  return servingDesign(samples, tasters, replicates, seed).sittings.map(({ orders }) => [...orders]);
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
  (input.attributes ?? defaultAttributes).forEach((each, position) => {
    writer.insert('attributes', {
      tasting_id: tasting.id,
      position: position + 1,
      name: each.name,
      low: each.low,
      high: each.high,
      low_word: each.lowWord ?? null,
      high_word: each.highWord ?? null,
    });
  });
  const samples = input.samples.map(({ jar, served_mL }, position) =>
    writer.insert('samples', {
      tasting_id: tasting.id,
      jar_id: jar,
      blind_code: codes[position] ?? '',
      served_mL: served_mL ?? null,
    }),
  );
  const sittings = ordersOf(samples.length, input.tasters.length, input.replicates, input.seed);
  sittings.forEach((orders, sitting) => {
    input.tasters.forEach((taster, row) => {
      (orders[row] ?? []).forEach((sample, place) => {
        writer.insert('servings', {
          tasting_id: tasting.id,
          taster_id: taster,
          sample_id: samples[sample]?.id ?? '',
          sitting: sitting + 1,
          place: place + 1,
        });
      });
    });
  });
  return tasting.id;
}
