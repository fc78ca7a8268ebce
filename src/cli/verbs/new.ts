import { copyFile, mkdir, readdir, writeFile } from "node:fs/promises";
import { basename, dirname, extname, join } from "node:path";
import { type Diagnostic, diagnostic, hasErrors } from "../../diagnostics/diagnostic.ts";
import { diagnosticJson } from "../../diagnostics/report.ts";
import { slug } from "../../fields/slug.ts";
import { isThere } from "../isThere.ts";
import { machineFault } from "../machineFault.ts";
import { exitOf, type Outcome, UsageError } from "../outcome.ts";
import { titleFrom } from "../titleFrom.ts";
import type { StarterWanted, Wiring } from "../wiring.ts";

/** What is begun: a studio in a folder, or a project, room or cloth in the content folder. */
export type Beginning =
  | { readonly kind: "studio"; readonly folder: string }
  | { readonly kind: "project"; readonly title: string }
  | {
      readonly kind: "room";
      readonly project: string;
      readonly title: string;
      /** Kinds of items that it begins with; every kind where it is null. */
      readonly items: readonly string[] | null;
    }
  | { readonly kind: "cloth"; readonly photo: string; readonly shows: string | null };

interface Plan {
  readonly file: string;
  readonly wanted: StarterWanted;
  readonly folders: readonly string[];
  /** A photograph that goes beside the card. */
  readonly copy: { readonly from: string; readonly to: string } | null;
}

/** Writes a commented starting file with every field. What is there already is never written over. */
export async function begin(
  contentDir: string,
  beginning: Beginning,
  wiring: Wiring,
): Promise<Outcome> {
  const plan = await planOf(contentDir, beginning);
  try {
    const taken = await firstThere([plan.file, ...(plan.copy ? [plan.copy.to] : [])]);
    if (taken !== null) return outcome(plan, false, [alreadyThere(taken)]);
    const text = await wiring.starter(plan.wanted);
    if (text.value === null || hasErrors(text.diagnostics)) {
      return outcome(plan, false, text.diagnostics);
    }
    for (const folder of [dirname(plan.file), ...plan.folders])
      await mkdir(folder, { recursive: true });
    if (plan.copy) await copyFile(plan.copy.from, plan.copy.to, 1 /* COPYFILE_EXCL */);
    await writeFile(plan.file, text.value, { flag: "wx" });
    return outcome(plan, true, text.diagnostics);
  } catch (error) {
    const fault = machineFault(error);
    if (fault === null) throw error;
    return outcome(plan, false, [fault]);
  }
}

/** Lines of one item, to be pasted below `items` in a room's file; nothing is written. */
export async function beginItem(
  contentDir: string,
  item: string,
  wiring: Wiring,
): Promise<Outcome> {
  const { value, diagnostics } = await wiring.starter({ kind: "item", item, contentDir });
  const lines = value ?? "";
  return {
    exit: exitOf(diagnostics),
    json: { lines: lines.split("\n"), diagnostics: diagnostics.map(diagnosticJson) },
    text: `Paste this below “items:” in the room's file; take away a leading # to use a line.\n\n${lines}`,
    diagnostics,
  };
}

async function planOf(contentDir: string, beginning: Beginning): Promise<Plan> {
  switch (beginning.kind) {
    case "studio": {
      const { folder } = beginning;
      return {
        file: join(folder, "studio.md"),
        wanted: { kind: "studio" },
        folders: ["cloths", "objects", "projects"].map((name) => join(folder, name)),
        copy: null,
      };
    }
    case "project": {
      const { title } = beginning;
      const file = join(contentDir, "projects", named(title), "project.md");
      return { file, wanted: { kind: "project", title, contentDir }, folders: [], copy: null };
    }
    case "room": {
      const { project, title, items } = beginning;
      const folder = join(contentDir, "projects", project);
      if ((await firstThere([join(folder, "project.md")])) === null) {
        const there = await readdir(join(contentDir, "projects")).catch(() => [] as string[]);
        const known = there.length > 0 ? ` Projects: ${there.sort().join(", ")}.` : "";
        throw new UsageError(`There is no project "${project}".${known}`);
      }
      const name = named(title);
      if (name === "project") throw new UsageError('A room cannot be called "project".');
      return {
        file: join(folder, `${name}.md`),
        wanted: { kind: "room", title, items, contentDir },
        folders: [],
        copy: null,
      };
    }
    case "cloth":
      return clothPlan(contentDir, beginning.photo, beginning.shows);
  }
}

async function clothPlan(contentDir: string, photo: string, shows: string | null): Promise<Plan> {
  if ((await firstThere([photo])) === null) throw new UsageError(`There is no file ${photo}.`);
  const ending = extname(photo).toLowerCase();
  const title = titleFrom(basename(photo, extname(photo)));
  const name = named(title);
  const folder = join(contentDir, "cloths");
  const file = `${name}${ending}`;
  return {
    file: join(folder, `${name}.md`),
    wanted: { kind: "cloth", title, photo, file, shows, contentDir },
    folders: [],
    copy: { from: photo, to: join(folder, file) },
  };
}

function named(title: string): string {
  const name = slug(title);
  if (name === "") throw new UsageError(`"${title}" has no letter or digit to name a file by.`);
  return name;
}

async function firstThere(paths: readonly string[]): Promise<string | null> {
  for (const path of paths) {
    if (await isThere(path)) return path;
  }
  return null;
}

function outcome(plan: Plan, made: boolean, diagnostics: readonly Diagnostic[]): Outcome {
  const copied = plan.copy === null ? [] : [plan.copy.to];
  const files = made ? [plan.file, ...copied] : [];
  return {
    exit: exitOf(diagnostics),
    json: { made: files, diagnostics: diagnostics.map(diagnosticJson) },
    text: files.map((file) => `Made ${file}.`).join("\n"),
    diagnostics,
  };
}

function alreadyThere(file: string): Diagnostic {
  return diagnostic(
    { file, line: null, column: null, keyPath: null },
    "already-there",
    "This file is there already, and was left as it is.",
    { hint: "Choose another name, or move the old file away." },
  );
}
