import fc from "fast-check";
import { expect, test } from "vitest";
import { cushionKind } from "../../src/items/cushion/kind.ts";
import { seatPadAllowances } from "../../src/items/cushion/seatpad/allowances.ts";
import { slantUp } from "../../src/items/cushion/seatpad/padShape.ts";
import { makeSeatPad } from "../../src/items/cushion/seatpad/pieces.ts";
import { seatPadSchema } from "../../src/items/cushion/seatpad/schema.ts";
import { seatPadSheet } from "../../src/items/cushion/seatpad/sheet.ts";
import { Length } from "../../src/units/length.ts";
import {
  type ContextAsk,
  clothFacts,
  contextFor,
  fieldsOf,
  given,
  inUnit,
  length,
  tradeCase,
  wanted,
} from "./tradeContext.ts";

const CLOTHS = [
  clothFacts({ id: "slub", name: "Slub", usableWidth: length('54"'), mayTurn: true }),
  clothFacts({ id: "cord", name: "Cord", usableWidth: length('54"'), nap: true }),
  clothFacts({
    id: "fern",
    name: "Fern",
    usableWidth: length('54"'),
    repeat: {
      up: length('24"'),
      across: length('18"'),
      match: "half-drop",
      fromSelvedge: length('9"'),
    },
  }),
];

function make(raw: Record<string, unknown>, ask: ContextAsk = {}) {
  const fields = fieldsOf(seatPadSchema, {
    "seat-pad": "Bench",
    cloth: "slub",
    size: '18" x 16"',
    ...raw,
  });
  return makeSeatPad(fields, contextFor(seatPadAllowances, { cloths: CLOTHS, ...ask }));
}
const sizes = (made: ReturnType<typeof make>) =>
  made.cuts.map((c) => [c.piece, inUnit(c.width, "in"), inUnit(c.height, "in"), c.count]);

const WIDE = clothFacts({ id: "wide", usableWidth: length("3 m"), mayTurn: true });
const pair = (v: unknown) => (v as { value: number[] }).value;

test("a boxed pad is a box cushion: plates and boxing of cu-03 (sewing reference page, Box Pillow) and cu-11 (common practice, no source)", () => {
  const inch = tradeCase("cushions", "cu-03");
  const made = make(
    { cloth: "wide", size: '18" x 18"', thickness: '3"', closure: "sewn", ties: "2" },
    { cloths: [WIDE] },
  );
  expect(given(inch, "width")).toBe(18);
  expect(sizes(made)).toEqual([
    ["top", ...pair(inch.expected.plates), 1],
    ["bottom", ...pair(inch.expected.plates), 1],
    ["boxing, all round", ...pair(inch.expected.boxing), 1],
    ["tie", 3, 15, 4],
  ]);
  const metric = tradeCase("cushions", "cu-11");
  const [w, d, t] = pair(metric.inputs.finished);
  const welted = make(
    {
      cloth: "wide",
      size: `${w} cm x ${d} cm`,
      thickness: `${t} cm`,
      closure: "sewn",
      edge: { welt: "wide" },
      fastening: "loose",
    },
    {
      cloths: [WIDE],
      units: "centimetres",
      allowances: { "welt-lap": "3 cm", "bias-extra": "1", "bias-turning": "0 cm" },
    },
  );
  expect(
    sizes(welted).map((c) => c.slice(1, 3).map((n) => Number(((n as number) * 2.54).toFixed(6)))),
  ).toEqual([
    pair(metric.expected.plates),
    pair(metric.expected.plates),
    [wanted(metric, "boxing_total_length"), wanted(metric, "boxing_width")],
    [wanted(metric, "bias_square"), wanted(metric, "bias_square")],
  ]);
  expect((welted.figures.weltMm ?? 0) / 10).toBe(wanted(metric, "welt_length"));
});

test("a pad is cut as the box cushion of the same size", () => {
  for (const [size, thickness] of [
    ['20" x 20"', '3"'],
    ["50 cm x 45 cm", "6 cm"],
  ] as const) {
    const pad = make({ size, thickness, fastening: "loose" });
    const fields = fieldsOf(cushionKind.schema, {
      cushion: "Bench",
      cloth: "slub",
      size,
      thickness,
      filling: "foam",
    });
    const cushion = cushionKind.make(
      fields as never,
      contextFor(cushionKind.allowances, { cloths: CLOTHS }),
    );
    expect(pad.cuts).toEqual(cushion.cuts);
  }
});

