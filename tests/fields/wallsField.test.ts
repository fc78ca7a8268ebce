import { expect, test } from "vitest";
import { wallsField } from "../../src/fields/wallsField.ts";

const field = wallsField(["walls", "ceiling"]);

test.each([
  ["walls", "walls"],
  ["Walls", "walls"],
  ["west", ["west"]],
  ["wall-a", ["wall-a"]],
  [
    ["north", "east"],
    ["north", "east"],
  ],
])("%s is read", (typed, wanted) => {
  expect(field.parse(typed)).toEqual(wanted);
});

test.each([
  ["north, east", "Write [north, east]."],
  ["wals", "Did you mean walls?"],
  ["celing", "Did you mean ceiling?"],
])("%s is refused, and it is said how to mend it", (typed, hint) => {
  const found = field.safeParse(typed);
  expect(found.success).toBe(false);
  expect(JSON.stringify(found.error)).toContain(hint);
});
