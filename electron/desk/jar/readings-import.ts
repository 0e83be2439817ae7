import { units } from '#core/units/unit-table.ts';
import { phrase } from '#core/words/phrase.ts';
import { brix, isRemark, note, ph, sg, temperature_C } from '#shared/contract/fields.ts';
import { findTrial, type TrialWhole } from '#store/rows/trials.ts';
import { storedMoment } from '#store/stored-moment.ts';
import type { Columns } from '#store/tables.ts';
import { found } from '../found.ts';
import type { Handlers, Watch } from '../handler.ts';
import { nameKey } from '../pasted/name-key.ts';
import { pastedTable } from '../pasted/pasted-table.ts';
import { unnamedColumns } from '../pasted/unnamed-columns.ts';
import { numberIn } from '../tasting/read-score.ts';
import { isStillToCome } from './entry-place.ts';
import { type Meaning, type Measures, meaningOf } from './reading-columns.ts';

type Cells = Partial<Record<Meaning, string>>;
type Refused = { row: number; column?: string; code: string; message: string };
type Jar = TrialWhole['jarsWhole'][number];

const mostRefused = 1000;

const figures = { brix, sg, ph, temperature_C, temperature_F: temperature_C } as const;
const celsiusOf = (fahrenheit: number) => fahrenheit * units.fahrenheit.factor + units.fahrenheit.offset;
const acids = ['lactic', 'acetic', 'citric', 'malic', 'tartaric'] as const;
const ranges: Readonly<Record<string, string>> = {
  brix: '0 to 80',
  sg: '0.9 to 1.4',
  ph: '0 to 14',
  temperature_C: '−40 to 110',
  temperature_F: '−40 to 230',
  acidity_g_per_L: '0 to 200',
};

type Mapping = Readonly<Record<string, Meaning>>;

function takenFor(head: string, mapping: Mapping, measures: Measures): Meaning {
  const said = Object.entries(mapping).find(([column]) => nameKey(column) === nameKey(head))?.[1];
  return said ?? meaningOf(head, measures);
}

const momentShape = /^\d{4}-\d\d-\d\d(?:[T ]\d\d:\d\d(?::\d\d(?:\.\d+)?)?)?(?:Z|[+-]\d\d:?\d\d)?$/;

/** A moment as written; without an offset it is this machine's own time. */
function momentIn(written: string): string | null {
  if (!momentShape.test(written)) return null;
  // A bare date would be read as UTC: noon of this machine's day is meant.
  const text = /^\d{4}-\d\d-\d\d$/.test(written) ? `${written}T12:00` : written.replace(' ', 'T');
  const at = Date.parse(text);
  const year = new Date(at).getUTCFullYear();
  return Number.isNaN(at) || year < 1900 || year >= 2200 ? null : new Date(at).toISOString();
}

class RowProblem extends Error {
  readonly code: string;
  readonly column: Meaning;
  constructor(code: string, column: Meaning, message: string) {
    super(message);
    this.code = code;
    this.column = column;
  }
}

type FigureColumn = 'brix' | 'sg' | 'ph' | 'temperature_C' | 'temperature_F' | 'acidity_g_per_L';

/** The figure in a row's column, as it is stored; null where none stands. */
function figureIn(cells: Cells, column: FigureColumn): number | null {
  const written = cells[column] ?? '';
  if (written === '') return null;
  const said = numberIn(written);
  if (said === null) throw new RowProblem('not-a-number', column, phrase`“${written.slice(0, 60)}” is not a number.`);
  const value = column === 'temperature_F' ? celsiusOf(said) : said;
  const fits = column === 'acidity_g_per_L' ? value >= 0 && value <= 200 : figures[column].safeParse(value).success;
  if (!fits)
    throw new RowProblem(
      'out-of-range',
      column,
      phrase`${written} is out of range; permitted: ${ranges[column] ?? ''}.`,
    );
  return value;
}

function takenAt(cells: Cells, jar: Jar, startedAt: string): string {
  const { at = '', hours = '' } = cells;
  if (at === '' && hours === '')
    throw new RowProblem('no-moment', 'at', phrase`Say when: a date and time, or hours since the start.`);
  if (at !== '') {
    const moment = momentIn(at);
    if (moment === null)
      throw new RowProblem(
        'not-a-moment',
        'at',
        phrase`“${at.slice(0, 60)}” can’t be read as a moment; write 2026-05-02 09:30.`,
      );
    if (moment < startedAt)
      throw new RowProblem('before-start', 'at', phrase`${at} lies before jar ${jar.label} was started.`);
    return moment;
  }
  const since = numberIn(hours);
  if (since === null || since < 0 || since > 100_000) {
    throw new RowProblem('not-a-number', 'hours', phrase`“${hours.slice(0, 60)}” is not a number of hours from 0 on.`);
  }
  return new Date(Date.parse(startedAt) + since * 3_600_000).toISOString();
}

/** A note as it may stand anywhere else: nothing is cut off, and nothing kept that an export could not bring back. */
function noteIn(written: string): string {
  if (note.safeParse(written).success) return written;
  const said = isRemark(written)
    ? phrase`The note is longer than a note can be.`
    : phrase`The note holds characters that no screen shows, or that make it read otherwise.`;
  throw new RowProblem('bad-note', 'note', said);
}

