import type Fraction from "fraction.js";
import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import type { Amount, Rate } from "../fields/amountField.ts";
import type { PaintPrice } from "../fields/paintPriceField.ts";
import type { ItemRecord, StudioRecord } from "../records/records.ts";
import { type Money, money, timesMoney } from "../units/money.ts";
import { bareRate } from "./bareRate.ts";
import { markupOf } from "./clothPrice.ts";
import type { SentLine } from "./freight.ts";
import { hardwareLines } from "./hardwareLines.ts";
import type { PriceLine } from "./lines.ts";
import { makingWithoutRate } from "./makingWithoutRate.ts";
import type { MoneyInput } from "./moneyInput.ts";
import { paintSum } from "./paintSum.ts";
import type { PricedItem } from "./purchase.ts";
import { soldBelow } from "./soldBelow.ts";
import { toMoney } from "./toMoney.ts";

/** The fields of an item that money reads; every kind shares them (see fields/itemBase.ts). */
interface ItemPrices {
  readonly making?: Amount;
  readonly existing?: boolean;
  readonly owner?: string;
  readonly count?: number;
  /** Of paint. */
  readonly price?: readonly PaintPrice[];
}

interface Ctx {
  readonly input: MoneyInput;
  readonly studio: StudioRecord;
  readonly currency: string;
  readonly found: Diagnostic[];
}

const COUNT_OF: Readonly<Record<string, string>> = {
  item: "item",
  width: "width",
  drop: "drop",
  yard: "yard",
  metre: "metre",
  roll: "roll",
  "square-metre": "square-metre",
  "square-foot": "square-foot",
};

/** The rate of a maker for a kind of item, or null. */
export function rateFor(studio: StudioRecord, maker: string | null, kind: string): Rate | null {
  return (maker ? studio.fields.makers?.[maker]?.rates?.[kind] : undefined) ?? null;
}

/** The first unit that the making of an item can be counted by; an item itself always can. */
function byWhat({ makingCounts }: PricedItem): string {
  const units = Object.entries(COUNT_OF).filter(([, count]) => makingCounts[count] !== undefined);
  return (units.find(([unit]) => unit === "item") ?? units[0])?.[0] ?? "item";
}

function making(item: ItemRecord, priced: PricedItem, ctx: Ctx): PriceLine[] {
  const { currency, found, studio } = ctx;
  const fields = item.fields as ItemPrices;
  if (!priced.needsMaking) return [];
  const rate = rateFor(studio, priced.maker, priced.kind);
  const shared = {
    room: priced.room,
    item: priced.item,
    what: "making" as const,
    cloth: null,
    maker: priced.maker,
    phase: priced.usualPhase,
    taxKind: "services" as const,
    label: "Making",
  };
  const line = (trade: Money): PriceLine[] => [
    {
      ...shared,
      trade,
      client: timesMoney(trade, markupOf(studio, "making")),
      open: false,
    },
  ];
  if (fields.making) return line(toMoney(fields.making, currency, item.place(["making"]), found));
  const count: Fraction | undefined = rate
    ? priced.makingCounts[COUNT_OF[rate.per] ?? ""]
    : undefined;
  if (rate && count) {
    const place = priced.maker
      ? studio.place(["makers", priced.maker, "rates", priced.kind])
      : item.place([]);
    found.push(...bareRate(rate, priced, place, found));
    return line(timesMoney(toMoney(rate, currency, place, found), count));
  }
  found.push(makingWithoutRate(item, priced, rate, byWhat(priced), studio));
  return [
    {
      ...shared,
      trade: money(0, currency),
      client: money(0, currency),
      open: true,
    },
  ];
}

function paint(item: ItemRecord, priced: PricedItem, ctx: Ctx): PriceLine[] {
  const { currency, found, studio } = ctx;
  if (priced.paint.length === 0) return [];
  const own = (item.fields as ItemPrices).price;
  const place = own ? item.place(["price"]) : studio.place(["paint", "price"]);
  const prices = (own ?? studio.fields.paint?.price ?? []).map((p) => ({
    per: p.per,
    ...(p.litres ? { litres: p.litres } : {}),
    sum: toMoney(p, currency, place, found),
  }));
  const trade = paintSum(priced.paint, prices, currency);
  const shared = {
    room: priced.room,
    item: priced.item,
    what: "paint" as const,
    label: "Paint",
    cloth: null,
    maker: null,
    phase: priced.usualPhase,
    taxKind: "goods" as const,
  };
  if (trade === null)
    return [
      {
        ...shared,
        trade: money(0, currency),
        client: money(0, currency),
        open: true,
      },
    ];
  return [
    {
      ...shared,
      trade,
      client: timesMoney(trade, markupOf(studio, "paint")),
      open: false,
    },
  ];
}

/** An object that is bought (not the client's own, not there already) at its card's price, as many as the room has. */
function object(item: ItemRecord, priced: PricedItem, ctx: Ctx): SentLine[] {
  const { currency, found, input, studio } = ctx;
  const fields = item.fields as ItemPrices & { object?: string };
  if (priced.kind !== "object" || !fields.object) return [];
  const card = input.records.objects.get(fields.object);
  if (
    !card ||
    fields.existing ||
    card.fields.owner === "client" ||
    card.fields.stays ||
    !card.fields.price
  )
    return [];
  const count = fields.count ?? 1;
  const trade = card.fields.price.trade
    ? toMoney(card.fields.price.trade, currency, card.place(["price", "trade"]), found)
    : money(0, currency);
  const client = card.fields.price.client
    ? toMoney(card.fields.price.client, currency, card.place(["price", "client"]), found)
    : timesMoney(trade, markupOf(studio, "objects"));
  if (card.fields.price.client)
    found.push(...soldBelow(card.place(["price", "client"]), card.fields.object, client, trade));
  return [
    {
      room: priced.room,
      item: priced.item,
      what: "object",
      label: card.fields.object,
      cloth: null,
      maker: null,
      phase: priced.usualPhase,
      trade: timesMoney(trade, count),
      client: timesMoney(client, count),
      taxKind: "goods",
      open: false,
      sentBy: { supplier: card.fields.supplier, byLength: false },
    },
  ];
}

/** The lines that belong to one item apart from its cloth: making at the maker's rate, hardware, paint, and the object itself. */
export function itemLines(input: MoneyInput, currency: string, found: Diagnostic[]): SentLine[] {
  const { studio } = input;
  const ctx: Ctx = { input, studio, currency, found };
  return input.items.flatMap((priced) => {
    const item = input.project.rooms
      .find((r) => r.id === priced.room)
      ?.items.find((i) => i.id === priced.item);
    return item
      ? [
          ...making(item, priced, ctx),
          ...hardwareLines(item, priced, studio, found),
          ...paint(item, priced, ctx),
          ...object(item, priced, ctx),
        ]
      : [];
  });
}
