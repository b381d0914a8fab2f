/**
 * When a dialog fails, or its code does not arrive: it closes and a message says so. The plate has no part in it, so
 * nothing is undone and nothing is drawn anew.
 */
import type { ReactNode } from 'react';
import { Component } from 'react';
import type { Workbench } from '../store/types';

interface DialogBoundaryProps {
  readonly bench: Workbench;
  readonly children: ReactNode;
  onClose(): void;
}
interface DialogBoundaryState {
  readonly failed: boolean;
}

export class DialogBoundary extends Component<DialogBoundaryProps, DialogBoundaryState> {
  override readonly state: DialogBoundaryState = { failed: false };

  static getDerivedStateFromError(): DialogBoundaryState {
    return { failed: true };
  }

  override componentDidCatch(error: unknown): void {
    const detail = error instanceof Error ? error.message : String(error);
    this.props.bench.notify({ code: 'dialog-failed', params: { detail } });
    this.props.onClose();
  }

  override render(): ReactNode {
    return this.state.failed ? null : this.props.children;
  }
}
