import type { ClothBolt } from "../../money/bolts.ts";
import { type ClothPrice, clothPrice, unitsBought } from "../../money/clothPrice.ts";
import { keptReceipts } from "../../quantities/arrival/returned.ts";
import { lengthIn } from "../../quantities/buy.ts";
import { orderedOf } from "../../quantities/ordered.ts";
import type { ClothQuantity, TrimBuy } from "../../quantities/quantityTypes.ts";
import { lengthOrRolls } from "../../quantities/text/rollsIn.ts";
import { sharedBuyOf } from "../../quantities/together/sharedBuyOf.ts";
import { isTrim } from "../../quantities/trimBuys.ts";
import { clothWaitsFor, isUnchosen } from "../../quantities/unchosen.ts";
import { isSampled } from "../../sourcing/leadTimes.ts";
import { isOfCard, type OfCard } from "../../sourcing/needs.ts";
import { within } from "../../units/capital.ts";
import { Length } from "../../units/length.ts";
import { printMoney, timesMoney } from "../../units/money.ts";
import { printCloth } from "../../units/printLength.ts";
import type { ProjectData } from "../projectData.ts";
import { shortDate } from "../words/dates.ts";
import { type Markup, marked } from "../words/marks.ts";
import { listed } from "../words/phrases.ts";
import { dividedWords, makerName } from "./dividedCloth.ts";
import { eachMakerOnce } from "./eachMakerOnce.ts";
import { ordersWords } from "./orderedWords.ts";

/** A row of the order list: what is needed of one card, for one maker or item. */
export interface OrderRow {
  /** The supplier's key; empty where the card names none. */
  readonly supplier: string;
  /** Why it is not to be ordered, or not yet. */
  readonly wait: string;
  /** What the project's file says was ordered of the card for all who have it, in its last row; else empty. */
  readonly ordered: string;
  /** Of a cloth that several makers have, in its last row: what is ordered in all and what it costs, or how one order is divided; else empty. */
  readonly inAll: Markup;
  readonly name: string;
  readonly reference: string;
  readonly buy: Markup;
  readonly maker: string;
  readonly price: string;
  readonly sum: string;
  /** The day of the price, short. */
  readonly dated: string;
  readonly sample: string;
  readonly lot: string;
  readonly handbook: Markup;
}

type OwnRow = Omit<OrderRow, "ordered" | "inAll">;

export function titleOf(data: ProjectData, room: string, item: string): string {
  const own = data.rooms.find((r) => r.record.id === room)?.items;
  return own?.find((i) => i.record.id === item)?.record.title ?? item;
}

/** The same with its room, where the project has several: two of them may each have a bed. */
export function placeOf(data: ProjectData, room: string, item: string): string {
  const title = titleOf(data, room, item);
  const own = data.rooms.find((r) => r.record.id === room)?.record.fields.room;
  return data.rooms.length > 1 && own ? `${title}, ${within(own)}` : title;
}

/** Why an item's goods are not to be ordered yet; empty where they are. */
export function waitOf(data: ProjectData, { room, item }: { room: string; item: string }): string {
  return waits(isUnchosen(data.quantities, room, item) ? [titleOf(data, room, item)] : []);
}

function waits(titles: readonly string[]): string {
  return titles.length === 0
    ? ""
    : `Not to be ordered yet: the client has still to choose about ${listed([...new Set(titles)])}.`;
}

/** Every row of the order list: cloths as they are planned, then papers and trims. */
export function orderRows(data: ProjectData): OrderRow[] {
  const { cloths, materials, trims } = data.quantities;
  const papers = materials.filter(isOfCard).filter((m) => !isTrim(m));
  const rows = [
    ...cloths.map((c) => ({ card: c.cloth, row: clothRow(data, c) })),
    ...papers.map((m) => ({ card: m.cloth, row: paperRow(data, m) })),
    ...trims.map((t) => ({ card: t.cloth, row: trimRow(data, t) })),
  ];
  return rows.map(({ card, row }, at) => {
    const last = rows.findLastIndex((other) => other.card === card) === at;
    return {
      ...row,
      ordered: last ? orderedWords(data, card) : "",
      inAll: marked(last ? inAllWords(data, card) : ""),
    };
  });
}

function clothRow(data: ProjectData, c: ClothQuantity): OwnRow {
  // What is bought once serves all makers of a cloth together: it stands in the first row.
  const bolt = c.clientsOwn
    ? undefined
    : data.money.bolts.find((b) => b.taken && b.cloth === c.cloth);
  const shared = sharedBuyOf(data.quantities, c);
  const first = data.quantities.cloths.find((o) => o.cloth === c.cloth && !o.clientsOwn) === c;
  const { language } = data.studio.fields;
  const card = ofCard(data, c.cloth, { length: (shared ?? c).buy.length });
  const isOnce = bolt !== undefined || shared !== null;
  const sum = bolt ? printMoney(bolt.bolts, language) : card.sum;
  const why = [
    c.clientsOwn ? "The client’s own: not to be ordered. Ask whether this much is there." : "",
    waits(clothWaitsFor(data.quantities, c.cloth).map((u) => u.title)),
    c.facts.repeatUnknown
      ? "Not to be ordered yet: nothing is known of its repeat, and this may be too little."
      : "",
  ];
  return {
    ...card,
    wait: why.filter((words) => words !== "").join(" "),
    name: c.facts.name,
    buy: marked(
      bolt
        ? `${boltCountWords(bolt.boltCount, first)} ${c.buy.text} of it`
        : shared
          ? `${first ? `${shared.buy.text};` : "from the same length:"} ${c.buy.text} of it`
          : c.buy.text,
    ),
    maker: makerName(data, c.maker),
    price: bolt ? boltPrice(data, bolt) : card.price,
    sum: c.clientsOwn || (isOnce && !first) ? "" : sum,
    lot: c.lot ?? "one lot",
    handbook: marked(c.handbookWords ?? ""),
  };
}

