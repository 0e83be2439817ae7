import { dateWords } from '#renderer/format/moments.ts';
import { capital } from '#renderer/format/words.ts';
import { Button } from '#renderer/parts/button/button.tsx';
import { versionDifferences } from '#renderer/parts/recipe/version-differences.ts';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { words } from './words.ts';

interface VersionsProps {
  readonly recipe: ValueOf<'recipes:open'>;
  /** The number of the one that the page shows. */
  readonly shown: number;
  readonly onShow: (number: number) => void;
}

/** Every version, the newest first, each with what it changed. */
export function Versions({ recipe, shown, onShow }: VersionsProps) {
  const ordered = recipe.versionList.toSorted((a, b) => a.number - b.number);
  return ordered.toReversed().map((version) => {
    const before = ordered[ordered.indexOf(version) - 1];
    const differences = before === undefined ? [words.first] : versionDifferences(before, version);
    return (
      <div key={version.id} className="version">
        <div className="section-head">
          <h3>
            {words.version(version.number)} <span className="soft small">{dateWords(version.createdAt)}</span>
          </h3>
          {version.number === shown ? (
            <span className="soft">{words.shown}</span>
          ) : (
            <Button weight="quiet" onClick={() => onShow(version.number)}>
              {words.show(version.number)}
            </Button>
          )}
        </div>
        {(differences.length === 0 ? [words.sameFormula] : differences).map((sentence) => (
          <p key={sentence}>{capital(sentence)}</p>
        ))}
        {version.why === null ? null : <p className="soft">{version.why}</p>}
      </div>
    );
  });
}
