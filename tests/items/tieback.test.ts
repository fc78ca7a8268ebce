import fc from "fast-check";
import { expect, test } from "vitest";
import { textWidthMm } from "../../src/drawing/words.ts";
import { tiebackDrawing } from "../../src/items/tieback/drawing.ts";
import { tiebackKind } from "../../src/items/tieback/kind.ts";
import type { TiebackMade } from "../../src/items/tieback/pieces.ts";
import type { TiebackFields } from "../../src/items/tieback/schema.ts";
import { tiebackWorkshop } from "../../src/items/tieback/workshop.ts";
import {
  type ContextAsk,
  clothFacts,
  contextFor,
  fieldsOf,
  inUnit,
  length,
} from "./tradeContext.ts";
import { windowFacts } from "./windowContext.ts";

// Sizes of tie-backs: common practice, no source. The geometry is checked against points of the arcs themselves.
const PLAIN = clothFacts({ id: "print", name: "Print", usableWidth: length(`54"`) });

function make(raw: Record<string, unknown>, ask: ContextAsk = {}, cloth = PLAIN) {
  const fields = fieldsOf(tiebackKind.schema, {
    tieback: "Bay",
    cloth: "print",
    ...raw,
  }) as TiebackFields;
  const context = contextFor(tiebackKind.allowances, { cloths: [cloth], ...ask });
  return { fields, context, made: tiebackKind.make(fields, context) as TiebackMade };
}
const codes = (made: TiebackMade) => made.diagnostics.map((d) => `${d.code} at ${d.keyPath}`);
const SHAPED = { length: `24"`, depth: `5"`, "end-depth": `2"`, sag: `3"`, count: "2" };

test("front and back are cut from the rectangle round the shape, seams included", () => {
  const { made } = make(SHAPED);
  expect(
    made.cuts.map((c) => [c.piece, c.count, inUnit(c.width, "in"), inUnit(c.height, "in")]),
  ).toEqual([
    ["tie-back, front", 2, 25, 9],
    ["tie-back, back", 2, 25, 9],
  ]);
  expect(made.materials.map((m) => m.text.replaceAll("\u00a0", " "))).toEqual([
    "2 pieces of stiff buckram, 24″ × 8″",
    "4 tie-back rings",
    "2 tie-back hooks",
  ]);
});

test("its edges measured along narrow straight pieces, and its face by strips", () => {
  const { made } = make(SHAPED);
  const plan = made.plan;
  if (!plan?.upperRadiusMm || !plan.lowerRadiusMm) throw new Error("no arcs");
  // A sagging arc through (0, from) and its lowest point (middle, from + rise).
  const at = (radius: number, from: number, rise: number) => (x: number) =>
    from + rise - radius + Math.sqrt(radius * radius - (x - 304.8) ** 2);
  const upper = at(plan.upperRadiusMm, 0, 76.2);
  const lower = at(plan.lowerRadiusMm, 50.8, 152.4);
  expect([upper(0), upper(304.8), lower(0), lower(304.8)].map((v) => v.toFixed(6))).toEqual([
    "0.000000",
    "76.200000",
    "50.800000",
    "203.200000",
  ]);
  let [run, area] = [2 * 50.8, 0];
  const steps = 40_000;
  const dx = 609.6 / steps;
  for (let i = 0; i < steps; i += 1) {
    const [x, next] = [i * dx, (i + 1) * dx];
    run += Math.hypot(dx, upper(next) - upper(x)) + Math.hypot(dx, lower(next) - lower(x));
    area += (lower(x + dx / 2) - upper(x + dx / 2)) * dx;
  }
  // The perimeter goes up to an eighth of an inch, never down.
  expect(plan.perimeter.toMm() - run).toBeGreaterThan(-1e-3);
  expect(plan.perimeter.toMm() - run).toBeLessThan(25.4 / 8 + 1e-3);
  expect(plan.faceAreaMm2 / area).toBeCloseTo(1, 6);
});

test("a longer or deeper one never needs less; both unit systems agree", () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 12, max: 40 }),
      fc.integer({ min: 3, max: 8 }),
      fc.integer({ min: 0, max: 5 }),
      (long, deep, sag) => {
        const raw = { length: `${long}"`, depth: `${deep}"`, "end-depth": `2"`, sag: `${sag}"` };
        const one = make(raw).made;
        const metric = make(
          {
            length: `${(long * 2.54).toFixed(2)} cm`,
            depth: `${(deep * 2.54).toFixed(2)} cm`,
            "end-depth": "5.08 cm",
            sag: `${(sag * 2.54).toFixed(2)} cm`,
          },
          { units: "centimetres", allowances: { seam: "1.27 cm" } },
        ).made;
        if (!one.plan) return;
        expect(metric.figures.cutWidthMm).toBeCloseTo(one.figures.cutWidthMm as number, 6);
        expect(metric.figures.cutHeightMm).toBeCloseTo(one.figures.cutHeightMm as number, 6);
        const longer = make({ ...raw, length: `${long + 1}"` }).made;
        const deeper = make({ ...raw, depth: `${deep + 1}"` }).made;
        for (const more of [longer, deeper]) {
          if (!more.plan) continue;
          const need = (m: TiebackMade) => (m.handbook[0] ? inUnit(m.handbook[0].length, "in") : 0);
          expect(need(more)).toBeGreaterThanOrEqual(need(one));
        }
      },
    ),
    { numRuns: 100, seed: 3 },
  );
});

