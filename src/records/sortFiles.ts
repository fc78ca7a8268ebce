import { type Diagnostic, diagnostic } from "../diagnostics/diagnostic.ts";
import { nearest } from "../fields/suggest.ts";
import { idOf, type TextFile } from "./reading/readCard.ts";

/** A project's folder: its card, where there is one, and its rooms. */
export interface ProjectFiles {
  readonly id: string;
  card: TextFile | null;
  readonly rooms: TextFile[];
}

/** The files of a content folder by what they are. */
export interface SortedFiles {
  readonly studio: TextFile | null;
  readonly cloths: readonly TextFile[];
  readonly objects: readonly TextFile[];
  readonly projects: readonly ProjectFiles[];
  readonly diagnostics: readonly Diagnostic[];
}

const FOLDERS = ["cloths", "objects", "projects"];

function stray(file: TextFile, how?: string): Diagnostic {
  const parts = file.path.split("/");
  const folder = parts.length > 1 ? nearest(parts[0] as string, FOLDERS) : null;
  const name = parts.length === 1 ? nearest(parts[0] as string, ["studio.md"]) : null;
  const hint =
    how ??
    (name
      ? `Call it ${name}.`
      : folder && folder !== parts[0]
        ? `Call the folder ${folder}.`
        : "Move it to cloths, objects, or the folder of a project in projects; or give it another ending than .md.");
  return diagnostic(
    { file: file.path, line: null, column: null, keyPath: null },
    "file-out-of-place",
    "This file is in no place where it would be read.",
    { severity: "warning", hint },
  );
}

/** Tells studio.md, the library's cards, the projects' cards and the rooms by their paths; anything else that ends in .md is said to be out of place. */
export function sortFiles(files: readonly TextFile[]): SortedFiles {
  const sorted = [...files].sort((a, b) => (a.path < b.path ? -1 : a.path > b.path ? 1 : 0));
  let studio: TextFile | null = null;
  const cloths: TextFile[] = [];
  const objects: TextFile[] = [];
  const projects = new Map<string, ProjectFiles>();
  const diagnostics: Diagnostic[] = [];
  for (const file of sorted) {
    const parts = file.path.split("/");
    const name = parts.at(-1) as string;
    if (!/\.md$/i.test(name)) continue;
    if (!name.endsWith(".md")) {
      diagnostics.push(stray(file, "Write its ending in small letters: .md"));
    } else if (file.path === "studio.md") studio = file;
    else if (parts.length === 2 && parts[0] === "cloths") cloths.push(file);
    else if (parts.length === 2 && parts[0] === "objects") objects.push(file);
    else if (parts.length === 3 && parts[0] === "projects") {
      const id = (parts[1] as string).normalize("NFC");
      const project = projects.get(id) ?? { id, card: null, rooms: [] };
      projects.set(id, project);
      if (idOf(name) === "project") project.card = file;
      else project.rooms.push(file);
    } else if (parts.length > 1 || !/^(readme|licen[cs]e|notes)/i.test(name))
      diagnostics.push(stray(file));
  }
  return { studio, cloths, objects, projects: [...projects.values()], diagnostics };
}
