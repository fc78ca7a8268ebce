import type { WorkingLine } from "../../items/itemKind.ts";
import { Length } from "../../units/length.ts";
import { bought, isShort, partOf, type Sale, soldAs } from "../buy.ts";
import { TO_BUY } from "../clothQuantity.ts";
import type { ClothQuantity, MakerPart, SharedBuy } from "../quantityTypes.ts";
import { packWhole } from "./packWhole.ts";

/**
 * Buys a cloth that several makers cut once for all of them where that is less than what each by itself would come to: one order, in one
 * lot, delivered to the studio or to one maker and divided (common practice, no source). Whole bolts are packed with the makers' lengths,
 * each with its own spare and none split over two; a minimum is that of the sum; the step rounds each maker's length, since each is cut
 * off for itself. The client's own cloth is left out. Gives the cloths with what each maker then gets, and what is bought.
 */
export function buyTogether(alone: readonly ClothQuantity[]): {
  readonly cloths: readonly ClothQuantity[];
  readonly together: readonly SharedBuy[];
} {
  const ids = [...new Set(alone.map(({ cloth }) => cloth))];
  const together = ids.flatMap((id) => {
    const mine = alone.filter((each) => each.cloth === id && isBought(each));
    return mine.length > 1 ? sharedBuy(mine) : [];
  });
  const cloths = alone.map((each): ClothQuantity => {
    const shared = together.find(({ cloth }) => cloth === each.cloth);
    if (!shared || !isBought(each)) return each;
    const buy = partOf(each.needed, each.sale);
    const working = each.working.map((line) =>
      line.what === TO_BUY ? partLine(line, buy.text, buy.step, shared, each.sale) : line,
    );
    return { ...each, buy, working };
  });
  return { cloths, together };
}

function isBought({ clientsOwn, needed }: ClothQuantity): boolean {
  return !clientsOwn && !needed.need.isZero();
}

/** What is cut off whole for one maker: its plan's lengths, each with its spare, and what is only estimated. */
export function wholeLengths({ needed }: ClothQuantity): readonly Length[] {
  return [...needed.lengths, ...needed.estimates];
}

function sharedBuy(mine: readonly ClothQuantity[]): SharedBuy[] {
  const { cloth, facts, sale } = mine[0] as ClothQuantity;
  const parts = mine.map(
    (each): MakerPart => ({ maker: each.maker, length: partOf(each.needed, sale).length }),
  );
  const sum = Length.sum(parts.map(({ length }) => length));
  const bolts = sale.wholeOf === "bolt" ? boltsFor(mine, sale) : null;
  const length = bolts
    ? bolts.length.times(bolts.count)
    : isShort(sum, sale)
      ? soldAs(sum, sale)
      : sum;
  const separately = Length.sum(mine.map(({ buy }) => buy.length));
  if (!length.isLessThan(separately)) return [];
  const buy = bought(length, sale, isShort(sum, sale));
  return [{ cloth, name: facts.name, buy, parts, bolts, separately }];
}

function boltsFor(mine: readonly ClothQuantity[], sale: Sale): NonNullable<SharedBuy["bolts"]> {
  const all = mine.flatMap((each) =>
    wholeLengths(each).map((length): MakerPart => ({ maker: each.maker, length })),
  );
  const cut = packedParts(all, sale.step);
  const least = sale.least ? Number(sale.least.over(sale.step).ceil().valueOf()) : 0;
  return { length: sale.step, count: Math.max(cut.length, least), cut };
}

/** Makers' lengths packed whole into bolts; what one maker gets of a bolt in several lengths is named once. */
export function packedParts(
  all: readonly MakerPart[],
  bolt: Length,
): readonly (readonly MakerPart[])[] {
  const lengths = all.map(({ length }) => length);
  return packWhole(lengths, bolt).map((onBolt) => {
    const own = onBolt.map(({ at, length }) => ({ maker: (all[at] as MakerPart).maker, length }));
    return [...new Set(own.map(({ maker }) => maker))].map((maker) => ({
      maker,
      length: Length.sum(own.filter((each) => each.maker === maker).map(({ length }) => length)),
    }));
  });
}

/** The last line of a maker's working: what it gets, and that this is its part of one purchase. */
function partLine(
  line: WorkingLine,
  result: string,
  step: string,
  { buy, bolts }: SharedBuy,
  sale: Sale,
): WorkingLine {
  const cut = sale.wholeOf === "bolt" ? "cut off as needed" : `up to ${step}`;
  const from = bolts ? buy.step : buy.text;
  return { ...line, result, rounded: `${cut}; its part of one order for all makers, ${from}` };
}
