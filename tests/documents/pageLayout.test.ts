import { expect, test } from "vitest";
import { pageLayout } from "../../src/documents/sheets/itemLayout.ts";
import type { Drawing } from "../../src/drawing/shape.ts";

// How an item stands on its pages is the house's own rule: common practice, no source.

/** A wall or a ceiling of paper with its width and height dimensioned. */
function drawing(widthMm: number, heightMm: number): Drawing {
  const dimension = (axis: "horizontal" | "vertical", to: number, side: "bottom" | "left") =>
    ({ axis, from: 0, to, side, level: 1, text: `${to / 10} cm` }) as const;
  return {
    widthMm,
    heightMm,
    shapes: [],
    dimensions: [
      dimension("horizontal", widthMm, "bottom"),
      { ...dimension("horizontal", widthMm / 6, "bottom"), side: "top" } as const,
      dimension("vertical", heightMm, "left"),
    ],
    title: "Ceiling",
    description: "",
  };
}

const words = {
  sheet: {
    groups: [{ heading: "Paper", lines: ["Stars.", "Rolls 53 cm wide, 10.05 m long."] }],
    checks: [{ text: "Ceiling sound and dry", blank: null }],
    signs: [],
  },
  head: ["Wallpaper: Ceiling", "Den", "Item 1 of 1"],
  frames: [],
  since: "",
  questions: [],
  materials: [{ text: "5 rolls of one batch", by: "studio" }],
  cautions: "",
  rate: "",
} as const;

test("a drawing that is too tall for its usual height fills its page before it takes a second", () => {
  const { overleaf, rows } = pageLayout(words, [drawing(3400, 4200)], "a4");
  expect(overleaf).toBeNull();
  expect(rows).toHaveLength(1);
});
