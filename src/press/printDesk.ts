import type { Browser } from "puppeteer";
import type { BrowserSession } from "./browserSession.ts";
import type { PrintTab } from "./printTab.ts";

/** So many pages a browser prints; what it has gathered in memory goes with it. */
const RECYCLE_AFTER = 100;

/** Hands out a living browser, and a new one after a death or a hundred pages. */
export interface PrintDesk {
  session(): Promise<BrowserSession>;
  /** The tab in the browser that was handed out. */
  tab(session: BrowserSession): Promise<PrintTab>;
  drop(): Promise<void>;
  version(): string | null;
  close(): Promise<void>;
}

/** A desk without a browser yet; `open` starts one, `openTab` opens the tab in it that prints. */
export function printDesk(
  open: () => Promise<BrowserSession>,
  openTab: (browser: Browser) => Promise<PrintTab>,
): PrintDesk {
  let session: BrowserSession | null = null;
  let tab: PrintTab | null = null;
  let used = 0;
  let version: string | null = null;
  const drop = async (): Promise<void> => {
    const old = session;
    session = null;
    tab = null;
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
    async tab({ browser }) {
      tab ??= await openTab(browser);
      return tab;
    },
    drop,
    version: () => version,
    close: drop,
  };
}
