/**
 * What is open over the sheet: help, about, copies, or the check page of the first file that waits.
 */
import { Suspense } from 'react';
import { t } from '../language/index';
import { onceDrawn } from '../canvas/later';
import { useWorkbench } from '../canvas/bench';
import { kindOf } from '../commands/file/fileKind';
import type { AnyLinked } from '../link/index';
import { DialogBoundary } from './DialogBoundary';

const CommandPalette = onceDrawn(async () => (await import('./CommandPalette')).default);
const HelpDialog = onceDrawn(async () => (await import('./HelpDialog')).default);
const AboutDialog = onceDrawn(async () => (await import('./AboutDialog')).default);
const CopiesDialog = onceDrawn(async () => (await import('./CopiesDialog')).default);
const CompareDialog = onceDrawn(async () => (await import('./CompareDialog')).default);
const DivisionsDialog = onceDrawn(async () => (await import('./DivisionsDialog')).default);
const HandOverDialog = onceDrawn(async () => (await import('./HandOverDialog')).default);
const LibraryDialog = onceDrawn(async () => (await import('./LibraryDialog')).default);
const SheetDialog = onceDrawn(async () => (await import('./SheetDialog')).default);
const LinkDialog = onceDrawn(async () => (await import('./LinkDialog')).default);
const RevisionDialog = onceDrawn(async () => (await import('./RevisionDialog')).default);
const TableDialog = onceDrawn(async () => (await import('./TableDialog')).default);
const ImportCheck = onceDrawn(async () => (await import('./ImportCheck')).default);
const MeshCheck = onceDrawn(async () => (await import('./MeshCheck')).default);

export type Open =
  | {
      readonly kind:
        | 'palette'
        | 'help'
        | 'about'
        | 'copies'
        | 'revision'
        | 'library'
        | 'divisions'
        | 'handOver'
        | 'sheet'
        | 'link';
    }
  | {
      readonly kind: 'compare';
      /** The comparison of a link, in place of the one on screen. */
      readonly linked?: AnyLinked;
    }
  | { readonly kind: 'table'; readonly text: string }
  /** Files dropped together are checked one after the other. */
  | {
      readonly kind: 'import';
      readonly files: readonly [File, ...File[]];
      /** Of the first one in the row, so that each gets a page of its own. */
      readonly turn: number;
    };

/** The check page of the first file; the others follow when it is closed. */
function FileCheck({ files, turn, onClose }: Extract<Open, { kind: 'import' }> & { onClose(): void }) {
  const [file] = files;
  const Check = kindOf(file.name) === 'mesh' ? MeshCheck : ImportCheck;
  const last = turn + files.length - 1;
  return (
    <Check file={file} inRow={last > 1 ? t(', {turn} of {last}', { turn, last }) : ''} onClose={onClose} />
  );
}

export function OpenDialog({ open, onClose }: { readonly open: Open; onClose(): void }) {
  const bench = useWorkbench();
  return (
    <DialogBoundary key={open.kind === 'import' ? open.turn : open.kind} bench={bench} onClose={onClose}>
      <Suspense fallback={null}>
        {open.kind === 'palette' && <CommandPalette onClose={onClose} />}
        {open.kind === 'help' && <HelpDialog onClose={onClose} />}
        {open.kind === 'about' && <AboutDialog onClose={onClose} />}
        {open.kind === 'copies' && <CopiesDialog onClose={onClose} />}
        {open.kind === 'library' && <LibraryDialog onClose={onClose} />}
        {open.kind === 'compare' && <CompareDialog linked={open.linked} onClose={onClose} />}
        {open.kind === 'divisions' && <DivisionsDialog onClose={onClose} />}
        {open.kind === 'handOver' && <HandOverDialog onClose={onClose} />}
        {open.kind === 'sheet' && <SheetDialog onClose={onClose} />}
        {open.kind === 'link' && <LinkDialog onClose={onClose} />}
        {open.kind === 'revision' && <RevisionDialog onClose={onClose} />}
        {open.kind === 'table' && <TableDialog text={open.text} onClose={onClose} />}
        {open.kind === 'import' && <FileCheck key={open.turn} {...open} onClose={onClose} />}
      </Suspense>
    </DialogBoundary>
  );
}
