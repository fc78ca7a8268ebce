import { expect, test } from "vitest";
import type { PatternKind } from "../../src/cloth/clothMeasure.ts";
import { confirmPattern } from "../../src/cloth/confirmPattern.ts";
import type { Design } from "./made.ts";
import { measured, SHOT } from "./shown.ts";

const asked = (kind: PatternKind, sure: boolean) =>
  confirmPattern({ kind, sure }, null).map(({ what }) => what);

test("what is only a guess to be a weave is asked about its repeat too: it may be a pattern seen too near", () => {
  expect(asked("textured-plain", false)).toEqual(["pattern.kind", "pattern.repeat"]);
  expect(asked("textured-plain", true)).toEqual([]);
  expect(asked("plain", true)).toEqual([]);
  expect(asked("irregular", false)).toEqual(["pattern.repeat", "pattern.kind"]);
});

// Lozenges of 205 mm of which the picture shows not one: yellow and white.
const lozenges: Design = (x, y) => {
  const [u, v] = [(x + 31) / 136 + (y + 17) / 205, (x + 31) / 136 - (y + 17) / 205];
  return (Math.floor(u) + Math.floor(v)) % 2 === 0 ? "#ecc75a" : "#f7f1e1";
};

test("a pattern of which the picture shows not one repeat is never silent about it", () => {
  const found = measured(lozenges, { ...SHOT, widthMm: 150, heightMm: 110, noise: 6 });
  expect(found?.pattern.repeat?.sure ?? false).toBe(false);
  expect(found?.confirm.map(({ what }) => what)).toContain("pattern.repeat");
});
