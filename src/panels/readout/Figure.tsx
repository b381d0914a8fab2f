/**
 * One figure of the readout: label, value, light and explanation. It re-renders only when what it shows changes; the
 * explanation is worked out only while it is open (pointer at rest, focus, touch).
 */
import type { FocusEvent, PointerEvent } from 'react';
import { memo } from 'react';
import type { Lights } from '../lights';
import { useLight, useLit } from '../useLight';
import { EXPLANATION_ID, useExplainHandlers, useIsExplained } from './explained';
import type { FigureName } from './figureNames';

interface FigureProps {
  readonly name: FigureName;
  readonly label: string;
  readonly value: string;
  readonly note?: string;
  /** What the number leaves out: stands under it in the warning colour. */
  readonly missing?: string | undefined;
  readonly lights?: Lights;
  /**
   * "row": label and value in one line; "cell": the value alone, for tables; "large": the two figures that matter most;
   * "stack": label over value, beside a large figure, whose words about what is missing hold for both.
   */
  readonly look?: 'row' | 'cell' | 'large' | 'stack';
  readonly warn?: boolean;
  /** Its place in a list of more figures than pairs: one of three in a line, or the right one of two. */
  readonly place?: 'third' | 'right' | undefined;
}

function useFigureHandlers(name: FigureName, lights: Lights) {
  const light = useLight(lights);
  const explain = useExplainHandlers(name);
  return {
    onPointerEnter: (event: PointerEvent<HTMLElement>) => {
      light.on();
      explain.rest(event.currentTarget);
    },
    onPointerLeave: () => {
      light.off();
      explain.close();
    },
    onFocus: (event: FocusEvent<HTMLElement>) => {
      light.on();
      explain.open(event.currentTarget);
    },
    onBlur: () => {
      light.off();
      explain.close();
    },
  };
}

export const Figure = memo(function Figure(props: FigureProps) {
  const { name, label, value, note, missing, lights = 'none', look = 'row', warn = false } = props;
  const said = [`${label}: ${value}`, note, missing].filter((words) => words !== undefined);
  const handlers = useFigureHandlers(name, lights);
  const lit = useLit(lights);
  const explained = useIsExplained(name);
  return (
    <button
      type="button"
      className={`figure figure-${look}`}
      data-lit={lit || undefined}
      data-warn={warn || undefined}
      data-third={props.place === 'third' || undefined}
      data-right={props.place === 'right' || undefined}
      aria-label={said.join(', ')}
      aria-describedby={explained ? EXPLANATION_ID : undefined}
      {...handlers}
    >
      {/* The spaces are for readers that join the words: the lines are laid out without them. */}
      {look !== 'cell' && <span className="figure-label">{label}</span>}{' '}
      <span className="figure-value" data-testid={name}>
        {value}
      </span>{' '}
      {note !== undefined && <span className="figure-note">{note}</span>}{' '}
      {missing !== undefined && look !== 'stack' && <span className="figure-missing">{missing}</span>}
    </button>
  );
});
