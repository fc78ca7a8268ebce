// A braid is bought by the length that is sewn on; a cloth named as a trim would be bought so at its whole width.
import { expect, test } from "vitest";
import { quantitiesOf } from "./studioOf.ts";

function said(trim: string, cloth = "plain") {
  const found = quantitiesOf({
    cloths: {
      plain: "cloth: Oat\nwidth: 137 cm\nkind: plain",
      braid: "cloth: Flax braid\ntype: trim",
    },
    rooms: {
      a: `room: A
items:
  - pelmet: One
    cloth: ${cloth}
    board: 100 cm
    depth: 30 cm
    trim: ${trim}`,
    },
  });
  return found.diagnostics.filter(({ code }) => /trim/.test(code));
}

test("a trim that is a trim is no matter", () => {
  expect(said("braid")).toEqual([]);
});

test("a cloth as a trim is told at its line", () => {
  expect(said("plain")).toMatchObject([
    { code: "cloth-as-trim", severity: "warning", line: 8, keyPath: "items[0].trim" },
  ]);
});

test("a trim of which something is to be made is told at its line", () => {
  expect(said("braid", "braid")).toMatchObject([
    { code: "trim-as-cloth", severity: "warning", line: 5 },
  ]);
});
