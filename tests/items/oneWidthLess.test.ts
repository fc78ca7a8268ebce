import Fraction from "fraction.js";
import { expect, test } from "vitest";
import { oneWidthLess } from "../../src/items/common/join/oneWidthLess.ts";
import { valanceKind } from "../../src/items/valance/kind.ts";
import { bedSkirt, cloth, coverlet, tableSkirt, throwOver } from "./bedTableMade.ts";
import { contextFor, fieldsOf, length } from "./tradeContext.ts";

const CM = { units: "centimetres" } as const;
const about = (made: { questions: readonly string[] }, what: RegExp) =>
  made.questions.map((q) => q.replace(/\s/g, " ")).filter((q) => what.test(q));

// Arithmetic by hand; that so little is asked about is common practice, no source.

test("a skirt that misses its fullness by a hair with one width less is asked about", () => {
  // Round a table of 106.5 cm: 334.6 x 2 + 4 = 673.2; five widths of 137 join to 673, 0.2 short: 1.99 times full.
  const skirt = tableSkirt(
    { form: "round", table: "106.5 cm x 106.5 cm x 75 cm" },
    CM,
    cloth("137 cm"),
  );
  expect(about(skirt, /one width less/)).toEqual([
    "With 5 widths of Print the skirt is 1.99 times full, where 2 is wanted: is one width less better?",
  ]);
  // 10 cm more round would need 62.8 + 0.2 more: 63 / 397 is over a twentieth of 2 short.
  const wide = tableSkirt(
    { form: "round", table: "126.5 cm x 126.5 cm x 75 cm" },
    CM,
    cloth("137 cm"),
  );
  expect(about(wide, /one width less/)).toEqual([]);
});

test("of a skirt in pieces it is said which, and a tailored one is never asked so", () => {
  // Of 2 1/2 widths of 56: 69 x 2 + 2 = 140 flat, 166 with three widths, 111 with two; 82: 166 flat, four widths; 55 x 2 + 2 = 112: 111.
  const made = bedSkirt(
    { bed: '55" x 69" x 25"', drop: '14"', "split-corners": "yes", sides: ["left", "foot"] },
    {},
    cloth('56"'),
  );
  expect(about(made, /one width less/)).toEqual([
    "With 2 widths of Print the skirt, foot, is 1.98 times full, where 2 is wanted: is one width less better?",
  ]);
  const flat = bedSkirt(
    { bed: '55" x 111" x 25"', drop: '14"', style: "tailored", sides: ["left"] },
    {},
    cloth('56"'),
  );
  expect(about(flat, /one width less/)).toEqual([]);
});

test("the limit is a twentieth of the fullness", () => {
  const ask = {
    piece: "skirt",
    cloth: "Print",
    widths: 4,
    flat: length('200"'),
    run: length('100"'),
    fullness: new Fraction(2),
  };
  expect(oneWidthLess({ ...ask, joined: length('190"') })).toContain("With 3 widths");
  expect(oneWidthLess({ ...ask, joined: length('189"') })).toBeNull();
  expect(oneWidthLess({ ...ask, widths: 1, joined: length('199"') })).toBeNull();
});

test("a valance in four widths for less than four inches is asked about", () => {
  const print = cloth('54"');
  const fields = fieldsOf(valanceKind.schema, {
    valance: "Slit",
    cloth: "print",
    heading: "pinch-pleat",
    board: '53 1/4"',
    return: '5 1/2"',
    depth: '15"',
    "top-height": '96"',
  }) as never;
  const made = valanceKind.make(fields, contextFor(valanceKind.allowances, { cloths: [print] }));
  // 64 1/4 x 2.5 + 3 = 163 5/8; three widths join to 160: 3 5/8 / 64 1/4 = 0.056 less than 2.5.
  expect(about(made, /one width less/)).toEqual([
    "With 3 widths of Print the valance is 2.44 times full, where 2.5 is wanted: is one width less better?",
  ]);
});

test("a flat piece joined for a centimetre is asked about, one that is well over its cloth is not", () => {
  const plain = cloth("137 cm");
  // 132 cm and two hems of 3 cm: 138 of 137.
  expect(about(throwOver({ size: "132 cm x 180 cm" }, CM, plain), /needs no join/)).toEqual([
    "As cut the throw is 1 cm wider than Print: made so much narrower, or with narrower turnings, it needs no join and a width less. Is that better?",
  ]);
  expect(about(throwOver({ size: "150 cm x 180 cm" }, CM, plain), /needs no join/)).toEqual([]);
  expect(about(throwOver({ size: "131 cm x 180 cm" }, CM, plain), /needs no join/)).toEqual([]);
  const bed = { bed: "137 cm x 190 cm x 60 cm", drop: "40 cm" };
  expect(about(coverlet(bed, CM, plain), /needs no join/)).toEqual([]);
});
