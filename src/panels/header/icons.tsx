/**
 * The header's and the plan's small pictures: one line width of 1.5, drawn on a 16 px square.
 */
import type { ReactNode } from 'react';
import type { Tool } from '../../store/types';

function Picture({ children }: { readonly children: ReactNode }) {
  return (
    <svg
      width="16"
      height="16"
      viewBox="0 0 16 16"
      aria-hidden="true"
      fill="none"
      stroke="currentColor"
      strokeWidth="1.5"
      strokeLinejoin="round"
    >
      {children}
    </svg>
  );
}

export const UndoIcon = () => (
  <Picture>
    <path d="M6 2.5 2.5 6 6 9.5M2.5 6H9a4 4 0 0 1 0 8H6" />
  </Picture>
);
export const RedoIcon = () => (
  <Picture>
    <path d="M10 2.5 13.5 6 10 9.5M13.5 6H7a4 4 0 0 0 0 8h3" />
  </Picture>
);
export const GroundIcon = () => (
  <Picture>
    <rect x="2" y="2" width="12" height="12" />
    <path d="M2 14 14 2v12z" fill="currentColor" stroke="none" />
  </Picture>
);

export const TOOL_ICONS: Readonly<Record<Tool, ReactNode>> = {
  select: (
    <Picture>
      <path d="M4 2v10.5l2.8-2.6 1.9 4 1.6-.8-1.9-3.9 3.6-.4z" />
    </Picture>
  ),
  pan: (
    <Picture>
      <path d="M8 1.5v13M1.5 8h13M6 3.5l2-2 2 2M6 12.5l2 2 2-2M3.5 6l-2 2 2 2M12.5 6l2 2-2 2" />
    </Picture>
  ),
  rectangle: (
    <Picture>
      <rect x="2" y="4" width="12" height="8" />
    </Picture>
  ),
  disc: (
    <Picture>
      <circle cx="8" cy="8" r="6" />
    </Picture>
  ),
  measure: (
    <Picture>
      <path d="M2 3v10M14 3v10M2 8h12M4.5 6 2 8l2.5 2M11.5 6 14 8l-2.5 2" />
    </Picture>
  ),
  ring: (
    <Picture>
      <circle cx="8" cy="8" r="6" />
      <circle cx="8" cy="8" r="3" />
    </Picture>
  ),
  polygon: (
    <Picture>
      <path d="M2.5 6.5 8 2l6 5-3 6.5H4z" />
    </Picture>
  ),
  zone: (
    <Picture>
      <path d="M2.5 2.5h11v11h-11z" strokeDasharray="2.5 2" />
    </Picture>
  ),
};
