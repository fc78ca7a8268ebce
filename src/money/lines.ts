import { type Money, sumMoney } from "../units/money.ts";
import type { TaxKind } from "./tax.ts";

/** What a line of the price is for. */
export type LineKind =
  | "cloth"
  | "wallcovering"
  | "lining"
  | "trim"
  | "making"
  | "hardware"
  | "paint"
  | "object"
  | "freight"
  | "sample"
  | "fee"
  | "discount"
  | "reserve"
  | "reserve-used";

/** A priced line before tax. Trade is what the studio pays, client what it charges. */
export interface PriceLine {
  readonly room: string | null;
  readonly item: string | null;
  readonly what: LineKind;
  /** In words, for the proposal: the cloth's name, "Making", the fee. */
  readonly label: string;
  /** The card that it buys, or null. */
  readonly cloth: string | null;
  /** The maker who is paid, or null. */
  readonly maker: string | null;
  /** Null for what belongs to the whole project. */
  readonly phase: number | null;
  readonly trade: Money;
  readonly client: Money;
  readonly taxKind: TaxKind;
  /** True where a price is not known yet: the line stands at nothing and is marked so. */
  readonly open: boolean;
}

/** A line of the whole project: of no room, no maker and no phase; its price known. */
export function wholeLine(
  what: LineKind,
  label: string,
  trade: Money,
  client: Money,
  taxKind: TaxKind,
): PriceLine {
  return {
    room: null,
    item: null,
    what,
    label,
    cloth: null,
    maker: null,
    phase: null,
    trade,
    client,
    taxKind,
    open: false,
  };
}

/** What the client pays for some lines before tax. */
export function clientSum(lines: readonly PriceLine[], currency: string): Money {
  return sumMoney(
    lines.map((l) => l.client),
    currency,
  );
}

export interface TaxedLine extends PriceLine {
  readonly tax: Money;
  /** True while the client has still to choose how its item is made: it is reckoned as drawn, and not ordered. */
  readonly unchosen: boolean;
}
