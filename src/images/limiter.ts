/** Runs a task when its turn comes. */
export type Limiter = <T>(task: () => Promise<T>) => Promise<T>;

/**
 * Lets at most `most` tasks run at once, first come first served. Photographs are the right grain of parallel work: sharp keeps
 * to one thread each, and two at a time leave memory for a decoded 100-megapixel photograph.
 */
export function limiter(most = 2): Limiter {
  let running = 0;
  const waiting: (() => void)[] = [];
  return async (task) => {
    // A finished task hands its place straight to the first that waits, so the count never runs over.
    if (running >= most) await new Promise<void>((resolve) => waiting.push(resolve));
    else running++;
    try {
      return await task();
    } finally {
      const next = waiting.shift();
      if (next) next();
      else running--;
    }
  };
}
