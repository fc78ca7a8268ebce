import { mkdir, mkdtemp, rm, symlink, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, test } from "vitest";
import { readContent } from "../../../src/cli/content/readContent.ts";

let dir: string;
let outside: string;

beforeAll(async () => {
  dir = await mkdtemp(join(tmpdir(), "roomcloth-content-"));
  outside = await mkdtemp(join(tmpdir(), "roomcloth-outside-"));
  await mkdir(join(dir, "cloths"));
  await writeFile(join(dir, "studio.md"), "---\nstudio: Test\n---\n");
  await writeFile(join(dir, "cloths/fern.md"), "\ufeff---\r\ncloth: Fern\r\n---\r\n");
  await writeFile(join(dir, "cloths/fern.jpg"), "not looked at here");
  await writeFile(join(dir, ".hidden.md"), "left out");
  await writeFile(join(outside, "secret.md"), "---\ncloth: Elsewhere\n---\n");
  await symlink(join(outside, "secret.md"), join(dir, "cloths/linked.md"));
  await symlink(outside, join(dir, "projects"));
  await writeFile(join(dir, "cloths/latin.md"), Buffer.from([0x2d, 0x2d, 0x2d, 0x0a, 0xe9, 0x0a]));
  await writeFile(join(dir, "cloths/huge.md"), "x".repeat(2_000_001));
});
afterAll(async () => {
  await rm(dir, { recursive: true, force: true });
  await rm(outside, { recursive: true, force: true });
});

test("texts, other files and what is refused, each by its path; a link is never followed", async () => {
  const { files, present, problems } = await readContent(dir);
  expect(files.map((f) => f.path)).toEqual(["cloths/fern.md", "studio.md"]);
  expect(present).toEqual(["cloths/fern.jpg"]);
  expect(problems.map((p) => [p.file, p.code]).sort()).toEqual([
    ["cloths/huge.md", "file-too-large"],
    ["cloths/latin.md", "file-not-text"],
    ["cloths/linked.md", "link-refused"],
    ["projects", "link-refused"],
  ]);
  expect(problems.every((p) => p.hint)).toBe(true);
  expect(JSON.stringify({ files, problems })).not.toContain("Elsewhere");
});

test("a folder that is not there is said, with what to do", async () => {
  const { files, problems } = await readContent(join(dir, "nowhere"));
  expect(files).toEqual([]);
  expect(problems.map((p) => p.code)).toEqual(["content-missing"]);
});
