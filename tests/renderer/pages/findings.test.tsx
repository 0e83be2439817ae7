// @vitest-environment happy-dom
import { cleanup, screen, within } from '@testing-library/react';
import { userEvent } from '@testing-library/user-event';
import { afterEach, describe, expect, it } from 'vitest';
import { FindingsPage } from '#renderer/pages/findings/findings-page.tsx';
import { HouseRecipePage } from '#renderer/pages/house-recipe/house-recipe-page.tsx';
import { PromotePage } from '#renderer/pages/promote/promote-page.tsx';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { pageOver } from '../page-over.tsx';
import { findings, idOf, kitchen, trial } from '../small-kitchen.ts';
import { standInBridge } from '../stand-in-bridge.ts';

afterEach(cleanup);

const none = { ...findings, tastings: 0, scores: [], analysis: null, headline: null, sentences: [] };
const draft: ValueOf<'recipes:preview'> = {
  formula: {
    additions: [{ ingredient: 'raspberries', mass_g: 80, state: 'fresh' }],
    days: 4,
    cover: 'cloth',
    temperature_C: 22,
  },
  base_mL: 800,
  volume_mL: 877,
  vessel: { kind: 'open-jar', capacity_mL: 1000 },
  target: [],
  basis: 'none',
  base: null,
  alsoHeld: { stirring: 'daily' },
  cautions: [{ code: 'selling', message: 'Selling is another matter.', basis: 'Common practice, no source' }],
  chain: { trial: { id: trial.id, question: trial.question }, level: null, jars: [], tastings: [] },
};
const recipe: ValueOf<'recipes:open'> = {
  id: idOf(60),
  isSample: false,
  name: 'Raspberry',
  versions: 2,
  latest: 2,
  basis: 'none',
  createdAt: '2026-05-09T09:00:00Z',
  note: null,
  versionList: [
    { ...draft, id: idOf(61), number: 1, createdAt: '2026-05-09T09:00:00Z', why: null },
    {
      ...draft,
      id: idOf(62),
      number: 2,
      createdAt: '2026-06-09T09:00:00Z',
      why: 'Less was too thin.',
      formula: { ...draft.formula, additions: [{ ingredient: 'raspberries', mass_g: 96, state: 'fresh' }] },
    },
  ],
  batches: [],
};
const scaled = ({ volume_mL }: { volume_mL: number }): ValueOf<'recipes:scale'> => ({
  recipe: recipe.id,
  version: 2,
  volume_mL,
  base_mL: (800 * volume_mL) / 877,
  additions: [{ ingredient: 'raspberries', mass_g: (96 * volume_mL) / 877, state: 'fresh' }],
});

const ranking: ValueOf<'findings:places'>['rankings'][number] = {
  tasting: idOf(80),
  name: 'Sunday',
  tasters: 3,
  counted: 3,
  samples: [
    { sample: '2 days', rankSum: 6, letters: 'a' },
    { sample: '4 days', rankSum: 3, letters: 'a' },
  ],
  test: { chiSquare: 3, df: 1, p: 0.25, exact: true, kendallW: 1, blocks: 3 },
  criticalDifference: null,
  criticalIsExact: true,
  page: null,
  places: [
    { sample: '2 days', counts: [0, 3], mean: 2 },
    { sample: '4 days', counts: [3, 0], mean: 1 },
  ],
  sentence: '“4 days” came first, but 3 rankings are not enough to set them apart.',
  ordered: null,
  doubts: ['Only three tasters.'],
  withEverybody: null,
};
const rightness: ValueOf<'findings:penalties'>['attributes'][number] = {
  attribute: 'sweetness',
  counts: { answers: 6, tooLittle: 1, right: 2, tooMuch: 3 },
  withoutLiking: 1,
  penalties: null,
  sentences: ['3 of 5 answers found too much sweetness.'],
  levels: [
    {
      level: '4 days',
      counts: { answers: 3, tooLittle: 0, right: 0, tooMuch: 3 },
      penalties: null,
      sentences: ['Too sweet: worth changing.'],
    },
  ],
};

