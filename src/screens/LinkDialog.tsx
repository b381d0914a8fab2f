/**
 * The link of the open plate: which revision it carries and what of the view, its text and length, and that it is a copy
 * that no later edit reaches.
 */
import { rich } from '../canvas/rich';
import { t } from '../language/index';
import { useMemo } from 'react';
import { useBench, useWorkbench } from '../canvas/bench';
import type { Layout } from '../layout/types';
import type { AnyLinked } from '../link/index';
import { useChecksum } from '../panels/title/useChecksum';
import { useCommand } from '../panels/useCommands';
import { formatField } from '../units/format';
import { LinkText } from './link/LinkText';
import { Sheet } from './Sheet';

function RevisionFact({ layout }: { readonly layout: Layout }) {
  const open = useCommand('revision');
  const { revision } = layout;
  if (revision !== null)
    return (
      <>
        {t(
          revision.state === 'draft'
            ? '{name}, {state}, {date}: what is edited later is not in the link'
            : '{name}, {state}, {date}',
          { name: revision.name, state: t(revision.state), date: revision.date },
        )}
      </>
    );
  return (
    <>
      {t('none: a reader cannot tell this plate from a later one by name')}{' '}
      <button type="button" className="button" data-testid="link-revision-open" onClick={open.run}>
        {t('Revision …')}
      </button>
    </>
  );
}

export default function LinkDialog({ onClose }: { onClose(): void }) {
  const bench = useWorkbench();
  const layout = useBench((state) => state.layout);
  const checksum = useChecksum(layout);
  const save = useCommand('save-layout');
  const linked = useMemo((): AnyLinked => {
    const { height_mm, camera } = bench.store.getState().view;
    return { kind: 'layout', layouts: [layout], view: { height_mm, camera } };
  }, [bench, layout]);
  const { height_mm = 0, camera } = linked.view;
  return (
    <Sheet title={t('Link of this plate')} wide onClose={onClose}>
      <dl className="link-facts">
        <dt>{t('plate')}</dt>
        <dd>
          {rich('{name}, checksum {checksum}', {
            name: layout.name,
            checksum: <span data-testid="link-checksum">{checksum}</span>,
          })}
        </dd>
        <dt>{t('revision')}</dt>
        <dd data-testid="link-revision">
          <RevisionFact layout={layout} />
        </dd>
        <dt>{t('holds')}</dt>
        <dd>
          {t(
            camera
              ? 'machine, process, parts, zones and calendar, whole; the height of {height} mm and the part of the plan on screen'
              : 'machine, process, parts, zones and calendar, whole; the height of {height} mm and the whole plan',
            { height: formatField(height_mm) },
          )}
        </dd>
      </dl>
      <LinkText linked={linked} file={t('Save layout file')} onSave={save.run} />
    </Sheet>
  );
}
