import { expect, test } from "vitest";
import { rollsIn } from "../../src/quantities/text/rollsIn.ts";
import { Length } from "../../src/units/length.ts";

const roll = Length.mm(10_050);

test("whole rolls are counted; what is none, or is sold by length, is not", () => {
  expect(rollsIn(Length.mm(50_250), roll)).toBe("5 rolls");
  expect(rollsIn(roll, roll)).toBe("1 roll");
  expect(rollsIn(Length.mm(50_000), roll)).toBeNull();
  expect(rollsIn(Length.zero, roll)).toBeNull();
  expect(rollsIn(roll, null)).toBeNull();
});
