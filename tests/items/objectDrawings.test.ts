import { expect, test } from "vitest";
import type { Drawing } from "../../src/drawing/shape.ts";
import type { ObjectFacts } from "../../src/items/itemKind.ts";
import { objectDrawing } from "../../src/items/object/drawing.ts";
import { objectKind } from "../../src/items/object/kind.ts";
import { drawingContext, surfaces, svgOf, words } from "./drawnItems.ts";
import { contextFor, fieldsOf, length } from "./tradeContext.ts";

test("every shape of object is drawn in its own box in all three styles, alike each time; without a size it is not", () => {
  const shapes = [
    "rug",
    "picture",
    "mirror",
    "table",
    "chest",
    "lamp",
    "stove",
    "chair",
    "seat",
    "box",
    "bed",
  ] as const;
  for (const shape of shapes) {
    for (const hasPhoto of [true, false]) {
      for (const colours of [[], ["#2f5f4c", "#d8a24a"]]) {
        const card: ObjectFacts = {
          id: "x",
          name: "X",
          shape,
          width: length('30"'),
          depth: length('20"'),
          height: shape === "rug" ? null : length('40"'),
          weight: "9 kg",
          stays: false,
          owner: null,
          round: false,
          mattress: null,
          hasPhoto,
          colours,
        };
        const fields = fieldsOf(objectKind.schema, { object: "x" }) as never;
        const context = contextFor({}, { objects: [card] });
        const made = objectKind.make(fields, context);
        const dc = drawingContext(context);
        const drawn = objectDrawing.elevation(fields, made, dc) as Drawing;
        expect(drawn.widthMm).toBeCloseTo(762, 6);
        for (const s of surfaces(drawn.shapes)) expect(s).toBe("object");
        for (const style of ["cloth", "workshop", "grey"] as const) {
          expect(svgOf(drawn, style)).toBe(
            svgOf(objectDrawing.elevation(fields, made, dc) as Drawing, style),
          );
          expect(svgOf(drawn, style)).not.toContain("NaN");
        }
        const plan = objectDrawing.plan(fields, made, dc);
        expect(plan === null).toBe(shape === "picture" || shape === "mirror");
        const bare = objectKind.make(
          fields,
          contextFor({}, { objects: [{ ...card, width: null }] }),
        );
        expect(objectDrawing.elevation(fields, bare, dc)).toBeNull();
      }
    }
  }
});

test("what hangs has a fitter's drawing with its middle above the floor (hook rule of ra-02: centre and half the frame), its weight as typed, and no fixing named", () => {
  const card: ObjectFacts = {
    id: "x",
    name: "X",
    shape: "picture",
    width: length('30"'),
    depth: null,
    height: length('24"'),
    weight: "14 kg",
    stays: false,
    owner: null,
    round: false,
    mattress: null,
    hasPhoto: true,
    colours: [],
  };
  const fields = fieldsOf(objectKind.schema, {
    object: "x",
    at: { wall: "north", height: '45"' },
  }) as never;
  const context = contextFor({}, { objects: [card] });
  const made = objectKind.make(fields, context);
  const [drawn] = objectDrawing.workshop(fields, made, drawingContext(context));
  expect(drawn?.dimensions.map((d) => d.text)).toEqual([
    "30″",
    "24″",
    "45″ to its foot",
    "57″ to its middle",
  ]);
  expect(words(drawn?.shapes ?? [])).toEqual(["14 kg"]);
  expect(JSON.stringify(objectDrawing.sheet(fields, made, drawingContext(context)))).not.toMatch(
    /screw|hook|nail|anchor|plug|holds up to/i,
  );
});

test("of several pictures the fitter reads which one has its place, what each weighs, and what must be asked of the others", () => {
  const card: ObjectFacts = {
    id: "x",
    name: "Prints",
    shape: "picture",
    width: length('13"'),
    depth: null,
    height: length('17"'),
    weight: "3 lb",
    stays: true,
    owner: null,
    round: false,
    mattress: null,
    hasPhoto: true,
    colours: [],
  };
  const sheetOf = (count: string) => {
    const fields = fieldsOf(objectKind.schema, {
      object: "x",
      count,
      at: { wall: "west", "from-left": '82"', height: '50"' },
    }) as never;
    const context = contextFor({}, { objects: [card] });
    const made = objectKind.make(fields, context);
    return JSON.stringify(objectDrawing.sheet(fields, made, drawingContext(context)));
  };
  expect(sheetOf("3")).toContain("82″ from its left end to the left edge of the first.");
  expect(sheetOf("3")).toContain("3 lb each");
  expect(sheetOf("3")).toContain("ask before drilling");
  expect(sheetOf("1")).toContain("82″ from its left end to the left edge.");
  expect(sheetOf("1")).not.toMatch(/each|the others/);
});

test("a chest shows its drawers from the front alone, and a stove its door", () => {
  for (const shape of ["chest", "box", "stove"] as const) {
    const card: ObjectFacts = {
      id: "x",
      name: "X",
      shape,
      width: length('44"'),
      depth: length('20"'),
      height: length(shape === "chest" ? '34"' : '76"'),
      weight: null,
      stays: false,
      owner: null,
      round: false,
      mattress: null,
      hasPhoto: false,
      colours: ["#7a5a3c"],
    };
    const fields = fieldsOf(objectKind.schema, { object: "x" }) as never;
    const context = contextFor({}, { objects: [card] });
    const made = objectKind.make(fields, context);
    const dc = drawingContext(context);
    const metal = (drawn: Drawing | null | undefined): boolean =>
      JSON.stringify(drawn?.shapes).includes('"metal"');
    expect(metal(objectDrawing.elevation(fields, made, dc)), shape).toBe(true);
    expect(metal(objectDrawing.side?.(fields, made, dc)), shape).toBe(false);
    expect(metal(objectDrawing.back?.(fields, made, dc)), shape).toBe(false);
    expect(objectDrawing.side?.(fields, made, dc)?.widthMm).toBeCloseTo(20 * 25.4, 6);
  }
});
