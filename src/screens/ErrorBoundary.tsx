/**
 * When the screen itself fails: says so, offers the layout as a file and a fresh start of the page. Nothing here erases
 * the work.
 */
import type { ReactNode } from 'react';
import { Component } from 'react';
import { writeLayout } from '../layout/write';
import type { Ports } from '../commands/types';
import type { Workbench } from '../store/types';

interface ErrorBoundaryProps {
  readonly bench: Workbench;
  readonly download: Ports['download'];
  readonly children: ReactNode;
}
interface ErrorBoundaryState {
  readonly error: Error | null;
}

export class ErrorBoundary extends Component<ErrorBoundaryProps, ErrorBoundaryState> {
  override readonly state: ErrorBoundaryState = { error: null };

  static getDerivedStateFromError(error: unknown): ErrorBoundaryState {
    return { error: error instanceof Error ? error : new Error(String(error)) };
  }

  private readonly save = (): void => {
    const text = writeLayout(this.props.bench.store.getState().layout);
    this.props.download('layout.json', text, 'application/json');
  };

  private readonly undo = (): void => {
    this.props.bench.undo();
    this.setState({ error: null });
  };

  override render(): ReactNode {
    const { error } = this.state;
    if (error === null) return this.props.children;
    return (
      <main className="failure" role="alert">
        <h1>The screen could not be drawn</h1>
        <p>The layout is intact and stays saved in this browser. What failed: {error.message}</p>
        <div className="row">
          <button type="button" className="button" data-main onClick={this.save}>
            Save layout file
          </button>
          <button type="button" className="button" onClick={this.undo}>
            Undo the last change and go on
          </button>
          <button type="button" className="button" onClick={() => window.location.reload()}>
            Load the page again
          </button>
        </div>
      </main>
    );
  }
}
