import type { AskedOf, ValueOf } from '#shared/contract/all-requests.ts';
import type { Method, Way } from './words.ts';

type Trial = ValueOf<'trials:open'>;
type Jar = Trial['jarsWhole'][number];

/** A test as it is being set up. */
export interface SetUp {
  readonly way: Way;
  readonly jarA: string;
  readonly jarB: string;
  readonly asked: string;
  /** Which of the two jars is expected to be chosen in a pair; null: either could be. */
  readonly expected: 'A' | 'B' | null;
  readonly tasters: readonly string[];
  readonly rounds: number;
  readonly name: string;
}

/** Jars that can be served: started, and not discarded. */
export function servableJars(trial: Trial): Jar[] {
  return trial.jarsWhole.filter(({ state }) => state !== 'planned' && state !== 'discarded');
}

/** The control's jar first, and a jar of another level beside it. */
export function usualPair(jars: readonly Jar[]): { jarA: string; jarB: string } {
  const first = jars.find(({ isControl }) => isControl) ?? jars[0];
  const second = jars.find(({ level }) => level !== first?.level) ?? jars.find(({ id }) => id !== first?.id);
  return { jarA: first?.id ?? '', jarB: second?.id ?? '' };
}

export function methodOf({ way, expected }: Pick<SetUp, 'way' | 'expected'>): Method {
  return way === 'paired' && expected === null ? 'paired-two-sided' : way;
}

/** What the desk is asked for; members that do not belong to the way of serving are left out. */
export function buildInput(trial: string, setUp: SetUp, seed: number): AskedOf<'discriminations:build'> {
  const isPaired = setUp.way === 'paired';
  return {
    trial,
    name: setUp.name,
    method: methodOf(setUp),
    jarA: setUp.jarA,
    jarB: setUp.jarB,
    ...(isPaired && setUp.asked.trim() !== '' ? { asked: setUp.asked } : {}),
    ...(isPaired && setUp.expected !== null ? { expected: setUp.expected } : {}),
    tasters: [...setUp.tasters],
    rounds: setUp.rounds,
    seed,
  };
}
