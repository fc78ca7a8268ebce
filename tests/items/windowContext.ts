import Fraction from "fraction.js";
import type { AllowanceTable } from "../../src/fields/allowance.ts";
import type { ItemContext, WindowFacts } from "../../src/items/itemKind.ts";
import { Length } from "../../src/units/length.ts";
import { type ContextAsk, contextFor, length } from "./tradeContext.ts";

export interface WindowAsk extends ContextAsk {
  readonly window?: WindowFacts | null;
  readonly roomHeight?: string;
}

/** A window as a room file would give it. */
export function windowFacts(
  width: string,
  height: string,
  sill: string,
  recess: string | null = null,
): WindowFacts {
  return {
    name: "bay",
    wall: "north",
    width: length(width),
    height: length(height),
    sill: length(sill),
    recess: recess === null ? null : length(recess),
    fromLeft: Length.zero,
  };
}

/** The context of what hangs at a window; shares may be written with their sign. */
export function hangingContext(table: AllowanceTable, ask: WindowAsk = {}): ItemContext {
  const base = contextFor(table, ask);
  const said = (name: string) => ask.allowances?.[name] ?? table[name]?.usual[base.units] ?? "";
  return {
    ...base,
    window: ask.window ?? null,
    roomHeight: ask.roomHeight ? length(ask.roomHeight) : null,
    ratio: (name) =>
      said(name).includes("%")
        ? new Fraction(said(name).replace(/\s*%/, "")).div(100)
        : base.ratio(name),
  };
}
