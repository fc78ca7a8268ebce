import type { ClothQuantity } from "../../quantities/quantityTypes.ts";
import { svgNumber } from "../words/svgNumber.ts";
import type { Row } from "./boltScale.ts";
import type { LabelBox } from "./labelPlaces.ts";

const r = (n: number): string => svgNumber(n, 2);
/** Half of a lozenge along and across, on paper. */
const LOZENGE = { along: 1.5, across: 1.1 };

/** Nearer to each other on paper than this, motifs and the middles of stripes are not told apart. */
const LEAST_STEP = 4;

/**
 * How the pattern is printed through on a plan at one to `scale`: motifs as lozenges, of what has nothing to meet along it (a stripe) the middle of
 * each repeat as a line; null where they would stand too close, or there is no pattern.
 */
export function printedThrough(
  { plan, facts }: ClothQuantity,
  scale: number,
): "lozenges" | "lines" | null {
  const across = plan.pattern?.horizontal?.toMm() ?? 0;
  if (!plan.pattern || across / scale < LEAST_STEP) return null;
  if (facts.repeat?.match === "free") return "lines";
  return plan.pattern.vertical.toMm() / scale < LEAST_STEP ? null : "lozenges";
}

/** Lines along a row `longMm` on paper, through the middle of each repeat. */
export function middleLines(
  cloth: ClothQuantity,
  scale: number,
  longMm: number,
  y0: number,
): string {
  const { pattern } = cloth.plan;
  if (!pattern?.horizontal || printedThrough(cloth, scale) !== "lines") return "";
  const step = pattern.horizontal.toMm();
  let d = "";
  for (let x = pattern.motifX.toMm() % step; x <= cloth.usableWidth.toMm(); x += step)
    d += `M0 ${r(y0 + x / scale)}H${r(longMm)}`;
  return `<path d="${d}" stroke="#000" stroke-width=".18" stroke-dasharray="4 1.2 1 1.2" fill="none"/>`;
}

/** Where motifs stand in a row, each with the room of its lozenge; none where they would stand closer than they can be told apart. */
export function motifBoxes(cloth: ClothQuantity, scale: number, row: Row, y0: number): LabelBox[] {
  const width = cloth.usableWidth.toMm();
  const pattern = cloth.plan.pattern;
  const h = pattern?.horizontal?.toMm();
  if (!pattern || !h || printedThrough(cloth, scale) !== "lozenges") return [];
  const v = pattern.vertical.toMm();
  const start = (cloth.plan.starts[row.length] ?? cloth.plan.start).toMm();
  const boxes: LabelBox[] = [];
  const first = Math.floor((0 - pattern.motifX.toMm()) / h);
  for (let k = first; pattern.motifX.toMm() + k * h <= width; k++) {
    const x = pattern.motifX.toMm() + k * h;
    if (x < 0) continue;
    const shift = pattern.match === "half-drop" && k % 2 !== 0 ? v / 2 : 0;
    for (let m = Math.floor((row.from + start - shift) / v); ; m++) {
      const y = m * v + shift - start;
      if (y > row.to) break;
      if (y < row.from) continue;
      boxes.push({
        x: (y - row.from) / scale - LOZENGE.along,
        y: y0 + x / scale - LOZENGE.across,
        width: 2 * LOZENGE.along,
        height: 2 * LOZENGE.across,
      });
    }
  }
  return boxes;
}

/** The lozenges of these motifs. */
export function lozenges(motifs: readonly LabelBox[]): string {
  const { along, across } = LOZENGE;
  const d = motifs
    .map(
      ({ x, y }) =>
        `M${r(x)} ${r(y + across)}l${along} -${across}l${along} ${across}l-${along} ${across}z`,
    )
    .join("");
  return d === "" ? "" : `<path d="${d}" fill="#fff" stroke="#000" stroke-width=".2"/>`;
}
