import { expect, test } from "vitest";
import { rowsOf, scaleOf } from "../../src/documents/sheets/drawingRows.ts";
import { paperSize } from "../../src/drawing/renderDrawing.ts";
import type { Dimension, Drawing } from "../../src/drawing/shape.ts";

const part = (from: number, to: number, level: number): Dimension => ({
  axis: "vertical",
  from,
  to,
  side: "right",
  level,
  text: `${(to - from) / 10} cm`,
});
/** A wide pair of curtains whose short heights at the right stand beside their chains at every scale. */
const WIDE: Drawing = {
  widthMm: 3300,
  heightMm: 2700,
  shapes: [],
  dimensions: [
    part(0, 100, 1),
    part(2600, 2700, 1),
    part(2400, 2700, 3),
    part(1760, 2400, 3),
    { ...part(0, 2600, 1), side: "left", text: "260 cm finished drop" },
    { ...part(0, 2700, 2), side: "left", text: "270 cm pole to floor" },
  ],
  title: "Bay, front view",
  description: "",
};

test("what is too wide for its column at every scale is drawn where it is least so, not smallest", () => {
  const width = (scale: number) => paperSize(WIDE, { scale: 1 / scale, style: "workshop" }).widthMm;
  const all = [40, 48, 50, 60, 75, 80, 100, 120, 150, 200, 250, 300];
  const column = Math.min(...all.map(width)) - 2;
  const [row] = rowsOf([WIDE], { widthMm: column, heightMm: 150 });
  const scale = row ? scaleOf(row) : 300;
  for (const each of all) expect(width(scale)).toBeLessThanOrEqual(width(each) + 0.5);
  expect(scale).toBeLessThan(100);
});