test("a round pad's boxing is pi x diameter and two seams, up; never shorter than binary pi gives (cu-01 rounds a bolster's wrap so)", () => {
  const c = tradeCase("cushions", "cu-01");
  const d = given(c, "diameter");
  const made = make({ size: `${d}" x ${d}"`, shape: "round", thickness: '2"', closure: "sewn" });
  const strip = made.cuts.find((x) => x.piece.startsWith("boxing"));
  // The bolster's published wrap has the same girth and the same two seams; its end is the same circle.
  expect(inUnit(strip?.width ?? Length.zero, "in")).toBeCloseTo(wanted(c, "body_wrap"), 0);
  expect(inUnit(strip?.width ?? Length.zero, "in")).toBeGreaterThanOrEqual(Math.PI * d + 1);
  expect(inUnit(made.cuts[0]?.width ?? Length.zero, "in")).toBe(wanted(c, "end_circle_diameter"));
  const wide = make({
    size: '30" x 30"',
    shape: "round",
    thickness: '2"',
    closure: "sewn",
    cloth: "cord",
  });
  expect(wide.cuts.filter((x) => x.piece.startsWith("boxing"))).toHaveLength(1);
  expect(wide.cuts.find((x) => x.piece.startsWith("boxing"))?.count).toBe(2);
  expect(wide.diagnostics).toEqual([]);
});

test("a tapered pad's sides are the slant, up to the step and never short; boxing and welt follow the true edge", () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 4000 }), fc.integer({ min: 1, max: 8000 }), (a, b) => {
      const up = slantUp(Length.mm(a), Length.mm(b), Length.mm(1)).toMm();
      expect(up * up).toBeGreaterThanOrEqual(a * a + b * b);
      expect((up - 1) * (up - 1)).toBeLessThan(a * a + b * b);
    }),
    { numRuns: 200 },
  );
  // 3-4-5: 18 at the front, 12 at the back, 4 deep.
  const made = make({
    size: '18" x 4"',
    "back-width": '12"',
    thickness: '1"',
    closure: "sewn",
    edge: { welt: "slub" },
  });
  expect(made.shape).toBe("tapered");
  expect(inUnit(made.boxing?.perimeter ?? Length.zero, "in")).toBe(18 + 12 + 2 * 5);
  expect((made.figures.weltMm ?? 0) / 25.4).toBeCloseTo(2 * 40 + 2 * 2, 9);
});

test("a bench wider than its cloth: joined in register, run sideways, or told with all that would work", () => {
  const bench = {
    cloth: "fern",
    size: '70" x 18"',
    thickness: '3"',
    closure: "sewn",
    boxing: "slub",
  };
  const none = make({ ...bench, motif: "as-it-falls" });
  expect(none.diagnostics[0]).toMatchObject({
    code: "piece-wider-than-cloth",
    keyPath: "items[0].size",
  });
  expect(none.diagnostics[0]?.hint).toMatch(/railroad: yes.*join: both-sides.*wider cloth/);
  const joined = make({ ...bench, join: "both-sides" });
  expect(joined.diagnostics).toEqual([]);
  const top = joined.cuts.filter((c) => c.surface === "face");
  expect(top.map((c) => c.across.how)).toEqual(["selvedge", "whole-width", "selvedge"]);
  const width = Length.sum(top.map((c) => c.width)).minus(Length.inches(2));
  expect(inUnit(width, "in")).toBe(71);
  const sideways = make({ ...bench, railroad: "yes", motif: "as-it-falls" });
  expect(sideways.diagnostics).toEqual([]);
  expect(inUnit(sideways.cuts[0]?.height ?? Length.zero, "in")).toBe(71);
});

