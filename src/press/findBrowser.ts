import { execFile } from "node:child_process";
import { accessSync, constants, existsSync, readdirSync } from "node:fs";
import { homedir } from "node:os";
import { dirname, join } from "node:path";
import { type Checked, type Diagnostic, diagnostic } from "../diagnostics/diagnostic.ts";
import {
  type BrowserCandidate,
  type BrowserSearch,
  type BrowserSource,
  browserCandidates,
} from "./browserCandidates.ts";
import { cacheSubfolder } from "./cacheFolder.ts";
import { type ShellPackage, shellPackage, unpackShell } from "./packedShell.ts";

/** A browser that answered, ready to be started. */
export interface FoundBrowser {
  readonly source: BrowserSource;
  readonly program: string;
  readonly headless: "shell" | "whole";
  /** Four numbers with dots, or null where only the running browser can tell. */
  readonly version: string | null;
  /** Environment that it needs beside ours. */
  readonly env: Readonly<Record<string, string>>;
}

/** Looks whether a candidate is there and answers; null where not. */
export type BrowserProbe = (candidate: BrowserCandidate) => Promise<FoundBrowser | null>;

/**
 * The browser that prints: the first candidate that answers, or the diagnostic `no-browser` (or
 * `browser-setting` for a setting that leads nowhere) with a hint for Linux, macOS and Windows.
 */
export async function findBrowser(
  setting: string | null = process.env.ROOMCLOTH_BROWSER || null,
  search: BrowserSearch = machineSearch(setting),
  probe: BrowserProbe = machineProbe(),
): Promise<Checked<FoundBrowser>> {
  for (const candidate of browserCandidates(search)) {
    const found = await probe(candidate);
    if (found !== null) return { value: found, diagnostics: [] };
  }
  return { value: null, diagnostics: [missing(setting)] };
}

function missing(setting: string | null): Diagnostic {
  const nowhere = { file: "", line: null, column: null, keyPath: null };
  if (setting !== null) {
    return diagnostic(
      nowhere,
      "browser-setting",
      "The browser that the setting names was not found, or it does not start.",
      {
        actual: setting,
        expected: "the full path of a Chrome, Chromium or Edge program",
        hint: "Mend the path in ROOMCLOTH_BROWSER, or unset it to let roomcloth look for a browser.",
      },
    );
  }
  return diagnostic(
    nowhere,
    "no-browser",
    "There is no browser to print with: PDFs need Chrome, Chromium or Edge.",
    {
      hint:
        "Linux on a PC: run `npm ci` without `--omit=optional`, which brings one along, or install your system's chromium package. " +
        "macOS: install Google Chrome, Chromium or Microsoft Edge in Applications. " +
        "Windows: install Google Chrome or use the Edge that comes with it. " +
        "Anywhere: set ROOMCLOTH_BROWSER to the full path of such a program.",
    },
  );
}

/** What this machine offers. */
export function machineSearch(setting: string | null): BrowserSearch {
  return {
    platform: process.platform,
    arch: process.arch,
    env: process.env,
    home: homedir(),
    setting,
    packedPresent: shellPackage(import.meta.url) !== null,
    puppeteerBuilds: puppeteerBuilds(
      process.env.PUPPETEER_CACHE_DIR || join(homedir(), ".cache", "puppeteer"),
    ),
  };
}

const SHELL_NAMES = ["chrome-headless-shell", "chrome-headless-shell.exe"];
const WHOLE_NAMES = [
  "chrome",
  "chrome.exe",
  join("Google Chrome for Testing.app", "Contents", "MacOS", "Google Chrome for Testing"),
];

/** Programs below puppeteer's cache: `<browser>/<platform>-<version>/<folder>/<program>`. */
export function puppeteerBuilds(cache: string): readonly string[] {
  const list = (folder: string): string[] => {
    try {
      return readdirSync(folder);
    } catch {
      return [];
    }
  };
  return [
    { browser: "chrome-headless-shell", programs: SHELL_NAMES },
    { browser: "chrome", programs: WHOLE_NAMES },
  ].flatMap(({ browser, programs }) =>
    list(join(cache, browser)).flatMap((build) =>
      list(join(cache, browser, build)).flatMap((folder) =>
        programs
          .map((program) => join(cache, browser, build, folder, program))
          .filter((path) => existsSync(path)),
      ),
    ),
  );
}

/** The probe for this machine. The packed shell is unpacked below `cache` where it was not yet. */
export function machineProbe(
  cache: string | null = cacheSubfolder("browser"),
  packed: ShellPackage | null = shellPackage(import.meta.url),
): BrowserProbe {
  return async (candidate) => {
    if (candidate.source === "packed") {
      if (packed === null || cache === null) return null;
      return probePacked(packed, cache);
    }
    const program = candidate.path;
    if (program === null || !canStart(program)) return null;
    const { source, headless } = candidate;
    // On Windows `--version` opens a window instead of answering; a folder beside carries the number.
    if (process.platform === "win32") {
      return { source, program, headless, version: versionBeside(program), env: {} };
    }
    const version = await askVersion(program, {});
    return version === null ? null : { source, program, headless, version, env: {} };
  };
}

async function probePacked(packed: ShellPackage, cache: string): Promise<FoundBrowser | null> {
  // A full disk or a folder without leave to start programs: look further.
  const shell = await unpackShell(packed, cache).catch(() => null);
  if (shell === null) return null;
  const fonts: Record<string, string> =
    process.env.FONTCONFIG_PATH || existsSync("/etc/fonts/fonts.conf")
      ? {}
      : { FONTCONFIG_PATH: shell.fonts };
  const own = process.env.LD_LIBRARY_PATH;
  const libraries = { LD_LIBRARY_PATH: own ? `${shell.libraries}:${own}` : shell.libraries };
  for (const env of [fonts, { ...fonts, ...libraries }]) {
    const version = await askVersion(shell.program, env);
    if (version !== null) {
      return { source: "packed", program: shell.program, headless: "shell", version, env };
    }
  }
  return null;
}

/** The version that a program names, or null where it does not start (a missing library, say). */
function askVersion(
  program: string,
  env: Readonly<Record<string, string>>,
): Promise<string | null> {
  return new Promise((resolve) => {
    execFile(
      program,
      ["--version"],
      { env: { ...process.env, ...env }, timeout: 20_000, killSignal: "SIGKILL" },
      (error, out) => resolve(error ? null : (/\d+\.\d+\.\d+\.\d+/.exec(out)?.[0] ?? null)),
    );
  });
}

function versionBeside(program: string): string | null {
  try {
    const versions = readdirSync(dirname(program)).filter((name) => /^\d+(\.\d+){3}$/.test(name));
    return versions.length === 1 ? (versions[0] ?? null) : null;
  } catch {
    return null;
  }
}

function canStart(program: string): boolean {
  try {
    accessSync(program, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}
