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
import { clothFacts, contextFor, fieldsOf, length, wallRun } from "./tradeContext.ts";

const CLOTHS = [
  clothFacts({
    id: "fern",
    name: "Fern",
    usableWidth: length('54"'),
    repeat: {
      up: length('9"'),
      across: length('13 1/2"'),
      match: "half-drop",
      fromSelvedge: length('6 3/4"'),
    },
  }),
  clothFacts({ id: "slub", name: "Slub", usableWidth: length('54"'), mayTurn: true }),
  clothFacts({
    id: "rope",
    name: "Rope",
    type: "wallcovering",
    roll: { width: length('6"'), length: length("5 yd") },
  }),
  clothFacts({
    id: "leaf",
    name: "Leaf",
    type: "wallcovering",
    roll: { width: length('20 1/2"'), length: length("11 yd") },
  }),
];
const SEAT = [
  { piece: "inside-back", size: '34" x 24"', centred: "yes" },
  { piece: "outside-back", size: '60" x 26"', join: "both-sides" },
  { piece: "cushion-top", size: '22" x 24"', centred: "yes", count: "2" },
  { piece: "cushion-bottom", size: '22" x 24"', count: "2", cloth: "slub" },
  { piece: "boxing", size: '44" x 5"', count: "4" },
  { piece: "back-cushion-front", size: '22" x 20"', count: "2" },
  { piece: "front-border", size: '46" x 8"' },
  { piece: "inside-arm", size: '26" x 24"' },
  { piece: "outside-arm", size: '32" x 20"' },
  { piece: "arm-front", size: '6" x 20"' },
];
const SAMPLES: readonly { kind: string; raw: Record<string, unknown> }[] = [
  {
    kind: "sofa",
    raw: {
      sofa: "S",
      cloth: "fern",
      size: '62" x 34" x 32"',
      welt: "slub",
      "welt-length": "14 yd",
      pieces: SEAT,
    },
  },
  { kind: "sofa", raw: { sofa: "S", cloth: "fern", type: "sofa", size: '84" x 36" x 32"' } },
  {
    kind: "dining-chair",
    raw: {
      "dining-chair": "D",
      cloth: "fern",
      size: '19" x 21" x 38"',
      welt: "slub",
      "welt-length": "3 yd",
      pieces: [
        { piece: "seat", size: '20" x 19"', centred: "yes" },
        { piece: "inside-back", size: '16" x 16"', centred: "yes" },
        { piece: "outside-back", size: '16" x 17"' },
      ],
    },
  },
  {
    kind: "dining-chair",
    raw: { "dining-chair": "D", cloth: "fern", type: "seat", arms: "yes", size: '22" x 21" x 38"' },
  },
  {
    kind: "drop-in-seat",
    raw: {
      "drop-in-seat": "D",
      cloth: "fern",
      size: '18" x 16"',
      "back-width": '15"',
      thickness: '2"',
      count: "6",
    },
  },
  {
    kind: "ottoman",
    raw: {
      ottoman: "O",
      cloth: "fern",
      size: '36" x 24" x 17"',
      legs: '5"',
      welt: "slub",
      buttons: "6",
    },
  },
  {
    kind: "ottoman",
    raw: { ottoman: "O", cloth: "fern", size: '20" x 20" x 17"', shape: "round", legs: '0"' },
  },
  {
    kind: "headboard",
    raw: {
      headboard: "H",
      cloth: "fern",
      size: '60" x 3" x 40"',
      buttons: "14",
      buttoning: "deep",
      fixing: "wall",
      weight: "14 kg",
    },
  },
  {
    kind: "headboard",
    raw: {
      headboard: "H",
      cloth: "fern",
      size: '40" x 3" x 36"',
      border: '4"',
      "border-cloth": "slub",
      welt: "slub",
      shape: "arched",
      rise: '6"',
    },
  },
  {
    kind: "seat-pad",
    raw: {
      "seat-pad": "P",
      cloth: "fern",
      size: '17" x 16"',
      "back-width": '14"',
      thickness: '2"',
      edge: { welt: "slub" },
      ties: "2",
      buttons: "4",
    },
  },
  {
    kind: "seat-pad",
    raw: {
      "seat-pad": "P",
      cloth: "fern",
      back: "slub",
      size: '70" x 18"',
      thickness: '3"',
      boxing: "slub",
      join: "both-sides",
    },
  },
  {
    kind: "seat-pad",
    raw: {
      "seat-pad": "P",
      cloth: "slub",
      size: '13" x 13"',
      shape: "round",
      fastening: "non-slip",
    },
  },
  {
    kind: "panelled-wall",
    raw: {
      "panelled-wall": "W",
      at: { wall: "north", "from-left": '6"' },
      size: '120" x 88"',
      panels: "5",
      cloth: "fern",
      trim: "gimp",
    },
  },
  {
    kind: "panelled-wall",
    raw: {
      "panelled-wall": "W",
      at: { wall: "north" },
      size: '120" x 88"',
      panels: "3",
      lower: '24"',
    },
  },
  {
    kind: "wallpaper",
    raw: {
      wallpaper: "W",
      cloth: "leaf",
      on: "walls",
      borders: [
        { cloth: "rope", at: "ceiling" },
        { cloth: "rope", at: "rail", height: '36"' },
      ],
    },
  },
];

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
