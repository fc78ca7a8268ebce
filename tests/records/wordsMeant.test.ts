import { expect, test } from "vitest";
import { changed, ROOM, said } from "./studio.ts";

// Words that a decorator writes for those of the file, and what she is told.

test.each([
  ["wall: north", "name: north", "Did you mean wall?"],
  ["height: ", "ceiling: ", "Did you mean height?"],
  ["window: ", "name: ", "Did you mean window?"],
  ["size: ", "width: ", "Did you mean size?"],
])("%s written as %s", (typed, meant, hint) => {
  const files = changed(ROOM, typed, meant);
  expect(said(files).filter((line) => line.includes("key-unknown"))).toEqual([
    expect.stringContaining(hint),
  ]);
});

test.each(["none", "No", "without"])(
  "a lining that is written as “%s” is to be left out",
  (word) => {
    const files = changed(ROOM, `drop: 92"`, `drop: 92"\n    lining: ${word}`);
    expect(said(files)).toEqual([
      expect.stringContaining("Take the line out: what is not written is not made."),
    ]);
  },
);
