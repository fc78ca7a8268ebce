import { expect, test } from "vitest";
import { onTrack, railPoint } from "../../../src/items/curtains/onTrack.ts";
import type { CurtainsFields } from "../../../src/items/curtains/schema.ts";

// What curtains hang from where nothing is said: common practice, no source.
const of = (fields: object) => fields as CurtainsFields;

test.each([
  ["pinch pleats", { heading: "pinch-pleat" }, false],
  ["pinch pleats inside a recess", { heading: "pinch-pleat", mount: "inside" }, true],
  ["s-folds", { heading: "s-fold" }, true],
  ["eyelets inside a recess want a pole there too", { heading: "eyelet", mount: "inside" }, false],
  ["as the file says", { heading: "pinch-pleat", "hangs-from": "track" }, true],
  [
    "as the file says, in a recess",
    { heading: "pinch-pleat", mount: "inside", "hangs-from": "pole" },
    false,
  ],
] as const)("%s", (_, fields, track) => {
  expect(onTrack(of(fields))).toBe(track);
  expect(railPoint(of(fields))).toBe(track ? "track" : "pole's middle");
});
