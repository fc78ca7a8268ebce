import { expect, test } from "vitest";
import { openNote } from "../../src/documents/proposal/openNote.ts";
import type { TaxedLine } from "../../src/money/lines.ts";

const line = (what: string, label: string) =>
  ({ what, label, open: true, client: { minor: 0n } }) as unknown as TaxedLine;

test("what is still to come is named within its sentence: cloths by their names, work in small letters", () => {
  const lines = [line("cloth", "Sorrel"), line("making", "Making"), line("making", "Making")];
  expect(openNote(lines)).toBe("* Price to come: Sorrel and making. The total leaves it out.");
});
