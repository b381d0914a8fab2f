/**
 * An outline file on its way to the check page: its text, then its outlines, read in slices so that the page draws and
 * Cancel is heard in between. A new choice of unit reads anew while what was found before stays on the page.
 */
import { useEffect, useRef, useState } from 'react';
import { useWorkbench } from '../../canvas/bench';
import { readingOutlines, type Reading, type ReadingStep } from '../../import/outlines';
import type { OutlineImport } from '../../import/types';
import type { Workbench } from '../../store/types';
import { clearRefused } from '../clearRefused';
import type { Choices } from './choices';

/** Longest stretch of reading between two looks at the page. */
const SLICE_ms = 24;

const same = (a: Reader | null, b: Reader): boolean =>
  a !== null && a.unit === b.unit && a.chainGap_mm === b.chainGap_mm;

const pause = (): Promise<void> => new Promise((resolve) => setTimeout(resolve));

/** Runs a reading to its end; null where it was stopped before. */
export async function readInSlices<T>(
  reading: Reading<T>,
  stopped: () => boolean,
  onStep: (step: ReadingStep) => void,
): Promise<T | null> {
  for (;;) {
    await pause();
    if (stopped()) return null;
    const until = performance.now() + SLICE_ms;
    let step = reading.next();
    while (step.done !== true && performance.now() < until) step = reading.next();
    if (step.done === true) return step.value;
    onStep(step.value);
  }
}

interface FileProps {
  readonly file: File;
  onClose(): void;
}

/** The file's text; null while it is being read or where it cannot be. */
function useText(bench: Workbench, { file, onClose }: FileProps): string | null {
  const [text, setText] = useState<string | null>(null);
  useEffect(() => {
    let current = true;
    file.text().then(
      (read) => current && setText(read),
      () => {
        if (!current) return;
        bench.notify({ code: 'file-unreadable', params: { name: file.name } });
        onClose();
      },
    );
    return () => {
      current = false;
    };
  }, [bench, file, onClose]);
  return text;
}

/** What of the choices decides what is found. */
export type Reader = Pick<Choices, 'unit' | 'chainGap_mm'>;

interface Shown extends Reader {
  readonly imported: OutlineImport;
}
export interface Read {
  /** What was found; of the choice before while `step` is set. */
  readonly imported: OutlineImport | null;
  /** What the reader is at; null where it has ended. */
  readonly step: ReadingStep | null;
}
interface ReadingProps extends FileProps {
  readonly reader: Reader;
  onReader(reader: Reader): void;
}

/**
 * Reads the file as chosen. A refusal is told once; it closes the page, or takes the choice back where the file could
 * be read with the one before. An exception is thrown on to the page's boundary.
 */
export function useReading({ file, onClose, reader, onReader }: ReadingProps): Read {
  const { unit, chainGap_mm } = reader;
  const bench = useWorkbench();
  const text = useText(bench, { file, onClose });
  const [shown, setShown] = useState<Shown | null>(null);
  const [step, setStep] = useState<ReadingStep>('text');
  const [failure, setFailure] = useState<{ readonly error: unknown } | null>(null);
  const before = useRef<Shown | null>(null);
  useEffect(() => {
    if (text === null || same(before.current, { unit, chainGap_mm })) return;
    let stopped = false;
    const settings = unit === null ? { chainGap_mm } : { chainGap_mm, unit };
    const settle = async (): Promise<void> => {
      const read = await readInSlices(readingOutlines(file.name, text, settings), () => stopped, setStep);
      if (read === null || stopped) return;
      if (read.ok) {
        if (before.current === null) clearRefused(bench);
        before.current = { unit, chainGap_mm, imported: read.value };
        setShown(before.current);
        return;
      }
      bench.notify({ ...read.fault, params: { ...read.fault.params, file: file.name } });
      if (before.current === null) onClose();
      else onReader(before.current);
    };
    settle().catch((error: unknown) => setFailure({ error }));
    return () => {
      stopped = true;
    };
  }, [bench, file, text, unit, chainGap_mm, onClose, onReader]);
  if (failure !== null) throw failure.error;
  return { imported: shown?.imported ?? null, step: same(shown, reader) ? null : step };
}
