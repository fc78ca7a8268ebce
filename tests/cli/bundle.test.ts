import { spawnSync } from "node:child_process";
import {
  cpSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  realpathSync,
  rmSync,
  symlinkSync,
  utimesSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join, resolve } from "node:path";
import { afterAll, beforeEach, expect, test } from "vitest";

const ROOT = resolve(import.meta.dirname, "../..");
const homes: string[] = [];
let home: string;

afterAll(() => {
  for (const one of homes) rmSync(one, { recursive: true, force: true });
});

const put = (path: string, text: string): void => {
  mkdirSync(dirname(join(home, path)), { recursive: true });
  writeFileSync(join(home, path), text);
};

/** A small program of two sources, with the launcher and the packages of ours. */
beforeEach(() => {
  home = realpathSync(mkdtempSync(join(tmpdir(), "roomcloth-launch-")));
  homes.push(home);
  put("package.json", '{ "type": "module" }');
  put(
    "src/cli/start.ts",
    'export const start = async (): Promise<void> => (await import("../words/words.ts")).say();\n',
  );
  put(
    "src/words/words.ts",
    'export const say = (): void => console.log("Linen in", import.meta.dirname);\n',
  );
  for (const name of ["roomcloth.mjs", "bundle.mjs"])
    cpSync(join(ROOT, "src/cli", name), join(home, "src/cli", name));
  mkdirSync(join(home, "node_modules"));
  for (const name of ["esbuild", "tsx"])
    symlinkSync(join(ROOT, "node_modules", name), join(home, "node_modules", name), "junction");
});

const run = (): string => {
  const said = spawnSync(process.execPath, [join(home, "src/cli/roomcloth.mjs")], {
    encoding: "utf8",
  });
  expect(said.stderr).toBe("");
  return said.stdout.trim();
};
const bundles = (): string[] => readdirSync(join(home, "node_modules/.cache/roomcloth"));
const words = (): string => join(home, "src/words");

test("the sources are gathered at the first start, and told their own places; the next start takes what is there", () => {
  expect(run()).toBe(`Linen in ${words()}`);
  expect(bundles()).toHaveLength(1);
  const before = bundles();
  // The bundle itself is what is started.
  const [bundle = ""] = before;
  const folder = join(home, "node_modules/.cache/roomcloth", bundle);
  for (const name of readdirSync(folder).filter((one) => one !== "start.js"))
    writeFileSync(
      join(folder, name),
      'export const say = () => console.log("From the bundle");\nexport default {};\n',
    );
  expect(run()).toBe("From the bundle");
  expect(bundles()).toEqual(before);
});

test("a source that has changed is seen at once", () => {
  expect(run()).toBe(`Linen in ${words()}`);
  put("src/words/words.ts", 'export const say = (): void => console.log("Cotton");\n');
  expect(run()).toBe("Cotton");
  put("src/words/other.ts", "export const other = 1;\n");
  expect(run()).toBe("Cotton");
  expect(bundles()).toHaveLength(3);
});

test("a bundle of a week ago goes when another is made", () => {
  run();
  const [old = ""] = bundles();
  const weekAgo = new Date(Date.now() - 8 * 24 * 3_600_000);
  utimesSync(join(home, "node_modules/.cache/roomcloth", old), weekAgo, weekAgo);
  put("src/words/words.ts", 'export const say = (): void => console.log("Silk");\n');
  expect(run()).toBe("Silk");
  expect(bundles()).toHaveLength(1);
  expect(bundles()).not.toContain(old);
});

test("where nothing can be kept the sources are read one by one", () => {
  writeFileSync(join(home, "node_modules/.cache"), "not a folder");
  expect(run()).toBe(`Linen in ${words()}`);
});

test("several first starts at once all run, and leave one bundle", async () => {
  const { spawn } = await import("node:child_process");
  const ends = await Promise.all(
    [1, 2, 3].map(
      () =>
        new Promise<string>((done) => {
          const child = spawn(process.execPath, [join(home, "src/cli/roomcloth.mjs")]);
          let said = "";
          child.stdout.on("data", (part) => {
            said += part;
          });
          child.on("close", () => done(said.trim()));
        }),
    ),
  );
  expect(ends).toEqual(Array(3).fill(`Linen in ${words()}`));
  expect(bundles()).toHaveLength(1);
});
