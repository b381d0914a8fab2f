/**
 * Opens the work of the last visit, or the demo plate, and draws the workbench.
 */
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { openFirstPlate } from './commands/addressLinks';
import { download } from './commands/download';
import { noteKeys } from './commands/earlyKeys';
import { demoLayout } from './layout/demo';
import { afterPaint, paintAfter } from './canvas/later';
import { languageOf, speak } from './language/load';
import { t } from './language/index';
import { InLanguage } from './screens/InLanguage';
import { Workbench } from './screens/Workbench';
import { openWorkbench, type Visit } from './store/open';
import { storageOf } from './store/savedForm';
import { heightsLater } from './worker/heightsLater';
import { Worker } from './worker/boundWorker';

const early = noteKeys(window);
const root = document.getElementById('root');
if (root === null) throw new Error('main: expected an element with the id "root", found none');

const nothing = (): void => undefined;

let stands = nothing;
const drawn = new Promise<void>((resolve) => (stands = resolve));
paintAfter(drawn);

const draw = async ({ bench }: Visit): Promise<void> => {
  // where its texts do not arrive the page is drawn in English, and says so once it stands
  await speak(languageOf(bench.store.getState().view.language, navigator.languages)).catch(() => undefined);
  await openFirstPlate(window, bench);
  createRoot(root).render(
    <StrictMode>
      <InLanguage bench={bench} onDrawn={stands}>
        <Workbench bench={bench} early={early} download={(...file) => download(document, ...file)} />
      </InLanguage>
    </StrictMode>,
  );
};

openWorkbench({
  first: demoLayout,
  later: afterPaint,
  heights: heightsLater(async () => {
    const { heights } = await import('./worker/heights');
    return heights(
      () => new Worker(new URL('./worker/height.worker.ts', import.meta.url), { type: 'module' }),
    );
  }),
  storage: storageOf(() => window.localStorage),
  pages: [window, document],
})
  .then(draw)
  .catch(() => {
    stands();
    root.textContent = t(
      'A part of Evenplate could not be loaded. Your work is still saved; load the page again.',
    );
  });

// The development server has no built files to keep.
if (import.meta.env.PROD)
  afterPaint(() => import('./screens/offline')).then(
    ({ keepForOffline }) => keepForOffline(document, navigator.serviceWorker),
    () => undefined,
  );
