/** A pause that lets waiting messages and frames in: a task of its own, without a timer's delay. */
export function pauser(): () => Promise<void> {
  const { port1, port2 } = new MessageChannel();
  let resume: (() => void) | null = null;
  port1.onmessage = () => {
    const go = resume;
    resume = null;
    go?.();
  };
  return () =>
    new Promise((resolve) => {
      resume = resolve;
      port2.postMessage(null);
    });
}
