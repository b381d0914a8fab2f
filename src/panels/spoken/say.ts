/**
 * Words for the one polite live region of the page, from wherever they come. Whoever stands nearest to the figures says
 * them; the region itself is in Spoken.tsx.
 */
import { useEffect } from 'react';

type Hear = (words: string) => void;

const hearing = new Set<Hear>();

/** Says words once; where nobody hears yet they are lost, as they would be in a region that comes later. */
export const say = (words: string): void => hearing.forEach((hear) => hear(words));

/** From here on the words go to `hear`; returns the way to stop. */
export function onSaid(hear: Hear): () => void {
  hearing.add(hear);
  return () => void hearing.delete(hear);
}

/** Says `words` whenever they are others than before; null says nothing. */
export function useSaid(words: string | null): void {
  useEffect(() => {
    if (words !== null) say(words);
  }, [words]);
}
