import { ITEM_KINDS } from "../../src/items/kinds.ts";
import { shapeOf } from "../../src/records/reading/shape.ts";
import { anyKeys, type Names, pick } from "./anyValue.ts";

/** Keys that tell of the whole project and not of the thing. */
const OF_PROJECT = ["after", "touches", "phase", "maker", "options", "private"];

/** What is said mostly of a kind that would else be refused nearly always, in place of the first keys. */
const ON_WALL: Readonly<Record<string, readonly string[]>> = {
  "panelled-wall": ["at: { wall: east, from-left: 5' }", "size: '80\" x 100\"'", "panels: 3"],
};
const NEEDED_AT_WINDOW: Readonly<Record<string, readonly string[]>> = {
  curtains: ["to: floor", "pole-height: '94\"'"],
  blind: ["mount: inside"],
  pelmet: ["depth: '12\"'", "top-height: '96\"'"],
  valance: ["depth: '14\"'", "top-height: '96\"'"],
};

/**
 * An item of a kind, as it stands in a room's file, of any size, with any of its keys. What hangs hangs at a window mostly: by itself it
 * would seldom be told its width. Null where nothing came of it.
 */
export function anyItem(
  kind: string,
  title: string,
  random: () => number,
  names: Names,
): string | null {
  const schema = ITEM_KINDS.find((one) => one.kind === kind)?.schema;
  const shape = schema && shapeOf(schema);
  if (shape?.wants !== "map") return null;
  const keys = Object.fromEntries(
    Object.entries(shape.keys).filter(([key]) => key !== kind && !OF_PROJECT.includes(key)),
  );
  let lines = anyKeys(keys, random, names, pick(random, [0.1, 0.3, 0.5]));
  if (lines === null) return null;
  const hung = NEEDED_AT_WINDOW[kind];
  if (hung && random() < 0.8) {
    const said = ["at", "drop", "width", "board", ...hung.map((line) => line.split(":")[0])];
    lines = lines.filter((line) => !said.includes(line.split(":")[0]));
    lines.push(`at: ${pick(random, names["a window"] ?? [])}`, ...hung);
  }
  for (const line of ON_WALL[kind] ?? []) {
    lines = lines.filter((other) => other.split(":")[0] !== line.split(":")[0]);
    lines.push(line);
  }
  return `  - ${[`${kind}: ${title}`, ...lines].join("\n    ")}\n`;
}
