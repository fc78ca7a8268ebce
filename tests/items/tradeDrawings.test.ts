import { expect, test } from "vitest";
import { renderDrawing } from "../../src/drawing/renderDrawing.ts";
import type { Drawing, Shape } from "../../src/drawing/shape.ts";
import { cushionDrawing } from "../../src/items/cushion/drawing.ts";
import { cushionKind } from "../../src/items/cushion/kind.ts";
import { ITEM_DRAWINGS } from "../../src/items/drawings.ts";
import type { DrawingContext } from "../../src/items/itemDrawing.ts";
import type { ItemContext, ObjectFacts } from "../../src/items/itemKind.ts";
import { ITEM_KINDS } from "../../src/items/kinds.ts";
import { mirrorPath } from "../../src/items/mirrorPath.ts";
import { objectDrawing } from "../../src/items/object/drawing.ts";
import { objectKind } from "../../src/items/object/kind.ts";
import { paintDrawing } from "../../src/items/paint/drawing.ts";
import { paintKind } from "../../src/items/paint/kind.ts";
import { armchairDrawing } from "../../src/items/upholstery/armchair/drawing.ts";
import { armchairKind } from "../../src/items/upholstery/armchair/kind.ts";
import { wallpaperDrawing } from "../../src/items/wallpaper/drawing.ts";
import { wallpaperKind } from "../../src/items/wallpaper/kind.ts";
import { parseLength } from "../../src/units/parseLength.ts";
import { clothFacts, contextFor, fieldsOf, length, wallRun } from "./tradeContext.ts";

const PRINT = clothFacts({
  id: "fern",
  name: "Fern",
  usableWidth: length('54"'),
  repeat: { up: length('9"'), across: length('13.5"'), match: "straight", fromSelvedge: null },
});
const drawingContext = (c: ItemContext): DrawingContext => ({
  units: c.units,
  language: "en-US",
  cloth: c.cloth,
  object: c.object,
});

/** Every surface that a drawing fills, groups included. */
function surfaces(shapes: readonly Shape[]): Set<string> {
  const found = new Set<string>();
  for (const s of shapes) {
    if (s.shape === "group") for (const x of surfaces(s.children)) found.add(x);
    if (s.shape === "photograph" || s.shape === "folds") found.add(s.surface);
    if (s.shape === "path" && s.fill && "surface" in s.fill) found.add(s.fill.surface);
  }
  return found;
}
function words(shapes: readonly Shape[]): string[] {
  return shapes.flatMap((s) =>
    s.shape === "group"
      ? words(s.children)
      : s.shape === "words" || s.shape === "note"
        ? [s.text]
        : [],
  );
}
function svgOf(d: Drawing, style: "cloth" | "workshop" | "grey" = "cloth"): string {
  return renderDrawing(d, {
    scale: 1 / 15,
    bindings: () => ({ hex: "#aabbcc" }),
    style,
    dimensions: true,
    idPrefix: "d",
  }).svg;
}

function cushion(raw: Record<string, unknown>) {
  const fields = fieldsOf(cushionKind.schema, {
    cushion: "Seat",
    cloth: "fern",
    size: '20" x 20"',
    ...raw,
  }) as never;
  const context = contextFor(cushionKind.allowances, { cloths: [PRINT] });
  return [fields, cushionKind.make(fields, context), drawingContext(context)] as const;
}
const CHAIR_PIECES = [
  { piece: "inside-back", size: '22" x 28"', centred: "yes" },
  { piece: "seat", size: '22" x 24"', centred: "yes" },
  { piece: "boxing", size: '22" x 5"' },
  { piece: "front-border", size: '22" x 8"' },
  { piece: "inside-arm", size: '20" x 20"' },
  { piece: "outside-arm", size: '26" x 20"', cloth: "plain" },
  { piece: "outside-back", size: '28" x 30"' },
  { piece: "arm-front", size: '6" x 20"' },
];
function chair(raw: Record<string, unknown>) {
  const fields = fieldsOf(armchairKind.schema, {
    armchair: "Carver",
    cloth: "fern",
    size: '31" x 34" x 36"',
    ...raw,
  }) as never;
  const context = contextFor(armchairKind.allowances, {
    cloths: [PRINT, clothFacts({ id: "plain", usableWidth: length('54"') })],
  });
  return [fields, armchairKind.make(fields, context), drawingContext(context)] as const;
}

