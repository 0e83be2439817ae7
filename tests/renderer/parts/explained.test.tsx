// @vitest-environment happy-dom
import { cleanup, render, screen } from '@testing-library/react';
import { afterEach, describe, expect, it } from 'vitest';
import { Explained } from '#renderer/parts/term/explained.tsx';

afterEach(cleanup);

describe('Explained', () => {
  it('explains the first word of the trade, keeps the sentence whole, and prefers the longer word', () => {
    const { container } = render(<Explained words="Blind codes keep the panel honest." />);
    const word = screen.getByRole('button', { name: 'Blind codes' });
    const meaning = document.getElementById(word.getAttribute('aria-describedby') ?? '');
    expect(meaning?.textContent).toMatch(/^Three digits on a cup/);
    meaning?.remove();
    expect(container.textContent).toBe('Blind codes keep the panel honest.');
  });

  it('leaves a sentence without such a word as it is', () => {
    const { container } = render(<Explained words="Nothing leaves it unless you carry it." />);
    expect(container.innerHTML).toBe('Nothing leaves it unless you carry it.');
  });
});
