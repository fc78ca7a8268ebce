import { expect, test } from "vitest";
import { hexOfRgb, parseHex, rgbOfHex } from "../../src/colour/hex.ts";
import { channelOfLinear, LINEAR_OF_BYTE, linearOfChannel } from "../../src/colour/linear.ts";
import { mix } from "../../src/colour/mix.ts";

test.each([
  ["#EFE3C8", "#efe3c8"],
  [" #abc ", "#aabbcc"],
  ["efe3c8", null],
  ["#efe3c", null],
  ["#efe3c80", null],
  ["", null],
  ["red", null],
])("%s is read as %s", (text, expected) => {
  expect(parseHex(text)).toBe(expected);
});

test("channels and hex are each other's inverse; out of range is clipped", () => {
  expect(rgbOfHex("#efe3c8")).toEqual([239, 227, 200]);
  expect(hexOfRgb([239, 227, 200])).toBe("#efe3c8");
  expect(hexOfRgb([-3, 254.6, 300])).toBe("#00ffff");
  expect(() => rgbOfHex("efe3c8")).toThrow(RangeError);
});

test("linear light and encoding are each other's inverse", () => {
  for (let v = 0; v < 256; v++) {
    expect(channelOfLinear(linearOfChannel(v))).toBeCloseTo(v, 3);
    expect(LINEAR_OF_BYTE[v]).toBeCloseTo(linearOfChannel(v), 6);
  }
  // IEC 61966-2-1: code 188 is the encoding nearest to half the light.
  expect(Math.round(channelOfLinear(0.5))).toBe(188);
});

test("colours mix as light does, not as codes do", () => {
  expect(
    mix([
      { hex: "#000", share: 1 },
      { hex: "#fff", share: 1 },
    ]),
  ).toBe("#bcbcbc");
  expect(
    mix([
      { hex: "#f00", share: 3 },
      { hex: "#f00", share: 2 },
    ]),
  ).toBe("#ff0000");
  expect(
    mix([
      { hex: "#f00", share: 1 },
      { hex: "#00f", share: 0 },
    ]),
  ).toBe("#ff0000");
  expect(mix([])).toBeNull();
  expect(mix([{ hex: "#f00", share: 0 }])).toBeNull();
});
