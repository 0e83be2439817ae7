import { useEffect } from 'react';
import { useLocation } from 'wouter';
import { phrase } from '#core/words/phrase.ts';
import { useToasts } from '#renderer/parts/toast/toasts.tsx';
import { Failure } from '#shared/failure.ts';
import { droppedFile } from './dropped-file.ts';
import { handFile } from './handed-file.ts';
import { nearKitchen, openNear } from './open-dropped-kitchen.ts';

const words = {
  opened: (name: string) => phrase`Opened ${name}.`,
  notNear: (name: string) =>
    phrase`A browser does not tell where a dropped file lies, and none of the kitchens in the usual folders is surely ${name}. Choose it here, or write where it lies.`,
  cant: phrase`The kitchen could not be opened.`,
} as const;

function carriesFiles(event: DragEvent): boolean {
  return event.dataTransfer?.types.includes('Files') ?? false;
}

/** Takes files dropped anywhere on the window to the page that reads them. A place that takes its own files keeps them. */
export function DropTarget() {
  const [place, go] = useLocation();
  const { say } = useToasts();
  useEffect(() => {
    const openKitchen = async (file: File) => {
      try {
        const place = await nearKitchen(file);
        if (place !== null) {
          // What is half typed goes to the kitchen that it belongs to first.
          go('/');
          await new Promise((settled) => setTimeout(settled, 300));
          await openNear(place);
          return say({ kind: 'done', words: words.opened(place) });
        }
        go('/data');
        say({ kind: 'fault', words: words.notNear(file.name) });
      } catch (error) {
        say({ kind: 'fault', words: error instanceof Failure ? error.message : words.cant });
      }
    };
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
      if ('opens' in answer) return void openKitchen(file);
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
