import { expect, test } from "vitest";
import { smallStudio } from "./smallStudio.ts";

test.each([
  ["swatch", "--shows"],
  ["match", "match leaf.jpg"],
  ["fits", "--first-motif"],
  ["quantities", "quantities gannet-house"],
  ["check", "--content"],
])("%s --help names its options, with an example that can be typed", async (verb, words) => {
  const studio = smallStudio("help");
  try {
    const said = await studio.run([verb, "--help"]);
    expect(said).toMatchObject({ exit: 0, err: "" });
    expect(said.out).toContain(words);
    expect(said.out).toContain("With every verb: --content");
  } finally {
    studio.remove();
  }
});
