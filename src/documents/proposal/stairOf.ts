import type { TaxedLine } from "../../money/lines.ts";
import { payable } from "../../money/payable.ts";
import { type Money, money, sumMoney } from "../../units/money.ts";
import type { PictureBook } from "../pictures/pictureBook.ts";
import type { ProjectData } from "../projectData.ts";
import { soFar } from "./itemRows.ts";
import type { Stair, StairPart, StairStep } from "./stair.ts";
import { mergeParts, stairPart } from "./stairParts.ts";

/** One of the client's steps: its name, its lines, and what its bar is filled with. */
interface Step {
  readonly name: string;
  readonly lines: readonly TaxedLine[];
  readonly parts: readonly StairPart[];
}

interface Beyond {
  /** The lines of the whole project: fees, fitting, samples, discounts. */
  readonly fees: readonly TaxedLine[];
  readonly reserve: Stair["reserve"];
  readonly book: PictureBook;
  /** Sums that stand side by side, and whole ones. */
  readonly print: {
    readonly alike: (sum: Money) => string;
    readonly whole: (sum: Money) => string;
  };
}

/** The stair of a budget: a bar for each step, one for fees and fitting, one that goes back for what comes off; reserve and limit. */
export function stairOf(
  data: ProjectData,
  steps: readonly Step[],
  { fees, reserve, book, print }: Beyond,
): Stair {
  const { totals, currency } = data.money;
  const own = fees.filter((l) => l.what !== "discount");
  const parts = mergeParts(
    own.map((l) => stairPart(data, l, book)),
    currency,
  );
  const all = [
    ...steps,
    ...(parts.length > 0 ? [{ name: "Fees and fitting", lines: own, parts }] : []),
  ];
  return {
    steps: [
      ...all.map((step) => barOf(step, currency, print.alike)),
      ...backBar(fees, data, print.alike),
    ],
    reserve,
    limit: totals.budget
      ? { sum: totals.budget, words: `your limit, ${print.whole(totals.budget)}` }
      : null,
  };
}

function barOf(
  { name, lines, parts }: Step,
  currency: string,
  print: (sum: Money) => string,
): StairStep {
  const sum = sumMoney(
    parts.map((p) => p.sum),
    currency,
  );
  return { name, sum: soFar(lines, print(sum)), parts };
}

/** What comes off, as a bar that goes back; none where nothing does. */
function backBar(
  lines: readonly TaxedLine[],
  { money: { taxIncluded, currency } }: ProjectData,
  print: (sum: Money) => string,
): StairStep[] {
  const off = lines.filter((l) => l.what === "discount");
  const sum = payable(off, taxIncluded, currency);
  if (sum.minor >= 0n) return [];
  const width = money(-sum.minor, currency);
  const parts = [{ label: "Discounts", sum: width, fill: { flat: "#fff" } } as const];
  return [{ name: "Comes off", sum: soFar(off, print(sum)), parts, isBack: true }];
}
