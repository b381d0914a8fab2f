/**
 * Typed offsets: the selection moved by dx and dy from where it stands, and, of two parts, the distance of their
 * footprints, to which the one selected last moves. Millimetres.
 */
import { t } from '../../language/index';
import { useMemo } from 'react';
import type { Analysis } from '../../build/types';
import { useAnalysisLater, useWorkbench } from '../../canvas/bench';
import { moveParts, setDistance } from '../../commands/operations';
import { nearestPoints } from '../../geometry/nearest';
import type { Region } from '../../geometry/types';
import { fail, ok } from '../../layout/result';
import type { PartId } from '../../layout/types';
import { roundMm } from '../../units/round';
import { LengthField } from '../controls/fields';

const footprintOf = ({ parts }: Analysis, id: PartId): Region =>
  parts.find((view) => view.id === id)?.footprint ?? [];

function DistanceField({ still, moved }: { readonly still: PartId; readonly moved: PartId }) {
  const bench = useWorkbench();
  const { parts } = useAnalysisLater();
  const [other, own] = [still, moved].map((id) => parts.find((view) => view.id === id)?.footprint);
  const near = useMemo(() => (other && own ? nearestPoints(other, own) : null), [other, own]);
  return (
    <LengthField
      label={t('distance to {still}', { still })}
      what={t('distance from {moved} to {still}', { moved, still })}
      value={roundMm(near?.distance_mm ?? 0)}
      min={0.001}
      max={1000}
      disabled={near === null}
      hint={
        near === null
          ? t('Their footprints overlap: move one first.')
          : t('Least distance of the footprints; {moved} moves along it.', { moved })
      }
      testId="part-distance"
      recipe={(layout, value) => {
        const now = bench.analysis();
        const next = setDistance(layout, moved, footprintOf(now, moved), footprintOf(now, still), value);
        return next === null ? fail('distance-not-reached', { part: moved, other: still }) : ok(next);
      }}
    />
  );
}

export function OffsetFields({ ids }: { readonly ids: readonly PartId[] }) {
  const [still, moved] = ids;
  return (
    <>
      <LengthField
        label={t('by dx')}
        what={t('move by dx')}
        value={0}
        testId="offset-x"
        recipe={(layout, value) => moveParts(layout, ids, value, 0)}
        recipeEach={(layout, to) => moveParts(layout, ids, to(0), 0)}
      />
      <LengthField
        label={t('by dy')}
        what={t('move by dy')}
        value={0}
        testId="offset-y"
        recipe={(layout, value) => moveParts(layout, ids, 0, value)}
        recipeEach={(layout, to) => moveParts(layout, ids, 0, to(0))}
      />
      {ids.length === 2 && <DistanceField still={still!} moved={moved!} />}
    </>
  );
}
