import { Length } from "../../units/length.ts";
import { printLength } from "../../units/printLength.ts";
import type { Finding } from "../finding.ts";
import type { FindingInput } from "../findingInput.ts";
import { finding } from "./make.ts";

/** A rug reaches this far beyond a table at each side, for chairs that are drawn out: 24 in; sources differ, 24 to 36 in. */
export const RUG_MARGIN_MM = 24 * 25.4;
/** The middle of a picture hangs between 56 in (a broadcast note: 56 to 60 in) and 66 in (U.S. Navy training manual, 5 1/2 ft). */
export const PICTURE_LOW_MM = 56 * 25.4;
export const PICTURE_HIGH_MM = 66 * 25.4;

/** Sizes and heights: a rug that ends too near its table, a picture that hangs high or low. */
export function sizeFindings(input: FindingInput): Finding[] {
  const { say, room } = input;
  if (room.fields.approach === "free") return [];
  const size = (mm: number): string => printLength(Length.mm(Math.round(mm)), input.units);
  const rugs = input.sizes.rugs
    .filter((r) => r.leastMarginMm < RUG_MARGIN_MM)
    .map((r) =>
      finding(
        room,
        "rug-small",
        "worth-a-look",
        {
          message:
            r.leastMarginMm < 0
              ? say`${r.tableTitle} stands beyond the edge of ${r.rugTitle}.`
              : say`${r.rugTitle} reaches only ${size(r.leastMarginMm)} beyond ${r.tableTitle} at one side.`,
          reason: say`Chairs that are drawn out want about ${size(RUG_MARGIN_MM)} of rug at each side (common practice; sources differ).`,
        },
        { marginMm: r.leastMarginMm, usualMm: RUG_MARGIN_MM },
        [r.rug, r.table],
        ["items"],
      ),
    );
  const pictures = input.sizes.pictures
    .filter((p) => p.centreMm < PICTURE_LOW_MM - 1 || p.centreMm > PICTURE_HIGH_MM + 1)
    .map((p) =>
      finding(
        room,
        "picture-height",
        "worth-a-look",
        {
          message: say`The middle of ${p.title} hangs ${size(p.centreMm)} above the floor.`,
          reason: say`Eye level is ${size(PICTURE_LOW_MM)} to ${size(PICTURE_HIGH_MM)} in the sources (common practice); over a sofa or a mantel it may be otherwise.`,
        },
        { centreMm: p.centreMm },
        [p.item],
        ["items"],
      ),
    );
  return [...rugs, ...pictures];
}
