/**
 * The line of the title block that says what the plate is filed under: revision, day of its state, reason, author,
 * reviewer, and the checksum of the one before. Names are records, not proofs. Loaded for layouts that have a revision.
 */
import { t } from '../../language/index';
import { reviewedByAuthor } from '../../layout/revisionNames';
import type { Revision } from '../../layout/types';
import './revisionLine.css';

interface ItemProps {
  readonly label: string;
  readonly value: string;
  readonly testId: string;
  readonly title?: string;
  readonly wide?: boolean;
}

function Item({ label, value, testId, title = value, wide }: ItemProps) {
  return (
    <div data-wide={wide || undefined}>
      <dt>{label}</dt>
      <dd data-testid={testId} title={title}>
        {value === '' ? '–' : value}
      </dd>
    </div>
  );
}

const recorded = (name: string): string =>
  t('{name}, recorded as typed; a page cannot prove identity', { name: name || t('nobody') });

export default function RevisionLine({ revision }: { readonly revision: Revision }) {
  const { name, date, reason, author, reviewer, derivedFrom, state } = revision;
  const alone = reviewedByAuthor(revision);
  return (
    <dl className="revision-line" aria-label={t('Revision')} data-testid="revision-line">
      <Item label={t('revision')} value={name} testId="title-revision" />
      <Item label={t(state)} value={date} testId="title-date" />
      <Item label={t('author')} value={author} testId="title-author" title={recorded(author)} />
      <Item
        label={t('reviewer')}
        value={alone ? t('{reviewer}, the author', { reviewer }) : reviewer}
        testId="title-reviewer"
        title={recorded(reviewer)}
      />
      <Item label={t('derived from')} value={derivedFrom ?? ''} testId="title-derived" />
      <Item label={t('reason')} value={reason} testId="title-reason" wide />
    </dl>
  );
}
