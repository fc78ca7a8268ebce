import { type Diagnostic, diagnostic } from "../diagnostics/diagnostic.ts";
import type { CutBolts } from "../quantities/text/togetherWords.ts";
import { packedParts } from "../quantities/together/buyTogether.ts";
import { Length } from "../units/length.ts";
import type { Money } from "../units/money.ts";
import { allocate } from "./allocate.ts";
import { type BoltChoice, boltChoice } from "./bolt.ts";
import { clothPrice } from "./clothPrice.ts";
import type { MoneyInput } from "./moneyInput.ts";
import type { Purchase } from "./purchase.ts";
import { toMoney } from "./toMoney.ts";

/** A cloth that has a bolt's price, with what is needed of it for the whole project. */
export interface ClothBolt extends BoltChoice {
  readonly cloth: string;
  readonly name: string;
  readonly need: Length;
  /** True where the project buys it by the bolt, or it is sold in no other way. */
  readonly taken: boolean;
  /** True where it is sold in whole bolts alone: what is needed is then bolts already. */
  readonly soldWhole: boolean;
  readonly unit: "yard" | "metre";
  /** The trade price of one unit by the bolt. */
  readonly unitPrice: Money;
  /** The bolts, and what each maker gets of every one: no length that is cut whole is split over two. */
  readonly divided: CutBolts;
}

/** Lengths bought of one cloth for all its makers together, in the order of the purchases; rolls and pieces are none. */
function lengthsOf(purchases: readonly Purchase[], cloth: string): Length[] {
  return purchases.flatMap((p) =>
    p.cloth === cloth && "length" in p.amount ? [p.amount.length] : [],
  );
}

/** The cloths that have a bolt's price: cut length against whole bolts, and whether the project buys them so. */
export function boltsOf(input: MoneyInput, currency: string, found: Diagnostic[]): ClothBolt[] {
  const asked = new Set(input.project.fields["by-the-bolt"] ?? []);
  const ids = [...new Set(input.purchases.map((p) => p.cloth))];
  return ids.flatMap((id): ClothBolt[] => {
    const cloth = input.records.cloths.get(id);
    const bolt = cloth?.fields.price?.bolt;
    const price = cloth ? clothPrice(cloth, input.studio, currency, []) : null;
    const need = Length.sum(lengthsOf(input.purchases, id));
    if (!cloth || !bolt || !price || need.isZero()) return [];
    if (price.per !== "yard" && price.per !== "metre") return [];
    const unit = price.per === "yard" ? Length.yards(1) : Length.mm(1000);
    const place = cloth.place(["price", "bolt", "trade"]);
    const whole = input.purchases.filter((p) => p.cloth === id).flatMap((p) => p.whole);
    const cut = packedParts(whole, bolt.length);
    const unitPrice = toMoney(bolt.trade, currency, place, found);
    const choice = boltChoice(
      need,
      price.trade,
      { length: bolt.length, price: unitPrice },
      unit,
      cut.length,
    );
    const divided = { length: bolt.length, count: choice.boltCount, cut };
    const soldWhole = cloth.fields.price?.["sold-by"] === "bolt";
    const taken = asked.has(id) || soldWhole;
    const sold = { need, taken, soldWhole, unit: price.per, unitPrice, divided };
    return [{ cloth: id, name: cloth.fields.cloth, ...sold, ...choice }];
  });
}

/** Cloths that are to be bought by the bolt although their card has no bolt, or that nothing is bought of. */
export function checkBolts(input: MoneyInput, bolts: readonly ClothBolt[]): Diagnostic[] {
  return (input.project.fields["by-the-bolt"] ?? []).flatMap((id, at) =>
    bolts.some((b) => b.cloth === id)
      ? []
      : [
          diagnostic(
            input.project.place(["by-the-bolt", at]),
            "bolt-unknown",
            `${input.records.cloths.get(id)?.fields.cloth ?? id} cannot be bought by the bolt.`,
            {
              severity: "warning",
              actual: id,
              hint: "Either nothing is bought of it, or its card has no price for a bolt: price: { …, bolt: { length: 30 yd, trade: 29.00 } }.",
            },
          ),
        ],
  );
}

/** The trade price of each purchase of a cloth that is bought by the bolt: the bolts' price, shared out by length. */
export function boltPrices(
  input: MoneyInput,
  bolts: readonly ClothBolt[],
): ReadonlyMap<Purchase, Money> {
  return new Map(
    bolts
      .filter((b) => b.taken)
      .flatMap((b) => {
        const mine = input.purchases.filter((p) => p.cloth === b.cloth && "length" in p.amount);
        const sums = allocate(
          b.bolts,
          lengthsOf(mine, b.cloth).map((l) => l.mm),
        );
        return mine.map((p, at): [Purchase, Money] => [p, sums[at] as Money]);
      }),
  );
}
