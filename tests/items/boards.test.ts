import fc from "fast-check";
import { expect, test } from "vitest";
import { depthAt } from "../../src/items/common/board/lowerEdge.ts";
import type { ClothFacts, Made } from "../../src/items/itemKind.ts";
import { pelmetDrawing } from "../../src/items/pelmet/drawing.ts";
import { pelmetKind } from "../../src/items/pelmet/kind.ts";
import type { PelmetMade } from "../../src/items/pelmet/pieces.ts";
import type { PelmetFields } from "../../src/items/pelmet/schema.ts";
import { valanceDrawing } from "../../src/items/valance/drawing.ts";
import { valanceKind } from "../../src/items/valance/kind.ts";
import type { ValanceMade } from "../../src/items/valance/pieces.ts";
import type { ValanceFields } from "../../src/items/valance/schema.ts";
import { clothFacts, fieldsOf, given, inUnit, length, tradeCase, wanted } from "./tradeContext.ts";
import { hangingContext, type WindowAsk, windowFacts } from "./windowContext.ts";

const PLAIN = clothFacts({ id: "print", name: "Print", usableWidth: length(`54"`) });
const PRINT: ClothFacts = {
  ...PLAIN,
  repeat: {
    up: length(`20"`),
    across: length(`27"`),
    match: "half-drop",
    fromSelvedge: length(`13.5"`),
  },
};
const LINING = clothFacts({
  id: "ivory",
  type: "lining",
  usableWidth: length(`54"`),
  mayTurn: true,
});
const WELT = clothFacts({ id: "velvet", usableWidth: length(`54"`) });

function pelmet(raw: Record<string, unknown>, ask: WindowAsk = {}, cloth = PLAIN) {
  const fields = fieldsOf(pelmetKind.schema, {
    pelmet: "Bay",
    cloth: "print",
    ...raw,
  }) as PelmetFields;
  const context = hangingContext(pelmetKind.allowances, { cloths: [cloth, LINING, WELT], ...ask });
  return { fields, context, made: pelmetKind.make(fields, context) as PelmetMade };
}
function valance(raw: Record<string, unknown>, ask: WindowAsk = {}, cloth = PLAIN) {
  const fields = fieldsOf(valanceKind.schema, {
    valance: "Bay",
    cloth: "print",
    heading: "pencil-pleat",
    ...raw,
  }) as ValanceFields;
  const context = hangingContext(valanceKind.allowances, { cloths: [cloth, LINING], ...ask });
  return { fields, context, made: valanceKind.make(fields, context) as ValanceMade };
}
const codes = (made: Made) => made.diagnostics.map((d) => `${d.code} at ${d.keyPath}`);
const BOARD = { board: `96"`, return: `6"`, depth: `16"` };

test("a sixth to a fifth of the curtain (curt-15, The Encyclopaedia of Curtains, pp. 116-117)", () => {
  const c = tradeCase("curtains", "curt-15");
  const [least, most] = wanted(c, "depth_range") as unknown as [number, number];
  const drop = `${given(c, "finished_curtain_length")} cm`;
  const depth = (share: string) =>
    inUnit(
      length(
        `${valance({ board: "200 cm", "curtain-drop": drop }, { units: "centimetres", allowances: { "depth-share": share } }).made.figures.depthMm} mm`,
      ),
      "cm",
    );
  expect(depth("0.2")).toBe(most);
  expect(depth("1/6")).toBe(least);
  const asks = (written: string) =>
    valance(
      { board: "200 cm", "curtain-drop": drop, depth: written },
      { units: "centimetres" },
    ).made.questions.some((q) => q.includes("a sixth to a fifth"));
  expect([`${least - 1} cm`, `${least} cm`, `${most} cm`, `${most + 1} cm`].map(asks)).toEqual([
    true,
    false,
    false,
    true,
  ]);
});