test("every kind is drawn, once, and every allowance has a source and usual values that read in both units", () => {
  expect(ITEM_DRAWINGS.map((d) => d.kind).sort()).toEqual(ITEM_KINDS.map((k) => k.kind).sort());
  expect(new Set(ITEM_KINDS.flatMap((k) => [k.kind, ...k.synonyms])).size).toBe(
    ITEM_KINDS.flatMap((k) => [k.kind, ...k.synonyms]).length,
  );
  for (const kind of ITEM_KINDS) {
    for (const [name, a] of Object.entries(kind.allowances)) {
      expect(a.source, `${kind.kind} ${name}`).not.toBe("");
      if (a.is !== "length") continue;
      const [inches, metric] = [parseLength(a.usual.inches), parseLength(a.usual.centimetres)];
      expect(inches.ok && metric.ok, `${kind.kind} ${name}`).toBe(true);
      // Headings and hems of curtains follow two customs that truly differ.
      if (kind.kind === "curtains" || kind.kind === "blind") continue;
      // The two customs are not the same figure, but near: neither may be a slip of the pen.
      if (inches.ok && metric.ok && !metric.length.isZero()) {
        const ratio = inches.length.over(metric.length).valueOf();
        expect(ratio, `${kind.kind} ${name}`).toBeGreaterThan(0.7);
        expect(ratio, `${kind.kind} ${name}`).toBeLessThan(1.45);
      }
    }
  }
});

test("a drawing fills only surfaces that its kind binds to a cloth", () => {
  for (const [fields, made, context] of [
    chair({ pieces: CHAIR_PIECES, welt: "plain" }),
    chair({ type: "wing" }),
    chair({ pieces: [...CHAIR_PIECES, { piece: "skirt", size: '30" x 6"' }] }),
  ]) {
    const bound = new Set(armchairKind.cloths(fields).map((c) => c.surface));
    const drawn = armchairDrawing.elevation(fields, made, context) as Drawing;
    for (const s of surfaces(drawn.shapes)) expect(bound, s).toContain(s);
    for (const cut of made.cuts) expect(bound, cut.surface).toContain(cut.surface);
  }
  for (const [fields, made, context] of [
    cushion({ count: "2", edge: { welt: "fern" } }),
    cushion({ closure: "envelope" }),
  ]) {
    const bound = new Set(cushionKind.cloths(fields).map((c) => c.surface));
    for (const s of surfaces((cushionDrawing.elevation(fields, made, context) as Drawing).shapes))
      expect(bound, s).toContain(s);
    for (const cut of made.cuts) expect(bound, cut.surface).toContain(cut.surface);
  }
});

test("back, seat and front of a chair show the same motif column", () => {
  const [fields, made, context] = chair({ pieces: CHAIR_PIECES });
  const drawn = armchairDrawing.elevation(fields, made, context) as Drawing;
  const middles = drawn.shapes.flatMap((s) =>
    s.shape === "path" &&
    s.fill &&
    "surface" in s.fill &&
    Math.abs(s.fill.x - drawn.widthMm / 2) < 1
      ? [s.fill.x]
      : [],
  );
  expect(middles.length).toBeGreaterThanOrEqual(4);
  expect(drawn.widthMm).toBeCloseTo(787.4, 6);
  expect(drawn.heightMm).toBeCloseTo(914.4, 6);
});

