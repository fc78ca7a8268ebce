import { readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { lightReflectance } from "../../src/colour/luminance.ts";
import { lampHeights } from "../../src/scheme/lamps.ts";
import { darkAndLight, toldApart } from "../../src/scheme/lightness.ts";
import { proportionOf } from "../../src/scheme/proportion.ts";
import { codesOf, findingOf, type MadeRoom, schemeOf } from "./roomOf.ts";

const reference = (name: string) =>
  JSON.parse(readFileSync(join(import.meta.dirname, "../reference/colour", name), "utf8"));

test("pairs that must be told apart: BS 8300-2:2018, Annex B, and Approved Document M (light-reflectance.json)", () => {
  const { pairs } = reference("light-reflectance.json").cases;
  expect(pairs.length).toBeGreaterThan(6);
  for (const pair of pairs) {
    const points = Math.abs(lightReflectance(pair.a) - lightReflectance(pair.b));
    expect(points).toBeCloseTo(pair.difference, 1);
    const told = toldApart(points);
    expect(told === "yes").toBe(pair.atLeast30);
    expect(told !== "no").toBe(pair.atLeast20);
  }
  expect(toldApart(30)).toBe("borderline");
});

test("dark and light leave out less than one part in a hundred at each end", () => {
  const area = (lrv: number, areaMm2: number) => ({ lrv, areaMm2 });
  expect(darkAndLight([])).toBeNull();
  expect(darkAndLight([area(2, 9), area(50, 982), area(99, 9)])).toEqual({ dark: 50, light: 50 });
  expect(darkAndLight([area(90, 10), area(5, 10), area(40, 80)])).toEqual({ dark: 5, light: 90 });
  // A dark sofa in a pale room is a few parts in a hundred of what is seen.
  expect(darkAndLight([area(80, 96), area(8, 4)])).toEqual({ dark: 8, light: 80 });
});

test("60, 30 and 10: the cases of colour-families.json (common practice, no source)", () => {
  const [exact, within, near, even, mono] = reference("colour-families.json").proportion.cases.map(
    (c: { areas: [number, number, number] }) => proportionOf(...c.areas),
  );
  expect([exact, within, near, even, mono]).toEqual([
    "on-the-rule",
    "on-the-rule",
    "near-the-rule",
    "even",
    "one-colour",
  ]);
});

const shares = (parts: Readonly<Record<string, number>>, room = ""): MadeRoom => ({
  room,
  cloths: {},
  seen: Object.entries(parts).map(([colour, areaMm2], at) => ({
    item: `paint-${at}`,
    colour,
    kind: "paint",
    zone: "wall" as const,
    areaMm2: areaMm2 * 1e5,
  })),
});
const THREE = ["#2f5446", "#efe4cb", "#9b4529"] as const;
const three = (a: number, b: number, c: number) => ({
  [THREE[0]]: a,
  [THREE[1]]: b,
  [THREE[2]]: c,
});

test("shares: an even split and one colour alone are pointed at; a restrained room may be of one colour", () => {
  const level = (room: MadeRoom) => findingOf(schemeOf(room), "shares-level")?.level;
  expect(level(shares(three(60, 30, 10)))).toBe("works");
  expect(level(shares(three(34, 33, 33)))).toBe("worth-a-look");
  expect(level(shares(three(92, 5, 3)))).toBe("worth-a-look");
  expect(level(shares(three(92, 5, 3), "approach: restrained"))).toBe("works");
});

test("lamps by the height at which they give light; daylight is none", () => {
  expect(lampHeights(["north light"])).toEqual([]);
  expect(lampHeights(["a brass pendant", "downlights"])).toEqual(["overhead"]);
  expect(lampHeights(["two table lamps and a floor lamp"])).toEqual(["table", "floor"]);
});

test("a room of one light level is pointed at, and named; with a second height it is not", () => {
  const lit = (light: string, more = "") =>
    schemeOf(shares(three(60, 30, 10), `light: [${light}]\n${more}`));
  expect(findingOf(lit("north light, ceiling pendant, downlights"), "one-light")?.message).toBe(
    "All the lamps stand at one level: overhead.",
  );
  expect(codesOf(lit("ceiling pendant, two table lamps"))).not.toContain("one-light");
  expect(
    codesOf(lit("ceiling pendant", "accessories:\n  - { what: candlesticks, height: table }")),
  ).not.toContain("one-light");
  expect(codesOf(lit("north light"))).not.toContain("one-light");
});
