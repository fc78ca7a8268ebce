import { expect, test } from "vitest";
import { curtainsAllowances } from "../../src/items/curtains/allowances.ts";
import { makeCurtains } from "../../src/items/curtains/pieces.ts";
import { curtainsSchema } from "../../src/items/curtains/schema.ts";
import { itemWorking } from "../../src/quantities/text/itemWorking.ts";
import { clothFacts, fieldsOf, length } from "./tradeContext.ts";
import { hangingContext } from "./windowContext.ts";

/** Two widths of 54 in a curtain: flat 107 in, hemmed 103 in; the drop 74 in. */
function braid(where: string, panels = "pair") {
  const fields = fieldsOf(curtainsSchema, {
    curtains: "Bay",
    cloth: "print",
    heading: "pencil-pleat",
    pole: panels === "pair" ? '85"' : '40"',
    drop: '74"',
    return: '0"',
    overlap: '0"',
    panels,
    edge: { trim: "flax-braid", where },
  });
  const print = clothFacts({ id: "print", usableWidth: length('54"') });
  const made = makeCurtains(fields, hangingContext(curtainsAllowances, { cloths: [print] }));
  return itemWorking(made)
    .filter((line) => line.what === "flax-braid")
    .map(({ sum, result, rounded }) =>
      `${sum} | ${result} | ${rounded}`.replace(/[\u00a0\u202f]/g, " "),
    );
}

// Along what is sewn, and a turning at both ends of each run (common practice, no source): reckoned with a pencil.
test("the length of a trim is written out, as all else that is paid for", () => {
  expect(braid("leading")).toEqual([
    "2 × (74″ leading edge + 2″ for its ends) = 152″ | 4 1/4 yd | up to 1/4 yd",
  ]);
  expect(braid("hem")).toEqual(["2 × (103″ hem + 2″ for its ends) = 210″ | 6 yd | up to 1/4 yd"]);
  expect(braid("all-round")).toEqual([
    "2 × (2 × 74″ sides + 103″ hem + 2″ for its ends) = 506″ | 14 1/4 yd | up to 1/4 yd",
  ]);
  expect(braid("leading", "single")).toEqual([
    "74″ leading edge + 2″ for its ends = 76″ | 2 1/4 yd | up to 1/4 yd",
  ]);
});
