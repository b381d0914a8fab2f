/** The whole address of a link, written beside the page once what it holds is still; null until then. */
import { useEffect, useState } from 'react';
import type { Result } from '../../layout/result';
import type { AnyLinked } from '../../link/index';
import { writeLink } from '../../worker/links';

/** A dragged height writes no link on its way. */
const STILL_MS = 150;

/** This page's address with another part after "#". */
export const addressWith = (text: string): string => `${window.location.href.replace(/#.*$/s, '')}#${text}`;

/** @param linked the same object as long as it means the same */
export function useLink(linked: AnyLinked): Result<string> | null {
  const [made, setMade] = useState<{ readonly of: AnyLinked; readonly address: Result<string> } | null>(null);
  useEffect(() => {
    let current = true;
    const write = async (): Promise<void> => {
      const text = await writeLink(linked);
      const address = text.ok ? { ok: true as const, value: addressWith(text.value) } : text;
      if (current) setMade({ of: linked, address });
    };
    const timer = setTimeout(() => void write(), STILL_MS);
    return () => {
      current = false;
      clearTimeout(timer);
    };
  }, [linked]);
  return made?.of === linked ? made.address : null;
}
