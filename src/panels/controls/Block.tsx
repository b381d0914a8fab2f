/**
 * A part of a panel that folds away; the browser's own disclosure, so keyboard and screen readers know it.
 */
import type { ReactNode } from 'react';

interface BlockProps {
  readonly title: string;
  readonly note?: string;
  readonly open?: boolean;
  readonly testId?: string;
  readonly children: ReactNode;
}

export function Block({ title, note, open = true, testId, children }: BlockProps) {
  return (
    <details className="block" open={open} data-testid={testId}>
      <summary>
        {title}
        {note !== undefined && <span className="block-note">{note}</span>}
      </summary>
      <div className="block-body">{children}</div>
    </details>
  );
}
