/** The checksum of a layout beside others: worked out in slices, once for each layout. */
import { useEffect, useState } from 'react';
import type { Layout } from '../../layout/types';
import { slicedChecksum } from '../../store/library/beside';

const known = new WeakMap<Layout, Promise<string>>();

function sumOf(layout: Layout): Promise<string> {
  const sum = known.get(layout) ?? slicedChecksum(layout);
  known.set(layout, sum);
  return sum;
}

/** Twelve hexadecimal digits; '…' until they are known. */
export function useSum(layout: Layout): string {
  const [found, setFound] = useState<{ readonly layout: Layout; readonly sum: string } | null>(null);
  useEffect(() => {
    let current = true;
    void sumOf(layout).then((sum) => current && setFound({ layout, sum }));
    return () => {
      current = false;
    };
  }, [layout]);
  return found?.layout === layout ? found.sum : '…';
}