function bridgeWith(change: Partial<Parameters<typeof standInBridge>[0]> = {}) {
  return standInBridge({
    'kitchen:open': kitchen,
    'trials:open': trial,
    'findings:read': findings,
    'findings:places': { rankings: [], scored: [] },
    'profiles:open': { wishes: [], attributes: [], closedTastings: 1, setAfterReveal: false },
    'findings:penalties': { attributes: [], rule: '' },
    'findings:drivers': { drivers: [], untold: [], together: [], needs: 'With two jars it can’t be told.' },
    'sips:byTrial': { sips: [] },
    'tastings:list': { tastings: [] },
    'recipes:list': { recipes: [] },
    'recipes:preview': draft,
    'recipes:open': recipe,
    'recipes:scale': scaled,
    ...change,
  });
}

describe('Findings', () => {
  it('begins with the answer and its doubts, then each attribute against the control', async () => {
    pageOver(bridgeWith(), <FindingsPage id={trial.id} />);
    const answer = within(await screen.findByRole('region', { name: 'The answer' }));
    expect(answer.getByText('Tang moved most with the days.')).toBeTruthy();
    expect(answer.getByText('Only two tasters.')).toBeTruthy();
    expect(screen.getByText(/Against “2 days”: “4 days” 3\.0 points higher/)).toBeTruthy();
  });

  it('says what a ranking found, what just-about-right scales cost, and why drivers can’t be told', async () => {
    const bridge = bridgeWith({
      'findings:read': { ...findings, headline: null },
      'findings:places': { rankings: [ranking], scored: [] },
      'findings:penalties': { attributes: [rightness], rule: 'A fifth and one point: common practice, no source.' },
    });
    pageOver(bridge, <FindingsPage id={trial.id} />);
    const ranked = within(await screen.findByRole('region', { name: 'Put in order: Sunday' }));
    expect(ranked.getByText(ranking.sentence).className).toBe('headline-sentence');
    const table = within(ranked.getByRole('table'));
    expect(table.getByRole('row', { name: '4\u00a0days 3 0 1.0 a' })).toBeTruthy();
    expect(ranked.getByText(/chance 0\.250 \(every possible order counted\)/)).toBeTruthy();
    expect(await screen.findByText('“4 days”: Too sweet: worth changing.')).toBeTruthy();
    expect(screen.getByText(/1 of 6 answers on sweetness have no liking score/)).toBeTruthy();
    expect(await screen.findByText('With two jars it can’t be told.')).toBeTruthy();
  });

  it('leads to the tasting while none is closed, and says how far an open one has come', async () => {
    const open = {
      id: idOf(70),
      isSample: false,
      name: 'Saturday',
      trial: trial.id,
      heldAt: '2026-05-05T09:00:00Z',
      closedAt: null,
      isRanked: false,
      samples: 2,
      tasters: 2,
      scores: 3,
      expected: 8,
    };
    pageOver(
      bridgeWith({ 'findings:read': none, 'tastings:list': { tastings: [open] } }),
      <FindingsPage id={trial.id} />,
    );
    expect(await screen.findByText(/“Saturday” is open: 3 of 8 scores are in/)).toBeTruthy();
    expect(screen.getByRole('link', { name: 'Go to the tasting' }).getAttribute('href')).toBe(
      `/trials/${trial.id}/taste`,
    );
    expect(screen.queryByRole('figure')).toBeNull();
  });
});

