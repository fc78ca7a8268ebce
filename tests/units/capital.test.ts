import { expect, test } from "vitest";
import { within } from "../../src/units/capital.ts";

// How names stand within a sentence is the project's own rule.
test.each([
  ["Dining room", "dining room"],
  ["Bay", "bay"],
  ["Children’s room", "children’s room"],
  ["Master's bath", "master's bath"],
  ["Anna’s room", "Anna’s room"],
  ["Kit's desk", "Kit's desk"],
  ["Oak Room", "Oak Room"],
  ["TV corner", "TV corner"],
  ["Room of Ida", "Room of Ida"],
  ["éclair", "éclair"],
  ["B", "B"],
  ["C1", "C1"],
  ["W-2 left", "W-2 left"],
  ["Bay 2", "bay 2"],
  ["A 2 m runner", "a 2 m runner"],
  ["", ""],
])("%s stands as %s", (name, told) => {
  expect(within(name)).toBe(told);
});