test("the span goes round the board and both ends; widths reach it after their joins (curt-15)", () => {
  const { made } = valance({ ...BOARD, fullness: "2" });
  // 96 + 2 × 6 = 108; × 2 = 216; + 2 × 1 1/2 side hems = 219.
  expect(made.figures.spanMm).toBeCloseTo(108 * 25.4, 6);
  expect(made.figures.flatWidthMm).toBeCloseTo(219 * 25.4, 6);
  const face = made.cuts.filter((cut) => cut.surface === "face");
  const joined = face.reduce((a, cut) => a + inUnit(cut.width, "in"), 0) - (face.length - 1) * 1;
  expect(joined).toBeCloseTo(219, 9);
  // 4 whole widths and 3 joins give 213, so it is 5 pieces: three whole ones and two strips of (219 - 159 + 2) / 2.
  expect(made.figures.widths).toBe(5);
  expect(made.figures.stripMm).toBeCloseTo(30.5 * 25.4, 6);
});

test("box pleats meet: an odd number of boxes on the front, returns flat", () => {
  const { made } = valance({ ...BOARD, heading: "box-pleat", fullness: "3" });
  const heading = made.plan?.heading;
  if (heading?.heading !== "box-pleat") throw new Error("no boxes");
  expect(heading.boxes % 2).toBe(1);
  expect(inUnit(heading.box, "in") * heading.boxes).toBeCloseTo(96, 9);
  expect(inUnit(heading.box, "in")).toBeLessThanOrEqual(8);
  // What the pleats take up and what is seen make the flat width: 3 × 96 + 12.
  const all = inUnit(heading.takeUp, "in") * heading.pleats + 96 + 12;
  expect(all).toBeCloseTo(3 * 96 + 12, 9);
  expect(heading.takeUp.isMoreThan(heading.box.times(2))).toBe(false);
});

test("every piece of a patterned valance and pelmet is in register, half-drop widths step from the middle", () => {
  const v = valance(
    { ...BOARD, "lowest-motif": `4"` },
    {},
    {
      ...PRINT,
      repeat: {
        ...(PRINT.repeat as NonNullable<ClothFacts["repeat"]>),
        across: length(`18"`),
        fromSelvedge: length(`9"`),
      },
    },
  ).made;
  const face = v.cuts.filter((cut) => cut.surface === "face");
  // Three columns to a width: neighbours fall half a repeat.
  expect(face.map((cut) => (cut.along.how === "motif-at" ? cut.along.joined : null))).toEqual([
    0, 1, 0, 1, 0,
  ]);
  for (const cut of face)
    expect(cut.along.how === "motif-at" && inUnit(cut.along.aboveFoot, "in")).toBe(4 + 4);
  const p = pelmet({ ...BOARD, board: `36"` }, {}, PRINT).made;
  const cut = p.cuts[0];
  // No motif of two columns stands in the middle of a piece 52 in wide.
  expect(p.plan?.motifCentred).toBe(false);
  expect(cut?.along.how === "motif-at" && inUnit(cut.along.aboveFoot, "in")).toBe(8 + 2);
});

test("an arched edge: its radius and depths by Pythagoras; a scalloped one by its chord", () => {
  const { made } = pelmet({ ...BOARD, "lower-edge": "arched", "end-depth": `22"` });
  const edge = made.plan?.edge;
  if (!edge || edge.radiusMm === null) throw new Error("no arch");
  const radius = edge.radiusMm / 25.4;
  // Every point of the arc is one radius from its centre, below the middle.
  for (const x of [0, 12, 30, 48, 77, 96]) {
    const depth = depthAt(edge, x * 25.4) / 25.4;
    expect(Math.hypot(x - 48, 16 + radius - depth)).toBeCloseTo(radius, 8);
  }
  expect(depthAt(edge, 48 * 25.4) / 25.4).toBeCloseTo(16, 9);
  expect(depthAt(edge, 0) / 25.4).toBeCloseTo(22, 9);
  const scalloped = pelmet({
    ...BOARD,
    "lower-edge": "scalloped",
    scallops: "8",
    "scallop-depth": `3"`,
  }).made.plan?.edge;
  if (!scalloped) throw new Error("no scallops");
  expect(depthAt(scalloped, 6 * 25.4) / 25.4).toBeCloseTo(19, 9);
  expect(depthAt(scalloped, 12 * 25.4) / 25.4).toBeCloseTo(16, 9);
  for (const each of [edge, scalloped]) {
    // Length and area against narrow straight pieces of the same edge.
    let [run, area] = [0, 0];
    const steps = 20_000;
    const dx = (96 * 25.4) / steps;
    for (let i = 0; i < steps; i += 1) {
      const [a, b] = [depthAt(each, i * dx), depthAt(each, (i + 1) * dx)];
      run += Math.hypot(dx, b - a);
      area += ((a + b) / 2) * dx;
    }
    expect(each.runMm / run).toBeCloseTo(1, 5);
    expect(each.areaMm2 / area).toBeCloseTo(1, 5);
  }
});

