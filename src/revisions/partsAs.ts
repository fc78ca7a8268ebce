import { itemBase } from "../fields/itemBase.ts";
import type { Placement } from "../fields/placementField.ts";
import type { ItemRecord } from "../records/records.ts";
import type { Length } from "../units/length.ts";
import { printMeasured, type UnitSystem } from "../units/printLength.ts";
import { textOf } from "./madeAs.ts";

/** What things of a project are called, by the names that its files have for them. */
export interface PartNames {
  /** A cloth, lining or trim by its card; null where there is no such card. */
  readonly cloth: (id: string) => string | null;
  /** What an item can lie on: another item of its room, or an object. */
  readonly thing: (id: string) => string;
}

type Listed = readonly Readonly<Record<string, unknown>>[];

/** Lists of an item's parts, and the key by which each part of them is called. */
const LISTS: Readonly<Record<string, string>> = { pieces: "piece", borders: "at" };

/** Keys of a part that hold several words; prices stand in none of them. */
const OF_KEYS: ReadonlySet<string> = new Set(["edge", "on"]);

/**
 * What of an item is written in several keys, in words: its place (`at`), each measured piece (`pieces/seat`) and border, its edge, what comes
 * ready with it (`hardware`), and the cloth of each part by its name. No price and no supplier, since a client reads it.
 */
export function partsAs(
  record: ItemRecord,
  units: UnitSystem,
  names: PartNames,
): Record<string, string> {
  const parts: Record<string, string> = {};
  for (const [key, value] of Object.entries(record.fields as Record<string, unknown>)) {
    if (key === record.kind || value === undefined) continue;
    if (key === "at") parts.at = placeText(value as Placement, units, names);
    else if (key === "hardware") parts.hardware = hardwareText(value as Listed);
    else if (key in LISTS) Object.assign(parts, listedParts(key, value as Listed, units, names));
    else if (OF_KEYS.has(key) && isMap(value))
      parts[key] = keysText(value, units, names).join(", ");
    // Of what every item can say the rest is the studio's, and is no cloth though it be called as one.
    else if (typeof value === "string" && !(key in itemBase)) {
      const cloth = names.cloth(value);
      if (cloth !== null) parts[key] = cloth;
    }
  }
  return Object.fromEntries(Object.entries(parts).filter(([, text]) => text !== ""));
}

function isMap(value: unknown): value is Readonly<Record<string, unknown>> {
  return Object.getPrototypeOf(value) === Object.prototype;
}

function placeText(at: Placement, units: UnitSystem, names: PartNames): string {
  const p = (length: Length): string => printMeasured(length, units);
  if (typeof at === "string") return `at ${at}`;
  if ("on" in at) return `on ${names.thing(at.on)}${at.side ? `, ${at.side}` : ""}`;
  if ("floor" in at) {
    const [west, north] = at.floor as [Length, Length];
    const facing = at.facing ? [`facing ${at.facing}`] : [];
    return [`${p(west)} from the west wall`, `${p(north)} from the north wall`, ...facing].join(
      ", ",
    );
  }
  const left = at["from-left"];
  return [
    /\bwall\b/i.test(at.wall) ? `on ${at.wall}` : `on the ${at.wall} wall`,
    ...(left ? [`${p(left)} from its left end`] : []),
    ...(at.height ? [`${p(at.height)} above the floor`] : []),
  ].join(", ");
}

function hardwareText(listed: Listed): string {
  const each = listed.map(({ what, count }) =>
    typeof count === "number" && count > 1 ? `${count} × ${what}` : String(what),
  );
  return each.length === 0 ? "" : `with ${each.join(", ")}`;
}

/** A key for each part of a list; a name that stands there again has its number. */
function listedParts(
  list: string,
  listed: Listed,
  units: UnitSystem,
  names: PartNames,
): Record<string, string> {
  const called = LISTS[list] ?? "";
  const seen = new Map<string, number>();
  return Object.fromEntries(
    listed.map((part): [string, string] => {
      const { [called]: name, ...rest } = part;
      const times = (seen.get(String(name)) ?? 0) + 1;
      seen.set(String(name), times);
      return [
        `${list}/${name}${times > 1 ? ` (${times})` : ""}`,
        keysText(rest, units, names).join(", "),
      ];
    }),
  );
}

/** `size 22″ × 20″, centred`: the size alone, and a yes as its word. */
function keysText(
  map: Readonly<Record<string, unknown>>,
  units: UnitSystem,
  names: PartNames,
): string[] {
  return Object.entries(map).flatMap(([key, value]): string[] => {
    if (value === true) return [spaced(key)];
    if (value === undefined || value === false) return [];
    const cloth = typeof value === "string" ? names.cloth(value) : null;
    const text = cloth ?? spaced(textOf(value, units) ?? "");
    if (text === "") return [];
    if (key === "count") return [`${text} of it`];
    return [key === "size" ? text : `${spaced(key)} ${text}`];
  });
}

/** A word of the file as it is read; what a person called something keeps its hyphens. */
function spaced(word: string): string {
  return word.replace(/(?<=\p{L})-(?=\p{L})/gu, " ");
}
