import { execFileSync } from "node:child_process";
import { chmodSync, mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { afterEach, beforeEach, expect, test } from "vitest";
import { readContent } from "../../../src/cli/content/readContent.ts";

let home: string;
let content: string;

beforeEach(() => {
  home = mkdtempSync(join(tmpdir(), "roomcloth-content-"));
  content = join(home, "content");
  put("content/studio.md", "---\nstudio: X\n---\n");
});

afterEach(() => rmSync(home, { recursive: true, force: true }));

function put(path: string, data: string | Uint8Array): void {
  const target = join(home, path);
  mkdirSync(dirname(target), { recursive: true });
  writeFileSync(target, data);
}

async function read() {
  const { files, present, problems } = await readContent(content);
  return {
    files: files.map((file) => file.path),
    present,
    problems: problems.map((p) => [p.file, p.code]),
  };
}

test("text files with their text, other files by their paths, sorted, hidden ones left out", async () => {
  put("content/cloths/b.md", "B");
  put("content/cloths/a é 'q'.md", "A");
  put("content/cloths/a.jpg", "x");
  put("content/.git/config", "x");
  put("content/cloths/.DS_Store", "x");
  put("content/node_modules/x/readme.md", "x");
  expect(await read()).toEqual({
    files: ["cloths/a é 'q'.md", "cloths/b.md", "studio.md"],
    present: ["cloths/a.jpg"],
    problems: [],
  });
  expect((await readContent(content)).files[1]).toEqual({ path: "cloths/b.md", text: "B" });
});

test("links are refused, wherever they lead", async () => {
  put("outside/secret.md", "---\nroom: secret\n---\n");
  put("content/cloths/real.md", "x");
  symlinkSync(join(home, "outside/secret.md"), join(content, "cloths/leak.md"));
  symlinkSync("real.md", join(content, "cloths/same.md"));
  symlinkSync(join(home, "outside"), join(content, "projects"));
  symlinkSync("nowhere.jpg", join(content, "cloths/broken.jpg"));
  symlinkSync(".", join(content, "cloths/loop"));
  const said = await readContent(content);
  expect(said.problems.map((p) => [p.file, p.code, p.message, p.hint])).toEqual(
    ["cloths/broken.jpg", "cloths/leak.md", "cloths/loop", "cloths/same.md", "projects"].map(
      (file) => [
        file,
        "link-refused",
        "This is a link to another place, and links are not followed.",
        "Put the file itself here.",
      ],
    ),
  );
  expect(said.files.map((file) => file.path)).toEqual(["cloths/real.md", "studio.md"]);
});

test("the content folder itself may be reached by a link", async () => {
  symlinkSync(content, join(home, "by-link"));
  expect((await readContent(join(home, "by-link"))).files.map((file) => file.path)).toEqual([
    "studio.md",
  ]);
});

test("what is neither file nor folder, no text, or far too long is refused, and the rest is read", async () => {
  execFileSync("mkfifo", [join(home, "content", "pipe.md")]);
  put("content/cloths/latin.md", Uint8Array.from([0x2d, 0xe9, 0x0a]));
  put("content/cloths/long.md", "x".repeat(2_000_001));
  expect(await read()).toEqual({
    files: ["studio.md"],
    // They are there, so that nobody who names them is told to write them.
    present: ["cloths/latin.md", "cloths/long.md"],
    problems: [
      ["cloths/latin.md", "file-not-text"],
      ["cloths/long.md", "file-too-large"],
      ["pipe.md", "file-odd"],
    ],
  });
});

test.skipIf(process.getuid?.() === 0)("a file that may not be read is named", async () => {
  put("content/cloths/shut.md", "x");
  chmodSync(join(content, "cloths/shut.md"), 0o000);
  expect((await read()).problems).toEqual([["cloths/shut.md", "file-unreadable"]]);
});

test.each(["nowhere", "content/studio.md"])("%s is no content folder", async (path) => {
  const { problems } = await readContent(join(home, path));
  expect(problems.map((p) => p.code)).toEqual(["content-missing"]);
});
