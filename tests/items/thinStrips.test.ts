import { expect, test } from "vitest";
import { make } from "./upholsteryMade.ts";

const asked = (size: string, more: Record<string, unknown> = {}) =>
  make("headboard", { cloth: "plain137", size, ...more }, { units: "centimetres" })
    .questions.filter((question) => question.includes("side strip"))
    .map((question) => question.replace(/\s/g, " "));

test("a headboard is asked about where less than 5 cm of its side strips would be seen (common practice, no source)", () => {
  // By hand: of 137 cm 134 are seen between the joins, so (width - 134) / 2 on either side: 3 cm of 140, 5 of 144, none of 133.
  expect(asked("140 cm x 8 cm x 120 cm")).toEqual([
    "Of each side strip of the face only 3 cm would be seen: is a narrower middle, or a wider cloth, better?",
  ]);
  expect(asked("144 cm x 8 cm x 120 cm")).toEqual([]);
  expect(asked("133 cm x 8 cm x 120 cm")[0]).toContain("nothing would be seen");
});

test("under deep buttons the strips are told as they are seen, pleats taken", () => {
  // 137 cm less two turnings, 134, shows 134 / 1.15 = 116.5: of 120 cm 1.7 on either side, of 130 cm 6.7.
  const deep = { buttons: "15", buttoning: "deep" };
  expect(asked("120 cm x 8 cm x 120 cm", deep)[0]).toMatch(/only 1.7 cm would be seen/);
  expect(asked("130 cm x 8 cm x 120 cm", deep)).toEqual([]);
});
