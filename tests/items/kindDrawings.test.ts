import { describe, expect, test } from "vitest";
import { renderDrawing } from "../../src/drawing/renderDrawing.ts";
import type { Drawing, Shape } from "../../src/drawing/shape.ts";
import { ITEM_DRAWINGS } from "../../src/items/drawings.ts";
import type { DrawingContext, ItemDrawing } from "../../src/items/itemDrawing.ts";
import type { ItemKind, Made } from "../../src/items/itemKind.ts";
import { ITEM_KINDS } from "../../src/items/kinds.ts";
import type { CoverPiece } from "../../src/items/upholstery/coverPiece.ts";
import type { Length } from "../../src/units/length.ts";
import { printLength } from "../../src/units/printLength.ts";
import { CLOTHS, SAMPLES } from "./drawnSamples.ts";
import { contextFor, fieldsOf, wallRun } from "./tradeContext.ts";

function surfaces(shapes: readonly Shape[]): Set<string> {
  const found = new Set<string>();
  for (const s of shapes) {
    if (s.shape === "group") for (const x of surfaces(s.children)) found.add(x);
    if (s.shape === "path" && s.fill && "surface" in s.fill) found.add(s.fill.surface);
  }
  return found;
}
function all(shapes: readonly Shape[]): Shape[] {
  return shapes.flatMap((s) => (s.shape === "group" ? all(s.children) : [s]));
}
const words = (d: Drawing) =>
  all(d.shapes).flatMap((s) => (s.shape === "words" || s.shape === "note" ? [s.text] : []));

function sample(at: number, language: "en-US" | "en-GB" = "en-US") {
  const { kind: name, raw } = SAMPLES[at] as (typeof SAMPLES)[number];
  const kind = ITEM_KINDS.find((k) => k.kind === name) as ItemKind<unknown, Made>;
  const drawing = ITEM_DRAWINGS.find((d) => d.kind === name) as ItemDrawing<unknown, Made>;
  const fields = fieldsOf(kind.schema, raw);
  const context = contextFor(kind.allowances, { cloths: CLOTHS, runs: [wallRun('144"', '108"')] });
  const made = kind.make(fields, context);
  const look: DrawingContext = {
    units: "inches",
    language,
    cloth: context.cloth,
    object: context.object,
  };
  return { kind, drawing, fields, made, look };
}

describe.each(SAMPLES.map((s, at) => ({ at, name: `${s.kind} ${at}` })))("$name", ({ at }) => {
  test("is made without a fault", () => {
    expect(sample(at).made.diagnostics).toEqual([]);
  });

  test("fills only surfaces that its kind binds to a cloth, cuts only such, and sees only such", () => {
    const { kind, drawing, fields, made, look } = sample(at);
    const bound = new Set(kind.cloths(fields).map((c) => c.surface));
    for (const d of [drawing.elevation(fields, made, look), drawing.plan(fields, made, look)])
      for (const s of d ? surfaces(d.shapes) : []) expect(bound, s).toContain(s);
    for (const cut of made.cuts) expect(bound, cut.surface).toContain(cut.surface);
    for (const seen of kind.seen(fields, made)) {
      expect(bound, seen.surface).toContain(seen.surface);
      expect(seen.areaMm2).toBeGreaterThan(0);
    }
  });

  test("is drawn at its own size, in finite figures, in every style", () => {
    const { drawing, fields, made, look } = sample(at);
    const size = (fields as { size?: readonly Length[] }).size;
    const front = drawing.elevation(fields, made, look);
    if (front && size) expect(front.widthMm).toBeCloseTo(size[0]?.toMm() ?? 0, 3);
    if (front && size?.[2]) expect(front.heightMm).toBeCloseTo(size[2].toMm(), 3);
    const drawings = [
      front,
      drawing.plan(fields, made, look),
      ...drawing.workshop(fields, made, look),
    ];
    for (const d of drawings) {
      if (!d) continue;
      expect(d.title && d.description).toBeTruthy();
      for (const style of ["cloth", "workshop", "grey"] as const) {
        const { svg } = renderDrawing(d, {
          scale: 1 / 20,
          bindings: () => ({ hex: "#aabbcc" }),
          style,
          dimensions: true,
          idPrefix: "d",
        });
        expect(svg).not.toMatch(/NaN|Infinity|undefined/);
      }
    }
  });

  test("the workshop drawings carry the sizes as written, each piece's letter, and a lozenge where a motif is centred", () => {
    const { drawing, fields, made, look } = sample(at);
    const views = drawing.workshop(fields, made, look);
    const texts = views
      .flatMap((d) => [...d.dimensions.map((x) => x.text), ...words(d)])
      .join(" | ");
    for (const l of (fields as { size?: readonly Length[] }).size ?? [])
      expect(texts).toContain(printLength(l, "inches"));
    const pieces = ((made as { pieces?: readonly CoverPiece[] }).pieces ??
      []) as readonly CoverPiece[];
    const flat = views.find((d) => d.below);
    for (const piece of flat ? pieces : [])
      expect(
        words(flat as Drawing).some((t) => t.split(" ")[0] === piece.letter),
        piece.letter,
      ).toBe(true);
    const lozenges = views
      .flatMap((d) => all(d.shapes))
      .filter((s) => s.shape === "sign" && s.sign === "lozenge");
    const centred =
      made.cuts.some((c) => c.across.how === "motif-at" && c.along.how === "motif-at") ||
      pieces.some((x) => x.centred) ||
      made.cuts.some((c) => c.across.how === "whole-width" && c.along.how === "motif-at");
    expect(lozenges.length > 0).toBe(centred);
  });

  test("its sheet speaks each vocabulary, and no figure is missing", () => {
    const of = (language: "en-US" | "en-GB") => {
      const { drawing, fields, made, look } = sample(at, language);
      const sheet = drawing.sheet(fields, made, look);
      const drawn = drawing.workshop(fields, made, look).flatMap(words);
      return [
        ...sheet.groups.flatMap((g) => [g.heading, ...g.lines]),
        ...sheet.checks.map((c) => c.text),
        ...sheet.signs,
        ...drawn,
      ].join("\n");
    };
    expect(of("en-US")).not.toMatch(/colour|centred\b|moulding|mitred|mitres|panelled|Piping/);
    expect(of("en-GB")).not.toMatch(/color\b|centered|molding|miter|paneled|Welt\b/);
    expect(of("en-US")).not.toMatch(/undefined|NaN|null/);
  });
});
