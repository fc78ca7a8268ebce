import { join } from "node:path";
import { expect, test } from "vitest";
import { fits } from "../../src/cli/verbs/fits.ts";
import { remnantOf } from "../../src/cli/verbs/fitsOptions.ts";

const CONTENT = join(import.meta.dirname, "../../content");

test("fits: a patterned piece's height counts from a first cut, and it is said where in the pattern that cut is made", async () => {
  // The pattern's check has a repeat of 4 1/2 in; a face of 17 in has a motif's middle 8 1/2 in above its foot, one lower at 4 in.
  const typed = { length: "2m", firstMotif: "1in" };
  const said = await fits(CONTENT, "hayrick", remnantOf(typed), {
    project: null,
    commonOnly: true,
  });
  const block = said.text.slice(said.text.indexOf("  Square cushion 16: needs"));
  expect(block).toMatch(/^ {2}Square.*\n.* 0″ up: 17″ × 17″ {2}face\n.*back\n/);
  expect(block.split("\n")[3]?.trim()).toBe(
    "Begin so that the first motif's middle stands 4″ above the first cut. Heights are counted from that cut.",
  );
});
