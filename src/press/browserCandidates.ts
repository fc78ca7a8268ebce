import { posix, win32 } from "node:path";

/** Where a browser was found; the order of this list is the order of trial. */
export type BrowserSource = "setting" | "packed" | "puppeteer-cache" | "installed";

/** One place where a print browser may be, before anybody has looked whether it is there. */
export interface BrowserCandidate {
  readonly source: BrowserSource;
  /** The program, or null for the packed shell, which must be unpacked before it has a path. */
  readonly path: string | null;
  /** How puppeteer must start it: the bare headless shell, or a whole browser's headless mode. */
  readonly headless: "shell" | "whole";
}

/** What the choice depends on, as plain values: nothing here is read from the machine. */
export interface BrowserSearch {
  readonly platform: NodeJS.Platform;
  readonly arch: string;
  readonly env: Readonly<Record<string, string | undefined>>;
  readonly home: string;
  /** The user's own choice (option before environment), or null. */
  readonly setting: string | null;
  /** True where the npm package with the packed headless shell is installed. */
  readonly packedPresent: boolean;
  /** Programs below puppeteer's cache folder, in any order. */
  readonly puppeteerBuilds: readonly string[];
}

/**
 * The places to look for a print browser, best first: the user's setting; the headless shell inside
 * an npm package (Linux x64 only); what puppeteer fetched earlier, newest first, shells before whole
 * browsers; an installed Chrome, Chromium or Edge. A setting stands alone: where it is wrong the user
 * must hear of it, and not get another browser's pages.
 */
export function browserCandidates(search: BrowserSearch): readonly BrowserCandidate[] {
  if (search.setting !== null) {
    return [{ source: "setting", path: search.setting, headless: headlessOf(search.setting) }];
  }
  const packed: BrowserCandidate[] =
    search.packedPresent && search.platform === "linux" && search.arch === "x64"
      ? [{ source: "packed", path: null, headless: "shell" }]
      : [];
  const cached = [...search.puppeteerBuilds].sort(newestFirst).map(
    (path): BrowserCandidate => ({
      source: "puppeteer-cache",
      path,
      headless: headlessOf(path),
    }),
  );
  const installed = installedPaths(search).map(
    (path): BrowserCandidate => ({ source: "installed", path, headless: headlessOf(path) }),
  );
  return [...packed, ...cached, ...installed];
}

function headlessOf(path: string): "shell" | "whole" {
  return /headless[-_]shell/i.test(path) ? "shell" : "whole";
}

function newestFirst(a: string, b: string): number {
  const shells = Number(headlessOf(b) === "shell") - Number(headlessOf(a) === "shell");
  if (shells !== 0) return shells;
  const [left, right] = [versionIn(a), versionIn(b)];
  for (let i = 0; i < Math.max(left.length, right.length); i++) {
    const difference = (right[i] ?? 0) - (left[i] ?? 0);
    if (difference !== 0) return difference;
  }
  return a < b ? -1 : a > b ? 1 : 0;
}

function versionIn(path: string): readonly number[] {
  const match = /-(\d+(?:\.\d+){1,3})/.exec(path);
  return match?.[1] ? match[1].split(".").map(Number) : [];
}

const LINUX_NAMES = [
  "google-chrome-stable",
  "google-chrome",
  "chromium",
  "chromium-browser",
  "microsoft-edge-stable",
  "microsoft-edge",
];

function installedPaths(search: BrowserSearch): readonly string[] {
  if (search.platform === "win32") {
    const roots = ["PROGRAMFILES", "PROGRAMFILES(X86)", "LOCALAPPDATA"]
      .map((name) => search.env[name])
      .filter((root): root is string => root !== undefined && root !== "");
    return [
      ["Google", "Chrome", "Application", "chrome.exe"],
      ["Chromium", "Application", "chrome.exe"],
      ["Microsoft", "Edge", "Application", "msedge.exe"],
    ].flatMap((parts) => roots.map((root) => win32.join(root, ...parts)));
  }
  if (search.platform === "darwin") {
    return ["Google Chrome", "Chromium", "Microsoft Edge"].flatMap((name) =>
      ["/", search.home].map((root) =>
        posix.join(root, "Applications", `${name}.app`, "Contents", "MacOS", name),
      ),
    );
  }
  // Snap's browsers cannot read folders of their choosing, so that folder comes last.
  const folders = [
    ...(search.env.PATH ?? "").split(":").filter((folder) => posix.isAbsolute(folder)),
    "/usr/bin",
    "/usr/local/bin",
    "/opt/google/chrome",
    "/snap/bin",
  ].filter((folder, at, all) => all.indexOf(folder) === at);
  const ordered = [
    ...folders.filter((folder) => folder !== "/snap/bin"),
    ...folders.filter((folder) => folder === "/snap/bin"),
  ];
  return LINUX_NAMES.flatMap((name) => ordered.map((folder) => posix.join(folder, name)));
}
