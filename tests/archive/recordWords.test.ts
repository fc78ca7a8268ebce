import { expect, test } from "vitest";
import { surfaceWords } from "../../src/archive/record/clothText.ts";

test("a record names pieces as the studio's documents do", () => {
  expect(surfaceWords("border-top", "en-GB")).toBe("border top");
  expect(surfaceWords("welt", "en-GB")).toBe("piping");
  expect(surfaceWords("welt", "en-US")).toBe("welt");
  // A figure keeps its sign: a hyphen parts words alone.
  expect(surfaceWords("angle -5", "en-GB")).toBe("angle -5");
});
