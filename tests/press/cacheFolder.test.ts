import { chmodSync, mkdirSync, mkdtempSync, rmSync, statSync, symlinkSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, expect, test } from "vitest";
import { cacheFolderChoices, usable } from "../../src/press/cacheFolder.ts";

const home = mkdtempSync(join(tmpdir(), "roomcloth-cache-test-"));
afterAll(() => rmSync(home, { recursive: true, force: true }));

// Linux: XDG Base Directory Specification; macOS and Windows: the systems' own cache folders.
test.each([
  ["linux", {}, "/home/ada/.cache/roomcloth"],
  ["linux", { XDG_CACHE_HOME: "/var/c" }, "/var/c/roomcloth"],
  ["linux", { XDG_CACHE_HOME: "relative" }, "/home/ada/.cache/roomcloth"],
  ["darwin", { XDG_CACHE_HOME: "/var/c" }, "/home/ada/Library/Caches/roomcloth"],
] as const)(
  "on %s with %j the cache is %s, else a folder of one's own",
  (platform, env, expected) => {
    const choices = cacheFolderChoices(platform, env, "/home/ada", "/tmp", 1000);
    expect(choices).toEqual([expected, "/tmp/roomcloth-1000"]);
  },
);

test("on Windows it is below the local application data", () => {
  const env = { LOCALAPPDATA: "C:\\Users\\ada\\AppData\\Local" };
  expect(cacheFolderChoices("win32", env, "C:\\Users\\ada", "C:\\Temp", null)).toEqual([
    "C:\\Users\\ada\\AppData\\Local\\roomcloth",
    "C:\\Temp\\roomcloth-user",
  ]);
});

test("a setting stands alone", () => {
  const env = { ROOMCLOTH_CACHE: "/data/c", XDG_CACHE_HOME: "/var/c" };
  expect(cacheFolderChoices("linux", env, "/home/ada", "/tmp", 1000)).toEqual(["/data/c"]);
});

test.skipIf(process.platform === "win32")(
  "a folder is made for its owner alone; a link or another's is passed over",
  () => {
    const me = process.getuid?.() ?? 0;
    const fresh = join(home, "fresh/deep");
    expect(usable(fresh, me)).toBe(true);
    expect(statSync(fresh).mode & 0o777).toBe(0o700);
    symlinkSync(fresh, join(home, "link"));
    expect(usable(join(home, "link"), me)).toBe(false);
    expect(usable(fresh, me + 1)).toBe(false);
    mkdirSync(join(home, "open"));
    chmodSync(join(home, "open"), 0o777);
    expect(usable(join(home, "open"), me)).toBe(false);
  },
);