test("cloth is never mirrored: only outlines are", () => {
  const [fields, made, context] = chair({ type: "wing" });
  const drawn = armchairDrawing.elevation(fields, made, context) as Drawing;
  const mirrored = (shapes: readonly Shape[]): boolean =>
    shapes.some(
      (s) =>
        s.shape === "group" &&
        (s.mirror === true ? surfaces(s.children).size > 0 : mirrored(s.children)),
    );
  expect(mirrored(drawn.shapes)).toBe(false);
});

test("a mirrored path is its own mirror's mirror, and arcs turn the other way", () => {
  const d = "M10 20H30V40L50 60C1 2 3 4 5 6A7 8 0 0 1 9 10Z";
  expect(mirrorPath(d, 100)).toBe("M90 20H70V40L50 60C99 2 97 4 95 6A7 8 0 0 0 91 10Z");
  expect(mirrorPath(mirrorPath(d, 100), 100)).toBe(d);
});

test("each piece of a chair has its letter on the front or the side, as in the list", () => {
  const [fields, made, context] = chair({ pieces: CHAIR_PIECES });
  const shown = armchairDrawing.workshop(fields, made, context).flatMap((d) => words(d.shapes));
  for (const piece of made.pieces) expect(shown, piece.piece).toContain(piece.letter);
  const list =
    armchairDrawing.sheet(fields, made, context).groups.find((g) => g.heading === "Cut")?.lines ??
    [];
  expect(list.map((l) => l[0])).toEqual(made.pieces.map((p) => p.letter));
});

test("an unmeasured chair says estimate on its sheet, and an assumed seat height on its drawing", () => {
  const [fields, made, context] = chair({ type: "club" });
  const sheet = armchairDrawing.sheet(fields, made, context);
  expect(sheet.groups.find((g) => g.heading === "Estimate")?.lines.join(" ")).toContain(
    "An estimate",
  );
  expect(
    armchairDrawing
      .workshop(fields, made, context)[0]
      ?.dimensions.some((d) => d.text.includes("assumed")),
  ).toBe(true);
});

test("a cushion's sheet gives finished and cut sizes, the motif's lozenge in the very middle, and both backs of an envelope", () => {
  const [fields, made, context] = cushion({ closure: "envelope" });
  const [front, backs] = cushionDrawing.workshop(fields, made, context);
  expect(front?.dimensions.map((d) => d.text)).toEqual([
    "20″ finished",
    "21″ cut",
    "20″ finished",
    "21″ cut",
  ]);
  const lozenge = front?.shapes.find((s) => s.shape === "sign" && s.sign === "lozenge");
  expect(lozenge).toMatchObject({ x: (front?.widthMm ?? 0) / 2, y: (front?.heightMm ?? 0) / 2 });
  expect(backs?.title).toContain("envelope");
  const text = JSON.stringify(cushionDrawing.sheet(fields, made, context));
  expect(text).toContain("21″");
  expect(text).not.toMatch(/price|supplier|trade/i);
});

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

test("a chair measured without arms is drawn with an open frame, its pieces lettered, and only its own surfaces filled", () => {
  const pieces = CHAIR_PIECES.filter((p) =>
    ["seat", "inside-back", "outside-back"].includes(p.piece),
  );
  const [fields, made, context] = chair({ pieces, welt: "plain" });
  const front = armchairDrawing.elevation(fields, made, context) as Drawing;
  expect(surfaces(front.shapes)).toEqual(new Set(["cover", "welt"]));
  expect(JSON.stringify(front.shapes)).toContain('"tone":"wood"');
  const upholstered = chair({ pieces: CHAIR_PIECES });
  expect(
    JSON.stringify((armchairDrawing.elevation(...upholstered) as Drawing).shapes),
  ).not.toContain('"tone":"wood"');
  const shown = armchairDrawing.workshop(fields, made, context).flatMap((d) => words(d.shapes));
  for (const piece of made.pieces) expect(shown, piece.piece).toContain(piece.letter);
  for (const d of armchairDrawing.workshop(fields, made, context))
    expect(svgOf(d, "workshop")).not.toContain("NaN");
});
