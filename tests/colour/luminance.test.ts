// Values: tests/reference/colour/light-reflectance.json (IEC 61966-2-1, CIE 15) and wcag-contrast.json (WCAG 2.2).
import { expect, test } from "vitest";
import { contrastRatio, readableInk, relativeLuminance } from "../../src/colour/contrast.ts";
import { labD65Of } from "../../src/colour/labD65.ts";
import {
  greyOf,
  lightness,
  lightReflectance,
  luminanceOfLightness,
} from "../../src/colour/luminance.ts";
import lrv from "../reference/colour/light-reflectance.json" with { type: "json" };
import wcag from "../reference/colour/wcag-contrast.json" with { type: "json" };

test.each(lrv.cases.luminance)("light reflectance of $srgb", ({ srgb, Y, Lstar, lrv: whole }) => {
  expect(Math.abs(lightReflectance(srgb) - Y)).toBeLessThanOrEqual(0.0006);
  expect(Math.round(lightReflectance(srgb))).toBe(whole);
  expect(Math.abs(lightness(srgb) - Lstar)).toBeLessThanOrEqual(0.0006);
  expect(lightness(srgb)).toBeCloseTo(labD65Of(srgb)[0], 6);
});

test.each(lrv.cases.lstarToLrv)("L* $Lstar is LRV $lrv", ({ Lstar, lrv: points }) => {
  expect(Math.abs(100 * luminanceOfLightness(Lstar) - points)).toBeLessThanOrEqual(lrv.tolerance);
});

test.each(lrv.cases.pairs)("$a and $b are $difference points apart", ({ a, b, ...expected }) => {
  const apart = Math.abs(lightReflectance(a) - lightReflectance(b));
  expect(Math.abs(apart - expected.difference)).toBeLessThanOrEqual(lrv.tolerance);
  expect([apart >= 30, apart >= 20, apart >= 15]).toEqual([
    expected.atLeast30,
    expected.atLeast20,
    expected.atLeast15,
  ]);
});

test.each(wcag.cases)("$fg on $bg is $ratio to 1", ({ fg, bg, ratio, ...expected }) => {
  const actual = contrastRatio(fg, bg);
  expect(Math.abs(actual - ratio)).toBeLessThanOrEqual(wcag.tolerance);
  expect(contrastRatio(bg, fg)).toBe(actual);
  expect([actual >= 4.5, actual >= 3, actual >= 7]).toEqual([
    expected.aaNormal,
    expected.aaLarge,
    expected.aaaNormal,
  ]);
});

test("relative luminance runs from 0 to 1", () => {
  expect(relativeLuminance("#000")).toBe(0);
  expect(relativeLuminance("#fff")).toBeCloseTo(1, 12);
});

test("ink is dark on light grounds, light on dark ones, and always reaches 4.5 to 1", () => {
  expect(readableInk("#f2f0eb")).toBe("#1f1d1a");
  expect(readableInk("#3b4a52")).toBe("#ffffff");
  // The worst ground of all greys still carries one of the two inks.
  for (let v = 0; v < 256; v++) {
    const ground = `#${v.toString(16).padStart(2, "0").repeat(3)}`;
    expect(contrastRatio(ground, readableInk(ground, "#000000"))).toBeGreaterThan(4.5);
  }
});

test("the grey of a colour has its lightness", () => {
  for (const hex of ["#ff0000", "#00a000", "#0f52ba", "#c9a227", "#ffffff", "#000000"]) {
    const grey = greyOf(hex);
    expect(grey.slice(1, 3)).toBe(grey.slice(3, 5));
    expect(grey.slice(1, 3)).toBe(grey.slice(5, 7));
    expect(Math.abs(lightness(grey) - lightness(hex))).toBeLessThan(0.25);
  }
});
