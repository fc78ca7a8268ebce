import { expect, test } from "vitest";
import { parseLength } from "../../src/units/parseLength.ts";

/** The length in millimetres as an exact fraction, or the fault. */
function read(text: string): string {
  const parsed = parseLength(text);
  return parsed.ok ? parsed.length.mm.toFraction() : parsed.fault;
}

// An inch is 25.4 mm exactly (International yard and pound agreement, 1959).
test('a bare fraction is a length: 1/2" is 12.7 mm', () => {
  for (const text of ['1/2"', "1/2 in", "½ in", '½"', "1/2”"]) expect(read(text)).toBe("127/10");
  expect(read('1/8"')).toBe("127/40");
  expect(read('3/2"')).toBe("381/10");
});

test("a fraction without a unit, or over nought, is no length", () => {
  expect(read("1/2")).toBe("no-unit");
  expect(read('1/0"')).toBe("not-a-number");
});
