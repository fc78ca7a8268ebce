const SIGNALS = ["SIGINT", "SIGTERM", "SIGHUP"] as const;

/**
 * Runs a short synchronous cleanup when the process is asked to stop, then lets it stop as it would
 * have. Several may be registered; the last to run passes the signal on. Returns what unregisters it.
 */
export function onSignal(cleanup: () => void): () => void {
  const listeners = SIGNALS.map((signal) => {
    const listener = (): void => {
      remove();
      try {
        cleanup();
      } finally {
        if (process.listenerCount(signal) === 0) process.kill(process.pid, signal);
      }
    };
    process.on(signal, listener);
    return { signal, listener };
  });
  const remove = (): void => {
    for (const { signal, listener } of listeners) process.removeListener(signal, listener);
  };
  return remove;
}
