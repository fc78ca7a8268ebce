import { expect, test } from "vitest";
import { mirrorPath } from "../../src/drawing/mirrorPath.ts";
import type { Drawing, Shape } from "../../src/drawing/shape.ts";
import { cushionDrawing } from "../../src/items/cushion/drawing.ts";
import { cushionKind } from "../../src/items/cushion/kind.ts";
import { ITEM_DRAWINGS } from "../../src/items/drawings.ts";
import { ITEM_KINDS } from "../../src/items/kinds.ts";
import { armchairDrawing } from "../../src/items/upholstery/armchair/drawing.ts";
import { armchairKind } from "../../src/items/upholstery/armchair/kind.ts";
import { parseLength } from "../../src/units/parseLength.ts";
import { CHAIR_PIECES, chair, cushion, surfaces, svgOf, words } from "./drawnItems.ts";

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