test("welt, lining and padding of a pelmet are listed and cut", () => {
  const { made } = pelmet({
    ...BOARD,
    lining: "ivory",
    edge: { welt: "velvet", where: "both" },
    stiffening: "plywood",
  });
  expect(made.plan?.stiffening).toBe("board");
  // Both edges round the board, 108 each, and two laps of 2.
  expect(made.figures.weltMm).toBeCloseTo((108 * 2 + 4) * 25.4, 6);
  expect(made.cuts.map((cut) => cut.surface)).toContain("welt");
  expect(made.cuts.filter((cut) => cut.surface === "lining").length).toBe(3);
  expect(made.cautions).toEqual(["fire", "heavy-hanging"]);
});

test("no piece is wider than its cloth, whole widths stand in the middle, and both unit systems agree", () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 20, max: 260 }),
      fc.integer({ min: 8, max: 40 }),
      fc.integer({ min: 30, max: 118 }),
      fc.constantFrom("gathered", "pencil-pleat", "pinch-pleat", "box-pleat"),
      (board, depth, width, heading) => {
        const cloth = { ...PRINT, usableWidth: length(`${width}"`) };
        const cm = (n: number) => `${(n * 2.54).toFixed(2)} cm`;
        const allowances = (unit: "in" | "cm") => {
          const said: Record<string, string> = {};
          for (const [name, what] of Object.entries({
            ...pelmetKind.allowances,
            ...valanceKind.allowances,
          }))
            said[name] =
              what.is === "length" && unit === "cm"
                ? cm(inUnit(length(what.usual.inches), "in"))
                : what.usual.inches;
          return said;
        };
        const inches = { allowances: allowances("in") };
        const metric = { units: "centimetres" as const, allowances: allowances("cm") };
        const a = { board: `${board}"`, depth: `${depth}"` };
        const b = { board: cm(board), depth: cm(depth) };
        const pairs = [
          [
            pelmet(a, inches, cloth).made,
            pelmet(b, metric, cloth).made,
            pelmet({ ...a, board: `${board + 7}"` }, inches, cloth).made,
          ],
          [
            valance({ ...a, heading }, inches, cloth).made,
            valance({ ...b, heading }, metric, cloth).made,
            valance({ ...a, heading, board: `${board + 7}"` }, inches, cloth).made,
          ],
        ] as const;
        for (const [one, same, longer] of pairs) {
          for (const cut of one.cuts)
            expect(inUnit(cut.width, "in")).toBeLessThanOrEqual(width + 1e-9);
          const face = one.cuts.filter((cut) => cut.surface === "face");
          if (face.length > 1) {
            expect(face.length % 2).toBe(1);
            // A whole width, or the widest that has a motif in its middle.
            const middle = face[(face.length - 1) / 2];
            if (middle?.across.how === "motif-at") {
              expect(middle.across.fromLeft.equals(middle.width.dividedBy(2))).toBe(true);
              expect(inUnit(middle.width, "in")).toBeGreaterThanOrEqual((width * 2) / 3 - 1e-9);
            } else expect(middle?.across.how).toBe("whole-width");
            expect(face[0]?.width.equals(face.at(-1)?.width ?? length(`1"`))).toBe(true);
          }
          const lengths = (m: Made) => m.cuts.map((cut) => [cut.width.toMm(), cut.height.toMm()]);
          expect(lengths(same).flat()).toEqual(
            lengths(one)
              .flat()
              .map((mm) => expect.closeTo(mm, 6)),
          );
          const sum = (m: Made) => (m.handbook[0] ? inUnit(m.handbook[0].length, "in") : 0);
          expect(sum(longer)).toBeGreaterThanOrEqual(sum(one));
        }
      },
    ),
    { numRuns: 80, seed: 11 },
  );
});