function readingIn(cells: Cells, jars: ReadonlyMap<string, Jar>, now: Date): Columns<'readings'> {
  const label = cells.jar ?? '';
  const jar = jars.get(nameKey(label)) ?? jars.get(label);
  if (jar === undefined) {
    throw new RowProblem(
      'unknown-jar',
      'jar',
      phrase`This trial has no jar “${label.slice(0, 40)}”; it has ${[...new Set(jars.values())].map((each) => each.label).join(', ')}.`,
    );
  }
  if (jar.startedAt === null)
    throw new RowProblem('jar-not-started', 'jar', phrase`Jar ${jar.label} has not been started.`);
  const acidity = figureIn(cells, 'acidity_g_per_L');
  const as = acids.find((acid) => acid === nameKey(cells.acidity_as ?? ''));
  if (acidity !== null && as === undefined) {
    throw new RowProblem('no-acid', 'acidity_as', phrase`Say as which acid: ${acids.join(', ')}.`);
  }
  const reading = {
    brix: figureIn(cells, 'brix'),
    sg: figureIn(cells, 'sg'),
    ph: figureIn(cells, 'ph'),
    acidity_g_per_L: acidity,
    temperature_C: figureIn(cells, 'temperature_C') ?? figureIn(cells, 'temperature_F'),
  };
  if (Object.values(reading).every((value) => value === null))
    throw new RowProblem('no-figure', '', phrase`The row holds no figure.`);
  const at = takenAt(cells, jar, jar.startedAt);
  if (isStillToCome(at, now)) {
    const column = (cells.at ?? '') === '' ? 'hours' : 'at';
    throw new RowProblem('still-to-come', column, phrase`This moment is still to come: ${cells[column] ?? ''}.`);
  }
  const remark = noteIn(cells.note ?? '');
  return {
    ...reading,
    jar_id: jar.id,
    base_id: null,
    taken_at: storedMoment(at),
    acidity_as: acidity === null ? null : (as ?? null),
    note: remark === '' ? null : remark,
  };
}

interface Surroundings {
  readonly measures: Measures;
  readonly jars: readonly Jar[];
  readonly now: Date;
  readonly watch: Watch;
}

function readTable(table: string, mapping: Mapping, { measures, jars, now, watch }: Surroundings) {
  const { header, rows, unclosed } = pastedTable(table);
  const meanings = header.map((head) => takenFor(head, mapping, measures));
  const columns = header.map((head, place) => ({ head: head.trim(), meaning: meanings[place] ?? '' }));
  const refused: Refused[] = [
    ...unnamedColumns({ header, rows }),
    ...unclosed.map((row) => ({
      row,
      code: 'quotes-unclosed',
      message: phrase`A quotation mark near row ${row} is not closed. Close or remove it.`,
    })),
  ];
  const readings: Columns<'readings'>[] = [];
  const kinds = meanings.map((meaning) => (meaning === 'temperature_F' ? 'temperature_C' : meaning));
  const twin = meanings.find((_, place) => kinds[place] !== '' && kinds.indexOf(kinds[place] ?? '') < place);
  if (twin !== undefined) {
    refused.push({
      row: 1,
      code: 'column-twice',
      message: phrase`Two columns are taken for ${twin}. Leave one of them out.`,
    });
  } else if (!meanings.includes('jar')) {
    refused.push({
      row: 1,
      code: 'no-header',
      message: phrase`The first row must name the columns; there is none for the jar. Its columns are: ${header.join(', ').slice(0, 200)}.`,
    });
  } else {
    const jarsByName = new Map(jars.flatMap((jar) => [[jar.id, jar] as const, [nameKey(jar.label), jar] as const]));
    rows.forEach((row, index) => {
      if (index % 2000 === 0) {
        watch.assertGoing();
        watch.progress(index, rows.length);
      }
      if (row.every((cell) => cell.trim() === '')) return;
      // "4,2" without quotation marks between commas would be read as 4.
      if (row.slice(header.length).some((cell) => cell.trim() !== '')) {
        const message = phrase`Row ${index + 2} has ${row.length} cells, the header has ${header.length}.`;
        refused.push({ row: index + 2, code: 'too-many-cells', message });
        return;
      }
      const cells: Cells = {};
      meanings.forEach((meaning, place) => {
        if (meaning !== '') cells[meaning] = (row[place] ?? '').trim();
      });
      try {
        readings.push(readingIn(cells, jarsByName, now));
      } catch (error) {
        if (!(error instanceof RowProblem)) throw error;
        const head = header[meanings.indexOf(error.column)];
        refused.push({
          row: index + 2,
          ...(head === undefined || error.column === '' ? {} : { column: head }),
          code: error.code,
          message: error.message,
        });
      }
    });
  }
  return { readings, refused, columns };
}

export const readingsImportHandlers: Handlers<'readings:import'> = {
  'readings:import'(kitchen, { trial: id, table, mapping = {}, preview }, watch) {
    const trial = found(findTrial(kitchen.read, id), 'trial', 'trial');
    const { readings, refused, columns } = readTable(table, mapping, {
      measures: kitchen.read.one<{ measures: Measures }>('SELECT measures FROM kitchens')?.measures ?? 'metric',
      jars: trial.jarsWhole,
      now: kitchen.now(),
      watch,
    });
    if (!preview && readings.length > 0) {
      const summary =
        readings.length === 1
          ? phrase`Take in a reading of “${trial.question}”`
          : phrase`Take in ${readings.length} readings of “${trial.question}”`;
      kitchen.write({ request: 'readings:import', summary }, (writer) => {
        readings.forEach((reading, place) => {
          if (place % 500 === 0) {
            watch.assertGoing();
            watch.progress(place, readings.length);
          }
          writer.insert('readings', reading);
        });
      });
    }
    return {
      accepted: readings.length,
      columns,
      refused: refused.slice(0, mostRefused),
      refusedMore: Math.max(0, refused.length - mostRefused),
    };
  },
};
