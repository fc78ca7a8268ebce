import type { BrowserSession } from "./browserSession.ts";

/** So many pages a browser prints; what it has gathered in memory goes with it. */
const RECYCLE_AFTER = 100;

/** Hands out a living browser, and a new one after a death or a hundred pages. */
export interface PrintDesk {
  session(): Promise<BrowserSession>;
  drop(): Promise<void>;
  version(): string | null;
  close(): Promise<void>;
}

/** A desk without a browser yet; `open` starts one. */
export function printDesk(open: () => Promise<BrowserSession>): PrintDesk {
  let session: BrowserSession | null = null;
  let used = 0;
  let version: string | null = null;
  const drop = async (): Promise<void> => {
    const old = session;
    session = null;
    await old?.close();
  };
  return {
    async session() {
      if (session !== null && (used >= RECYCLE_AFTER || !session.browser.connected)) await drop();
      if (session === null) {
        session = await open();
        version = session.version;
        used = 0;
      }
      used += 1;
      return session;
    },
    drop,
    version: () => version,
    close: drop,
  };
}
