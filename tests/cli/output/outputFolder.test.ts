import { spawnSync } from "node:child_process";
import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from "node:fs";
import { hostname, tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { afterAll, beforeEach, expect, test } from "vitest";
import {
  claimOutput,
  type OutputFolder,
  openOutput,
  recoverOutput,
} from "../../../src/cli/output/outputFolder.ts";
import type { MadeFile } from "../../../src/cli/output/switchPlan.ts";

const base = mkdtempSync(join(tmpdir(), "roomcloth-output-"));
let out = "";
let count = 0;
beforeEach(() => {
  count += 1;
  out = join(base, `out ${count}`);
});
afterAll(() => rmSync(base, { recursive: true, force: true }));

/** All files below the output folder but our state, with what stands in them. */
function contents(folder = out): Record<string, string> {
  if (!existsSync(folder)) return {};
  const found: Record<string, string> = {};
  for (const entry of readdirSync(folder, { recursive: true, withFileTypes: true })) {
    const path = join(entry.parentPath, entry.name).slice(folder.length + 1);
    if (entry.isFile() && !path.startsWith(".roomcloth")) {
      found[path] = readFileSync(join(folder, path), "utf8");
    }
  }
  return found;
}
const state = (): string[] => readdirSync(join(out, ".roomcloth")).sort();

function open(): OutputFolder {
  const opened = openOutput(out);
  if (opened.value === null) throw new Error(opened.diagnostics[0]?.message);
  return opened.value;
}
function stage(output: OutputFolder, files: Record<string, string>): MadeFile[] {
  return Object.entries(files).map(([path, text]) => {
    const target = join(output.staging, path);
    mkdirSync(dirname(target), { recursive: true });
    writeFileSync(target, text);
    const [reader, first = "", second = ""] = path.split("/");
    const project = reader === "makers" ? second : path.split("/").length > 2 ? first : null;
    return { path, project };
  });
}
function build(files: Record<string, string>, projects = ["quay", "mill"], existing = projects) {
  const output = open();
  const made = stage(output, files);
  const scope = { built: new Set([null, ...projects]), existing: new Set(existing) };
  const result = output.publish(made, scope);
  output.close();
  return result;
}

const FIRST = {
  "client/quay/index.html": "old",
  "makers/workroom/quay/den.html": "old",
  "client/mill/index.html": "old",
  "studio/index.html": "old",
};

test("puts a build in place, and of ours only the list of what is ours remains beside it", () => {
  expect(build(FIRST).value?.switched).toEqual([null, "mill", "quay"]);
  expect(contents()).toEqual(FIRST);
  expect(state()).toEqual(["made.json"]);
});

test("deleted rooms, makers and projects go, foreign files stay", () => {
  build(FIRST);
  writeFileSync(join(out, "note.txt"), "mine");
  const result = build({ "client/quay/index.html": "new", "studio/index.html": "new" }, ["quay"]);
  expect(result.value?.removed).toEqual(["client/mill", "makers/workroom/quay"]);
  expect(contents()).toEqual({
    "client/quay/index.html": "new",
    "note.txt": "mine",
    "studio/index.html": "new",
  });
  expect(existsSync(join(out, "makers"))).toBe(false);
});

test("a project that was not built keeps its old trees", () => {
  build(FIRST);
  build(
    { "client/mill/index.html": "new", "studio/index.html": "new" },
    ["mill"],
    ["mill", "quay"],
  );
  expect(contents()).toEqual({
    ...FIRST,
    "client/mill/index.html": "new",
    "studio/index.html": "new",
  });
});

test("a build that is not published leaves everything as it was", () => {
  build(FIRST);
  const output = open();
  stage(output, { "client/quay/index.html": "new" });
  output.close();
  expect(contents()).toEqual(FIRST);
  expect(state()).toEqual(["made.json"]);
});

test("what roomcloth has not made is not replaced, unless it is claimed", () => {
  mkdirSync(join(out, "client/quay"), { recursive: true });
  writeFileSync(join(out, "client/quay/index.html"), "mine");
  const refused = build({ "client/quay/index.html": "new", "client/mill/index.html": "new" });
  expect(refused.diagnostics.map((one) => one.code)).toEqual(["output-not-ours"]);
  expect(contents()).toEqual({ "client/quay/index.html": "mine" });
  claimOutput(out, [{ path: "client/quay/index.html", project: "quay" }]);
  build({ "client/quay/index.html": "new" });
  expect(contents()).toEqual({ "client/quay/index.html": "new" });
});

test("two builds cannot have one folder; a dead one's lock is taken over", () => {
  const first = open();
  const second = openOutput(out);
  expect(second.diagnostics.map((one) => one.code)).toEqual(["output-busy"]);
  first.close();
  const dead = spawnSync(process.execPath, ["-e", ""]).pid;
  const lock = { pid: dead, host: hostname(), started: null, token: "dead" };
  writeFileSync(join(out, ".roomcloth/lock.json"), JSON.stringify(lock));
  open().close();
  // The same number, but another process that started later (Linux can tell).
  if (process.platform === "linux") {
    const reused = { pid: process.pid, host: hostname(), started: "1", token: "reused" };
    writeFileSync(join(out, ".roomcloth/lock.json"), JSON.stringify(reused));
    open().close();
  }
  expect(state()).toEqual([]);
});

test("a tree that cannot be moved keeps its whole project as it was, the others are switched", () => {
  build(FIRST);
  const output = open();
  const files = stage(output, {
    "client/quay/index.html": "new",
    "makers/workroom/quay/den.html": "new",
    "client/mill/index.html": "new",
    "studio/index.html": "new",
  });
  // What is moved out of the maker's tree has no place to go: that rename fails after the client's tree
  // was switched already, as one does on Windows where another program holds a file.
  const real = join(out, "makers/workroom/quay");
  mkdirSync(
    join(
      out,
      ".roomcloth",
      `trash-${output.staging.split("staging-")[1]}`,
      "makers/workroom/quay/x",
    ),
    { recursive: true },
  );
  const result = output.publish(files, {
    built: new Set([null, "quay", "mill"]),
    existing: new Set(["quay", "mill"]),
  });
  output.close();
  expect(existsSync(real)).toBe(true);
  expect(result.value?.kept).toEqual(["quay"]);
  expect(result.diagnostics.map((one) => one.code)).toEqual(["output-held"]);
  expect(contents()).toEqual({
    ...FIRST,
    "client/mill/index.html": "new",
    "studio/index.html": "new",
  });
  expect(state()).toEqual(["made.json"]);
});

const CHILD = join(import.meta.dirname, "switchChild.ts");
/** A process that publishes the edition "new" and ends itself at a step, by number or name; 0 for none. */
const child = (fatal: number | string) =>
  spawnSync(process.execPath, ["--import", "tsx", CHILD, out, String(fatal)], { encoding: "utf8" });

/** What the child's files were before, as an earlier build of ours made them. */
function buildOld(): void {
  rmSync(out, { recursive: true, force: true });
  build({
    "client/quay/den/index.html": "old",
    "client/quay/index.html": "old",
    "makers/old-maker/quay/den.html": "old",
    "studio/quay/findings.html": "old",
    "client/mill/index.html": "old",
    "studio/index.html": "old",
  });
}

/** The edition of each owner's trees; "mixed" where they differ, "" where a part is missing. */
function editions(): Record<string, string> {
  const files = contents();
  const of = (paths: readonly string[]): string => {
    const found = new Set(paths.map((path) => files[path] ?? ""));
    return found.size === 1 ? ([...found][0] ?? "") : "mixed";
  };
  return {
    client: of(["client/quay/den/index.html", "client/quay/index.html"]),
    oldMaker: of(["makers/old-maker/quay/den.html"]),
    newMaker: of(["makers/new-maker/quay/den.html"]),
    findings: of(["studio/quay/findings.html"]),
    mill: of(["client/mill/index.html"]),
    studio: of(["studio/index.html"]),
  };
}

const OLD = {
  client: "old",
  oldMaker: "old",
  newMaker: "",
  findings: "old",
  mill: "old",
  studio: "old",
};
const NEW = {
  client: "new",
  oldMaker: "",
  newMaker: "new",
  findings: "new",
  mill: "new",
  studio: "new",
};

const killing = test.skipIf(process.platform === "win32");

killing(
  "a process that is killed at any step leaves no tree mixed, and the next command finishes or undoes it",
  () => {
    const seen = new Set<string>();
    for (let fatal = 1; ; fatal++) {
      buildOld();
      expect(editions()).toEqual(OLD);
      const killed = child(fatal);
      if (killed.status === 0) {
        expect(fatal).toBe(Number(killed.stdout) + 1);
        break;
      }
      expect(killed.signal).toBe("SIGKILL");
      expect(Object.values(editions())).not.toContain("mixed");
      // The next command of any kind; another then finds nothing left to do.
      recoverOutput(out);
      const after = JSON.stringify(editions());
      expect([JSON.stringify(OLD), JSON.stringify(NEW)]).toContain(after);
      seen.add(after);
      open().close();
      expect(JSON.stringify(editions())).toBe(after);
      expect(state()).toEqual(["made.json"]);
    }
    expect(seen.size).toBe(2);
    expect(editions()).toEqual(NEW);
  },
);

killing("a recovery that is itself interrupted can be finished", () => {
  buildOld();
  expect(child("in client/mill").signal).toBe("SIGKILL");
  // These die while they finish what the first began, before they get to their own work.
  for (const step of [
    "in client/mill",
    "out client/quay",
    "in client/quay",
    "remove makers/old-maker/quay",
    "end",
  ]) {
    expect(child(step).signal).toBe("SIGKILL");
  }
  recoverOutput(out);
  expect(editions()).toEqual(NEW);
});

killing(
  "where someone emptied the staging folder of an interrupted switch, the old tree returns",
  () => {
    buildOld();
    child("in client/quay");
    expect(editions().client).toBe("");
    const staging = state().find((name) => name.startsWith("staging-")) ?? "";
    rmSync(join(out, ".roomcloth", staging), { recursive: true });
    recoverOutput(out);
    expect(editions().client).toBe("old");
  },
);
