import { expect, test } from "vitest";
import { cuttingsSvg } from "../../src/documents/board/cuttings.ts";
import type { Tile } from "../../src/drawing/binding.ts";

// What a screen does where two pictures share a pixel: each covers a part of it, and what lies beneath shows through.
const tile: Tile = {
  href: "leaf.jpg",
  widthMm: 60,
  heightMm: 60,
  originX: 30,
  originY: 30,
  match: "straight",
};

test("tiles of a cutting lie on their cloth's average, so that no line shows between them on a screen", () => {
  const box = { x: 10, y: 20, width: 50, height: 40 };
  const svg = (ground: string | null) =>
    cuttingsSvg(
      [{ id: "leaf", ...box, edge: "straight", fill: { tile, scale: 3, ground } }],
      "#e0e4da",
      "b",
    );
  const laid = svg("#304560");
  const beneath = laid.indexOf('<rect x="10" y="20" width="50" height="40" fill="#304560"/>');
  expect(beneath).toBeGreaterThan(0);
  expect(beneath).toBeLessThan(laid.indexOf("<image"));
  expect(svg(null)).not.toContain("<rect");
});
