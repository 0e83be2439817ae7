import { Button } from '#renderer/parts/button/button.tsx';
import { Explained } from '#renderer/parts/term/explained.tsx';
import type { LabelDraft } from './label-draft.ts';
import { sheetsNeeded } from './label-sheets.tsx';
import type { LabelLayout } from './read-label-draft.ts';
import { words } from './words.ts';

interface PrintLabelsProps {
  readonly draft: LabelDraft;
  readonly layout: LabelLayout | null;
  readonly labels: number;
  /** What the button says. */
  readonly act: string;
}

/** How many labels on how many sheets, and the button that prints them. */
export function PrintLabels({ draft, layout, labels, act }: PrintLabelsProps) {
  const isReady = layout !== null && labels > 0;
  return (
    <>
      <p role="status">
        {!isReady
          ? words.notYet
          : draft.medium === 'strip'
            ? words.strips(labels)
            : words.sheets(labels, sheetsNeeded(layout, labels))}
      </p>
      <div className="button-row">
        <Button weight="main" disabled={!isReady} onClick={() => window.print()}>
          {act}
        </Button>
      </div>
      <p className="soft small">
        <Explained words={words.printHint} />
      </p>
    </>
  );
}
