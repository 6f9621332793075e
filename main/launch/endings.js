const signals = /** @type {const} */ (['SIGINT', 'SIGTERM', 'SIGHUP']);
const lookEveryMilliseconds = 300;

/**
 * Calls back once when the process is to end: at a signal, or when npm, which started it through a
 * shell, is gone. The shell between them does not pass npm's signal on.
 *
 * @param {(signal: NodeJS.Signals) => void} end
 */
export function onEnd(end) {
  let isEnding = false;
  /** @param {NodeJS.Signals} signal */
  const once = (signal) => {
    if (isEnding) return;
    isEnding = true;
    end(signal);
  };
  for (const signal of signals) process.on(signal, () => once(signal));
  if (process.env['npm_lifecycle_event'] === undefined) return;
  const parent = process.ppid;
  setInterval(() => {
    if (process.ppid !== parent) once('SIGTERM');
  }, lookEveryMilliseconds).unref();
}
