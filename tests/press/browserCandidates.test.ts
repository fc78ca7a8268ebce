import { expect, test } from "vitest";
import { type BrowserSearch, browserCandidates } from "../../src/press/browserCandidates.ts";

const linux: BrowserSearch = {
  platform: "linux",
  arch: "x64",
  env: { PATH: "/home/ada/bin:/snap/bin:/usr/bin" },
  home: "/home/ada",
  setting: null,
  packedPresent: true,
  puppeteerBuilds: [
    "/c/chrome/linux-131.0.6778.204/chrome-linux64/chrome",
    "/c/chrome-headless-shell/linux-99.0.1.2/chrome-headless-shell-linux64/chrome-headless-shell",
    "/c/chrome-headless-shell/linux-143.0.7499.0/chrome-headless-shell-linux64/chrome-headless-shell",
  ],
};

const sources = (search: BrowserSearch): string[] => [
  ...new Set(browserCandidates(search).map((candidate) => candidate.source)),
];

test("looks in the packed shell, then puppeteer's cache, then what is installed", () => {
  expect(sources(linux)).toEqual(["packed", "puppeteer-cache", "installed"]);
});

test("a setting stands alone, so that a wrong one is reported and not passed over", () => {
  expect(browserCandidates({ ...linux, setting: "/opt/own/chromium" })).toEqual([
    { source: "setting", path: "/opt/own/chromium", headless: "whole" },
  ]);
  expect(browserCandidates({ ...linux, setting: "/x/chrome-headless-shell" })[0]?.headless).toBe(
    "shell",
  );
});

test("the packed shell is for Linux on x64 only", () => {
  expect(sources({ ...linux, arch: "arm64" })).not.toContain("packed");
  expect(sources({ ...linux, platform: "darwin" })).not.toContain("packed");
  expect(sources({ ...linux, packedPresent: false })).not.toContain("packed");
});

test("of puppeteer's builds, shells come before whole browsers and newer before older", () => {
  const cached = browserCandidates(linux).filter((one) => one.source === "puppeteer-cache");
  expect(cached.map((one) => /-(\d+)\./.exec(one.path ?? "")?.[1])).toEqual(["143", "99", "131"]);
  expect(cached.map((one) => one.headless)).toEqual(["shell", "shell", "whole"]);
});

test("on Linux the user's PATH comes first and snap's folder last", () => {
  const installed = browserCandidates({ ...linux, packedPresent: false, puppeteerBuilds: [] });
  const chromium = installed
    .map((one) => one.path)
    .filter((path) => path?.endsWith("/chromium") === true);
  expect(chromium[0]).toBe("/home/ada/bin/chromium");
  expect(chromium.at(-1)).toBe("/snap/bin/chromium");
  expect(new Set(chromium).size).toBe(chromium.length);
});

test("macOS looks in Applications, for all and for the user", () => {
  const paths = browserCandidates({ ...linux, platform: "darwin", home: "/Users/ada" }).map(
    (one) => one.path,
  );
  expect(paths).toContain("/Applications/Google Chrome.app/Contents/MacOS/Google Chrome");
  expect(paths).toContain(
    "/Users/ada/Applications/Microsoft Edge.app/Contents/MacOS/Microsoft Edge",
  );
});

test("Windows looks in both program folders and the user's own, with its own separators", () => {
  const paths = browserCandidates({
    ...linux,
    platform: "win32",
    puppeteerBuilds: [],
    env: {
      PROGRAMFILES: "C:\\Program Files",
      "PROGRAMFILES(X86)": "C:\\Program Files (x86)",
      LOCALAPPDATA: "C:\\Users\\ada\\AppData\\Local",
    },
  }).map((one) => one.path);
  expect(paths[0]).toBe("C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe");
  expect(paths).toContain("C:\\Program Files (x86)\\Microsoft\\Edge\\Application\\msedge.exe");
  expect(paths).toContain(
    "C:\\Users\\ada\\AppData\\Local\\Google\\Chrome\\Application\\chrome.exe",
  );
});
