/**
 * One figure of the readout: label, value, light and explanation. It re-renders only when what it shows changes; the
 * explanation is worked out only while it is open (hover, focus or touch).
 */
import { Tooltip } from 'radix-ui';
import { memo } from 'react';
import { useLayer } from '../useLayer';
import type { Lights } from '../lights';
import { useLight, useLit } from '../useLight';
import type { FigureName } from './explain';
import { explain } from './explain';

interface FigureProps {
  readonly name: FigureName;
  readonly label: string;
  readonly value: string;
  readonly note?: string;
  readonly lights?: Lights;
  /** "row": label and value in one line; "cell": the value alone, for tables; "large": the two figures that matter most. */
  readonly look?: 'row' | 'cell' | 'large';
  readonly warn?: boolean;
}

function ExplanationCard({ name }: { readonly name: FigureName }) {
  const { analysis, figures } = useLayer();
  const said = explain(name, analysis, figures);
  if (said === null) return <p>Nothing on the plate at this height.</p>;
  return (
    <>
      <h3>{said.title}</h3>
      <p>{said.meaning}</p>
      <p className="formula">{said.formula}</p>
      {said.numbers.map((line) => (
        <p key={line}>{line}</p>
      ))}
    </>
  );
}

export const Figure = memo(function Figure(props: FigureProps) {
  const { name, label, value, note, lights = 'none', look = 'row', warn = false } = props;
  const light = useLight(lights);
  const lit = useLit(lights);
  return (
    <Tooltip.Root>
      <Tooltip.Trigger asChild>
        <button
          type="button"
          className={`figure figure-${look}`}
          data-lit={lit || undefined}
          data-warn={warn || undefined}
          aria-label={`${label}: ${value}${note === undefined ? '' : `, ${note}`}`}
          {...light}
        >
          {look !== 'cell' && <span className="figure-label">{label}</span>}
          <span className="figure-value" data-testid={name}>
            {value}
          </span>
          {note !== undefined && <span className="figure-note">{note}</span>}
        </button>
      </Tooltip.Trigger>
      <Tooltip.Portal>
        <Tooltip.Content className="explain" side="left" sideOffset={8} collisionPadding={8}>
          <ExplanationCard name={name} />
        </Tooltip.Content>
      </Tooltip.Portal>
    </Tooltip.Root>
  );
});
