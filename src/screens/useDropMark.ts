/**
 * True while a file is dragged over the page, so that the sheet says what may be dropped.
 */
import { useEffect, useState } from 'react';
import { holdsFiles } from '../commands/holdsFiles';

export function useDropMark(): boolean {
  const [over, setOver] = useState(false);
  useEffect(() => {
    const enter = (event: DragEvent): void => setOver(holdsFiles(event.dataTransfer));
    const leave = (event: DragEvent): void => {
      if (event.relatedTarget === null) setOver(false);
    };
    const end = (): void => setOver(false);
    window.addEventListener('dragenter', enter);
    window.addEventListener('dragleave', leave);
    window.addEventListener('drop', end);
    return () => {
      window.removeEventListener('dragenter', enter);
      window.removeEventListener('dragleave', leave);
      window.removeEventListener('drop', end);
    };
  }, []);
  return over;
}
