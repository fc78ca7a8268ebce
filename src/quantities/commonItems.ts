import type { z } from "zod";
import { readRecords } from "../records/readRecords.ts";
import type { ProjectRecord, StudioRecord } from "../records/records.ts";
import type { commonItemsField } from "../records/schema/commonItems.ts";
import type { AnyKind } from "../room/furnishRoom.ts";
import { Length } from "../units/length.ts";
import type { UnitSystem } from "../units/printLength.ts";

export type CommonItem = z.output<ReturnType<typeof commonItemsField>>[number];

/** The one project and room that common items are put into; neither is ever written. */
export const COMMON_PROJECT = "common";
const COMMON_ROOM = "items";

type Usual = readonly [string, CommonItem["kind"], number, number, number?, number?];

// Common practice, no source: inserts, pads and shades in the sizes that shops keep.
const USUAL_INCHES: readonly Usual[] = [
  ["Square cushion 16", "cushion", 16, 16],
  ["Square cushion 18", "cushion", 18, 18],
  ["Square cushion 20", "cushion", 20, 20],
  ["Square cushion 22", "cushion", 22, 22],
  ["Long cushion", "cushion", 20, 12],
  ["Bolster", "bolster", 18, 7],
  ["Seat pad", "seat-pad", 16, 16, 2],
  ["Round seat pad", "round-seat-pad", 14, 14, 2],
  ["Drum lampshade", "lampshade", 12, 9],
  ["Pair of tie-backs", "tieback", 22, 4, undefined, 2],
];
const USUAL_CM: readonly Usual[] = [
  ["Square cushion 40", "cushion", 40, 40],
  ["Square cushion 45", "cushion", 45, 45],
  ["Square cushion 50", "cushion", 50, 50],
  ["Square cushion 55", "cushion", 55, 55],
  ["Long cushion", "cushion", 50, 30],
  ["Bolster", "bolster", 45, 18],
  ["Seat pad", "seat-pad", 40, 40, 5],
  ["Round seat pad", "round-seat-pad", 35, 35, 5],
  ["Drum lampshade", "lampshade", 30, 22],
  ["Pair of tie-backs", "tieback", 55, 10, undefined, 2],
];

/** The studio's own list (`common-items` in studio.md), else the usual sizes in its units: common practice, no source. */
export function commonItemsOf(studio: StudioRecord | null): {
  readonly items: readonly CommonItem[];
  readonly own: boolean;
} {
  const own = studio?.fields["common-items"];
  if (own) return { items: own, own: true };
  const units: UnitSystem = studio?.fields.units ?? "inches";
  const usual = units === "inches" ? USUAL_INCHES : USUAL_CM;
  const measure = units === "inches" ? Length.inches : Length.cm;
  return {
    own: false,
    items: usual.map(([item, kind, width, height, thickness, count]) => ({
      item,
      kind,
      size: [measure(width), measure(height)],
      ...(thickness === undefined ? {} : { thickness: measure(thickness) }),
      ...(count === undefined ? {} : { count }),
    })),
  };
}

/**
 * Common items as a project of one room without walls, each in the cloth named, read by the program's own reader so that every kind
 * works them out as it would in a room. Null where the list is empty.
 */
export function commonProject(
  items: readonly CommonItem[],
  cloth: string,
  kinds: readonly AnyKind[],
): ProjectRecord | null {
  if (items.length === 0) return null;
  const file = (path: string, text: string) => ({ path, text: `---\n${text}\n---\n` });
  const { projects } = readRecords({
    files: [
      file("studio.md", "studio: Common\nlanguage: en-GB\nunits: inches\ncurrency: USD\npaper: a3"),
      file(`cloths/${cloth}.md`, `cloth: ${quoted(cloth)}`),
      file(
        `projects/${COMMON_PROJECT}/project.md`,
        "project: Common\nclient: { name: Nobody }\nstatus: enquiry",
      ),
      file(
        `projects/${COMMON_PROJECT}/${COMMON_ROOM}.md`,
        `room: Common items\nitems:\n${items.map((item) => textOf(item, cloth)).join("\n")}`,
      ),
    ],
    present: [],
    items: kinds,
  });
  return projects[0] ?? null;
}

function textOf({ item, kind, size, thickness, count }: CommonItem, cloth: string): string {
  const [width, height] = size.map(exact) as [string, string];
  const thick = thickness ? `, thickness: ${exact(thickness)}` : "";
  const many = count ? `, count: ${count}` : "";
  const as = (key: string, rest: string) =>
    `  - { ${key}: ${quoted(item)}, cloth: ${quoted(cloth)}${many}, ${rest} }`;
  switch (kind) {
    case "cushion":
      return as("cushion", `size: ${width} x ${height}`);
    case "box-cushion":
      return as("cushion", `form: box, size: ${width} x ${height}${thick}`);
    case "bolster":
      return as("cushion", `form: bolster, size: ${width} x ${height}`);
    case "seat-pad":
      return as("seat-pad", `size: ${width} x ${height}${thick}`);
    case "round-seat-pad":
      return as("seat-pad", `shape: round, size: ${width} x ${height}${thick}`);
    case "lampshade":
      return as("lampshade", `size: ${width} x ${height}`);
    case "tieback":
      return as("tieback", `shape: straight, length: ${width}, depth: ${height}`);
  }
}

/** To a thousandth of a millimetre: far below what anyone cuts. */
function exact(length: Length): string {
  return `${length
    .toMm()
    .toFixed(3)
    .replace(/\.?0+$/, "")} mm`;
}

function quoted(text: string): string {
  return JSON.stringify(text);
}
