/**
 * When the screen, or one of its places, fails: says so there, offers the layout as a file and ways to go on. The other
 * places stay as they are. Nothing here erases the work; what is saved is checked from then on (store/crashes.ts). A
 * change of the plate draws the place anew, so that undo by its key is a way out too.
 */
import { t } from '../language/index';
import type { ReactNode } from 'react';
import { Component } from 'react';
import type { Ports } from '../commands/types';
import { noteCrash } from '../store/crashes';
import type { Workbench } from '../store/types';

interface ErrorBoundaryProps {
  readonly bench: Workbench;
  readonly download: Ports['download'];
  /** The place it stands for, by the name on the screen; the whole screen where not given. */
  readonly place?: string;
  /** Classes of the place, so that the words stand where it stood. */
  readonly className?: string;
  readonly children: ReactNode;
}
interface ErrorBoundaryState {
  readonly error: Error | null;
}

export class ErrorBoundary extends Component<ErrorBoundaryProps, ErrorBoundaryState> {
  override readonly state: ErrorBoundaryState = { error: null };
  private stop: (() => void) | null = null;

  static getDerivedStateFromError(error: unknown): ErrorBoundaryState {
    return { error: error instanceof Error ? error : new Error(String(error)) };
  }

  override componentDidCatch(): void {
    const { bench } = this.props;
    noteCrash(bench);
    this.stop?.();
    this.stop = bench.store.subscribe(({ layout }, before) => {
      if (layout !== before.layout) this.again();
    });
  }

  override componentWillUnmount(): void {
    this.stop?.();
  }

  private readonly again = (): void => {
    this.stop?.();
    this.stop = null;
    this.setState({ error: null });
  };

  /** The code that writes files is there as a rule: saving in the browser uses it too. */
  private readonly save = async (): Promise<void> => {
    const { bench, download } = this.props;
    const { writeLayout } = await import('../layout/write');
    download('layout.json', writeLayout(bench.store.getState().layout), 'application/json');
  };

  private readonly undo = (): void => {
    this.props.bench.undo();
    this.again();
  };

  override render(): ReactNode {
    const { error } = this.state;
    const { bench, place, className = '', children } = this.props;
    if (error === null) return children;
    const Whole = place === undefined ? 'main' : 'section';
    return (
      <Whole className={`failure ${className}`} role="alert" data-place={place}>
        <h1>{t('{place} could not be drawn', { place: place ?? t('The screen') })}</h1>
        <p>
          {t(
            'Nothing of the layout is lost, and what this browser has saved stays saved. What failed: {detail}',
            { detail: error.message },
          )}
        </p>
        <div className="row">
          <button type="button" className="button" data-main onClick={() => void this.save()}>
            {t('Save layout file')}
          </button>
          <button type="button" className="button" onClick={this.again}>
            {t('Draw it again')}
          </button>
          {bench.history().undo !== null && (
            <button type="button" className="button" onClick={this.undo}>
              {t('Undo the last change and go on')}
            </button>
          )}
          <button type="button" className="button" onClick={() => window.location.reload()}>
            {t('Load the page again')}
          </button>
        </div>
      </Whole>
    );
  }
}
