import type { ItemRecord, ProjectRecord } from "./records.ts";

/** The project with one item of a room replaced. */
export function withItem(project: ProjectRecord, room: string, item: ItemRecord): ProjectRecord {
  return {
    ...project,
    rooms: project.rooms.map((each) =>
      each.id === room
        ? { ...each, items: each.items.map((old) => (old.id === item.id ? item : old)) }
        : each,
    ),
  };
}

/** A value with what stands at a path of keys replaced; all else is shared with the old one. */
export function withValue(
  value: unknown,
  path: readonly (string | number)[],
  to: unknown,
): unknown {
  const [key, ...rest] = path;
  if (key === undefined) return to;
  if (Array.isArray(value))
    return value.map((each, at) => (at === key ? withValue(each, rest, to) : each));
  if (typeof value !== "object" || value === null) return value;
  const map = value as Readonly<Record<string, unknown>>;
  return { ...map, [key]: withValue(map[key], rest, to) };
}
