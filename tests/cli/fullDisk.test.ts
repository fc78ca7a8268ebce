import { spawnSync } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, test } from "vitest";

const disk = mkdtempSync(join(tmpdir(), "roomcloth-disk-"));
/** Runs a program that sees a disk of 300 kB at the folder; only that process sees it. */
const onTinyDisk = (...command: readonly string[]) =>
  spawnSync(
    "unshare",
    ["-rm", "sh", "-c", 'mount -t tmpfs -o size=300k none "$0" && exec "$@"', disk, ...command],
    { encoding: "utf8" },
  );
const possible = onTinyDisk("true").status === 0;

test.skipIf(!possible)(
  "a full disk leaves the old documents whole, with status 3 and a plain word",
  () => {
    const child = join(import.meta.dirname, "fullDiskChild.ts");
    const run = onTinyDisk(process.execPath, "--import", "tsx", child, disk);
    rmSync(disk, { recursive: true, force: true });
    expect(run.stderr).toBe("");
    const said = JSON.parse(run.stdout);
    expect(said).toMatchObject({ first: 0, second: 3, old: true, state: ["made.json"] });
    expect(said.err).toContain("There is no room left on the disk.");
  },
);
