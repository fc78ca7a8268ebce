import { expect, test } from "vitest";
import { rollsIn } from "../../src/quantities/text/rollsIn.ts";
import { Length } from "../../src/units/length.ts";

const roll = Length.mm(10_050);
const card = { fields: { roll: { length: roll } } };

test("whole rolls are counted; what is none, or is sold by length, is not", () => {
  expect(rollsIn(Length.mm(50_250), card)).toBe("5 rolls");
  expect(rollsIn(roll, card)).toBe("1 roll");
  expect(rollsIn(Length.mm(50_000), card)).toBeNull();
  expect(rollsIn(Length.zero, card)).toBeNull();
  expect(rollsIn(roll, { fields: {} })).toBeNull();
});
