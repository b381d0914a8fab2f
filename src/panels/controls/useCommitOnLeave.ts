/**
 * What stands typed in a field and is not committed yet is committed when the page goes away, before the work is saved.
 */
import { useEffect, useRef } from 'react';

/** Calls the newest `commit` when the page is left. Heard in the capture phase: ahead of the saving. */
export function useCommitOnLeave(commit: () => void): void {
  const newest = useRef(commit);
  useEffect(() => {
    newest.current = commit;
  });
  useEffect(() => {
    const leave = (): void => newest.current();
    window.addEventListener('pagehide', leave, true);
    return () => window.removeEventListener('pagehide', leave, true);
  }, []);
}
