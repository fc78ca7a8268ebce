import { spawnSync } from "node:child_process";
import { mkdirSync, mkdtempSync, readdirSync, rmSync, truncateSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { brotliCompressSync } from "node:zlib";
import { afterEach, expect, test } from "vitest";
import { machineProbe } from "../../src/press/findBrowser.ts";
import { type ShellPackage, shellPackage, unpackShell } from "../../src/press/packedShell.ts";

const folders: string[] = [];
afterEach(() => {
  for (const folder of folders.splice(0)) rmSync(folder, { recursive: true, force: true });
});
function folder(): string {
  const made = mkdtempSync(join(tmpdir(), "roomcloth-test-"));
  folders.push(made);
  return made;
}

/** A package like the real one, whose shell is a script that wants a library folder where asked to. */
function smallPackage(script: string): ShellPackage {
  const home = folder();
  mkdirSync(join(home, "bin"));
  // tar-fs is looked up from the package's place, so the small package borrows the real one's.
  const real = shellPackage(import.meta.url);
  if (real === null) throw new Error("the optional package is missing");
  mkdirSync(join(home, "node_modules", "tar-fs"), { recursive: true });
  writeFileSync(join(home, "package.json"), "{}");
  writeFileSync(
    join(home, "node_modules", "tar-fs", "index.js"),
    `module.exports = require("node:module").createRequire(${JSON.stringify(join(real.folder, "package.json"))})("tar-fs");`,
  );
  writeFileSync(join(home, "bin", "chromium.br"), brotliCompressSync(Buffer.from(script)));
  const tar = Buffer.alloc(1024); // Two empty blocks: an archive without files.
  writeFileSync(join(home, "bin", "al2023.tar.br"), brotliCompressSync(tar));
  writeFileSync(join(home, "bin", "fonts.tar.br"), brotliCompressSync(tar));
  return { folder: home, version: "1.0.0" };
}

const here = shellPackage(import.meta.url);
const packed = test.skipIf(here === null || process.platform !== "linux");
const candidate = { source: "packed", path: null, headless: "shell" } as const;

packed("the real shell unpacks, leaves nothing else, and names its version", async () => {
  const cache = folder();
  const found = await machineProbe(cache, here)(candidate);
  expect(found?.version).toMatch(/^\d+\.\d+\.\d+\.\d+$/);
  expect(readdirSync(cache)).toEqual([`headless-shell-${here?.version}`]);
});

packed("two at once share one folder", async () => {
  const cache = folder();
  const from = smallPackage("#!/bin/sh\necho Chromium 1.2.3.4\n");
  const both = await Promise.all([unpackShell(from, cache), unpackShell(from, cache)]);
  expect(both[0]).toEqual(both[1]);
  expect(readdirSync(cache)).toEqual(["headless-shell-1.0.0"]);
});

packed("a shell that a temporary folder's cleaner has cut short is unpacked again", async () => {
  const cache = folder();
  const from = smallPackage("#!/bin/sh\necho Chromium 1.2.3.4\n");
  const { program } = await unpackShell(from, cache);
  truncateSync(program, 3);
  await unpackShell(from, cache);
  expect(spawnSync(program, { encoding: "utf8" }).stdout).toContain("1.2.3.4");
  expect(readdirSync(cache)).toEqual(["headless-shell-1.0.0"]);
});

packed("what a killed process left is swept away, a living one's work stays", async () => {
  const cache = folder();
  const dead = spawnSync("true").pid;
  mkdirSync(join(cache, `headless-shell-1.0.0.tmp-${dead}-0badcafe`));
  mkdirSync(join(cache, `headless-shell-1.0.0.tmp-${process.pid}-0badcafe`));
  await unpackShell(smallPackage("#!/bin/sh\n"), cache);
  expect(readdirSync(cache).sort()).toEqual([
    "headless-shell-1.0.0",
    `headless-shell-1.0.0.tmp-${process.pid}-0badcafe`,
  ]);
});

packed("a damaged archive throws and leaves nothing", async () => {
  const cache = folder();
  const from = smallPackage("#!/bin/sh\n");
  truncateSync(join(from.folder, "bin", "al2023.tar.br"), 5);
  await expect(unpackShell(from, cache)).rejects.toThrow();
  expect(readdirSync(cache)).toEqual([]);
});

packed("where the system lacks libraries the packed ones are put on the search path", async () => {
  // Stands for a shell whose nss is missing: the loader ends with 127 until the folder is named.
  const script =
    '#!/bin/sh\ncase "$LD_LIBRARY_PATH" in *libraries/lib*) echo Chromium 1.2.3.4;; *) exit 127;; esac\n';
  const cache = folder();
  const found = await machineProbe(cache, smallPackage(script))(candidate);
  expect(found?.version).toBe("1.2.3.4");
  expect(found?.env.LD_LIBRARY_PATH).toContain(join(cache, "headless-shell-1.0.0", "libraries"));
});
