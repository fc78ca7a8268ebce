import { Length } from "../../units/length.ts";
import { printLength } from "../../units/printLength.ts";
import { finestStep } from "../common/finestStep.ts";
import { girth } from "../common/skirt/girth.ts";
import type { ItemContext } from "../itemKind.ts";
import type { CushionFields } from "./schema.ts";

/** A bolster's body and ends. */
export interface Bolster {
  readonly section: "round" | "square";
  /** Body round the roll as reckoned, seams included, before it is rounded up. */
  readonly wrapExact: Length;
  /** Body as cut: length and wrap, the wrap up to 1/8 inch or a millimetre. */
  readonly body: readonly [Length, Length];
  /** Diameter (or side) of each end as cut. */
  readonly end: Length;
  /** Edge of both ends, for welt. */
  readonly edges: Length;
  /** Cord in the four long folds of a square bolster; zero else. */
  readonly foldCord: Length;
  readonly because: string;
}

/**
 * Body (length + 2 seams) by (pi x diameter + 2 seams), ends diameter + 2 seams; a square one wraps four sides, and where it is
 * corded each of its folds takes up a little more.
 */
export function bolsterOf(fields: CushionFields, context: ItemContext, seam: Length): Bolster {
  const { units } = context;
  const p = (l: Length) => printLength(l, units);
  const [length, across] = fields.size as [Length, Length];
  const section = fields.section ?? "round";
  const two = seam.times(2);
  const corded = section === "square" && fields.edge !== undefined && fields.edge !== "knife";
  const takeUp = corded ? context.length("fold-take-up") : Length.zero;
  const round = section === "round" ? girth(across) : across.times(4);
  const wrapExact = round.plus(takeUp.times(4)).plus(two);
  const step = finestStep(units);
  const how =
    section === "round"
      ? `pi × ${p(across)}`
      : `4 × ${p(across)}${corded ? ` + 4 × ${p(takeUp)} at the corded folds` : ""}`;
  return {
    section,
    wrapExact,
    body: [length.plus(two), wrapExact.upTo(step)],
    end: across.plus(two),
    edges: round.times(2),
    foldCord: corded ? length.times(4) : Length.zero,
    because: `${p(length)} + 2 × ${p(seam)} seams, by ${how} + 2 × ${p(seam)} seams`,
  };
}
