import { describe, expect, it } from 'vitest';
import { measuresOf } from '#renderer/format/use-measures.ts';
import { judgePlan } from '#renderer/pages/plan/judge-plan.ts';
import { newPlan } from '#renderer/pages/plan/plan-draft.ts';
import { additionTyped, daysTyped, judged, levelTyped, saidIn, volumeOf } from './typed-plan.ts';

const { held } = daysTyped;

describe('judgePlan(draft)', () => {
  it('reads a plan as typed into what the core plans with', () => {
    const { plan, isReady } = judged();
    expect(isReady).toBe(true);
    expect(plan).toMatchObject({
      levels: [
        { name: '1 day', value: 1 },
        { name: '2.5 days', value: 2.5 },
      ],
      control: '1 day',
      baseAvailable_mL: 2000,
      baseEach_mL: 800,
      vessel: { kind: 'open-jar', capacity_mL: 1000 },
      held: {
        additions: [{ ingredient: 'raspberries', mass_g: 75, state: 'fresh' }],
        cover: 'cloth',
        temperature_C: 22,
      },
    });
  });

  it('says of an empty plan only what is missing, in the order of the form, and nothing as a problem', () => {
    const empty = newPlan('metric', '2026-05-01T09:00', 7);
    expect(saidIn(empty)).toEqual([
      'gap at question',
      'gap at levels.0.value',
      'gap at levels.1.value',
      'gap at control',
      'gap at baseAvailable_mL',
      'gap at baseEach_mL',
    ]);
  });

  it('weighs a cup of the owner’s own ingredient by what the owner said it weighs', () => {
    const additions = [additionTyped('Sea buckthorn purée', '1/2 cup')];
    const own = { name: 'sea buckthorn purée', measures: [{ unit: 'cup' as const, form: null, mass_g: 240 }] };
    const measures = {
      ...measuresOf('metric'),
      measured: (name: string) => (name.toLowerCase() === own.name ? own : undefined),
    };
    const draft = { ...daysTyped, held: { ...held, additions } };
    const { plan } = judgePlan(draft, { bases: [], measures, volumeOf });
    expect(plan.held.additions).toMatchObject([
      { ingredient: 'Sea buckthorn purée', mass_g: 120, asWritten: '1/2 cup' },
    ]);
    expect(saidIn({ held: { ...held, additions } })).toEqual(['gap at held.additions.0.weight']);
  });

  it('keeps a handful with its weight, and asks for the weight where none is typed', () => {
    const handful = (weight: string) => ({
      held: { ...held, additions: [additionTyped('mint', 'a handful', { weight })] },
    });
    expect(saidIn(handful(''))).toEqual(['gap at held.additions.0.weight']);
    expect(judged(handful('4,5')).plan.held.additions).toEqual([
      { ingredient: 'mint', mass_g: 4.5, state: 'fresh', asWritten: 'a handful' },
    ]);
    expect(saidIn(handful('some'))).toEqual(['fault at held.additions.0.weight']);
  });

  it('weighs a kitchen measure by the food table (raspberries: 123 g a cup, USDA SR28 09302)', () => {
    const [addition] = judged({ held: { ...held, additions: [additionTyped('raspberries', '1/2 cup')] } }).plan.held
      .additions;
    expect(addition).toMatchObject({ mass_g: 61.5, asWritten: '1/2 cup' });
  });

  it('takes a bad number as a sentence at its field, and nothing else is lost', () => {
    expect(saidIn({ baseEach: '8oo' })).toEqual(['fault at baseEach_mL']);
    expect(saidIn({ baseEach: '1,500' })).toEqual(['fault at baseEach_mL']);
    expect(saidIn({ held: { ...held, additions: [additionTyped('pears', '1,500')] } })).toEqual([
      'fault at held.additions.0.amount',
    ]);
    expect(saidIn({ held: { ...held, temperature: 'warm' } })).toEqual(['fault at held.temperature_C']);
    const { plan } = judged({ baseEach: 'lots' });
    expect(plan.levels).toHaveLength(2);
  });

  it('reads bare numbers in the measures of the draft: cups and °F in a US kitchen', () => {
    const { plan } = judged({
      measures: 'us',
      baseEach: '3',
      baseAvailable: '1/2 gal',
      held: { ...held, temperature: '72' },
    });
    expect(plan.baseEach_mL).toBeCloseTo(3 * 236.5882365, 6);
    expect(plan.held.temperature_C).toBeCloseTo(22.222, 3);
  });

  it('names the jars of an amount after what is typed, with 0 as the plain base, and weighs them in grams', () => {
    const { plan, isReady } = judged({
      factor: 'amount',
      levels: [
        levelTyped('1', { value: '0' }),
        levelTyped('2', { value: '1/2 cup' }),
        levelTyped('3', { value: '100 g' }),
      ],
      baseAvailable: '3 L',
      held: { ...held, days: '3', additions: [additionTyped('raspberries', '')] },
    });
    expect(isReady).toBe(true);
    expect(plan.levels.map(({ name, value }) => [name, value])).toEqual([
      ['plain base', 0],
      ['1/2 cup', 61.5],
      ['100 g', 100],
    ]);
  });

  it('puts what is held beside the fruit of each jar', () => {
    const { planned } = judged({
      factor: 'fruit',
      levels: ['pears', 'plums'].map((name, place) =>
        levelTyped(String(place + 1), { additions: [additionTyped(name, '80 g')] }),
      ),
      held: { ...held, days: '3', additions: [additionTyped('ginger', '5 g')] },
    });
    expect(planned.jars.map(({ additions }) => additions.map(({ ingredient }) => ingredient))).toEqual([
      ['pears', 'ginger'],
      ['plums', 'ginger'],
    ]);
  });

  it('offers ways out that lead out', () => {
    const tooMuch = { baseEach: '1100' };
    const [sentence] = judged(tooMuch).sentences;
    expect(sentence).toMatchObject({ at: 'baseAvailable_mL', code: 'not-enough-base' });
    const better = sentence?.ways[0]?.change({ ...daysTyped, ...tooMuch });
    expect(better?.baseEach).toBe('1000');
    expect(judged(better).sentences.map(({ code }) => code)).toEqual(['jar-overfull']);
    const fits = judged(better).sentences[0]?.ways[0]?.change(better ?? daysTyped);
    expect(judged(fits).isReady).toBe(true);
  });

  it('takes a base with nothing left for a fault', () => {
    const base = {
      id: 'b',
      revision: 1,
      isSample: false,
      name: 'Old',
      culture: null,
      madeAt: '2026-04-01T09:00:00Z',
      strainedAt: null,
      volume_mL: 1000,
      allotted_mL: 1000,
      left_mL: 0,
      temperature_C: null,
      sugarStart_g_per_L: null,
      sugarNow_g_per_L: null,
      plannedHours: null,
      wentIn: null,
      alcohol_pctVol: null,
      note: null,
    };
    const { sentences } = judged({ base: 'b' }, [base]);
    expect(sentences.map(({ at, kind }) => `${kind} at ${at}`)).toEqual(['fault at baseAvailable_mL']);
  });
});
