import { formatQuantity } from '#core/units/format-quantity.ts';
import type { JarReading } from '#core/units/parse-reading.ts';
import { phrase } from '#core/words/phrase.ts';
import type { Measures } from '#renderer/format/use-measures.ts';

/** A reading in one line: "4.2 °Bx, pH 3.4, 21 °C". */
export function readingWords({ brix, sg, ph, acidity, temperature_C }: JarReading, measures: Measures): string {
  return [
    ...(brix === undefined ? [] : [formatQuantity(brix, 'brix', measures.system)]),
    ...(sg === undefined ? [] : [phrase`SG ${formatQuantity(sg, 'sg', measures.system)}`]),
    ...(ph === undefined ? [] : [phrase`pH ${Number(ph.toFixed(2))}`]),
    ...(acidity === undefined ? [] : [phrase`${Number(acidity.g_per_L.toFixed(2))} g/L as ${acidity.as} acid`]),
    ...(temperature_C === undefined ? [] : [measures.temperature(temperature_C)]),
  ].join(', ');
}
