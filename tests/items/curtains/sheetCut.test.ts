import Fraction from "fraction.js";
import { expect, test } from "vitest";
import { curtainsAllowances } from "../../../src/items/curtains/allowances.ts";
import { makeCurtains } from "../../../src/items/curtains/pieces.ts";
import { curtainsSchema } from "../../../src/items/curtains/schema.ts";
import { curtainsSheet } from "../../../src/items/curtains/sheet.ts";
import { clothFacts, fieldsOf, length } from "../tradeContext.ts";
import { hangingContext } from "../windowContext.ts";

function sheetOf(shrinkage: Fraction | undefined, raw: Record<string, unknown> = {}) {
  const cloth = clothFacts({
    id: "print",
    name: "Print",
    usableWidth: length(`54"`),
    repeat: { up: length(`25"`), across: null, match: "straight", fromSelvedge: null },
    ...(shrinkage ? { shrinkage } : {}),
  });
  const fields = fieldsOf(curtainsSchema, {
    curtains: "Bay",
    cloth: "print",
    heading: "pinch-pleat",
    pole: `78"`,
    drop: `95"`,
    hem: `8"`,
    "heading-turn": `8"`,
    "lowest-motif": `12"`,
    ...raw,
  });
  const made = makeCurtains(fields, hangingContext(curtainsAllowances, { cloths: [cloth] }));
  const context = {
    units: "inches",
    language: "en-US",
    cloth: () => cloth,
    object: () => null,
  } as const;
  const { groups } = curtainsSheet(fields, made, context);
  return {
    made,
    lines: groups.map((g) => `${g.heading}: ${g.lines.join(" ")}`.replace(/[\u00a0\u202f]/g, " ")),
  };
}
const group = (lines: readonly string[], heading: string) =>
  lines.find((l) => l.startsWith(`${heading}:`)) ?? "";

test("what of a cut is for shrinkage is said, so that drop, heading and hem add up to it", () => {
  const { lines } = sheetOf(new Fraction(3, 100));
  // Worked by hand: 95 + 8 + 8 = 111 in; 111 ÷ 0.97 = 114.43, up to 114 1/2 in; of that 3 % is 3.435 in.
  expect(group(lines, "Cut")).toContain("at 114 1/2″");
  expect(group(lines, "Cut")).toContain("3 7/16″ of the cut is for 3 % shrinkage");
  expect(group(lines, "Cut")).not.toContain("nothing to trim");
  // The motif is as high on the cut as on the plan: (12 + 8) ÷ 0.97 = 20.62 in.
  expect(group(lines, "Match")).toContain("20 5/8″ above the cut");
});

test("without shrinkage the three add up, and nothing is said of it", () => {
  const { lines } = sheetOf(undefined);
  expect(group(lines, "Cut")).toContain("at 111″");
  expect(group(lines, "Cut")).toContain("8″ heading, 8″ hem, nothing to trim.");
  expect(group(lines, "Match")).toContain("20″ above the cut");
  expect(lines.join(" ")).not.toContain("shrinkage");
});

test("a stack that is estimated is said to be about so wide; one that was given stands as it was", () => {
  expect(group(sheetOf(undefined).lines, "Hardware")).toMatch(/stacks back to about \d+″\./);
  const said = sheetOf(undefined, { "stack-back": `25"` }).lines;
  expect(group(said, "Hardware")).toContain("stacks back to 12 1/2″.");
});
