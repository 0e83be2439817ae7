import { ask } from '#renderer/app/ask.ts';
import { fileName, saveFile } from '#renderer/format/save-file.ts';
import { Button, ButtonLink } from '#renderer/parts/button/button.tsx';
import { useToasts } from '#renderer/parts/toast/toasts.tsx';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { Failure } from '#shared/failure.ts';
import { words } from './words.ts';

interface SaveFindingsProps {
  readonly trial: ValueOf<'trials:open'>;
  readonly csv: () => string;
}

/** Takes the findings along: every figure for a spreadsheet, or all of it as text. */
export function SaveFindings({ trial, csv }: SaveFindingsProps) {
  const { say } = useToasts();
  const saveCsv = () => {
    const name = fileName(trial.question, 'csv');
    saveFile(new Blob(['\uFEFF', csv()], { type: 'text/csv' }), name);
    say({ kind: 'done', words: words.savedAll(name) });
  };
  const saveText = async () => {
    try {
      const { name, text } = await ask('findings:text', { trial: trial.id });
      saveFile(new Blob([text], { type: 'text/markdown' }), name);
      say({ kind: 'done', words: words.savedAll(name) });
    } catch (error) {
      say({ kind: 'fault', words: error instanceof Failure ? error.message : words.cantSave });
    }
  };
  return (
    <div className="button-row no-print">
      <ButtonLink to={`/trials/${trial.id}/report`} weight="quiet">
        {words.toReport}
      </ButtonLink>
      <Button weight="quiet" onClick={saveCsv}>
        {words.saveAll}
      </Button>
      <Button weight="quiet" onClick={() => void saveText()}>
        {words.saveText}
      </Button>
    </div>
  );
}
