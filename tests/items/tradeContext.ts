import { readFileSync } from "node:fs";
import Fraction from "fraction.js";
import type { z } from "zod";
import type { AllowanceTable } from "../../src/fields/allowance.ts";
import type { ClothFacts, ItemContext, ObjectFacts, WallRun } from "../../src/items/itemKind.ts";
import { Length } from "../../src/units/length.ts";
import { parseLength } from "../../src/units/parseLength.ts";
import type { UnitSystem } from "../../src/units/printLength.ts";

/** One published or practised value of tests/reference/trade/. */
export interface TradeCase {
  readonly id: string;
  readonly inputs: Readonly<Record<string, { value: never; unit: string }>>;
  readonly expected: Readonly<Record<string, { value: never; unit: string }>>;
  readonly verified: unknown;
  readonly status: string;
  readonly source: { readonly title: string } | null;
  readonly caution?: string;
}

/** A case by its id, from its file; throws where there is none, so that no check is lost in silence. */
export function tradeCase(file: string, id: string): TradeCase {
  const all = JSON.parse(
    readFileSync(new URL(`../reference/trade/${file}.json`, import.meta.url), "utf8"),
  ) as TradeCase[];
  const found = all.find((c) => c.id === id);
  if (!found) throw new Error(`No case ${id} in ${file}.json`);
  return found;
}

/** A number or list of a case. */
export function given(c: TradeCase, name: string): number {
  return (c.inputs[name] as { value: number }).value;
}
export function wanted(c: TradeCase, name: string): number {
  return (c.expected[name] as { value: number }).value;
}

export function length(text: string): Length {
  const read = parseLength(text);
  if (!read.ok) throw new Error(`${text}: ${read.fault}`);
  return read.length;
}

export function clothFacts(more: Partial<ClothFacts> & { id: string }): ClothFacts {
  return {
    name: more.id,
    type: "cloth",
    usableWidth: null,
    repeat: null,
    mayTurn: false,
    nap: false,
    roll: null,
    ...more,
  };
}

export function wallRun(
  width: string,
  height: string,
  openings: WallRun["openings"] = [],
  wall = "north",
): WallRun {
  return { wall, fromLeft: Length.zero, width: length(width), height: length(height), openings };
}

export interface ContextAsk {
  readonly units?: UnitSystem;
  readonly cloths?: readonly ClothFacts[];
  readonly objects?: readonly ObjectFacts[];
  readonly runs?: readonly WallRun[] | null;
  readonly floor?: ItemContext["floor"];
  readonly paint?: ItemContext["paint"];
  readonly host?: ObjectFacts | null;
  /** Allowances of the studio, as typed. */
  readonly allowances?: Readonly<Record<string, string>>;
}

/** An item's context from plain values; allowances as the kind declares them where the studio says nothing. */
export function contextFor(table: AllowanceTable, ask: ContextAsk = {}): ItemContext {
  const units = ask.units ?? "inches";
  const text = (name: string): string => {
    const said = ask.allowances?.[name] ?? table[name]?.usual[units];
    if (said === undefined) throw new Error(`No allowance ${name}`);
    return said;
  };
  return {
    units,
    cloth: (id) => ask.cloths?.find((c) => c.id === id) ?? null,
    object: (id) => ask.objects?.find((o) => o.id === id) ?? null,
    paint: ask.paint ?? null,
    host: ask.host ?? null,
    window: null,
    roomHeight: null,
    floor: ask.floor ?? null,
    hangsOn: null,
    isCeilingPapered: false,
    runs: () => (ask.runs === undefined ? null : ask.runs),
    length: (name) => length(text(name)),
    ratio: (name) => new Fraction(text(name)),
    count: (name) => Number(text(name)),
    place: (keyPath) => ({
      file: "room.md",
      line: 1,
      column: 1,
      keyPath: `items[0].${keyPath.join(".")}`,
    }),
  };
}

/** Reads fields through the kind's own schema, as a room file would give them. */
export function fieldsOf<S extends z.ZodType>(schema: S, raw: unknown): z.output<S> {
  const read = schema.safeParse(raw);
  if (!read.success) throw new Error(JSON.stringify(read.error.issues));
  return read.data;
}

/** In the given unit, as a binary number for comparing with a printed one. */
export function inUnit(l: Length, unit: "in" | "cm" | "m" | "yd"): number {
  const one = { in: Length.inches(1), cm: Length.cm(1), m: Length.cm(100), yd: Length.yards(1) }[
    unit
  ];
  return l.over(one).valueOf();
}
