/**
 * One mesh file on the check page: read when the page opens, looked at anew when how it stands changes, cut when asked.
 * Everything heavy happens in the worker; closing the page ends it.
 */
import { useCallback, useEffect, useRef, useState } from 'react';
import type { Fault } from '../../layout/result';
import type { Mm } from '../../units/types';
import type { MeshDoing, MeshFileFound, MeshSettings } from '../../worker/meshMessages';
import { openDesk, type MeshCutBody, type MeshDesk, type MeshLook, type MeshNews } from '../../worker/meshes';
import { Worker } from '../../worker/boundWorker';

/** What came out of cutting, for the settings it was asked with. */
export interface CutDone {
  readonly places: readonly number[];
  readonly bodies: readonly MeshCutBody[];
  readonly layer_mm: Mm;
}
export interface DeskState {
  readonly file: MeshFileFound | null;
  readonly look: MeshLook | null;
  /** What is being done; null where nothing is. */
  readonly doing: MeshDoing | null;
  readonly cutting: boolean;
  readonly cut: CutDone | null;
}
const AT_FIRST: DeskState = {
  file: null,
  look: null,
  doing: { doing: 'reading', share: 0 },
  cutting: false,
  cut: null,
};

const createWorker = (): Worker =>
  new Worker(new URL('../../worker/mesh.worker.ts', import.meta.url), { type: 'module' });

export interface DeskProps {
  readonly file: File;
  /** The file cannot be read or worked on: nothing more will come. */
  onRefused(fault: Fault): void;
}
type Asked = Pick<CutDone, 'places' | 'layer_mm'>;

/** The state after news; null where the file is refused. */
function after(state: DeskState, news: MeshNews, asked: Asked | null): DeskState | null {
  switch (news.kind) {
    case 'progress':
      return { ...state, doing: news.at };
    case 'read':
      return { ...state, file: news.file, doing: null };
    case 'looked':
      return { ...state, look: news.look, doing: null };
    case 'cut':
      return { ...state, doing: null, cutting: false, cut: asked && { ...asked, bodies: news.bodies } };
    case 'fault':
    case 'failed':
      return null;
  }
}

const refusalIn = (news: MeshNews): Fault | null => {
  if (news.kind === 'fault') return news.fault;
  return news.kind === 'failed' ? { code: 'mesh-job-failed', params: { detail: news.detail } } : null;
};

export function useMeshDesk({ file, onRefused }: DeskProps) {
  const [state, setState] = useState(AT_FIRST);
  const desk = useRef<MeshDesk | null>(null);
  const asked = useRef<Asked | null>(null);
  useEffect(() => {
    let open = true;
    const refuse = (fault: Fault): void => {
      if (open) onRefused({ ...fault, params: { ...fault.params, file: file.name } });
    };
    const own = openDesk(createWorker, (news) => {
      if (!open) return;
      const refusal = refusalIn(news);
      if (refusal) refuse(refusal);
      else setState((now) => after(now, news, asked.current) ?? now);
    });
    desk.current = own;
    file.arrayBuffer().then(
      (bytes) => open && own.read(file.name, new Uint8Array(bytes)),
      () => refuse({ code: 'file-unreadable', params: { name: file.name } }),
    );
    return () => {
      open = false;
      own.close();
    };
  }, [file, onRefused]);
  const look = useCallback((settings: MeshSettings, shown: number): void => {
    desk.current?.look(settings, shown);
    setState((now) => ({ ...now, cut: null, cutting: false }));
  }, []);
  const cut = useCallback((settings: MeshSettings, places: readonly number[], layer_mm: Mm): void => {
    asked.current = { places, layer_mm };
    desk.current?.cut(settings, places, layer_mm);
    setState((now) => ({ ...now, cut: null, cutting: true }));
  }, []);
  const stop = useCallback((): void => {
    desk.current?.stop();
    setState((now) => ({ ...now, doing: null, cutting: false }));
  }, []);
  return { state, look, cut, stop };
}
