import { chmodSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, expect, test } from "vitest";
import type { BrowserCandidate, BrowserSearch } from "../../src/press/browserCandidates.ts";
import {
  type FoundBrowser,
  findBrowser,
  machineProbe,
  puppeteerBuilds,
} from "../../src/press/findBrowser.ts";

const folders: string[] = [];
afterEach(() => {
  for (const folder of folders.splice(0)) rmSync(folder, { recursive: true, force: true });
});
function folder(): string {
  const made = mkdtempSync(join(tmpdir(), "roomcloth-test-"));
  folders.push(made);
  return made;
}

const search: BrowserSearch = {
  platform: "linux",
  arch: "x64",
  env: { PATH: "/usr/bin" },
  home: "/home/ada",
  setting: null,
  packedPresent: true,
  puppeteerBuilds: ["/c/chrome/linux-131.0.6778.204/chrome-linux64/chrome"],
};

const answersFor =
  (...sources: string[]) =>
  async (candidate: BrowserCandidate): Promise<FoundBrowser | null> =>
    sources.includes(candidate.source)
      ? { ...candidate, program: candidate.path ?? "packed", version: "1.2.3.4", env: {} }
      : null;

test("takes the first candidate that answers, in order", async () => {
  const all = ["packed", "puppeteer-cache", "installed"];
  for (const [at, expected] of all.entries()) {
    const found = await findBrowser(null, search, answersFor(...all.slice(at)));
    expect(found.value?.source).toBe(expected);
    expect(found.diagnostics).toEqual([]);
  }
});

test("without any browser says so, and how to get one on each system", async () => {
  const found = await findBrowser(null, search, answersFor());
  expect(found.value).toBeNull();
  expect(found.diagnostics.map((one) => one.code)).toEqual(["no-browser"]);
  for (const word of ["Linux", "macOS", "Windows", "ROOMCLOTH_BROWSER"]) {
    expect(found.diagnostics[0]?.hint).toContain(word);
  }
});

test("a setting that leads nowhere is an error, although other browsers are there", async () => {
  const setting = "/nowhere/chromium";
  const found = await findBrowser(
    setting,
    { ...search, setting },
    answersFor("packed", "installed"),
  );
  expect(found.value).toBeNull();
  expect(found.diagnostics[0]).toMatchObject({ code: "browser-setting", actual: setting });
});

test.skipIf(process.platform === "win32")(
  "a program that is missing, not executable, fails or names no version does not count",
  async () => {
    const home = folder();
    const write = (name: string, text: string, mode: number): string => {
      const path = join(home, name);
      writeFileSync(path, text);
      chmodSync(path, mode);
      return path;
    };
    const probe = machineProbe(home, null);
    const ask = (path: string) => probe({ source: "installed", path, headless: "whole" });
    expect(await ask(join(home, "missing"))).toBeNull();
    expect(await ask(write("fails", "#!/bin/sh\nexit 127\n", 0o755))).toBeNull();
    expect(await ask(write("silent", "#!/bin/sh\nexit 0\n", 0o755))).toBeNull();
    const good = write("good", "#!/bin/sh\necho Chromium 143.0.7499.0 built\n", 0o755);
    expect(await ask(good)).toMatchObject({ version: "143.0.7499.0", program: good, env: {} });
  },
);

test("reads puppeteer's cache folder as it is laid out, and nothing where there is none", () => {
  const cache = folder();
  const shell = join(cache, "chrome-headless-shell", "linux-143.0.1.2", "chrome-headless-shell-x");
  mkdirSync(shell, { recursive: true });
  writeFileSync(join(shell, "chrome-headless-shell"), "");
  mkdirSync(join(cache, "chrome", "linux-143.0.1.2", "chrome-linux64"), { recursive: true });
  expect(puppeteerBuilds(cache)).toEqual([join(shell, "chrome-headless-shell")]);
  expect(puppeteerBuilds(join(cache, "nowhere"))).toEqual([]);
});
