import { expect, test } from "vitest";
import { originNotes, runsOf } from "../../src/documents/studio/originNotes.ts";
import type { Origin } from "../../src/quantities/text/origins.ts";

const origin = (from: string, what: string, value = "1"): Origin => ({
  from,
  what,
  value,
  source: "common practice",
});

test("the same figure from the same place is one note, however many workings rest on it", () => {
  const hem = origin("The studio's setting", "hem");
  const seam = origin("Usual value taken", "seam");
  const wide = origin("Usual value taken", "seam", "2");
  const notes = originNotes([hem, seam, hem, wide, seam]);
  expect(notes.heads.map((h) => [h.from, h.notes.map((n) => n.number)])).toEqual([
    ["The studio's setting", [1]],
    ["Usual value taken", [2, 3]],
  ]);
  expect(notes.heads[1]?.notes[1]?.words.html).toBe("seam: 2 (common practice)");
  expect(notes.numbersOf([wide, hem])).toBe("1, 3");
  expect(notes.numbersOf([])).toBe("");
});

test("runs of numbers are drawn together from three on", () => {
  expect(runsOf([7, 1, 2, 3, 4, 9, 10])).toBe("1\u20134, 7, 9, 10");
});
