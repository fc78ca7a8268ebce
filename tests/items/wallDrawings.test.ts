import { expect, test } from "vitest";
import { paintDrawing } from "../../src/items/paint/drawing.ts";
import { paintKind } from "../../src/items/paint/kind.ts";
import { wallpaperDrawing } from "../../src/items/wallpaper/drawing.ts";
import { wallpaperKind } from "../../src/items/wallpaper/kind.ts";
import { drawingContext, words } from "./drawnItems.ts";
import { clothFacts, contextFor, fieldsOf, length, wallRun } from "./tradeContext.ts";

test("strips of paper are numbered on round the corner, and the half-drop's second strip is level half a repeat lower", () => {
  const card = clothFacts({
    id: "paper",
    type: "wallcovering",
    roll: { width: length('20"'), length: length("33 ft") },
    repeat: { up: length('24"'), across: null, match: "half-drop", fromSelvedge: null },
  });
  const fields = fieldsOf(wallpaperKind.schema, {
    wallpaper: "All",
    on: "walls",
    cloth: "paper",
  }) as never;
  const context = contextFor(wallpaperKind.allowances, {
    cloths: [card],
    runs: [wallRun('50"', '96"'), wallRun('50"', '96"', [], "east")],
  });
  const made = wallpaperKind.make(fields, context);
  const [north, east] = wallpaperDrawing.workshop(fields, made, drawingContext(context));
  // Strips of 20 in on 50 in: the third begins on the north wall and ends on the east one.
  expect(words(north?.shapes ?? [])).toEqual(["1", "2", "3"]);
  expect(words(east?.shapes ?? [])).toEqual(["3", "4", "5"]);
  const levels = (north?.shapes ?? []).flatMap((s) =>
    s.shape === "path" && s.pen === "level" ? [s.d] : [],
  );
  expect(levels.some((d) => d.startsWith(`M0 ${609.6}`))).toBe(true);
  expect(levels.some((d) => d.startsWith(`M508 ${304.8}`))).toBe(true);
  expect(
    wallpaperDrawing
      .sheet(fields, made, drawingContext(context))
      .groups.some((g) => g.lines.join(" ").includes("one batch")),
  ).toBe(true);
});

test("paint is a list: area, coats, tins", () => {
  const fields = fieldsOf(paintKind.schema, {
    paint: "Walls",
    name: "Oatmeal",
    on: "walls",
    colour: "#efe3c8",
  }) as never;
  const context = contextFor(paintKind.allowances, { runs: [wallRun("40 ft", "8 ft")] });
  const made = paintKind.make(fields, context);
  expect(paintDrawing.workshop(fields, made, drawingContext(context))).toEqual([]);
  const lines = paintDrawing
    .sheet(fields, made, drawingContext(context))
    .groups.map((g) => `${g.heading}: ${g.lines.join(" ")}`)
    .join("\n");
  expect(lines).toContain("320\u00a0sq\u00a0ft");
  expect(lines).toContain("2 coats");
  expect(lines).toContain("2 tins of 1 gal");
  expect(lines).not.toContain("#efe3c8");
});
