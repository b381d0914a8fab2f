/**
 * Workers that the page's content security policy binds as well. A browser takes a worker's policy from the answer that
 * brought its script, and a plain file server sends none; only a worker whose script has no address inherits the page's
 * [published: HTML, "initialize worker policy container"]. So each begins with one line that imports its script. Under
 * the name Worker, by which the bundler finds worker scripts.
 */
type Global = typeof globalThis.Worker;

const beginnings = new Map<string, string>();

/** The address of the line that imports a script; one for each script, kept as long as the page. */
function beginning({ href }: URL): string {
  const before = beginnings.get(href);
  if (before !== undefined) return before;
  const line = new Blob([`import ${JSON.stringify(href)};`], { type: 'text/javascript' });
  const address = URL.createObjectURL(line);
  beginnings.set(href, address);
  return address;
}

/** In place of the browser's own: `new Worker(new URL('./name.worker.ts', import.meta.url), { type: 'module' })`. */
export const Worker = function (script: URL, options: WorkerOptions): Worker {
  return new globalThis.Worker(beginning(script), options);
} as unknown as Global;
export type Worker = InstanceType<Global>;