test("what cannot be made is refused at its line, and what is not known is asked", () => {
  expect(codes(make({ ...SHAPED, length: `60"` }).made)).toEqual([
    "tieback-wider-than-cloth at items[0].cloth",
  ]);
  expect(codes(make({ ...SHAPED, "end-depth": `9"` }).made)).toEqual([
    "tieback-impossible at items[0].end-depth",
  ]);
  expect(codes(make({ ...SHAPED, sag: `14"` }).made)).toEqual([
    "tieback-impossible at items[0].sag",
  ]);
  expect(codes(make({ shape: "straight", length: `20"`, sag: `3"` }).made)).toEqual([
    "tieback-is-straight at items[0].sag",
  ]);
  expect(make({}).made.questions.join(" ")).toMatch(/How far is it round the curtain.*count: 2/);
});

test("a motif stands in its middle; drawings and sheet are there", () => {
  const print = {
    ...PLAIN,
    repeat: {
      up: length(`9"`),
      across: length(`27"`),
      match: "straight" as const,
      fromSelvedge: length(`13.5"`),
    },
  };
  const { fields, made, context } = make(SHAPED, {}, print);
  expect(made.cuts[0]?.across.how).toBe("motif-at");
  expect(made.cuts[1]?.across.how).toBe("free");
  const look = { ...context, language: "en-US" as const };
  expect(tiebackDrawing.workshop(fields, made, look)[0]?.widthMm).toBeCloseTo(25 * 25.4, 6);
  expect(tiebackDrawing.elevation(fields, made, look)?.shapes.length).toBeGreaterThan(2);
  expect(tiebackDrawing.sheet(fields, made, look).groups.map((g) => g.heading)).toContain("Rings");
});

test("a tie-back at a window is told that it holds no curtains; on its curtains it is not", () => {
  const window = windowFacts(`60"`, `50"`, `30"`);
  const fields = fieldsOf(tiebackKind.schema, { tieback: "Bay", cloth: "print" }) as never;
  const at = (where: typeof window | null) =>
    (
      tiebackKind.make(fields, {
        ...contextFor(tiebackKind.allowances, {
          cloths: [clothFacts({ id: "print", usableWidth: length(`54"`) })],
        }),
        window: where,
      }) as { diagnostics: readonly { code: string; severity: string }[] }
    ).diagnostics.map((d) => `${d.severity} ${d.code}`);
  expect(at(window)).toEqual(["warning tieback-without-curtains"]);
  expect(at(null)).toEqual([]);
});

// Print design 10: a note never covers an outline. Arcs through the same three points, worked out here once more.
test.each([
  { length: `24"`, depth: `5"`, "end-depth": `2"`, sag: `3"` },
  { length: `26"`, depth: `5"`, "end-depth": `2"`, sag: `4"` },
])(
  "the radii stand clear of both edges and end before the lines of the width ($length, sag $sag)",
  (size) => {
    const { fields, made, context } = make({ ...size, count: "2" });
    const plan = made.plan;
    if (!plan?.upperRadiusMm || !plan.lowerRadiusMm) throw new Error("no arcs");
    const flat = tiebackWorkshop(fields, made, context as never)[0];
    const [group] = flat?.shapes ?? [];
    const notes = group?.shape === "group" ? group.children.filter((c) => c.shape === "note") : [];
    expect(notes).toHaveLength(2);
    const wide = plan.length.toMm();
    const arc = (lowest: number, radius: number) => (x: number) =>
      lowest - radius + Math.sqrt(radius ** 2 - (x - wide / 2) ** 2);
    const upper = arc(plan.sag.toMm(), plan.upperRadiusMm);
    const lower = arc(plan.height.toMm(), plan.lowerRadiusMm);
    for (const scale of [6, 8, 10]) {
      for (const [at, note] of notes.entries()) {
        if (note.shape !== "note") continue;
        const from = note.x / scale + note.dxPaper;
        const base = note.y / scale + note.dyPaper;
        const to = from + textWidthMm(note.text) * 0.9;
        for (let x = from; x <= Math.min(to, wide / scale); x += 0.5) {
          if (at === 0) expect(base).toBeLessThan(upper(x * scale) / scale - 0.3);
          else
            expect(base - 2.5).toBeGreaterThan((lower(x * scale) + plan.seam.toMm()) / scale + 0.3);
        }
        if (at === 1) expect(to).toBeLessThan(wide / scale);
        // The lines of the width begin at the drawing's foot, which lies below the lower radius.
        const foot = ((flat?.heightMm ?? 0) - plan.seam.toMm()) / scale;
        if (at === 1) expect(base).toBeLessThan(foot);
      }
    }
  },
);

test("its motif stands in the middle of the band, not of the rectangle that it is cut from", () => {
  const print = clothFacts({
    id: "print",
    usableWidth: length(`54"`),
    repeat: {
      up: length(`25"`),
      across: length(`13 1/2"`),
      match: "straight",
      fromSelvedge: length(`6 3/4"`),
    },
  });
  const { fields, context, made } = make(SHAPED, {}, print);
  const front = made.cuts[0];
  // Worked by hand: half of 5 in, and the half inch of seam below it; the rectangle's own middle is 4 1/2 in up.
  expect(front?.along.how === "motif-at" && inUnit(front.along.aboveFoot, "in")).toBe(3);
  const [flat] = tiebackWorkshop(fields, made, { ...context, cloth: () => null } as never);
  const group = flat?.shapes[0];
  const signs = group?.shape === "group" ? group.children : [];
  const lozenge = signs.find((s) => s.shape === "sign" && s.sign === "lozenge");
  // From the upper edge of its ends: 3 in of sag and half of 5 in.
  expect(lozenge?.shape === "sign" && lozenge.y).toBeCloseTo(5.5 * 25.4, 6);
});
