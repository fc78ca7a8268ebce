import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import puppeteer, { type Browser } from "puppeteer";
import type { FoundBrowser } from "./findBrowser.ts";
import { onSignal } from "./onSignal.ts";

/** A running browser that leaves neither processes nor folders behind. */
export interface BrowserSession {
  readonly browser: Browser;
  /** Four numbers with dots. */
  readonly version: string;
  /** Closes it; where that takes longer than a few seconds, kills it. Never throws. */
  close(): Promise<void>;
}

export interface SessionOptions {
  /** The limit for any one step, in milliseconds. */
  readonly timeoutMs: number;
  /** True leaves out Chromium's sandbox: only for user 0, or by the user's explicit setting. */
  readonly withoutSandbox: boolean;
}

const CLOSE_LIMIT_MS = 5_000;

/** Starts the browser with a profile of its own and everything off that talks to the network. */
export async function openSession(
  found: FoundBrowser,
  options: SessionOptions,
): Promise<BrowserSession> {
  const profile = mkdtempSync(join(tmpdir(), "roomcloth-profile-"));
  const removeProfile = (): void =>
    rmSync(profile, { recursive: true, force: true, maxRetries: 5, retryDelay: 50 });
  let browser: Browser;
  try {
    browser = await puppeteer.launch({
      executablePath: found.program,
      headless: found.headless === "shell" ? "shell" : true,
      userDataDir: profile,
      env: { ...process.env, ...found.env },
      timeout: options.timeoutMs,
      protocolTimeout: options.timeoutMs,
      handleSIGINT: false,
      handleSIGTERM: false,
      handleSIGHUP: false,
      args: browserArguments(options.withoutSandbox),
    });
  } catch (error) {
    removeProfile();
    throw error;
  }
  const kill = (): void => killTree(browser.process()?.pid);
  const forget = onSignal(() => {
    kill();
    removeProfile();
  });
  return {
    browser,
    version: versionOf(await browser.version()),
    async close() {
      forget();
      // A page that hangs can hang the closing too, so it gets a limit.
      const closed = await Promise.race([
        browser.close().then(
          () => true,
          () => false,
        ),
        pause(CLOSE_LIMIT_MS).then(() => false),
      ]);
      if (!closed) kill();
      try {
        removeProfile();
      } catch {
        // A profile that Windows still holds open stays in the temporary folder.
      }
    },
  };
}

/** `HeadlessChrome/143.0.7499.0` without its first word, which differs by the way of starting. */
function versionOf(text: string): string {
  return /\d+(?:\.\d+){3}/.exec(text)?.[0] ?? text;
}

/** The command line. `hinting` off makes text the same on screens of every kind. */
export function browserArguments(withoutSandbox: boolean): string[] {
  return [
    "--disable-background-networking",
    "--disable-component-update",
    "--disable-default-apps",
    "--disable-domain-reliability",
    "--disable-extensions",
    "--disable-gpu",
    "--disable-sync",
    "--font-render-hinting=none",
    "--force-color-profile=srgb",
    "--metrics-recording-only",
    "--no-default-browser-check",
    "--no-first-run",
    "--no-pings",
    ...(withoutSandbox ? ["--no-sandbox"] : []),
  ];
}

function killTree(pid: number | undefined): void {
  if (pid === undefined) return;
  try {
    // The browser leads a process group of its own, except on Windows.
    process.kill(process.platform === "win32" ? pid : -pid, "SIGKILL");
  } catch {
    // It has ended already.
  }
}

function pause(ms: number): Promise<void> {
  return new Promise((resolve) => {
    setTimeout(resolve, ms).unref();
  });
}
