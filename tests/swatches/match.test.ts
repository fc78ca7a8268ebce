// What counts as near is our own; the distance itself is held against a solver in tests/cloth/paletteDistance.test.ts.
import { expect, test } from "vitest";
import { match } from "../../src/swatches/match.ts";
import { usedCloth } from "../../src/swatches/usedCloth.ts";
import { card } from "./cards.ts";

const CREAM = "#efe3c8";
const GREEN = "#3a5f4b";
const RUST = "#a5492c";

/** A cloth of the library by its colours and shares alone. */
function cloth(id: string, colours: readonly [hex: string, percent: number][], more = "") {
  const list = colours.map(([hex, share]) => `{ colour: "${hex}", share: ${share} % }`).join(", ");
  const read = card(`cloth: ${id}\ncolours: [${list}]\n${more}`);
  return { card: { ...read, id }, swatch: { ...usedCloth(read, null, null), id } };
}

const wanted = {
  colours: [
    { hex: CREAM, share: 0.7, name: "cream" },
    { hex: GREEN, share: 0.2, name: "green" },
    { hex: RUST, share: 0.1, name: "rust" },
  ],
  kind: "small-print",
};
const same = cloth("same", [
  [CREAM, 70],
  [GREEN, 20],
  [RUST, 10],
]);
const otherShares = cloth("other-shares", [
  [CREAM, 50],
  [GREEN, 30],
  [RUST, 20],
]);
const other = cloth("other", [
  ["#20304f", 80],
  ["#7d2f55", 20],
]);

test("the same colours in other proportions are near, not equal", () => {
  const [first, second, third] = match(wanted, [other, otherShares, same], "inches");
  expect(first).toMatchObject({ cloth: "same", distance: 0 });
  expect(second?.cloth).toBe("other-shares");
  expect(second?.distance).toBeGreaterThan(3);
  expect(second?.distance).toBeLessThan((third?.distance ?? 0) / 2);
  expect(second?.why).toContain("cream (70 % here, 50 % there)");
  expect(third?.why).toContain("it lacks cream, green, rust");
});

test("a remnant in hand goes before a cloth that is nearer, but not where its colours are others", () => {
  const inHand = "remnant: [{ length: 34 in }]";
  const near = cloth(
    "near-in-hand",
    [
      [CREAM, 60],
      [GREEN, 25],
      [RUST, 15],
    ],
    inHand,
  );
  const far = cloth("far-in-hand", [["#20304f", 100]], inHand);
  const found = match(wanted, [same, far, near], "inches");
  expect(found.map((each) => each.cloth)).toEqual(["near-in-hand", "same", "far-in-hand"]);
  expect(found[0]?.why).toMatch(/^in hand: 34″; like it in colour/);
  expect(found[1]?.remnant).toBeNull();
});

test("kinds are compared in words; a card without colours is left out; equal ones stand by name", () => {
  const stripe = cloth("a-stripe", [[CREAM, 100]], "kind: stripe");
  const twin = cloth("b-stripe", [[CREAM, 100]], "kind: stripe");
  const bare = cloth("bare", []);
  const found = match(wanted, [twin, bare, stripe], "inches");
  expect(found.map((each) => each.cloth)).toEqual(["a-stripe", "b-stripe"]);
  expect(found[0]?.why).toContain("stripe, not small print");
});
