import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import type { Computed } from "../site/computed.ts";
import { UsageError } from "./outcome.ts";

/** A project, or one room of it, as it is named on the command line. */
export interface Target {
  readonly project: string;
  /** `project/room`, or null for the whole project. */
  readonly room: string | null;
}

/** Reads `PROJECT` or `PROJECT/ROOM`; throws a UsageError for anything else. */
export function parseTarget(text: string): Target {
  const parts = text.replace(/\/$/, "").split("/");
  const [project = "", room] = parts;
  const odd = parts.length > 2 || parts.some((part) => part === "" || part.startsWith("."));
  if (odd) throw new UsageError(`"${text}" is neither PROJECT nor PROJECT/ROOM.`);
  return { project, room: room === undefined ? null : `${project}/${room.replace(/\.md$/, "")}` };
}

/** Throws a UsageError, naming what there is, where the studio has no such project or room. */
export function requireTarget(target: Target, computed: Computed): void {
  if (!computed.projects.includes(target.project)) {
    throw new UsageError(
      `There is no project "${target.project}". ${listOf("Projects", computed.projects)}`,
    );
  }
  if (target.room !== null && !computed.rooms.includes(target.room)) {
    const rooms = computed.rooms.filter((room) => room.startsWith(`${target.project}/`));
    throw new UsageError(`There is no room "${target.room}". ${listOf("Rooms", rooms)}`);
  }
}

/** Whether a room, `project/room`, is named by the target, alone or with its project; all are where nothing is named. */
export function holdsRoom(only: Target | null, room: string): boolean {
  return (
    only === null || (only.room === null ? room.startsWith(`${only.project}/`) : room === only.room)
  );
}

/** Whether a diagnostic stands in a file that the target uses: all but other projects' files. */
export function concerns(one: Diagnostic, only: Target | null, computed: Computed): boolean {
  if (only === null) return true;
  const project = /(?:^|[\\/])projects[\\/]([^\\/]+)[\\/]/.exec(one.file)?.[1];
  return project === undefined || project === only.project || !computed.projects.includes(project);
}

function listOf(what: string, names: readonly string[]): string {
  return names.length === 0
    ? `There are no ${what.toLowerCase()}.`
    : `${what}: ${names.join(", ")}.`;
}
