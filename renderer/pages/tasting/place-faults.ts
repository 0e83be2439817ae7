import { joined } from '#renderer/format/words.ts';
import { readCell, type Scale } from './cell-text.ts';
import { rankedWords } from './ranked-words.ts';

/** A cup on the sheet of someone who ranks, and what stands at it. */
export interface RankedCup {
  /** Its code, or its place in a row of cups. */
  readonly name: string;
  readonly text: string;
}

function placeOf({ text }: RankedCup, scale: Scale): number | null {
  const reading = readCell(text, scale);
  return reading.kind === 'score' ? reading.score : null;
}

/**
 * Why what stands at each cup can't be its place: no place at all, or one that another cup has too.
 *
 * @param areTiesMeant cups may share a place, because the taster said so
 * @returns a sentence for each cup; undefined where all is well or nothing stands
 */
export function placeFaults(cups: readonly RankedCup[], scale: Scale, areTiesMeant: boolean): (string | undefined)[] {
  const places = cups.map((cup) => placeOf(cup, scale));
  return cups.map((cup, at) => {
    const reading = readCell(cup.text, scale);
    if (reading.kind === 'fault') return reading.message;
    if (areTiesMeant || reading.kind === 'none') return undefined;
    const twins = cups.filter((_, other) => other !== at && places[other] === reading.score).map(({ name }) => name);
    return twins.length === 0 ? undefined : rankedWords.double(reading.score, joined(twins));
  });
}

/** Whether two cups have one place and nobody said that they may. */
export function hasDoublePlace(cups: readonly RankedCup[], scale: Scale): boolean {
  const places = cups.map((cup) => placeOf(cup, scale)).filter((place) => place !== null);
  return new Set(places).size < places.length;
}

/** The places that no cup has yet; where cups were taken away, the last places go with them unless someone gave them before. */
export function freePlaces(cups: readonly RankedCup[], scale: Scale): number[] {
  const given = cups.map((cup) => placeOf(cup, scale));
  const last = Math.min(scale.high, Math.max(cups.length, ...given.map((place) => place ?? 0)));
  return Array.from({ length: last }, (_, place) => place + 1).filter((place) => !given.includes(place));
}

/** The order so far: each place that is given, with its cups. */
export function orderSoFar(cups: readonly RankedCup[], scale: Scale): { place: number; names: string[] }[] {
  const byPlace = new Map<number, string[]>();
  for (const cup of cups) {
    const place = placeOf(cup, scale);
    if (place !== null) byPlace.set(place, [...(byPlace.get(place) ?? []), cup.name]);
  }
  return [...byPlace].map(([place, names]) => ({ place, names })).sort((a, b) => a.place - b.place);
}

/**
 * What of a ranking is to be stored at a cup: its place; nothing where it is given twice and was not stored there before; `undefined`
 * where what is stored stays.
 *
 * @param held what is stored at this cup
 */
export function placeToStore(
  cup: RankedCup,
  scale: Scale,
  fault: string | undefined,
  held: number | null,
): number | null | undefined {
  const reading = readCell(cup.text, scale);
  if (reading.kind === 'fault') return undefined;
  const place = reading.kind === 'score' ? reading.score : null;
  if (fault === undefined) return place;
  return place === held ? undefined : null;
}