describe('Promote', () => {
  it('chooses nothing where no panel says which is best, and asks for a level before it writes', async () => {
    const bridge = bridgeWith({ 'findings:read': none });
    pageOver(bridge, <PromotePage id={trial.id} />);
    expect(await screen.findByText(/Nobody has tasted this trial yet/)).toBeTruthy();
    await userEvent.click(screen.getByRole('button', { name: 'Write it down' }));
    expect(screen.getByRole('alert').textContent).toBe('Choose a level first.');
    expect(bridge.asked.some(({ name }) => name === 'recipes:promote')).toBe(false);
    await userEvent.click(screen.getByRole('radio', { name: /4 days/ }));
    expect(screen.getByRole<HTMLInputElement>('textbox', { name: 'Name of the house recipe' }).value).toBe(
      'Raspberries, 4 days',
    );
    expect((await screen.findAllByText(/nobody’s scores stand behind it/)).length).toBeGreaterThan(0);
  });

  it('chooses the winner the panel is sure of, with the reason', async () => {
    const sure = {
      ...findings,
      liking: 'tang',
      headline: { ...findings.headline, sentence: 'x', winner: { level: '4 days', mean: 7, expected: 6.8 } },
    } as ValueOf<'findings:read'>;
    pageOver(bridgeWith({ 'findings:read': sure }), <PromotePage id={trial.id} />);
    expect(await screen.findByRole<HTMLInputElement>('radio', { name: /4 days/, checked: true })).toBeTruthy();
    expect(screen.getByText(/“4 days” is chosen for you: .* and is fairly sure/)).toBeTruthy();
  });

  it('goes by what was wished for, where wishes were said', async () => {
    const wish = { attribute: 'tang', goal: 'less' as const, low: 1, high: 9, target: null, importance: 1 };
    const level = { desirability: 0.7, low: 0.5, high: 0.9 };
    const bridge = bridgeWith({
      'profiles:open': { wishes: [wish], attributes: [], closedTastings: 1, setAfterReveal: false },
      'profiles:judge': {
        levels: [
          { ...level, level: '2 days', winShare: 0.82 },
          { ...level, level: '4 days', winShare: 0.18 },
        ],
        winner: '2 days',
        setAfterReveal: false,
        needs: null,
      },
    });
    pageOver(bridge, <PromotePage id={trial.id} />);
    expect(await screen.findByRole('radio', { name: /2 days/, checked: true })).toBeTruthy();
    expect(screen.getByText(/closest to what you wished for, first in 82 of 100 redrawn panels/)).toBeTruthy();
    cleanup();
    pageOver(bridge, <FindingsPage id={trial.id} />);
    expect(
      await screen.findByText(/“2 days” comes closest to what is wanted\. .* first in 82 of 100 panels/),
    ).toBeTruthy();
  });

  it('shows a refusal where it belongs', async () => {
    const bridge = bridgeWith();
    bridge.fail('recipes:promote', { code: 'invalid-input', message: 'That name is too long.', path: ['name'] });
    pageOver(bridge, <PromotePage id={trial.id} />);
    await userEvent.click(await screen.findByRole('radio', { name: /4 days/ }));
    await userEvent.click(screen.getByRole('button', { name: 'Write it down' }));
    expect(await screen.findByText('That name is too long.')).toBeTruthy();
    expect(screen.getByRole('textbox', { name: 'Name of the house recipe' }).getAttribute('aria-invalid')).toBe('true');
  });
});

describe('A house recipe', () => {
  it('shows what each version changed, and scales with what rounding did', async () => {
    pageOver(bridgeWith(), <HouseRecipePage id={recipe.id} />);
    expect(await screen.findByText('Raspberries: 100 g/L became 120 g/L (+20 %).')).toBeTruthy();
    const volume = screen.getByRole('textbox', { name: 'How much to make' });
    await userEvent.clear(volume);
    await userEvent.type(volume, '100');
    expect((await screen.findAllByText(/^11 g raspberries, fresh/)).length).toBeGreaterThan(0);
    await userEvent.selectOptions(screen.getByRole('combobox', { name: 'Weigh to' }), '5 g');
    expect(screen.getByText(/rounded from 10\.9 g \(−8\.6 %\)/)).toBeTruthy();
  });

  it('says plainly that it is gone', async () => {
    const bridge = bridgeWith();
    bridge.fail('recipes:open', { code: 'not-found', message: 'There is no such house recipe in this kitchen.' });
    pageOver(bridge, <HouseRecipePage id={recipe.id} />);
    expect(await screen.findByRole('heading', { level: 1, name: 'This house recipe is not here' })).toBeTruthy();
  });
});
