import type { Addition } from '#core/trial/formula.ts';
import type { InputOf } from '#shared/contract/all-requests.ts';
import type { Truth } from './sample-scores.ts';

// The invented trials of the sample kitchen: a market stall that flavours green-tea kombucha.

type PlanInput = InputOf<'trials:save'>;

/** A trial of the sample kitchen: its plan, how long ago it began, and what the invented panel would find. */
export interface SamplePlan {
  readonly plan: PlanInput;
  readonly startedHoursAgo: number;
  readonly truth: Readonly<Record<string, Truth>>;
}

const jar700: PlanInput['vessel'] = { kind: 'lidded-jar', capacity_mL: 1000, diameter_mm: 98 };

function fruit(ingredient: string, mass_g: number, state: Addition['state'] = 'fresh'): Addition {
  return { ingredient, mass_g, state };
}

function hoursBefore(now: Date, hours: number): string {
  const moment = new Date(now.getTime() - hours * 3_600_000);
  moment.setUTCMinutes(0, 0, 0);
  return moment.toISOString();
}

const also = { stirring: 'once a day', water: 'filtered tap' };

export function samplePlans(now: Date, bases: { readonly spring: string; readonly summer: string }) {
  const days: SamplePlan = {
    startedHoursAgo: 24 * 24,
    plan: {
      question: 'How many days should pear and ginger stand?',
      factor: 'days',
      levels: [1, 2, 3, 4].map((value) => ({ name: `${value} day${value === 1 ? '' : 's'}`, value })),
      control: '2 days',
      held: {
        additions: [fruit('pears', 80), fruit('ginger root', 6)],
        days: undefined,
        cover: 'cloth',
        temperature_C: 22,
        also,
      },
      replicates: 1,
      calendar: 'staggered-start',
      baseAvailable_mL: 6000,
      baseEach_mL: 700,
      vessel: jar700,
      start: hoursBefore(now, 24 * 24),
      seed: 11,
      base: bases.spring,
    },
    truth: {
      '1 day': { tang: 2.6, fizz: 1.8, sweetness: 6.9, fruit: 5.2, 'vinegar note': 0.7, liking: 5.4 },
      '2 days': { tang: 4.1, fizz: 4.2, sweetness: 5.3, fruit: 6.1, 'vinegar note': 1.1, liking: 6.6 },
      '3 days': { tang: 5.8, fizz: 6.4, sweetness: 3.7, fruit: 6.3, 'vinegar note': 1.9, liking: 7.4 },
      '4 days': { tang: 7.6, fizz: 7.1, sweetness: 2.2, fruit: 5.4, 'vinegar note': 3.8, liking: 5.6 },
    },
  };
  const amount: SamplePlan = {
    startedHoursAgo: 24 * 14,
    plan: {
      question: 'How much apricot is enough?',
      factor: 'amount',
      levels: [40, 80, 120].map((value) => ({ name: `${value} g`, value })),
      control: '80 g',
      held: { additions: [fruit('apricots', 80)], days: 2, cover: 'cloth', temperature_C: 22, also },
      replicates: 1,
      calendar: 'staggered-pull',
      baseAvailable_mL: 3200,
      baseEach_mL: 700,
      vessel: jar700,
      start: hoursBefore(now, 24 * 14),
      seed: 12,
      base: bases.spring,
    },
    truth: {
      '40 g': { tang: 4.4, fizz: 3.4, sweetness: 3.6, fruit: 3.2, 'vinegar note': 1.6, liking: 5.6 },
      '80 g': { tang: 4.6, fizz: 4.6, sweetness: 4.4, fruit: 5.4, 'vinegar note': 1.4, liking: 6.7 },
      '120 g': { tang: 4.9, fizz: 5.3, sweetness: 5.1, fruit: 7.2, 'vinegar note': 1.3, liking: 6.9 },
    },
  };
  const state: SamplePlan = {
    startedHoursAgo: 40,
    plan: {
      question: 'Do frozen plums keep up with fresh ones?',
      factor: 'state',
      levels: [
        { name: 'fresh', state: 'fresh' },
        { name: 'frozen', state: 'frozen' },
      ],
      control: 'fresh',
      held: { additions: [fruit('plums', 90)], days: 3, cover: 'cloth', temperature_C: 21, also },
      replicates: 2,
      calendar: 'staggered-pull',
      baseAvailable_mL: 5000,
      baseEach_mL: 700,
      vessel: jar700,
      start: hoursBefore(now, 40),
      seed: 13,
      base: bases.summer,
    },
    truth: {},
  };
  const formula: SamplePlan = {
    startedHoursAgo: 24 * 5,
    plan: {
      question: 'Which of three drinks goes on the summer stall?',
      factor: 'formula',
      levels: [
        { name: 'Pear and ginger', additions: [fruit('pears', 80), fruit('ginger root', 6)], days: 3 },
        { name: 'Apricot and lemon', additions: [fruit('apricots', 100), fruit('lemon juice', 12, 'liquid')], days: 2 },
        { name: 'Sour cherry', additions: [fruit('sour cherries', 90)], days: 3 },
      ],
      control: 'Pear and ginger',
      held: { additions: [], days: 3, cover: 'cloth', temperature_C: 22, also },
      replicates: 1,
      calendar: 'staggered-start',
      baseAvailable_mL: 2200,
      baseEach_mL: 700,
      vessel: jar700,
      start: hoursBefore(now, 24 * 5),
      seed: 14,
      base: bases.summer,
    },
    truth: {
      'Pear and ginger': { tang: 5.6, fizz: 6.1, sweetness: 3.9, fruit: 6.0, 'vinegar note': 1.8, liking: 7.1 },
      'Apricot and lemon': { tang: 6.2, fizz: 4.8, sweetness: 4.6, fruit: 6.4, 'vinegar note': 1.2, liking: 6.3 },
      'Sour cherry': { tang: 6.7, fizz: 5.7, sweetness: 4.1, fruit: 7.0, 'vinegar note': 1.5, liking: 6.8 },
    },
  };
  return { days, amount, state, formula };
}
