import { expect, test } from "vitest";
import { placesInOneLine } from "../../src/documents/board/captionPlaces.ts";

test("places that fit a line stand in full; of others the first that fit stand, with an ellipsis", () => {
  expect(placesInOneLine(["three pillows", "lampshade"], 60)).toBe("three pillows and lampshade");
  expect(placesInOneLine(["drapery", "two chairs", "lampshade"], 36)).toBe("drapery, two chairs …");
  expect(placesInOneLine(["three pillows", "lampshade"], 26)).toBe("three pillows …");
});

test("one place that is too long is cut at a word, and none is no words", () => {
  expect(placesInOneLine(["chimney breast below the rail"], 30)).toBe("chimney breast…");
  expect(placesInOneLine([], 30)).toBe("");
});
