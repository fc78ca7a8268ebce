import { expect, test } from "vitest";
import { eachMakerOnce } from "../../src/documents/studio/eachMakerOnce.ts";

// How an order list is read is the project's own rule.
test("each maker of a trim is named once, before all that it goes on there", () => {
  const use = (maker: string, item: string) => ({ maker, item });
  const told = eachMakerOnce([
    use("Bench", "bay"),
    use("Loft", "stool"),
    use("Bench", "door"),
    use("", "shade"),
  ]);
  expect(told.map((each) => `${each.maker}|${each.item}`)).toEqual([
    "Bench|bay",
    "|door",
    "Loft|stool",
    "|shade",
  ]);
  expect(eachMakerOnce([])).toEqual([]);
});
