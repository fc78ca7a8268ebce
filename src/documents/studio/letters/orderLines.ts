import { type ClothPrice, clothPrice, unitsBought } from "../../../money/clothPrice.ts";
import { lengthIn } from "../../../quantities/buy.ts";
import { needOf, orderedOf } from "../../../quantities/ordered.ts";
import { rollsIn } from "../../../quantities/text/rollsIn.ts";
import { isTrim } from "../../../quantities/trimBuys.ts";
import { clothWaitsFor } from "../../../quantities/unchosen.ts";
import { hasReached } from "../../../records/hasReached.ts";
import { isOfCard } from "../../../sourcing/needs.ts";
import { Length } from "../../../units/length.ts";
import { type Money, printMoney, timesMoney } from "../../../units/money.ts";
import type { ProjectData } from "../../projectData.ts";
import { type Markup, marked } from "../../words/marks.ts";
import { ordersWords } from "../orderedWords.ts";
import { orderPieces } from "../orderPieces.ts";
import { waitOf } from "../orderRows.ts";
import { type Asked, bySupplier } from "./bySupplier.ts";

/** One line of an order. */
export interface OrderLine {
  /** The card; null of what is bought ready. */
  readonly cloth: string | null;
  readonly reference: string;
  readonly name: Markup;
  readonly amount: Markup;
  readonly price: string;
  /** What it costs the studio; null while its price is to come. */
  readonly sum: Money | null;
  /** That it is more of what was ordered before; else empty. */
  readonly note: string;
  readonly isByRoll: boolean;
}

/**
 * What is still to be ordered and can be, by supplier in the order of their names: not what was ordered already, what the client has still to
 * choose, what is the client's own, and cloth of which nobody knows the repeat. Nothing once it is being made.
 */
export function ordersBySupplier(data: ProjectData): Asked<OrderLine>[] {
  if (hasReached(data.project, "making")) return [];
  const cloths = cardsBought(data).flatMap((id) => clothLine(data, id) ?? []);
  const pieces = orderPieces(data)
    .filter((piece) => piece.state === "" && waitOf(data, piece) === "")
    .map((piece) => ({
      supplier: piece.supplierKey,
      line: {
        ...{ cloth: null, reference: "", name: piece.what, amount: marked(piece.count) },
        ...{ price: "", sum: piece.price, note: "", isByRoll: false },
      },
    }));
  return bySupplier<OrderLine>(data, [...cloths, ...pieces]);
}

/** The cards of which something is bought, each once: cloths, then papers, then trims. */
function cardsBought({ quantities }: ProjectData): string[] {
  const { cloths, materials, trims } = quantities;
  return [
    ...new Set([
      ...cloths.filter((c) => !c.clientsOwn).map((c) => c.cloth),
      ...materials.filter(isOfCard).flatMap((m) => (isTrim(m) ? [] : [m.cloth])),
      ...trims.map((t) => t.cloth),
    ]),
  ];
}

function clothLine(data: ProjectData, id: string): { supplier: string; line: OrderLine } | null {
  const { project, quantities, records, studio } = data;
  const { units, language, currency } = studio.fields;
  const card = records.cloths.get(id);
  const waits =
    clothWaitsFor(quantities, id).length > 0 ||
    quantities.cloths.some((c) => c.cloth === id && c.facts.repeatUnknown);
  const found = orderedOf(id, project, quantities, records);
  const length = found ? Length.zero.minus(found.over) : needOf(id, quantities, records);
  if (!card || waits || !length.isMoreThan(Length.zero)) return null;
  const bolt =
    found && !found.isAnew ? undefined : data.money.bolts.find((b) => b.taken && b.cloth === id);
  const price = clothPrice(card, studio, currency, []);
  const each = (sum: Money, per: string): string => `${printMoney(sum, language)} a ${per}`;
  const line: OrderLine = {
    cloth: id,
    reference: card.fields.reference ?? "",
    name: marked(card.fields.cloth),
    amount: marked(
      bolt
        ? `${bolt.boltCount} whole ${bolt.boltCount === 1 ? "bolt" : "bolts"}`
        : (rollsIn(length, card) ?? lengthIn(length, units === "inches" ? "yard" : "metre")),
    ),
    price: bolt ? each(bolt.unitPrice, bolt.unit) : price ? each(price.trade, price.per) : "",
    sum: bolt ? bolt.bolts : sumOf(price, length, card.fields.roll?.length ?? null),
    note:
      found && !found.isAnew
        ? `${ordersWords(data, id)}. This is more of it: please send it from the same lot.`
        : "",
    isByRoll: card.fields.roll !== undefined,
  };
  return { supplier: card.fields.supplier ?? "", line };
}

function sumOf(price: ClothPrice | null, length: Length, roll: Length | null): Money | null {
  const units = price ? unitsBought({ length }, price.per, roll) : null;
  return price && units ? timesMoney(price.trade, units) : null;
}
