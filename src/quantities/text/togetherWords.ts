import { Length } from "../../units/length.ts";
import { asWritten, lengthIn } from "../buy.ts";
import type { MakerPart, SharedBuy } from "../quantityTypes.ts";

/** How a maker is named in a text; of nobody yet what is said instead. */
export type MakerNamed = (maker: string) => string;

/** Whole bolts, and what is cut from each. */
export type CutBolts = NonNullable<SharedBuy["bolts"]>;

/**
 * How an order for several makers is divided: `one whole bolt of 30 m: 1.06 m to Bench, 0.63 m to Frame; 28.31 m over`, or
 * `2 m, the supplier's minimum: 0.5 m to Bench …`.
 */
export function togetherWords(shared: SharedBuy, named: MakerNamed): string {
  const { buy, parts, bolts } = shared;
  if (bolts) return boltsDivided(bolts, buy.unit, named);
  const least = buy.minimum ? ", the supplier’s minimum" : "";
  return `${buy.text}${least}: ${partsWords(parts, buy.unit, named)}${overWords(buy.length, parts, buy.unit)}`;
}

/** `2 whole bolts of 30 m: bolt 1, 20 m to Bench, 8 m to Frame; bolt 2, 20 m to Loom; 12 m over`. */
export function boltsDivided(bolts: CutBolts, unit: "yard" | "metre", named: MakerNamed): string {
  const of = bolts.count === 1 ? "one whole bolt" : `${bolts.count} whole bolts`;
  return `${of} of ${lengthIn(bolts.length, unit)}: ${cutWords(bolts, unit, named)}`;
}

/** The same without how many bolts they are. */
export function cutWords(
  { length, count, cut }: CutBolts,
  unit: "yard" | "metre",
  named: MakerNamed,
): string {
  const each = cut.map((parts, at) => {
    const which = count === 1 ? "" : `bolt ${at + 1}, `;
    return `${which}${partsWords(parts, unit, named)}`;
  });
  return `${each.join("; ")}${overWords(length.times(count), cut.flat(), unit)}`;
}

function partsWords(
  parts: readonly MakerPart[],
  unit: "yard" | "metre",
  named: MakerNamed,
): string {
  return parts
    .map(({ maker, length }) => {
      const who = maker === null ? "the maker still to be named" : named(maker);
      return `${lengthIn(length, unit)} to ${who}`;
    })
    .join(", ");
}

/** What nobody needs of it, the parts taken as they are written, rounded DOWN; silent where all is needed. */
function overWords(all: Length, parts: readonly MakerPart[], unit: "yard" | "metre"): string {
  const over = all.minus(Length.sum(parts.map(({ length }) => asWritten(length, unit))));
  const step = (unit === "yard" ? Length.yards(1) : Length.mm(1000)).dividedBy(100);
  const told = over.downTo(step);
  return !told.isMoreThan(Length.zero) ? "" : `; ${lengthIn(told, unit)} over`;
}
