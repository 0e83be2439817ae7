import { useEffect, useRef } from 'react';
import { onHandedFile, takeHandedFile } from './handed-file.ts';

/** Gives a page the file that was dropped on the window for it. */
export function useHandedFile(take: (file: File) => void): void {
  const latest = useRef(take);
  latest.current = take;
  useEffect(() => {
    const look = () => {
      const file = takeHandedFile();
      if (file !== null) latest.current(file);
    };
    look();
    return onHandedFile(look);
  }, []);
}
