/**
 * A drawing that fails is a failure of the place it stands in: konva's own tree would only write it to the console and go
 * blank. What failed is thrown where React looks for it, so that the words for it stand in the place of the drawing.
 */
import { useCallback, useState } from 'react';

/** Takes what a painter throws, and throws it in the render of the component that calls this. */
export function usePaintFault(): (error: unknown) => void {
  const [fault, setFault] = useState<{ readonly error: unknown } | null>(null);
  if (fault) throw fault.error;
  return useCallback((error) => setFault((now) => now ?? { error }), []);
}
