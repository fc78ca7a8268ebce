import type { ProjectRecord } from "../records/records.ts";
import type { InstalmentAsked } from "./instalments.ts";

/** The instalments as the project's file writes them, each with its place. */
export function instalmentsAsked(project: ProjectRecord): InstalmentAsked[] {
  return (project.fields.instalments ?? []).flatMap((one, at): InstalmentAsked[] => {
    const name = (["deposit", "interim", "balance"] as const).find((n) => one[n] !== undefined);
    const part = name ? one[name] : undefined;
    if (!name || part === undefined) return [];
    return [{ name, part, due: one.due, place: project.place(["instalments", at, name]) }];
  });
}
