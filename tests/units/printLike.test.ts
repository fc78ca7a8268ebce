import { expect, test } from "vitest";
import { Length } from "../../src/units/length.ts";
import { parseLength } from "../../src/units/parseLength.ts";
import { printLike } from "../../src/units/printLike.ts";

const typed = (text: string): Length => {
  const read = parseLength(text);
  if (!read.ok) throw new Error(text);
  return read.length;
};

test.each([
  ["12' 4\"", "4″"],
  ["3 in", "4″"],
  ["2 yd", "4″"],
  ["9ft", "4″"],
  ["2.14 m", "10.2\u202fcm"],
  ["214 cm", "10.2\u202fcm"],
  ["900mm", "10.2\u202fcm"],
])("a computed length is said as %s was typed: %s", (like, said) => {
  expect(printLike(Length.inches(4), typed(like))).toBe(said);
});

test("the first that was typed counts; without one, centimetres", () => {
  const computed = Length.mm(100);
  expect(printLike(Length.inches(4), computed, null, typed('8"'))).toBe("4″");
  expect(printLike(Length.inches(4), computed)).toBe("10.2\u202fcm");
});