test("a boxing strip wider than a cloth that may not turn is told so at its own line, with joins, railroading, another or a wider cloth", () => {
  const made = make({ size: '60" x 18"', thickness: '3"', closure: "sewn", boxing: "cord" });
  const found = made.diagnostics.filter((d) => d.code === "boxing-wider-than-cloth");
  expect(found).toHaveLength(2);
  expect(found[0]).toMatchObject({ keyPath: "items[0].boxing" });
  expect(found[0]?.message).toContain("the front of the boxing is still 61″ long");
  expect(found[0]?.hint).toMatch(/railroad: yes.*join: both-sides.*any way.*wider cloth/);
  const zip = make({ size: '50" x 18"', thickness: '3"', cloth: "cord" }).diagnostics;
  expect(zip.map((d) => d.code)).toEqual(["boxing-wider-than-cloth"]);
  expect(zip[0]?.message).toContain("zip boxing");
  expect(zip[0]?.hint).toContain("closure: sewn");
  // Joined, or on cloth that may turn, it has a place.
  expect(
    make({
      size: '60" x 18"',
      thickness: '3"',
      closure: "sewn",
      boxing: "cord",
      join: "both-sides",
    }).diagnostics,
  ).toEqual([]);
  expect(make({ size: '50" x 18"', thickness: '3"' }).diagnostics).toEqual([]);
});

test("ties, buttons and what holds it are counted", () => {
  const made = make({ count: "4", ties: "2", buttons: "4", "back-width": '15"' });
  expect(made.cuts.find((c) => c.piece === "tie")?.count).toBe(16);
  expect(made.cuts.some((c) => c.piece === "32 button covers")).toBe(true);
  expect(made.cautions).toEqual(["fire", "small-parts"]);
  expect(make({ fastening: "non-slip" }).materials.map((m) => m.what)).toContain("non-slip mat");
  expect(make({ fastening: "hook-and-loop" }).materials.map((m) => m.what)).toContain(
    "hook-and-loop tape",
  );
  expect(make({}).questions.join(" ")).toContain("How is the pad held");
});

test("bad input is told at its line", () => {
  for (const [raw, code, key] of [
    [{ shape: "tapered" }, "pad-not-measured", "shape"],
    [{ shape: "round" }, "round-not-round", "size"],
    [{ "back-width": '19"' }, "back-wider-than-front", "back-width"],
    [{ shape: "rectangle", "back-width": '15"' }, "not-of-this-shape", "back-width"],
    [{ boxing: "slub" }, "not-of-this-form", "boxing"],
    [{ ties: "2", fastening: "loose" }, "ties-not-asked", "ties"],
  ] as const) {
    const found = make(raw).diagnostics[0];
    expect(found, code).toMatchObject({ code, keyPath: `items[0].${key}` });
    expect(found?.hint, code).toBeTruthy();
  }
});

test("inches and centimetres agree exactly; larger never takes less", () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 8, max: 40 }),
      fc.integer({ min: 8, max: 40 }),
      fc.constantFrom("slub", "fern"),
      (w, d, cloth) => {
        const of = (a: string, b: string) =>
          make({
            cloth,
            motif: cloth === "fern" ? "as-it-falls" : undefined,
            size: `${a} x ${b}`,
            thickness: "5 cm",
            fastening: "loose",
          });
        const inches = of(`${w}"`, `${d}"`);
        const metric = of(`${(w * 254) / 100} cm`, `${(d * 254) / 100} cm`);
        const list = (m: typeof inches) =>
          m.cuts.map((c) => [c.width.mm.toFraction(), c.height.mm.toFraction(), c.count]);
        expect(list(metric)).toEqual(list(inches));
        const area = (m: typeof inches) =>
          m.cuts.reduce((n, c) => n + c.width.toMm() * c.height.toMm() * c.count, 0);
        expect(area(of(`${w + 1}"`, `${d}"`))).toBeGreaterThan(area(inches));
        expect(area(of(`${w}"`, `${d + 1}"`))).toBeGreaterThan(area(inches));
      },
    ),
    { numRuns: 80 },
  );
});

// By hand: 14 in across and two seams of 1/2 in are 15 in, a radius of 7 1/2 in.
test("the sheet of a shaped pad gives its template, and says that the plan keeps the rectangle", () => {
  const raw = {
    "seat-pad": "Stool",
    cloth: "slub",
    size: '14" x 14"',
    shape: "round",
    thickness: '2"',
  };
  const sheet = seatPadSheet(fieldsOf(seatPadSchema, raw), make(raw), {
    units: "inches",
    language: "en-US",
    cloth: () => null,
    object: () => null,
  });
  const shape = sheet.groups.find((g) => g.heading === "Shape")?.lines.join(" ") ?? "";
  expect(shape.replaceAll("\u202f", " ")).toContain("a circle of 7 1/2″ radius");
  expect(shape.replaceAll("\u202f", " ")).toContain("the whole square that holds it, 15");
});
