// The plate that `swatch --draw` writes, on cloths that are drawn here, so that the truth is known.
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import sharp from "sharp";
import { afterAll, expect, test } from "vitest";
import { measureCloth } from "../../src/cloth/measureCloth.ts";
import { clothView } from "../../src/cloth/reading/clothView.ts";
import { difference } from "../../src/colour/difference.ts";
import { hexOfRgb } from "../../src/colour/hex.ts";
import { drawMeasure } from "../../src/images/overlay/drawMeasure.ts";
import { repeatShape } from "../../src/images/overlay/drawRepeatShape.ts";
import { rulerTicks } from "../../src/images/overlay/drawRuler.ts";
import { colourSpots } from "../../src/images/overlay/drawSpots.ts";
import { latticeLines } from "../../src/images/overlay/latticeLines.ts";
import { measuredLength } from "../../src/swatches/measureText.ts";
import { type Design, discs, photograph, plain, stripes } from "../cloth/made.ts";

const PLACE = { file: "made.png", line: null, column: null, keyPath: null };
const home = mkdtempSync(join(tmpdir(), "roomcloth-plate-"));
afterAll(() => rmSync(home, { recursive: true, force: true }));

function seen(design: Design) {
  const pixels = photograph(design, { widthMm: 200, heightMm: 160, widthPx: 500, noise: 2 });
  const measure = measureCloth(pixels, 200, { place: PLACE }).value;
  const view = clothView(pixels, 200, { place: PLACE }).value;
  if (!measure || !view) throw new Error("not measured");
  return { pixels, measure, view };
}

const DISCS = discs("#efe3c8", "#3a5f4b", { across: 40, up: 50, diameter: 22, halfDrop: true });

test("the drawn columns are the repeat's: up, and across with half a drop, in pixels of the picture", () => {
  const { measure, view } = seen(DISCS);
  if (!measure.pattern.repeat) throw new Error("no repeat");
  const shape = repeatShape(measure.pattern.repeat, view.mmPerPx);
  const px = 500 / 200;
  const near = (v: number | undefined, mm: number) =>
    expect(Math.abs((v ?? Number.NaN) - mm * px)).toBeLessThan(2);
  near(shape?.up[0], 0);
  near(shape?.up[1], -50);
  near(shape?.over[0], 40);
  near(shape?.over[1], -25);
  near(shape?.right[0], 40);
  near(shape?.right[1], 0);
  const { svg, labels } = latticeLines(view, measure, (mm) => measuredLength(mm, "centimetres"));
  expect(svg).not.toContain("NaN");
  const words = labels.map((label) => label.text).join("; ");
  expect(words).toMatch(/(?:5|4\.9|5\.1) cm up/);
  expect(words).toMatch(/(?:4|3\.9|4\.1) cm across, half-drop/);
  expect(words).toMatch(/the motif, 2\.[123] cm/);
});

test("what is not sure is dashed and says so; a plain has neither columns nor bar", () => {
  const { measure, view } = seen(DISCS);
  const { repeat } = measure.pattern;
  if (!repeat) throw new Error("no repeat");
  const unsure = {
    ...measure,
    pattern: { ...measure.pattern, repeat: { ...repeat, sure: false } },
  };
  const drawn = latticeLines(view, unsure, (mm) => `${mm}`);
  expect(drawn.svg).toContain("stroke-dasharray");
  expect(drawn.labels.some((label) => label.text.includes("not sure"))).toBe(true);
  expect(latticeLines(view, measure, (mm) => `${mm}`).svg).not.toContain("stroke-dasharray");
  const bare = seen(plain("#c9b48a"));
  expect(latticeLines(bare.view, bare.measure, (mm) => `${mm}`).labels).toEqual([]);
});

test("a stripe's repeat is drawn across its bands", () => {
  const { measure, view } = seen(stripes(["#efe3c8", 18], ["#20304f", 12]));
  const words = latticeLines(view, measure, (mm) => `${mm.toFixed(0)} mm`).labels;
  expect(words.some((label) => label.text.startsWith("30 mm from band to band"))).toBe(true);
});

test("each colour is marked where the cloth shows it, clear of the labels and of each other", () => {
  const { measure, view, pixels } = seen(DISCS);
  const label = { x: 0, y: 0, width: 500, height: 120 };
  const spots = colourSpots(view, measure.colours, [label], 50);
  spots.forEach((spot, at) => {
    if (!spot) throw new Error("a colour that is not found");
    const from = (Math.floor(spot.y) * pixels.width + Math.floor(spot.x)) * 3;
    const hex = `#${[...pixels.data.subarray(from, from + 3)].map((v) => v.toString(16).padStart(2, "0")).join("")}`;
    expect(difference(hex, measure.colours[at]?.hex ?? "")).toBeLessThan(6);
    expect(spot.y).toBeGreaterThan(120);
    for (const other of spots.slice(at + 1))
      expect(Math.hypot(spot.x - (other?.x ?? 0), spot.y - (other?.y ?? 0))).toBeGreaterThan(49);
  });
  expect(colourSpots(view, [{ hex: "#ff00ff" }], [], 50)).toEqual([null]);
});

test("a colour that lies on thin lines alone is marked on one of them", () => {
  // Lines of a dark ink, hardly three pixels wide where the places are looked for, on a pale ground.
  const { view } = seen(stripes(["#efe3c8", 14], ["#536656", 2]));
  const [spot] = colourSpots(view, [{ hex: "#536656" }], [], 50);
  if (!spot) throw new Error("a colour that is not found");
  const { width, data } = view.whole;
  const from = (Math.floor(spot.y) * width + Math.floor(spot.x)) * 3;
  const [r, g, b] = [0, 1, 2].map((c) => data[from + c] as number);
  const hex = hexOfRgb([r ?? 0, g ?? 0, b ?? 0]);
  expect(difference(hex, "#536656")).toBeLessThan(difference(hex, "#efe3c8"));
});

test("rulers are true: an inch is an inch, and only whole ones bear numbers", () => {
  const { at, unit } = rulerTicks(1000, 0.254, "inches");
  expect(unit).toBe("in");
  for (const { px, number } of at) if (number !== null) expect(px).toBeCloseTo(number * 100, 6);
  expect(at.at(-1)?.number).toBe(10);
  const metric = rulerTicks(600, 1, "centimetres");
  expect(metric.at.filter((tick) => tick.number !== null).map((tick) => tick.px)).toEqual([
    0, 100, 200, 300, 400, 500, 600,
  ]);
});

test("the plate is the same twice, with words of any sort", async () => {
  const { measure, view } = seen(DISCS);
  const [one, two] = [join(home, "one.png"), join(home, "two.png")];
  await drawMeasure("<b> & fern's 1/2.jpg", view, measure, "inches", one);
  await drawMeasure("<b> & fern's 1/2.jpg", view, measure, "inches", two);
  const [first, second] = await Promise.all([
    sharp(one).raw().toBuffer(),
    sharp(two).raw().toBuffer(),
  ]);
  expect(first.equals(second)).toBe(true);
  const { width, height } = await sharp(one).metadata();
  // 900 px of picture, its ruler and margins; below it colours and words.
  expect(width).toBe(900 + 56 * 2 + 44);
  expect(height).toBeGreaterThan(720 + 300);
});
