import { expect, test } from "vitest";
import { isTallCard } from "../../src/documents/studio/pocketHeight.ts";

const card = (cuttings: number, name: string, lacks: string[]) => ({
  room: "The garden room",
  colours: [1, 2, 3, 4],
  cuttings: Array.from({ length: cuttings }, () => ({ name })),
  lists: [lacks, [], ["Floor 16′ × 12′", "Height 8′"]],
});

test("a card of four cloths stands whole; one of thirteen with long names and much to say goes over its page", () => {
  expect(isTallCard(card(4, "Pomander", ["Rust is seen once."]))).toBe(false);
  const long = "Honeysuckle and Trellis on Oatmeal Linen, Small Colorway";
  expect(isTallCard(card(13, long, [long.repeat(2), long.repeat(2), long.repeat(2)]))).toBe(true);
});
