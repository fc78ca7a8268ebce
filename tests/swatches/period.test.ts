import { expect, test } from "vitest";
import { layingOf } from "../../src/swatches/period.ts";
import type { SwatchPhoto } from "../../src/swatches/swatch.ts";
import { usedCloth } from "../../src/swatches/usedCloth.ts";
import { card, measure } from "./cards.ts";

/** A photograph of 400 by 300 mm. */
const photo = (showsMm: number | null = 400): SwatchPhoto => ({
  source: "cloths/fern.jpg",
  widthPx: 800,
  heightPx: 600,
  showsMm,
  sha256: "",
  motifAt: null,
});

const laid = (text: string, one = photo(), seen: ReturnType<typeof measure> | null = null) => {
  const used = usedCloth(card(`cloth: Fern\n${text}`), seen, one);
  return { period: used.period, laying: layingOf(used) };
};

test("a plain has no steps and may be laid at will; a pattern whose repeat nobody knows may not", () => {
  expect(laid("kind: textured-plain").laying).toBe("whole");
  expect(laid("kind: large-print")).toEqual({ period: null, laying: "alone" });
  expect(laid("kind: irregular").laying).toBe("alone");
  expect(laid("kind: textured-plain", photo(null)).laying).toBe("alone");
});

test("a repeat is laid where the photograph shows one step each way, and stands in parts where it shows less", () => {
  const repeat = (up: number, across: number) =>
    laid(`kind: large-print\nrepeat: { up: ${up} mm, across: ${across} mm, match: half-drop }`);
  expect(repeat(300, 400)).toEqual({
    period: { acrossMm: 400, upMm: 300, halfDrop: true },
    laying: "whole",
  });
  expect(repeat(303, 400).laying).toBe("part");
  expect(repeat(300, 404).laying).toBe("part");
});

test("a stripe has one step, across its bands", () => {
  expect(laid("kind: stripe\nrepeat: { up: 5 mm, across: 90 mm, match: free }").period).toEqual({
    acrossMm: 90,
    upMm: null,
    halfDrop: false,
  });
  expect(laid("kind: stripe").laying).toBe("alone");
});

test("a width that the card leaves open comes from a photograph that agrees on the length, and from none that does not", () => {
  // The measure sees 640 mm up and 343 mm across.
  const open = (up: number) =>
    laid(`kind: large-print\nrepeat: { up: ${up} mm }`, photo(), measure()).period;
  expect(open(630)?.acrossMm).toBe(343);
  expect(open(500)).toBeNull();
});