/** The makers' cloths that are bought from one card. */
function boughtCloths(data: ProjectData, card: string): readonly ClothQuantity[] {
  const { cloths } = data.quantities;
  return cloths.filter((c) => c.cloth === card && !c.clientsOwn && !c.buy.length.isZero());
}

/** What is ordered of a cloth for all its makers; empty where one alone has it. */
function inAllWords(data: ProjectData, card: string): string {
  const all = boughtCloths(data, card);
  if (all.length < 2) return "";
  const divided = dividedWords(data, card);
  if (divided !== "") return `One order: ${divided}.`;
  const length = Length.sum(all.map((c) => c.buy.length));
  const { sum } = ofCard(data, card, { length });
  const text = lengthIn(length, (all[0] as ClothQuantity).buy.unit);
  return `In all ${text}${sum === "" ? "" : `, ${sum}`}.`;
}

/** How a cloth is ordered that is bought by the bolt. */
function boltCountWords(count: number, first: boolean): string {
  if (!first) return "from the same bolt:";
  return count === 1 ? "1 whole bolt;" : `${count} whole bolts;`;
}

/** What a yard or metre costs by the bolt. */
function boltPrice(data: ProjectData, { unitPrice, unit }: ClothBolt): string {
  return `${printMoney(unitPrice, data.studio.fields.language)} a ${unit}`;
}

function paperRow(data: ProjectData, m: OfCard): OwnRow {
  return {
    ...ofCard(data, m.cloth, { count: m.amount }),
    wait: waitOf(data, m),
    buy: marked(m.text),
    maker: makerName(data, makerOf(data, m)),
    lot: lotsOf(data, m.cloth) || "one batch",
    handbook: marked(""),
  };
}

/** A trim is bought once for all that it is sewn on, and goes to each item's maker. */
function trimRow(data: ProjectData, t: TrimBuy): OwnRow {
  const { language, units } = data.studio.fields;
  const card = ofCard(data, t.cloth, { length: t.buy.length });
  const bolt = data.money.bolts.find((b) => b.taken && b.cloth === t.cloth);
  const said = t.uses.length > 1 || !t.buy.length.equals(t.need);
  const uses = t.uses.map((use) => ({ ...use, maker: makerName(data, makerOf(data, use)) }));
  const goesTo = eachMakerOnce(uses).map(({ maker, room, item, length }) => {
    const who = [maker, placeOf(data, room, item)].filter((w) => w !== "").join(", ");
    return said ? `${who}: ${printCloth(length, units)}` : who;
  });
  return {
    ...card,
    wait: waits(clothWaitsFor(data.quantities, t.cloth).map((u) => u.title)),
    buy: marked(bolt ? `${boltCountWords(bolt.boltCount, true)} ${t.buy.text} of it` : t.buy.text),
    maker: goesTo.join("; "),
    price: bolt ? boltPrice(data, bolt) : card.price,
    sum: bolt ? printMoney(bolt.bolts, language) : card.sum,
    lot: lotsOf(data, t.cloth) || "one lot",
    handbook: marked(""),
  };
}

/** The lots of a card that came, for what is planned from no lot of its own: paper and trim. Empty where none came. */
function lotsOf({ project }: ProjectData, card: string): string {
  const own = keptReceipts(project).filter((receipt) => receipt.cloth === card);
  return listed([...new Set(own.map((receipt) => receipt.lot))]);
}

function makerOf(data: ProjectData, { room, item }: { room: string; item: string }) {
  return data.quantities.items.find((i) => i.room === room && i.item === item)?.maker ?? null;
}

/** What a card itself says: who sells it, for how much, whether its sample was approved; and what so much of it comes to. */
function ofCard(data: ProjectData, id: string, amount: Parameters<typeof unitsBought>[0]) {
  const { currency, language } = data.studio.fields;
  const card = data.records.cloths.get(id);
  const price: ClothPrice | null = card ? clothPrice(card, data.studio, currency, []) : null;
  const units = price ? unitsBought(amount, price.per, card?.fields.roll?.length ?? null) : null;
  const sample = card?.fields.sample;
  const state =
    card && !isSampled(card)
      ? ""
      : sample?.approved
        ? "approved"
        : sample?.arrived
          ? "arrived"
          : sample?.ordered
            ? "ordered"
            : "not ordered";
  return {
    supplier: card?.fields.supplier ?? "",
    name: card?.fields.cloth ?? id,
    reference: card?.fields.reference ?? "",
    price: price ? `${printMoney(price.trade, language)} a ${price.per}` : "price to come",
    sum: price && units ? printMoney(timesMoney(price.trade, units), language) : "",
    dated: card?.fields.price?.on ? shortDate(card.fields.price.on, language) : "",
    sample: state,
  };
}

/** `Ordered: 6 m on 3 December 2026, number 0417. 0.4 m more is needed: …`; empty where nothing was ordered. */
function orderedWords(data: ProjectData, card: string): string {
  const { units } = data.studio.fields;
  const found = orderedOf(card, data.project, data.quantities, data.records);
  if (!found) return "";
  if (found.isAnew) return `${ordersWords(data, card)}. It is to be ordered anew.`;
  const short = Length.zero.minus(found.over);
  const more = short.isMoreThan(Length.zero)
    ? `${lengthOrRolls(short, data.records.cloths.get(card), units)} more is needed: ask for it from the same lot.`
    : "Nothing more is to be ordered.";
  return `${ordersWords(data, card)}. ${more}`;
}
