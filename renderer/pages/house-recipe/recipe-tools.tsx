import { useAnswer } from '#renderer/app/use-answer.ts';
import { useAnswers } from '#renderer/app/use-answers.ts';
import { useKept } from '#renderer/app/use-kept.ts';
import { Explained } from '#renderer/parts/term/explained.tsx';
import { AdjustPart } from './adjust-part.tsx';
import { FromStock } from './from-stock.tsx';
import { lastReading } from './serving-figures.ts';
import { ServingPart } from './serving-part.tsx';
import type { Make, Version } from './use-make.ts';
import { words } from './words.ts';

/** What helps to make it: what can be made of what is there, what a glass costs and holds, and how to adjust it. */
interface RecipeToolsProps {
  readonly recipe: string;
  readonly version: Version;
  readonly make: Make;
}

export function RecipeTools({ recipe, version, make }: RecipeToolsProps) {
  const { base } = version;
  const tried = useAnswer('bases:open', { base: base?.id ?? '' }, { enabled: base !== null });
  const jars = useAnswers(
    'jars:open',
    version.chain.jars.map(({ id }) => ({ jar: id })),
  );
  const kept = useKept(`serving-${recipe}`);
  const isReady = !kept.isPending && make.pantry.length > 0 && (base === null || !tried.isPending) && !jars.isPending;
  if (!isReady) return null;
  const sugar_g_per_L = tried.data?.sugarNow_g_per_L ?? tried.data?.sugarStart_g_per_L ?? null;
  return (
    <>
      <section className="section">
        <h2>
          <Explained words={words.stock.title} />
        </h2>
        <FromStock version={version} make={make} baseLeft_mL={tried.data?.left_mL ?? null} />
      </section>
      <section className="section">
        <h2>
          <Explained words={words.serving.title} />
        </h2>
        <ServingPart
          version={version}
          make={make}
          base={{ name: base?.name ?? words.serving.theBase, sugar_g_per_L }}
          last={lastReading(jars.values)}
          kept={kept}
        />
      </section>
      <section className="section">
        <h2>
          <Explained words={words.adjust.title} />
        </h2>
        <AdjustPart pantry={make.pantry} volume_mL={make.volume_mL} />
      </section>
    </>
  );
}
