/** Makes one file at a time, tells how far it is, hands it to the browser's downloads, can be dropped. */
import { t } from '../../language/index';
import { useContext, useEffect, useRef, useState } from 'react';
import { useWorkbench } from '../../canvas/bench';
import type { FileKind, FileMade } from '../../export/files/types';
import { fail, ok, type Result } from '../../layout/result';
import { CommandContext } from '../../panels/commandContext';
import { formatNumber } from '../../units/format';
import { makeFile } from '../../worker/handOver';
import { askedOf, heightOf, SCALES, type Choices } from './choices';
import { pngOf } from './png';

export interface Job {
  readonly kind: FileKind;
  /** 0 to 1. */
  readonly share: number;
}
type Made = Result<FileMade> | null;

async function asPng(made: FileMade, scale: number): Promise<Made> {
  try {
    const content = await pngOf(String(made.content), scale);
    return ok({ name: made.name.replace(/svg$/, 'png'), mime: 'image/png', content });
  } catch (error) {
    return fail('export-failed', { detail: error instanceof Error ? error.message : String(error) });
  }
}

function sizeWords({ content }: FileMade): string {
  const bytes = typeof content === 'string' ? new Blob([content]).size : content.length;
  return bytes < 1e6 ? `${formatNumber(bytes / 1e3, 3)} kB` : `${formatNumber(bytes / 1e6, 3)} MB`;
}

export function useHandOver(choices: Choices, checksum: string) {
  const bench = useWorkbench();
  const ports = useContext(CommandContext)?.ports;
  const [job, setJob] = useState<Job | null>(null);
  const [done, setDone] = useState<string | null>(null);
  const running = useRef<AbortController | null>(null);
  useEffect(() => () => running.current?.abort(), []);

  const make = async (kind: FileKind, signal: AbortSignal): Promise<Made> => {
    const { layout, view } = bench.store.getState();
    const asked = askedOf(kind, choices, heightOf(choices, layout, view.height_mm));
    const tell = (share: number): void => setJob((now) => now && { ...now, share });
    const made = await makeFile(bench.analysis(), checksum, asked, { signal, tell });
    const scale = kind === 'picture' ? SCALES[choices.picture] : null;
    return made?.ok && scale !== null ? asPng(made.value, scale) : made;
  };
  const run = async (kind: FileKind): Promise<void> => {
    const control = new AbortController();
    running.current = control;
    setDone('');
    setJob({ kind, share: 0 });
    const made = await make(kind, control.signal);
    if (control.signal.aborted) return;
    setJob(null);
    if (made === null) return;
    if (!made.ok) return bench.notify(made.fault);
    ports?.download(made.value.name, made.value.content, made.value.mime);
    setDone(`${made.value.name}, ${sizeWords(made.value)}`);
  };
  const cancel = (): void => {
    running.current?.abort();
    setJob(null);
    setDone(t('Dropped; no file was made.'));
  };
  return { job, done, run: (kind: FileKind): void => void run(kind), cancel };
}
