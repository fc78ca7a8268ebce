import { expect, test } from "vitest";
import { clothSpots } from "../../src/documents/room/clothSpots.ts";
import type { StandingItem } from "../../src/documents/room/standingItem.ts";
import { rect } from "../../src/drawing/paths.ts";
import type { Shape } from "../../src/drawing/shape.ts";

function item(id: string, shapes: readonly Shape[]): StandingItem {
  const record = { id };
  return { item: { record } as never, x: 0, y: 0, width: 0, height: 0, front: 0, shapes };
}
const face = (id: string, d: string, surface = "face"): Shape => ({
  shape: "path",
  d,
  fill: { surface: `${id}/${surface}`, x: 0, y: 0 },
  pen: "outline",
});
const wood = (d: string): Shape => ({ shape: "path", d, fill: { tone: "wood" }, pen: "edge" });
const isFace = () => (surface: string) => surface === "face";

test("a dot stands on a thing's own cloth, clear of its frame and of what stands before it", () => {
  const chair = item("chair", [wood(rect(0, 0, 400, 1000)), face("chair", rect(50, 50, 300, 400))]);
  const stool = item("stool", [face("stool", rect(200, 0, 400, 1000))]);
  const spots = clothSpots([chair, stool], isFace, 10).get("chair");
  expect(spots?.left).toBe(50);
  const y = spots?.spotAt(120) ?? 0;
  expect(y).toBeGreaterThan(60);
  expect(y).toBeLessThan(440);
  // Behind the stool, on the wood and at the very edge of its cloth: nowhere.
  for (const x of [195, 250, 30, 55]) expect(spots?.spotAt(x), String(x)).toBeNull();
});

test("groups move, turn and mirror their cloth", () => {
  const turned: Shape = {
    shape: "group",
    x: 1000,
    y: 500,
    turnDeg: 90,
    children: [face("a", rect(0, 0, 200, 100))],
  };
  const mirrored: Shape = {
    shape: "group",
    x: 300,
    mirror: true,
    children: [face("b", rect(0, 0, 100, 100))],
  };
  const spots = clothSpots([item("a", [turned]), item("b", [mirrored])], isFace, 1);
  expect([spots.get("a")?.left, spots.get("a")?.right]).toEqual([900, 1000]);
  expect([spots.get("b")?.left, spots.get("b")?.right]).toEqual([200, 300]);
});
