import { type SeededRandom, seededRandom } from '#core/numeric/seeded-random.ts';
import { openKitchen } from '#store/open-kitchen.ts';
import { sqliteDriver } from '#store/sqlite-driver.ts';
import { Filler } from './filler.ts';
import { sparseBytes, sparseHash, sparsePhotos } from './sparse-photos.ts';

// A kitchen as ten busy years leave it, with the change log that the program itself would have written: each row has its entry, each
// entry its salt and its place in the chain. Written past the program, because that writes a step at a time and waits for the disk.

export interface TenYears {
  readonly trials: number;
  readonly seed: number;
}

/** 5,000 trials bring 50,000 jars, 2,000,000 scores and 20,000 photos. */
export const tenYears: TenYears = { trials: 5000, seed: 10 };

const start = Date.parse('2016-01-01T08:00:00.000Z');
const levelsEach = 5;
const replicates = 2;
const tastersEach = 8;
const photosEach = 4;
const attributes = ['tang', 'fizz', 'sweetness', 'body', 'liking'];

const formula = JSON.stringify({
  additions: [{ ingredient: 'raspberries', mass_g: 75, state: 'fresh' }],
  days: 3,
  cover: 'cloth',
  temperature_C: 22,
});

function moment(time: number): string {
  return new Date(time).toISOString();
}

interface House {
  readonly tasters: readonly string[];
  readonly base: string;
  readonly number: number;
  /** Its jars are still on the shelf. */
  readonly isStanding: boolean;
}

function fillTrial(fill: Filler, random: SeededRandom, { tasters, base, number, isStanding }: House): void {
  const day = 86_400_000;
  fill.time = start + Math.floor((number / 5000) * 3650) * day + (number % 7) * 60_000;
  const began = fill.time;
  fill.step('trials:save', `Plan the trial “How many days, ${number}?”`);
  const trial = fill.insert('trials', {
    question: `How many days, ${number}?`,
    factor: 'days',
    calendar: 'staggered-pull',
    base_id: base,
    base_each_mL: 0.5,
    replicates,
    vessel_kind: 'open-jar',
    vessel_capacity_mL: 1000,
    vessel_diameter_mm: null,
    vessel_rated_gauge_bar: null,
    starts_at: moment(began),
    held: '{"additions":[],"days":null,"cover":"cloth","temperature_C":22,"also":{}}',
    seed: number,
    closed_at: isStanding ? null : moment(began + 14 * day),
    note: null,
  });
  const jars: string[] = [];
  for (let position = 1; position <= levelsEach; position += 1) {
    const level = fill.insert('levels', {
      trial_id: trial,
      position,
      name: `${position} days`,
      value: position,
      is_control: position === 1 ? 1 : 0,
      formula,
    });
    for (let replicate = 1; replicate <= replicates; replicate += 1) {
      const pull = moment(began + position * day);
      jars.push(
        fill.insert('jars', {
          trial_id: trial,
          level_id: level,
          label: `${position}${replicate}`,
          replicate,
          base_mL: 0.5,
          planned_start: moment(began),
          planned_pull: pull,
          started_at: moment(began),
          pulled_at: isStanding ? null : pull,
          strained_at: null,
          discarded_at: null,
          discard_reason: null,
        }),
      );
    }
  }
  for (const jar of jars) {
    fill.time += 3_600_000;
    fill.step('readings:log', 'Log a reading');
    for (const brix of [9, 6]) {
      fill.insert('readings', {
        jar_id: jar,
        base_id: null,
        taken_at: moment(fill.time),
        brix,
        sg: null,
        ph: 3.4,
        acidity_g_per_L: null,
        acidity_as: null,
        temperature_C: 21,
        note: null,
      });
    }
    fill.insert('sips', {
      jar_id: jar,
      taken_at: moment(fill.time),
      tang: 4,
      fizz: 5,
      sweetness: 5,
      liking: 6,
      note: null,
    });
  }
  jars.slice(0, photosEach).forEach((jar, at) => {
    fill.step('photos:add', 'Add a photo');
    fill.insert('photos', {
      jar_id: jar,
      base_id: null,
      taken_at: moment(fill.time),
      sha256: sparseHash(number * photosEach + at),
      format: 'jpeg',
      width: 1600,
      height: 1200,
      bytes: sparseBytes,
      note: null,
    });
  });
  fillTasting(fill, random, { trial, jars, tasters, number });
}

interface Served {
  readonly trial: string;
  readonly jars: readonly string[];
  readonly tasters: readonly string[];
  readonly number: number;
}

