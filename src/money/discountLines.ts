import Fraction from "fraction.js";
import { type Diagnostic, diagnostic } from "../diagnostics/diagnostic.ts";
import type { Amount } from "../fields/amountField.ts";
import type { ProjectRecord } from "../records/records.ts";
import { compareMoney, type Money, money, subtractMoney, timesMoney } from "../units/money.ts";
import { allocate } from "./allocate.ts";
import { counts } from "./feeLines.ts";
import { clientSum, type PriceLine, wholeLine } from "./lines.ts";
import type { TaxKind, TaxRates } from "./tax.ts";
import { toMoney } from "./toMoney.ts";

type Discount = NonNullable<ProjectRecord["fields"]["discounts"]>[number];

interface DiscountContext {
  readonly project: ProjectRecord;
  /** All that is bought and made. */
  readonly lines: readonly PriceLine[];
  readonly rates: TaxRates;
  readonly currency: string;
  readonly found: Diagnostic[];
}

/** What comes off, above nothing; null, with what is wrong at its line, where that is not said or more than there is. */
function offOf(
  { what, share, amount }: Discount,
  at: number,
  { base, left }: { readonly base: Money; readonly left: Money },
  { project, currency, found }: DiscountContext,
): Money | null {
  const fault = (key: readonly string[], code: string, message: string, hint: string): null => {
    found.push(diagnostic(project.place(["discounts", at, ...key]), code, message, { hint }));
    return null;
  };
  const how = "Write share: 5 %, or amount: 120.00.";
  if (share && amount)
    return fault(["amount"], "discount-twice", `For “${what}” a share and a sum are written.`, how);
  if (!share && !amount)
    return fault(
      [],
      "discount-of-nothing",
      `It is not said how much comes off for “${what}”.`,
      how,
    );
  const key = share ? "share" : "amount";
  const place = project.place(["discounts", at, key]);
  const off = share ? timesMoney(base, share) : toMoney(amount as Amount, currency, place, found);
  if (compareMoney(off, base) <= 0 && compareMoney(off, left) <= 0) return off;
  return fault(
    [key],
    "discount-of-more-than-all",
    `“${what}” takes off more than that of which it is taken comes to.`,
    "Look at the figure, at of: off what it comes, and at what comes off before it.",
  );
}

/** Goods and services apart where they are taxed apart; else as what most of it is. */
function kindsOf(base: readonly PriceLine[], { rates, currency }: DiscountContext) {
  const kinds = (["goods", "services", "none"] as const).flatMap((kind) => {
    const sum = clientSum(
      base.filter((l) => l.taxKind === kind),
      currency,
    );
    return sum.minor > 0n ? [{ kind, sum }] : [];
  });
  const rateOf = (kind: TaxKind): Fraction => (kind === "none" ? new Fraction(0) : rates[kind]);
  const [first, ...others] = kinds.toSorted((a, b) => compareMoney(b.sum, a.sum));
  const isAlike = first && others.every(({ kind }) => rateOf(kind).equals(rateOf(first.kind)));
  return isAlike ? [first] : kinds;
}

const OFF: Readonly<Record<TaxKind, string>> = {
  goods: ", off goods",
  services: ", off work",
  none: ", off what is not taxed",
};

/**
 * What comes off the client's prices, as lines below nothing: a share of the prices before tax, rounded to the nearest minor unit, or a
 * sum. Where goods and services are taxed differently it is shared out over them by what they come to, a line each, so that each
 * kind's tax is that of the lowered price. The studio pays as much as before. Nothing while nothing is priced.
 */
export function discountLines(context: DiscountContext): PriceLine[] {
  const { project, lines, currency } = context;
  let left = clientSum(lines, currency);
  return (project.fields.discounts ?? []).flatMap((discount, at): PriceLine[] => {
    const base = lines.filter((l) => counts(l, discount.of));
    const sum = clientSum(base, currency);
    const open = base.some((l) => l.open);
    // A sum off what is not priced yet cannot be held against it.
    const isUnknown = sum.minor === 0n && open;
    const off = isUnknown ? money(0, currency) : offOf(discount, at, { base: sum, left }, context);
    if (off === null) return [];
    left = subtractMoney(left, off);
    const kinds = kindsOf(base, context);
    const parts = allocate(
      off,
      kinds.map((k) => new Fraction(k.sum.minor, 1n)),
    );
    return kinds.map(
      ({ kind }, n): PriceLine => ({
        ...wholeLine(
          "discount",
          `${discount.what}${kinds.length > 1 ? OFF[kind] : ""}`,
          money(0, currency),
          subtractMoney(money(0, currency), parts[n] as Money),
          kind,
        ),
        open: discount.share !== undefined && open,
      }),
    );
  });
}
