// What a photograph gives a new card: the demo's own cloths, whose truth is how they were drawn (tests/cloths).
import { join } from "node:path";
import { expect, test } from "vitest";
import { measuredCloth } from "../../src/cli/starter/measuredCloth.ts";
import { USUAL_SETTINGS } from "../../src/cloth/measureSettings.ts";

const CLOTHS = join(import.meta.dirname, "../../content/cloths");

async function cardOf(file: string, shows: string | null) {
  const { value } = await measuredCloth(join(CLOTHS, file), shows, USUAL_SETTINGS);
  if (!value) throw new Error(file);
  return value;
}

test("a ticking: its repeat across, its bands in their order, and that they are not the same backwards", async () => {
  const { filling, notes } = await cardOf("slipway.webp", "7in");
  expect(filling).toMatchObject({
    kind: "stripe",
    runs: "one-way",
    repeat: { across: expect.stringMatching(/^2 (1\/4|3\/16|5\/16)"$/) },
  });
  const bands = notes.find((note) => note.startsWith("bands: "));
  expect(bands?.match(/yellowish white|dark blue/g)).toHaveLength(8);
  expect(notes.some((note) => note.startsWith("width of a band: "))).toBe(true);
  expect(notes.some((note) => note.startsWith("motif: "))).toBe(false);
});

test("a check: a line of bands for its warp and one for its weft", async () => {
  const { filling, notes } = await cardOf("hayrick.jpg", "9in");
  expect(filling).toMatchObject({ kind: "check", runs: "two-way" });
  expect(notes.filter((note) => note.startsWith("bands "))).toHaveLength(2);
});

test("without a length nothing that has a size is filled in", async () => {
  const { filling, notes } = await cardOf("slipway.webp", null);
  expect(filling).toEqual({});
  expect(notes).toHaveLength(1);
});
