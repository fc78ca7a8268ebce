// Values: tests/reference/colour/colour-names.json (NBS Special Publication 440; centroids of RP 2911).
import { converter } from "culori";
import { expect, test } from "vitest";
import { colourName, spellColourName } from "../../src/colour/colourName.ts";
import names from "../../src/colour/nbsNames.json" with { type: "json" };
import reference from "../reference/colour/colour-names.json" with { type: "json" };

const lab65Of = converter("lab65");

test("the shipped table is the reference's", () => {
  expect(names.names).toEqual(
    reference.cases.map((c) => [c.n, c.name, c.level2, c.level1, ...c.labD65]),
  );
});

test.each(reference.spotChecks)("$srgb is $expectName", ({ srgb, expectName, n, deltaE00 }) => {
  const found = colourName(srgb);
  expect(found.name).toBe(expectName);
  expect(found.number).toBe(n);
  expect(Math.abs(found.difference - deltaE00)).toBeLessThan(0.006);
});

// Each centroid that sRGB can show names itself, where the listed value is trusted and no neighbour is as near.
const own = reference.cases.filter((c) => c.srgb !== null && c.listedAgrees);
test.each(own)("centroid $n, $name, names itself", ({ srgb, name, level2 }) => {
  const found = colourName(srgb as string);
  expect(found.sure ? found.name : found.broad).toBe(found.sure ? name : level2);
  // Not zero, since the centroid was rounded to 8 bits; a near-black step is the widest.
  expect(found.difference).toBeLessThan(0.8);
});

test("where two names are as near, no more is said than both say, and in the dictionary's words", () => {
  const known = new Set(names.names.flatMap(([, full, broad]) => [full, broad]));
  let tosses = 0;
  for (let v = 0; v < 4096; v++) {
    const hex = `#${v.toString(16).padStart(3, "0")}`;
    const found = colourName(hex);
    if (found.sure) expect(found.name).toBe(found.nearest);
    else {
      expect(known.has(found.name) || /(gray|white|black)$/.test(found.name)).toBe(true);
      // Of what is nearly gray the gray is said; culori reckons how much colour there is.
      const { a = 0, b = 0 } = lab65Of(hex) ?? {};
      const words = found.nearest.split(" ");
      if (Math.hypot(a, b) < 4.5) expect(found.name).toMatch(/(gray|white|black)$/);
      else for (const word of found.name.split(" ")) expect(words).toContain(word);
      tosses++;
    }
  }
  expect(tosses).toBeGreaterThan(0);
  expect(tosses).toBeLessThan(4096 / 2);
});

// Common practice, no source: a navy is no blue, a wine no red, tobacco no orange, ochre no yellow. Each lies between two names.
test.each([
  ["#1b253c", "dark blue"],
  ["#1a243b", "dark blue"],
  ["#1b392e", "dark green"],
  ["#302943", "dark violet"],
  ["#752e40", "dark red"],
  ["#9d6c3c", "brownish orange"],
  ["#b38934", "dark yellow"],
  ["#553b2d", "dark grayish brown"],
  ["#bb4444", "red"],
])("a dark or drab colour is not called by its hue alone: %s is %s", (hex, name) => {
  expect(colourName(hex).sure).toBe(false);
  expect(colourName(hex).name).toBe(name);
});

// Common practice, no source: a slate floor is not called blue. The hues of the dictionary's grays themselves stay said.
test.each([
  ["#585d5f", "bluish gray"],
  ["#60656a", "bluish gray"],
  ["#6b6f70", "bluish gray"],
])("what is nearly gray is called so: %s is %s", (hex, name) => {
  expect(colourName(hex).name).toBe(name);
});

// Common practice, no source: a taupe is no brown, an ivory no yellow, a charcoal no red.
test.each([
  ["#8a8378", "light brownish gray"],
  ["#f4f0e6", "yellowish white"],
  ["#5b5153", "dark reddish gray"],
  ["#aa9999", "grayish pink"],
])("the broader name of a strong colour is not given to a weak one: %s is %s", (hex, name) => {
  expect(colourName(hex).sure).toBe(false);
  expect(colourName(hex).name).toBe(name);
});

test("what has little colour is never called by a colour alone", () => {
  for (let v = 0; v < 4096; v++) {
    const hex = `#${v.toString(16).padStart(3, "0")}`;
    const { a = 0, b = 0 } = lab65Of(hex) ?? {};
    if (Math.hypot(a, b) < 8) expect(colourName(hex).name).toMatch(/gray|white|black|pale/);
  }
});

test("grey is spelled as the studio spells", () => {
  expect(spellColourName("dark grayish blue", "en-GB")).toBe("dark greyish blue");
  expect(spellColourName("light gray", "en-GB")).toBe("light grey");
  expect(spellColourName("light gray", "en-US")).toBe("light gray");
});
