import { expect, test } from "vitest";
import { exactSheet } from "../../src/press/exactSheet.ts";

// ISO 216: A3 297 x 420 mm, A4 210 x 297 mm. ANSI: 11 x 17 in and 8.5 x 11 in. Points of 1/72 in.
test("a rounded page is the sheet that it is meant to be, upright or lying; any other stays", () => {
  const sizes = [
    [1191.12, 841.92, (420 * 72) / 25.4, (297 * 72) / 25.4],
    [595.92, 842.88, (210 * 72) / 25.4, (297 * 72) / 25.4],
    [1224, 792, 1224, 792],
    [612, 792, 612, 792],
  ] as const;
  for (const [width, height, exactWidth, exactHeight] of sizes) {
    const sheet = exactSheet(width, height);
    expect(sheet?.width).toBeCloseTo(exactWidth, 9);
    expect(sheet?.height).toBeCloseTo(exactHeight, 9);
  }
  expect(exactSheet(600, 792)).toBeNull();
});
