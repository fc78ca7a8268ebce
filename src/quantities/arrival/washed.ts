import type { ClothFacts } from "../../items/itemKind.ts";
import type { ProjectRecord } from "../../records/records.ts";
import type { Length } from "../../units/length.ts";
import { afterWashing } from "../../units/washing.ts";
import type { WashingLeft } from "../text/washWords.ts";
import { type ArrivedLot, lotOf } from "./receiptsFor.ts";

type Receipt = ArrivedLot["receipts"][number]["receipt"];
type Washing = NonNullable<ClothFacts["washing"]>;

/**
 * A lot of a cloth that is washed before it is cut, as it is or is expected to be after: the measures of a receipt that was not washed
 * yet, its flaws too, each less what it may lose. Of any other cloth the lot itself.
 */
export function asWashed(lot: ArrivedLot, facts: ClothFacts): ArrivedLot {
  const { washing } = facts;
  if (!washing) return lot;
  const receipts = lot.receipts.map(({ receipt, index }) => ({
    receipt: receipt.washed ? receipt : expected(receipt, washing),
    index,
  }));
  return lotOf(lot.lot, receipts);
}

function expected(receipt: Receipt, { along, across }: Washing): Receipt {
  const down = (length: Length) => afterWashing(length, along);
  const over = (length: Length) => afterWashing(length, across);
  const { width, repeat, "first-motif": motif, flaws } = receipt;
  return {
    ...receipt,
    length: down(receipt.length),
    ...(width ? { width: over(width) } : {}),
    ...(repeat ? { repeat: down(repeat) } : {}),
    ...(motif ? { "first-motif": down(motif) } : {}),
    ...(flaws
      ? {
          flaws: flaws.map((flaw) => ({
            ...flaw,
            from: down(flaw.from),
            length: down(flaw.length),
            ...(flaw["from-left"] ? { "from-left": over(flaw["from-left"]) } : {}),
            ...(flaw.width ? { width: over(flaw.width) } : {}),
          })),
        }
      : {}),
  };
}

/**
 * What is still to be done with the receipts that a plan is made on: of what was washed its repeat is measured again where anything has to
 * meet, and its width where nobody could say what it would be. Each length is asked by itself, since each is washed by itself.
 */
export function washingLeft(
  receipts: readonly number[],
  inRegister: boolean,
  { acrossUnsaid }: Washing,
  project: ProjectRecord,
): WashingLeft {
  const all = receipts.flatMap((index) => project.fields.receipts?.[index] ?? []);
  if (all.some(({ washed }) => !washed)) return "wash";
  const lacksRepeat = inRegister && all.some(({ repeat }) => !repeat);
  const lacksWidth = acrossUnsaid === true && all.some(({ width }) => !width);
  if (lacksRepeat) return lacksWidth ? "repeat and width" : "repeat";
  return lacksWidth ? "width" : null;
}