function fillTasting(fill: Filler, random: SeededRandom, { trial, jars, tasters, number }: Served): void {
  fill.time += 6 * 86_400_000;
  fill.step('tastings:build', `Build the tasting “Tasting ${number}”`);
  const tasting = fill.insert('tastings', {
    trial_id: trial,
    name: `Tasting ${number}`,
    held_at: moment(fill.time),
    served_C: 8,
    replicates: 1,
    seed: number,
    closed_at: moment(fill.time + 3_600_000),
    note: null,
  });
  const asked = attributes.map((name, at) =>
    fill.insert('attributes', {
      tasting_id: tasting,
      position: at + 1,
      name,
      kind: 'scale',
      low: 0,
      high: 10,
      low_word: null,
      high_word: null,
    }),
  );
  const codes = random.shuffled(Array.from({ length: 900 }, (_, at) => String(at + 100))).slice(0, jars.length);
  const samples = jars.map((jar, at) =>
    fill.insert('samples', { tasting_id: tasting, jar_id: jar, blind_code: codes[at] ?? '100', served_mL: 60 }),
  );
  const panel = random.shuffled(tasters).slice(0, tastersEach);
  for (const taster of panel) {
    samples.forEach((sample, at) => {
      fill.insert('servings', { tasting_id: tasting, taster_id: taster, sample_id: sample, sitting: 1, place: at + 1 });
    });
  }
  for (const taster of panel) {
    for (const sample of samples) {
      fill.time += 1000;
      fill.step('scores:enter', `Enter ${asked.length} scores in “Tasting ${number}”`);
      for (const attribute of asked) {
        fill.insert('scores', {
          tasting_id: tasting,
          taster_id: taster,
          sample_id: sample,
          attribute_id: attribute,
          replicate: 1,
          score: random.below(11),
        });
      }
    }
  }
}

function fillRecipes(fill: Filler): void {
  for (let recipe = 0; recipe < 200; recipe += 1) {
    fill.step('recipes:promote', `Promote to “House ${recipe}”`);
    const id = fill.insert('house_recipes', { name: `House ${recipe}`, note: null });
    for (let number = 1; number <= 5; number += 1) {
      const version = fill.insert('recipe_versions', {
        recipe_id: id,
        number,
        formula,
        base_mL: 800,
        volume_mL: 850,
        vessel: '{"kind":"open-jar","capacity_mL":1000}',
        target: '[]',
        basis: 'none',
        trial_id: null,
        level_id: null,
        why: null,
      });
      for (let batch = 0; batch < 3; batch += 1) {
        fill.insert('batches', {
          version_id: version,
          made_at: moment(fill.time),
          volume_mL: 800,
          lot: null,
          note: null,
        });
      }
    }
  }
}

/** Makes the kitchen in a new file. Secondary indexes are built at the end, all at once. */
export async function makeTenYears(file: string, { trials, seed }: TenYears = tenYears): Promise<void> {
  (await openKitchen(file, { clock: () => new Date(start) })).close();
  const Database = sqliteDriver();
  const db = new Database(file);
  db.pragma('journal_mode = DELETE');
  db.pragma('journal_mode = OFF');
  db.pragma('synchronous = OFF');
  db.pragma('cache_size = -400000');
  const indexes = db.prepare("SELECT name, sql FROM sqlite_schema WHERE type = 'index' AND sql IS NOT NULL").all() as {
    name: string;
    sql: string;
  }[];
  for (const { name } of indexes) db.exec(`DROP INDEX ${name}`);
  const random = seededRandom(seed);
  const fill = new Filler(db, start);
  db.exec('BEGIN');
  fill.step('tasters:save', 'Add tasters');
  const tasters = Array.from({ length: 40 }, (_, at) =>
    fill.insert('tasters', { name: `Taster ${at + 1}`, avoids: '[]', avoids_alcohol: 0, note: null }),
  );
  let base = '';
  for (let number = 0; number < trials; number += 1) {
    if (number % 10 === 0) {
      fill.step('bases:start', `Start base ${number}`);
      base = fill.insert('bases', {
        culture_id: null,
        name: `Base ${number}`,
        made_at: moment(fill.time),
        strained_at: moment(fill.time + 2 * 86_400_000),
        volume_mL: 9000,
        temperature_C: 22,
        sugar_start_g_per_L: 60,
        sugar_now_g_per_L: 40,
        alcohol_pctVol: 0.3,
        note: null,
      });
    }
    fillTrial(fill, random, { tasters, base, number, isStanding: number >= trials - 3 });
  }
  fillRecipes(fill);
  db.exec('COMMIT');
  for (const { sql } of indexes) db.exec(sql);
  db.close();
  sparsePhotos(file, trials * photosEach);
}
