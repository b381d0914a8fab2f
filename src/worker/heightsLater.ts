/** The whole height, whose code is loaded when a plate first needs it. */
import type { Layout } from '../layout/types';
import type { HeightNews, Heights } from './heights';

export function heightsLater(load: () => Promise<Heights>): Heights {
  let heard: (news: HeightNews) => void = () => undefined;
  let newest: Layout | null = null;
  let loaded: Heights | null = null;
  let loading = false;
  const begin = async (): Promise<void> => {
    try {
      loaded = await load();
      loaded.listen((news) => heard(news));
      if (newest) loaded.ask(newest);
    } catch (error) {
      loading = false;
      heard({ kind: 'failed', detail: error instanceof Error ? error.message : String(error) });
    }
  };
  return {
    ask: (layout) => {
      if (loaded) return loaded.ask(layout);
      newest = layout;
      if (!loading) {
        loading = true;
        void begin();
      }
    },
    listen: (listener) => {
      heard = listener;
    },
  };
}
