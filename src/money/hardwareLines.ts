import { type Diagnostic, diagnostic, type Place } from "../diagnostics/diagnostic.ts";
import type { HardwareFields } from "../fields/itemBase.ts";
import type { ItemRecord, StudioRecord } from "../records/records.ts";
import { money, timesMoney } from "../units/money.ts";
import { markupOf } from "./clothPrice.ts";
import type { SentLine } from "./freight.ts";
import type { PricedItem } from "./purchase.ts";
import { soldBelow } from "./soldBelow.ts";
import { toMoney } from "./toMoney.ts";

/** The fields of an item that its hardware is priced from (see fields/itemBase.ts). */
interface Fields {
  readonly count?: number;
  readonly hardware?: readonly HardwareFields[];
}

/** A warning where an item is made more than once and its pole, without a count of its own, is priced once. */
function onePieceForMany(item: ItemRecord, what: string, place: Place): Diagnostic[] {
  const count = (item.fields as Fields).count ?? 1;
  if (count === 1) return [];
  return [
    diagnostic(
      place,
      "hardware-count",
      `${item.kind}: ${item.title} is made ${count} times, and its hardware (${what}) is priced once.`,
      {
        severity: "warning",
        expected: `count: ${count}`,
        hint: `Write how many in all: count: ${count}, or count: 1 where one serves them all.`,
      },
    ),
  ];
}

/** A line for each piece of hardware of an item, times its own count, and who sends it. */
export function hardwareLines(
  item: ItemRecord,
  priced: PricedItem,
  studio: StudioRecord,
  found: Diagnostic[],
): SentLine[] {
  const { currency } = studio.fields;
  return ((item.fields as Fields).hardware ?? []).map((piece, at): SentLine => {
    const place = item.place(["hardware", at]);
    const count = piece.count ?? 1;
    if (piece.count === undefined) found.push(...onePieceForMany(item, piece.what, place));
    const trade = piece.trade
      ? timesMoney(toMoney(piece.trade, currency, place, found), count)
      : money(0, currency);
    const client = piece.client
      ? timesMoney(toMoney(piece.client, currency, place, found), count)
      : timesMoney(trade, markupOf(studio, "hardware"));
    if (piece.client)
      found.push(...soldBelow(item.place(["hardware", at, "client"]), piece.what, client, trade));
    return {
      room: priced.room,
      item: priced.item,
      what: "hardware",
      label: piece.what,
      cloth: null,
      maker: null,
      phase: priced.usualPhase,
      trade,
      client,
      taxKind: "goods",
      open: !piece.trade && !piece.client,
      sentBy: { supplier: piece.supplier, byLength: false },
    };
  });
}
