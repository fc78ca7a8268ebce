import { expect, test } from "vitest";
import { quantitiesText } from "../../src/quantities/text/quantitiesText.ts";
import { PROJECT, quantitiesOf, type SmallStudio, STUDIO_CM } from "./studioOf.ts";

// Common practice, no source: a sum can be followed only if each figure in it says whose it is.
const textOf = (small: SmallStudio) => quantitiesText(quantitiesOf(small), "centimetres", "en-US");
const small = (more: Partial<SmallStudio> = {}): SmallStudio => ({
  studio: `${STUDIO_CM}\nallowances: { cushion: { seam: 1.5 cm } }`,
  project: PROJECT,
  cloths: {
    fern: "cloth: Fern\nwidth: 137 cm\nrepeat: { up: 64 cm, across: 68.5 cm, match: straight }\nprice: { trade: 20.00, per: metre, sold-by: 0.5 m }",
    moss: "cloth: Moss\nwidth: 140 cm\nkind: plain",
  },
  rooms: {
    a: "room: A\nitems:\n  - cushion: One\n    cloth: fern\n    back: moss\n    size: 50 cm x 50 cm\n    edge: { welt: moss }\n",
  },
  ...more,
});

test("a setting, a usual value and a card's own figures are each named below the sums that use them", () => {
  const text = textOf(small());
  expect(text).toMatch(/The studio’s setting: seam: .*: 1\.5.cm \(allowances in studio\.md\)/);
  expect(text).toMatch(/Usual value taken: welt-lap: /);
  expect(text).toMatch(
    /From its card: the cloth: 137.cm usable width; repeat 64.cm up, 68\.5.cm across, straight \(cloths\/fern\.md\)/,
  );
  expect(text).toMatch(/From its card: how it is sold: by 0\.5.m \(cloths\/fern\.md\)/);
  expect(text).toMatch(/From its card: the cloth: 140.cm usable width; no repeat/);
  expect(text).toMatch(/Usual value taken: how it is sold: the usual step/);
  expect(text).toContain("Round the edge: 2 × (50");
  expect(text.match(/A figure with no origin below its sums/g)).toHaveLength(1);
});

test("what came counts before the card, and says so", () => {
  const came = small({
    project: `${PROJECT}\nreceipts:\n  - { cloth: fern, lot: A, length: 5 m, width: 135 cm, on: 2026-11-01 }`,
  });
  expect(textOf(came)).toMatch(/As it came: the cloth: 135.cm usable width; .*receipts in project/);
});
