// @vitest-environment happy-dom
import { cleanup, fireEvent, render, screen } from '@testing-library/react';
import { afterEach, describe, expect, it } from 'vitest';
import { Facts } from '#renderer/parts/facts/facts.tsx';
import { Field } from '#renderer/parts/field/field.tsx';
import { PageHead } from '#renderer/parts/page-head/page-head.tsx';
import { Explained } from '#renderer/parts/term/explained.tsx';
import { TermTip } from '#renderer/parts/term/term-tip.tsx';
import { termWords } from '#renderer/parts/term/term-words.ts';

afterEach(cleanup);

function told(): string[] {
  return [...document.querySelectorAll<HTMLElement>('[data-tells]')].map(({ dataset }) => dataset.tells ?? '');
}

function meaningOf(element: Element): string {
  const ids = element.getAttribute('aria-describedby')?.split(' ') ?? [];
  return ids.map((id) => document.getElementById(id)?.textContent ?? '?').join(' ');
}

describe('Explained', () => {
  it('keeps the sentence whole, and says of each word what it means', () => {
    const { container } = render(
      <main>
        <Explained words="Blind codes keep the panel honest." />
        <TermTip />
      </main>,
    );
    expect(container.querySelector('main')?.firstChild?.parentElement?.textContent).toContain(
      'Blind codes keep the panel honest.',
    );
    const [codes, panel] = container.querySelectorAll('dfn');
    expect(codes?.textContent).toBe('Blind codes');
    expect(codes === undefined ? '' : meaningOf(codes)).toBe(termWords.blindCode.meaning);
    expect(panel === undefined ? '' : meaningOf(panel)).toBe(termWords.panel.meaning);
  });

  it('leaves a sentence without such a word as it is', () => {
    const { container } = render(<Explained words="Nothing leaves it unless you carry it." />);
    expect(container.innerHTML).toBe('Nothing leaves it unless you carry it.');
  });

  it('tells a word once on a page, where it is read first, whatever is drawn first', () => {
    const page = (withLead: boolean) => (
      <main>
        {withLead ? (
          <p>
            <Explained words="A trial splits one base." />
          </p>
        ) : null}
        <h2>
          <Explained words="The base of this trial" />
        </h2>
      </main>
    );
    const { rerender, container } = render(page(false));
    expect(told()).toEqual(['base', 'trial']);
    rerender(page(true));
    expect(container.querySelectorAll('h2 [data-tells]')).toHaveLength(0);
    expect(told()).toEqual(['trial', 'base']);
  });

  it('tells it at the next place again when the first one goes', async () => {
    const { rerender } = render(
      <main>
        <p key="lead">
          <Explained words="One base" />
        </p>
        <h2 key="head">
          <Explained words="Bases" />
        </h2>
      </main>,
    );
    rerender(
      <main>
        <h2 key="head">
          <Explained words="Bases" />
        </h2>
      </main>,
    );
    await screen.findByText((_, element) => element?.tagName === 'DFN' && element.hasAttribute('data-tells'));
    expect(told()).toEqual(['base']);
  });

  it('is one stop of Tab for all words of a page; the arrows go from one to the next', () => {
    render(
      <main>
        <PageHead title="Bases" lead="What is split into jars, and the cultures that make it." />
        <Facts facts={[{ name: 'Headspace', value: '2 cm' }]} />
        <TermTip />
      </main>,
    );
    const words = [...document.querySelectorAll('dfn')];
    const stops = () => words.filter(({ tabIndex }) => tabIndex === 0).map(({ textContent }) => textContent);
    expect(stops()).toEqual(['Bases']);
    const [bases, cultures, headspace] = words;
    fireEvent.focusIn(bases as HTMLElement);
    (bases as HTMLElement).focus();
    fireEvent.keyDown(bases as HTMLElement, { key: 'ArrowRight' });
    expect(document.activeElement).toBe(cultures);
    fireEvent.keyDown(cultures as HTMLElement, { key: 'End' });
    expect(document.activeElement).toBe(headspace);
    expect(stops()).toEqual(['Headspace']);
    expect(screen.getByRole('tooltip').querySelector('p')?.textContent).toBe(termWords.headspace.meaning);
    fireEvent.keyDown(headspace as HTMLElement, { key: 'Escape' });
    expect(screen.queryByRole('tooltip')).toBeNull();
  });

  it('explains nothing in a title that people wrote', () => {
    render(<PageHead title="Which base keeps its fizz?" isTitleTheirs />);
    expect(told()).toEqual([]);
  });
});

describe('Field', () => {
  function field(label: string, isDisabled = false) {
    return (
      <Field label={label} hint="Such as 3.4.">
        {(wiring) => <input {...wiring} disabled={isDisabled} />}
      </Field>
    );
  }

  it('tells the word of its label while it has the focus, keeps its name, and adds no stop of Tab', () => {
    render(
      <main>
        {field('pH of the base')}
        <TermTip />
      </main>,
    );
    const input = screen.getByLabelText('pH of the base');
    expect(document.querySelectorAll('dfn')).toHaveLength(0);
    expect(meaningOf(input)).toBe(`Such as 3.4. ${termWords.ph.meaning} ${termWords.base.meaning}`);
    fireEvent.focusIn(input);
    expect([...screen.getByRole('tooltip').querySelectorAll('p')].map(({ textContent }) => textContent)).toEqual([
      `pH: ${termWords.ph.meaning}`,
      `base: ${termWords.base.meaning}`,
    ]);
    fireEvent.focusOut(input);
    expect(screen.queryByRole('tooltip')).toBeNull();
  });

  it('is quiet again as soon as something is typed', () => {
    render(
      <main>
        {field('Headspace')}
        <TermTip />
      </main>,
    );
    const input = screen.getByLabelText('Headspace');
    fireEvent.focusIn(input);
    expect(screen.getByRole('tooltip')).toBeTruthy();
    fireEvent.input(input, { target: { value: '2' } });
    expect(screen.queryByRole('tooltip')).toBeNull();
  });

  it('is silent after another field with the same word, and speaks after a sentence with it', () => {
    render(
      <main>
        <Explained words="Write down the pH." />
        {field('pH before')}
        {field('pH after')}
      </main>,
    );
    expect(told()).toEqual(['ph', 'ph']);
    expect(screen.getByText('before', { exact: false }).dataset.tells).toBe('ph');
  });

  it('leaves its word to the next place where it can’t take the focus', () => {
    render(
      <main>
        {field('Headspace', true)}
        <h2>
          <Explained words="Headspace" />
        </h2>
      </main>,
    );
    expect(document.querySelector('[data-tells]')?.tagName).toBe('DFN');
  });
});
