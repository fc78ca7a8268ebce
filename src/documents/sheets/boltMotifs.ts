import type { ClothQuantity } from "../../quantities/quantityTypes.ts";
import { svgNumber } from "../words/svgNumber.ts";
import type { Row } from "./boltScale.ts";
import type { LabelBox } from "./labelPlaces.ts";

const r = (n: number): string => svgNumber(n, 2);
/** Half of a lozenge along and across, on paper. */
const LOZENGE = { along: 1.5, across: 1.1 };

/** Where motifs stand in a row, each with the room of its lozenge; none where they would stand closer than they can be told apart. */
export function motifBoxes(cloth: ClothQuantity, scale: number, row: Row, y0: number): LabelBox[] {
  const width = cloth.usableWidth.toMm();
  const pattern = cloth.plan.pattern;
  const h = pattern?.horizontal?.toMm();
  if (!pattern || !h) return [];
  const v = pattern.vertical.toMm();
  if (v / scale < 4 || h / scale < 4) return [];
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
  const d = motifs
    .map(({ x, y }) => `M${r(x)} ${r(y + LOZENGE.across)}l1.5 -1.1l1.5 1.1l-1.5 1.1z`)
    .join("");
  return d === "" ? "" : `<path d="${d}" fill="#fff" stroke="#000" stroke-width=".2"/>`;
}
