import type { SeededRandom } from '#core/numeric/seeded-random.ts';
import type { Writer } from '#store/writer.ts';

// Invented panel scores: each taster leans a little, each score wavers, and what the level does is written in `truth`.

/** The invented middle score of each attribute for one level. */
export type Truth = Readonly<Record<string, number>>;

interface PanelSketch {
  readonly tasting: string;
  /** Invented middle scores for each jar. */
  readonly truthOfJar: ReadonlyMap<string, Truth>;
  /** Tasters and samples that somebody missed: `taster name/jar id`. */
  readonly missed?: ReadonlySet<string>;
}

/** A bell-shaped draw by adding twelve even ones (close enough for invented scores). */
function bell(random: SeededRandom): number {
  let sum = -6;
  for (let draw = 0; draw < 12; draw += 1) sum += random.uniform();
  return sum;
}

function onScale(value: number, low: number, high: number): number {
  return Math.min(high, Math.max(low, Math.round(value * 2) / 2));
}

/** Writes a score for every serving of a tasting that nobody missed. */
export function insertSampleScores(writer: Writer, random: SeededRandom, sketch: PanelSketch): number {
  const servings = writer.all<{ taster: string; name: string; sample: string; jar: string; sitting: number }>(
    `SELECT v.taster_id AS taster, t.name, v.sample_id AS sample, s.jar_id AS jar, v.sitting
     FROM servings AS v JOIN tasters AS t ON t.id = v.taster_id JOIN samples AS s ON s.id = v.sample_id
     WHERE v.tasting_id = ? ORDER BY v.sitting, t.name, s.blind_code`,
    sketch.tasting,
  );
  const attributes = writer.all<{ id: string; name: string; low: number; high: number }>(
    'SELECT id, name, low, high FROM attributes WHERE tasting_id = ? ORDER BY position',
    sketch.tasting,
  );
  const leanings = new Map<string, number>();
  let written = 0;
  for (const serving of servings) {
    if (sketch.missed?.has(`${serving.name}/${serving.jar}`)) continue;
    for (const attribute of attributes) {
      const key = `${serving.taster}/${attribute.name}`;
      const leaning = leanings.get(key) ?? bell(random) * 0.7;
      leanings.set(key, leaning);
      const middle = sketch.truthOfJar.get(serving.jar)?.[attribute.name] ?? (attribute.low + attribute.high) / 2;
      writer.insert('scores', {
        tasting_id: sketch.tasting,
        taster_id: serving.taster,
        sample_id: serving.sample,
        attribute_id: attribute.id,
        replicate: 1,
        score: onScale(middle + leaning + bell(random) * 0.8, attribute.low, attribute.high),
      });
      written += 1;
    }
  }
  return written;
}
