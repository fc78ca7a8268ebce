import { expect, test } from "vitest";
import { runsOf } from "../../src/items/bedskirt/runs.ts";
import type { ObjectFacts } from "../../src/items/itemKind.ts";
import { runnerAllowances } from "../../src/items/runner/allowances.ts";
import { runnerDrawing } from "../../src/items/runner/drawing.ts";
import { runnerSchema } from "../../src/items/runner/schema.ts";
import type { Length } from "../../src/units/length.ts";
import {
  ask,
  bedSkirt,
  cloth,
  codes,
  coverlet,
  figure,
  runner,
  tablecloth,
  tableSkirt,
  throwOver,
} from "./bedTableMade.ts";
import { clothFacts, contextFor, fieldsOf, inUnit, length } from "./tradeContext.ts";

test("the runs of a bed skirt go on round its corners, or stop at each where it is split", () => {
  const bed = { width: length('60"'), length: length('80"'), height: length('25"') };
  const of = (sides: ("left" | "foot" | "right" | "head")[], split = false) =>
    runsOf(bed, sides, split).map((r) => [inUnit(r.length, "in"), r.corners]);
  expect(of(["left", "foot", "right"])).toEqual([[220, 2]]);
  expect(of(["right", "head", "left"])).toEqual([[220, 2]]);
  expect(of(["left", "right"])).toEqual([
    [80, 0],
    [80, 0],
  ]);
  expect(of(["left", "foot", "right", "head"])).toEqual([[280, 3]]);
  expect(of(["left", "foot", "right"], true)).toEqual([
    [80, 0],
    [60, 0],
    [80, 0],
  ]);
});

test("measures come from the card of the bed or table; without them, and for what cannot be, it is said at the line", () => {
  const host: ObjectFacts = {
    id: "bed",
    name: "Oak bed",
    shape: "bed",
    round: false,
    mattress: [length('60"'), length('80"'), length('25"')],
    width: length('64"'),
    depth: length('84"'),
    height: length('46"'),
    weight: null,
    stays: true,
    owner: null,
    hasPhoto: false,
    colours: [],
  };
  expect(figure(coverlet({ drop: '10"' }, { host }), "widthMm", "in")).toBe(80);
  const table = {
    ...host,
    shape: "table" as const,
    mattress: null,
    round: true,
    depth: length('64"'),
  };
  expect(tablecloth({ to: "floor" }, { host: table }).figures.diameterMm).toBeDefined();
  expect(codes(coverlet({ drop: '10"' }))).toEqual(["bed-not-measured at items[0].bed"]);
  expect(codes(coverlet({ bed: '60" x 80" x 25"' }))).toEqual([
    "coverlet-without-drop at items[0].drop",
  ]);
  expect(codes(tablecloth({ drop: '10"' }))).toEqual(["table-not-measured at items[0].table"]);
  expect(codes(tablecloth({ table: '60" x 30" x 29"', form: "round", drop: '10"' }))).toEqual([
    "round-table-not-round at items[0].form",
  ]);
  const bed = '60" x 80" x 25"';
  expect(codes(coverlet({ bed, drop: '30"' }))).toContain("cover-below-floor at items[0].drop");
  expect(codes(bedSkirt({ bed, drop: '15"', railroad: "yes" }, {}, cloth('12"')))).toEqual([
    "skirt-deeper-than-cloth at items[0].cloth",
  ]);
  expect(codes(bedSkirt({ bed, drop: '15"' }, {}, cloth('1"')))).toEqual([
    "cloth-narrower-than-joins at items[0].cloth",
  ]);
  expect(codes(coverlet({ bed, drop: '10"' }, {}, clothFacts({ id: "print" })))).toEqual([
    "cloth-without-width at items[0].cloth",
  ]);
  expect(codes(throwOver({ size: '50" x 60"', motif: "centred" }))).toEqual([
    "no-motif-to-centre at items[0].motif",
  ]);
});

// A welt runs round the foot and both sides; the head of one layer has nothing to hold its raw edge but a hem (common practice, no source).
test("the head of a welted cover of one layer is cut with its hem, that of a backed one with its seam", () => {
  const bed = { bed: '60" x 80" x 25"', drop: '10"', pillows: "none" };
  const edge = { welt: "print" };
  expect(figure(coverlet({ ...bed, edge }), "cutLengthMm", "in")).toBeCloseTo(90 + 0.5 + 2, 6);
  expect(figure(coverlet({ ...bed, edge }), "cutWidthMm", "in")).toBeCloseTo(80 + 1, 6);
  const backed = coverlet({ ...bed, edge, back: "lining" });
  expect(figure(backed, "cutLengthMm", "in")).toBeCloseTo(90 + 1, 6);
  expect(figure(coverlet(bed), "cutLengthMm", "in")).toBeCloseTo(90 + 4, 6);
});

test("quilting takes up cloth each way; a welt, a trim and weights are asked for, with their cautions", () => {
  const made = coverlet({
    bed: '60" x 80" x 25"',
    drop: '10"',
    quilted: "yes",
    back: "lining",
    edge: { welt: "print" },
    pillows: "none",
  });
  expect(figure(made, "cutWidthMm", "in")).toBeCloseTo(80 * 1.05 + 1, 6);
  expect(made.questions.join(" ")).toContain("which wadding");
  expect(made.materials.map((m) => m.what)).toEqual(["welt cord"]);
  expect(made.cuts.some((c) => c.surface === "welt")).toBe(true);
  const weighted = tablecloth({ table: '30" x 30" x 29"', drop: '10"', weights: "yes" });
  expect(weighted.cautions).toEqual(["fire", "long-cloths", "small-parts"]);
  expect(weighted.materials[0]?.text).toContain("4 hem weights");
  expect(tableSkirt({ table: '30" x 30" x 29"' }).materials.map((m) => m.what)).toEqual([
    "header tape",
    "table clips",
  ]);
});

