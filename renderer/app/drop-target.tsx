import { useEffect } from 'react';
import { useLocation } from 'wouter';
import { useToasts } from '#renderer/parts/toast/toasts.tsx';
import { droppedFile } from './dropped-file.ts';
import { handFile } from './handed-file.ts';

function carriesFiles(event: DragEvent): boolean {
  return event.dataTransfer?.types.includes('Files') ?? false;
}

/** Takes files dropped anywhere on the window to the page that reads them. A place that takes its own files keeps them. */
export function DropTarget() {
  const [place, go] = useLocation();
  const { say } = useToasts();
  useEffect(() => {
    const onOver = (event: DragEvent) => {
      if (carriesFiles(event)) event.preventDefault();
    };
    const onDrop = (event: DragEvent) => {
      if (event.defaultPrevented || !carriesFiles(event)) return;
      // Else the window would leave the workbench for the file.
      event.preventDefault();
      const file = event.dataTransfer?.files[0];
      if (file === undefined) return;
      const answer = droppedFile(file.name, place);
      if ('say' in answer) return say({ kind: 'fault', words: answer.say });
      go(answer.go);
      handFile(file);
    };
    window.addEventListener('dragover', onOver);
    window.addEventListener('drop', onDrop);
    return () => {
      window.removeEventListener('dragover', onOver);
      window.removeEventListener('drop', onDrop);
    };
  }, [place, go, say]);
  return null;
}
