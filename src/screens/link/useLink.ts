/** The whole address of a link, written beside the page; null while it is being written. */
import { useEffect, useState } from 'react';
import type { Result } from '../../layout/result';
import type { AnyLinked } from '../../link/index';
import { writeLink } from '../../worker/links';

/** This page's address with another part after "#". */
export const addressWith = (text: string): string => `${window.location.href.replace(/#.*$/s, '')}#${text}`;

/** @param linked the same object as long as it means the same */
export function useLink(linked: AnyLinked): Result<string> | null {
  const [made, setMade] = useState<{ readonly of: AnyLinked; readonly address: Result<string> } | null>(null);
  useEffect(() => {
    let current = true;
    void writeLink(linked).then((text) => {
      const address = text.ok ? { ok: true as const, value: addressWith(text.value) } : text;
      if (current) setMade({ of: linked, address });
    });
    return () => {
      current = false;
    };
  }, [linked]);
  return made?.of === linked ? made.address : null;
}
