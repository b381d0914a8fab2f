/**
 * The checksum of a layout for the screen: worked out here, or beside the page where the whole layout is too much for it.
 */
import { useEffect, useState } from 'react';
import { fitsAFrame } from '../../build/analysis';
import { useBench } from '../../canvas/bench';
import type { Layout } from '../../layout/types';

/** A checksum reads the whole layout: it is worked out once the layout has been still for this long. */
const STILL_MS = 150;
const PENDING = '············';

/** The checksum of this layout; dots while it is still changing, or being read beside the page. */
export function useChecksum(layout: Layout): string {
  const [known, setKnown] = useState<{ readonly layout: Layout; readonly checksum: string } | null>(null);
  const beside = useBench((state) => state.height.checksum);
  const here = fitsAFrame(layout);
  useEffect(() => {
    if (!here) return undefined;
    let current = true;
    const timer = setTimeout(async () => {
      const { checksum } = await import('../../layout/checksum');
      if (current) setKnown({ layout, checksum: checksum(layout) });
    }, STILL_MS);
    return () => {
      current = false;
      clearTimeout(timer);
    };
  }, [layout, here]);
  const found = here ? known : beside;
  return found?.layout === layout ? found.checksum : PENDING;
}
