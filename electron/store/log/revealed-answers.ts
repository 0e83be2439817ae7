import type { Reader } from '../reader.ts';

// Answers of a trial's closed tastings that are no scores on a scale.

/** One taster's place for one jar of a ranked tasting; 1 is best. */
export interface GivenPlace {
  readonly tasting: string;
  readonly name: string;
  readonly taster: string;
  readonly level: string;
  readonly place: number;
}

export function revealedPlaces(read: Reader, trial: string): GivenPlace[] {
  return read.all(
    `SELECT g.id AS tasting, g.name, t.name AS taster, l.name AS level, c.score AS place
     FROM tastings AS g JOIN scores AS c ON c.tasting_id = g.id JOIN tasters AS t ON t.id = c.taster_id
     JOIN samples AS s ON s.id = c.sample_id JOIN jars AS j ON j.id = s.jar_id JOIN levels AS l ON l.id = j.level_id
     JOIN attributes AS a ON a.id = c.attribute_id
     WHERE l.trial_id = ? AND g.closed_at IS NOT NULL AND s.taken_out_at IS NULL AND a.kind = 'place'
     ORDER BY g.held_at, g.id, l.position, t.name`,
    trial,
  );
}

/** One just-about-right answer (−2 much too little, 0 just right, 2 much too much) with the liking scored beside it. */
export interface RightnessRow {
  readonly taster: string;
  readonly level: string;
  readonly attribute: string;
  readonly position: number;
  /** Null when this taster scored no liking of this cup. */
  readonly liking: number | null;
}

export function revealedRightness(read: Reader, trial: string): RightnessRow[] {
  return read.all(
    `SELECT t.name AS taster, l.name AS level, a.name AS attribute, c.score AS position, k.score AS liking
     FROM tastings AS g JOIN scores AS c ON c.tasting_id = g.id JOIN tasters AS t ON t.id = c.taster_id
     JOIN samples AS s ON s.id = c.sample_id JOIN jars AS j ON j.id = s.jar_id JOIN levels AS l ON l.id = j.level_id
     JOIN attributes AS a ON a.id = c.attribute_id
     LEFT JOIN attributes AS q ON q.tasting_id = g.id AND q.kind = 'scale' AND lower(q.name) = 'liking'
     LEFT JOIN scores AS k ON k.sample_id = c.sample_id AND k.taster_id = c.taster_id AND k.attribute_id = q.id
       AND k.replicate = c.replicate
     WHERE l.trial_id = ? AND g.closed_at IS NOT NULL AND s.taken_out_at IS NULL AND a.kind = 'just-about-right'
     ORDER BY a.position, a.name, l.position, t.name`,
    trial,
  );
}