test("what cannot be made is refused at its line, in words", () => {
  expect(codes(pelmet({ depth: `16"` }).made)).toEqual(["pelmet-without-board at items[0]."]);
  expect(codes(pelmet({ board: `60"` }).made)).toEqual(["pelmet-without-depth at items[0]."]);
  expect(codes(pelmet({ ...BOARD, "lower-edge": "arched", "end-depth": `12"` }).made)).toEqual([
    "lower-edge-impossible at items[0].end-depth",
  ]);
  expect(codes(pelmet({ ...BOARD, "lower-edge": "scalloped" }).made)).toEqual([
    "lower-edge-unsaid at items[0].lower-edge",
  ]);
  expect(
    codes(
      pelmet({ ...BOARD, "lower-edge": "scalloped", scallops: "30", "scallop-depth": `4"` }).made,
    ),
  ).toEqual(["lower-edge-impossible at items[0].scallop-depth"]);
  expect(codes(pelmet({ ...BOARD, depth: `52"`, railroad: "yes" }).made)).toEqual([
    "railroad-too-long at items[0].railroad",
  ]);
  expect(codes(valance({ ...BOARD, depth: `2"` }).made)).toEqual([
    "valance-shorter-than-heading at items[0].depth",
  ]);
  const window = windowFacts(`72"`, `60"`, `30"`);
  expect(codes(pelmet({ ...BOARD, board: `74"`, mount: "inside" }, { window }).made)).toEqual([
    "board-longer-than-recess at items[0].board",
  ]);
  expect(
    codes(pelmet({ ...BOARD, "top-height": `120"` }, { window, roomHeight: `108"` }).made),
  ).toEqual(["board-above-ceiling at items[0].top-height"]);
});

test("between the walls a board goes down to what can be marked and has no returns", () => {
  const window = windowFacts(`71 15/16"`, `60"`, `30"`);
  const { made } = pelmet({ mount: "inside", depth: `12"` }, { window });
  expect(made.plan && inUnit(made.plan.board.length, "in")).toBe(71.375);
  expect(made.figures.returnMm).toBe(0);
});

test("drawings and sheets of every form", () => {
  for (const raw of [
    {},
    { "lower-edge": "arched", "end-depth": `22"`, edge: { welt: "velvet" } },
    { "lower-edge": "scalloped", scallops: "8", "scallop-depth": `3"`, lining: "ivory" },
    { railroad: "yes" },
  ]) {
    const { fields, made, context } = pelmet({ ...BOARD, ...raw }, {}, PRINT);
    const look = { ...context, language: "en-US" as const };
    expect(pelmetDrawing.workshop(fields, made, look)).toHaveLength(2);
    expect(pelmetDrawing.plan(fields, made, look)?.heightMm).toBeCloseTo(6 * 25.4, 6);
    expect(pelmetDrawing.sheet(fields, made, look).groups.map((g) => g.heading)).toContain(
      "Stiffening",
    );
    expect(pelmetDrawing.elevation(fields, made, look)?.heightMm).toBe(made.figures.deepestMm);
  }
  for (const heading of ["gathered", "pencil-pleat", "pinch-pleat", "box-pleat"]) {
    const { fields, made, context } = valance(
      { ...BOARD, heading, "lowest-motif": `4"` },
      {},
      PRINT,
    );
    const look = { ...context, language: "en-GB" as const };
    expect(valanceDrawing.workshop(fields, made, look)).toHaveLength(2);
    expect(valanceDrawing.elevation(fields, made, look)?.widthMm).toBeCloseTo(96 * 25.4, 6);
    expect(valanceDrawing.sheet(fields, made, look).groups.map((g) => g.heading)).toContain(
      "Heading",
    );
  }
});
