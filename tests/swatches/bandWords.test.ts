import { expect, test } from "vitest";
import type { MeasuredPattern } from "../../src/cloth/clothMeasure.ts";
import { patternFacts } from "../../src/swatches/measureText.ts";
import { measure } from "./cards.ts";

const CHECK: MeasuredPattern = { ...measure({}).pattern, kind: "check", motifMm: null };
const words = (pattern: MeasuredPattern) =>
  patternFacts(pattern, "centimetres")
    .filter(({ what }) => what.startsWith("bands"))
    .map(({ what, value }) => `${what}: ${value}`);

const bottle = { hex: "#335444", widthMm: 24 };
const cream = { hex: "#eee4cd", widthMm: 8 };

test("each way of a check is a line, its bands in their order by the names of their colours", () => {
  const bands = [
    { directionDeg: 90, bands: [bottle, cream] },
    { directionDeg: 0, bands: [cream, bottle] },
  ];
  expect(words({ ...CHECK, bands })).toEqual([
    "bands up and down: dark green 2.4 cm, yellowish white 0.8 cm",
    "bands across: yellowish white 0.8 cm, dark green 2.4 cm",
  ]);
});

test("two colours of one name are told apart", () => {
  const other = { hex: "#345545", widthMm: 10 };
  const bands = [{ directionDeg: 90, bands: [bottle, cream, other] }];
  expect(words({ ...CHECK, kind: "stripe", bands })).toEqual([
    "bands: dark green #335444 2.4 cm, yellowish white 0.8 cm, dark green #345545 1 cm",
  ]);
});

test("where the order is not known no line is made up", () => {
  expect(words(CHECK)).toEqual([]);
});