test("a stripe runs on over a join with one in the very middle, and a fringed throw has no hem at its ends", () => {
  const repeat = {
    up: length('1/4"'),
    across: length('9"'),
    match: "free" as const,
    fromSelvedge: null,
  };
  const striped = tablecloth(
    { table: '60" x 30" x 29"', drop: '10"' },
    {},
    cloth('54"', { repeat }),
  );
  // Stripes at 4 1/2, 13 1/2 … 49 1/2 in: none in the middle of 54 in; the widest piece with one in its middle is 45 in.
  const cut = inUnit(striped.cuts[1]?.width as Length, "in");
  expect(cut).toBe(45);
  const whole = figure(striped, "cutWidthMm", "in");
  const parts = striped.cuts.map((c) => inUnit(c.width, "in"));
  const turning = (parts.reduce((a, b) => a + b, 0) - whole) / 4;
  expect(
    striped.cuts.map((c) => c.across.how === "motif-at" && inUnit(c.across.fromLeft, "in")),
  ).toEqual([whole / 2, 45 / 2, turning - (45 - 2 * turning) / 2]);
  const checked = tablecloth(
    { table: '60" x 30" x 29"', drop: '10"' },
    {},
    cloth('54"', { repeat: { ...repeat, across: length('18"') } }),
  );
  expect(checked.cuts.map((c) => c.across)).toEqual([
    { how: "selvedge", side: "right" },
    { how: "whole-width" },
    { how: "selvedge", side: "left" },
  ]);
  const fringed = throwOver({ size: '50" x 60"', fringe: '3"' }, { allowances: { hem: '1"' } });
  expect([figure(fringed, "cutWidthMm", "in"), figure(fringed, "cutLengthMm", "in")]).toEqual([
    52, 66,
  ]);
});

// Sums by hand; common practice, no source. Round the table 377 cm × 3 + 4 cm lap = 1135 cm; cut 74 + 5 + 2 = 81 cm deep.
test("plain cloth runs sideways for a skirt where strips fill its width, and not where that would take far more than widths", () => {
  const plain = (width: string) => cloth(width, { mayTurn: true });
  const skirt = (width: string, more: object = {}) =>
    tableSkirt(
      { table: "120 cm x 120 cm x 75 cm", form: "round", style: "box-pleat", ...more },
      { units: "centimetres" },
      plain(width),
    );
  // One strip on 150 cm would leave 69 cm beside it all along 11.35 m; eight widths of 81 cm are 6.48 m.
  const widths = skirt("150 cm").cuts;
  expect(widths.reduce((n, c) => n + c.count, 0)).toBe(8);
  for (const cut of widths) expect(inUnit(cut.height, "cm")).toBe(81);
  // Two strips fill 170 cm but for 8 cm: no joins but two.
  const strips = skirt("170 cm").cuts;
  expect(strips.reduce((n, c) => n + c.count, 0)).toBe(2);
  // What is said counts.
  expect(skirt("150 cm", { railroad: "yes" }).cuts.reduce((n, c) => n + c.count, 0)).toBe(1);
  // Deeper than the cloth is wide it is made of widths, and nothing is wrong.
  const deep = tableSkirt(
    { table: "120 cm x 120 cm x 160 cm", form: "round" },
    { units: "centimetres" },
    plain("140 cm"),
  );
  expect(deep.diagnostics).toEqual([]);
  expect(deep.cuts.length).toBeGreaterThan(0);
});

test("on a shallow runner the table's words stand clear of its edge", () => {
  const raw = { table: '60" x 18" x 34"', drop: '10"', depth: '14"' };
  const fields = fieldsOf(runnerSchema, { runner: "Bed", cloth: "print", ...raw });
  const context = contextFor(runnerAllowances, ask({}));
  const made = runner(raw);
  const [drawn] = runnerDrawing.workshop(fields, made, { ...context, language: "en-US" } as never);
  const words = drawn?.shapes.find((s) => s.shape === "words") as { y: number };
  // The table's edge lies on the finished edge, one hem of 1 in inside the cut; words at 1 to 36 are over 3 mm high.
  expect(words.y - 25.4).toBeGreaterThan(3 * 36);
  expect(words.y - 25.4).toBeLessThan(7 * 25.4);
});

test("the strips and the whole width of a quilted cover add up, as they are printed, to what it is cut", () => {
  const bed = { bed: '60" x 80" x 25"', drop: '18"', pillows: "none", back: "lining" };
  const made = coverlet({ ...bed, quilted: "yes" }, {}, cloth('54"'));
  // Worked by hand: 96 in × 1.05 = 100.8, up to 100 7/8, and two seams: 101 7/8 in; (101 7/8 − 53) ÷ 2 + 1/2 = 24 15/16 in.
  expect(figure(made, "cutWidthMm", "in")).toBeCloseTo(101.875, 6);
  const face = made.cuts.filter((c) => c.surface === "face");
  expect(face.map((c) => inUnit(c.width, "in")).sort()).toEqual([24.9375, 24.9375, 54]);
});
