import { Component, type ReactNode } from 'react';
import { phrase } from '#core/words/phrase.ts';
import { Button } from '#renderer/parts/button/button.tsx';

interface Caught {
  readonly isBroken: boolean;
}

/** Keeps a mistake of ours inside one page, and says so plainly. */
export class ErrorBoundary extends Component<{ readonly children: ReactNode }, Caught> {
  override state: Caught = { isBroken: false };

  static getDerivedStateFromError(): Caught {
    return { isBroken: true };
  }

  override render(): ReactNode {
    if (!this.state.isBroken) return this.props.children;
    return (
      <div className="section" role="alert">
        <h1>{phrase`This page could not be drawn`}</h1>
        <p>{phrase`That is a mistake in the program, not in your kitchen. Nothing was changed; the other screens still work.`}</p>
        <div className="button-row">
          <Button onClick={() => this.setState({ isBroken: false })}>{phrase`Draw it again`}</Button>
        </div>
      </div>
    );
  }
}
