import { expect, test } from "vitest";
import { paintDrawing } from "../../src/items/paint/drawing.ts";
import { paintKind } from "../../src/items/paint/kind.ts";
import { wallpaperDrawing } from "../../src/items/wallpaper/drawing.ts";
import { wallpaperKind } from "../../src/items/wallpaper/kind.ts";
import { drawingContext, words } from "./drawnItems.ts";
import { clothFacts, contextFor, fieldsOf, length, wallRun } from "./tradeContext.ts";

/** All walls in a paper of 20 in on rolls of 33 ft, with a repeat of 24 in. */
const FIELDS = fieldsOf(wallpaperKind.schema, {
  wallpaper: "All",
  on: "walls",
  cloth: "paper",
}) as never;
function papered(match: "straight" | "half-drop", runs: ReturnType<typeof wallRun>[]) {
  const card = clothFacts({
    id: "paper",
    type: "wallcovering",
    roll: { width: length('20"'), length: length("33 ft") },
    repeat: { up: length('24"'), across: null, match, fromSelvedge: null },
  });
  const context = contextFor(wallpaperKind.allowances, { cloths: [card], runs });
  return { made: wallpaperKind.make(FIELDS, context), context: drawingContext(context) };
}

test("strips of paper are numbered on round the corner, and the half-drop's second strip is level half a repeat lower", () => {
  const { made, context } = papered("half-drop", [
    wallRun('50"', '96"'),
    wallRun('50"', '96"', [], "east"),
  ]);
  const [north, east] = wallpaperDrawing.workshop(FIELDS, made, context);
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
      .sheet(FIELDS, made, context)
      .groups.some((g) => g.lines.join(" ").includes("one batch")),
  ).toBe(true);
});

test("a papered room is drawn wall by wall, a chimney breast opened out with what is beside it", () => {
  const { made, context } = papered("straight", [
    wallRun('50"', '96"'),
    wallRun('14"', '96"'),
    wallRun('54"', '96"'),
    wallRun('14"', '96"'),
    wallRun('50"', '96"'),
    wallRun('100"', '96"', [], "east"),
  ]);
  const drawn = wallpaperDrawing.workshop(FIELDS, made, context);
  expect(drawn.map((d) => d.title)).toEqual([
    "North wall, strips 1 to 10",
    "East wall, strips 10 to 15",
  ]);
  const [north, east] = drawn;
  // 50 + 14 + 54 + 14 + 50 = 182 in opened out, with four corners.
  expect(north?.widthMm).toBeCloseTo(182 * 25.4, 6);
  const corners = (north?.shapes ?? []).flatMap((s) =>
    s.shape === "path" && s.pen === "cut" ? [Number(/^M([\d.]+) /.exec(s.d)?.[1])] : [],
  );
  expect(corners.map((x) => Math.round(x / 2.54) / 10)).toEqual([50, 64, 118, 132]);
  expect(words(north?.shapes ?? [])).toEqual(["1", "2", "3", "4", "5", "6", "7", "8", "9"]);
  expect((north?.dimensions ?? []).map((d) => d.text)).toContain("182″ in all");
  // What is alike on every wall is said once.
  const repeats = drawn.map((d) => d.dimensions.filter((x) => x.text.includes("repeat")).length);
  expect(repeats).toEqual([1, 0]);
  expect((east?.dimensions ?? []).map((d) => d.text)).toEqual(["100″", "96″"]);
  expect(made.questions.join(" ")).toContain("Where does the first strip hang");
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
