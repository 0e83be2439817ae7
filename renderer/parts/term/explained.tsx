import type { ReactNode } from 'react';
import { glued } from '#renderer/format/glued.ts';
import { partsWithTerms } from './find-terms.ts';
import { Term } from './term.tsx';

/** A sentence, a heading or a label of its own whose words of the trade say what they mean, on hover and on focus. */
export function Explained({ words }: { readonly words: string }): ReactNode {
  return partsWithTerms(glued(words)).map((part) =>
    typeof part === 'string' ? (
      part
    ) : (
      <Term key={part.of} of={part.of}>
        {part.said}
      </Term>
    ),
  );
}

/** What is handed in as words is explained; what is drawn already stays as it is. */
export function explained(content: ReactNode): ReactNode {
  return typeof content === 'string' ? <Explained words={content} /> : content;
}
