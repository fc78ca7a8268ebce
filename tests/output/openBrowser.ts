import { type BrowserSession, openSession } from "../../src/press/browserSession.ts";
import { type FoundBrowser, findBrowser } from "../../src/press/findBrowser.ts";

/** The browser that pages are looked at in; whoever opens it closes it. */
export async function openBrowser(): Promise<BrowserSession> {
  const found = (await findBrowser()).value as FoundBrowser;
  return openSession(found, { timeoutMs: 60_000, withoutSandbox: process.getuid?.() === 0 });
}
