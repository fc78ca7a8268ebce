import fc from "fast-check";
import { expect, test } from "vitest";
import { handbookRows } from "../../src/items/common/join/handbookRows.ts";
import { armchairAllowances } from "../../src/items/upholstery/armchair/allowances.ts";
import { armchairSeen } from "../../src/items/upholstery/armchair/area.ts";
import { makeArmchair } from "../../src/items/upholstery/armchair/pieces.ts";
import { armchairSchema } from "../../src/items/upholstery/armchair/schema.ts";
import { repeatSurcharge } from "../../src/items/upholstery/estimate.ts";
import { Length } from "../../src/units/length.ts";
import {
  type ContextAsk,
  clothFacts,
  contextFor,
  fieldsOf,
  inUnit,
  length,
  tradeCase,
  wanted,
} from "./tradeContext.ts";

const PLAIN = clothFacts({ id: "slub", usableWidth: length('54"'), mayTurn: true });
const PRINT = clothFacts({
  id: "fern",
  usableWidth: length('54"'),
  repeat: {
    up: length('25 1/4"'),
    across: length('27"'),
    match: "straight",
    fromSelvedge: length('13 1/2"'),
  },
});

function make(raw: Record<string, unknown>, ask: ContextAsk = {}) {
  const fields = fieldsOf(armchairSchema, {
    armchair: "Carver",
    cloth: "slub",
    size: '31" x 34" x 36"',
    ...raw,
  });
  return makeArmchair(fields, contextFor(armchairAllowances, { cloths: [PLAIN, PRINT], ...ask }));
}
const pair = (v: unknown) => (v as { value: [number, number] }).value;

test("each measured piece takes the pull each way (up-02, weblog, 2012: 6 in; up-06, how-to article, 2020: 4 in; up-07: 4 in, the printed scale squares do not follow and are not used)", () => {
  for (const [id, input, add, pull] of [
    ["up-01", "seat", "wrap_total_each_way", '6"'],
    ["up-02", "seat", "wrap_total_each_way", '6"'],
    ["up-06", "piece", "add_each_way", '4"'],
    ["up-07", "piece", "add_each_way", '4"'],
  ] as const) {
    const c = tradeCase("upholstery", id);
    expect((c.inputs[add] as unknown as { value: number }).value, id).toBe(
      Number.parseInt(pull, 10),
    );
    const [w, l] = pair(c.inputs[input]);
    const made = make(
      { pieces: [{ piece: "seat", size: `${w}" x ${l}"` }] },
      { allowances: { pull } },
    );
    expect(
      made.cuts.map((x) => [inUnit(x.width, "in"), inUnit(x.height, "in")]),
      id,
    ).toEqual([pair(c.expected.cut)]);
  }
});

test("two drop-in seats stand across 54 in, one yard for two (up-01, how-to article)", () => {
  const c = tradeCase("upholstery", "up-01");
  const made = make(
    { count: "2", pieces: [{ piece: "seat", size: '20" x 22"' }] },
    { allowances: { pull: '6"' } },
  );
  const handbook = inUnit(made.handbook[0]?.length ?? Length.zero, "in");
  expect(handbook).toBe(28);
  expect(Math.ceil(handbook / 18) * 0.5).toBe(2 * wanted(c, "yards_per_seat"));
});

test("a chair's cut list has about ten pieces (up-08, textbook chapter, 1961): pairs count two where nothing is said", () => {
  const c = tradeCase("upholstery", "up-08");
  const size = '20" x 20"';
  const made = make({
    pieces: [
      "seat",
      "inside-back",
      "outside-back",
      "inside-arm",
      "outside-arm",
      "front-border",
      "arm-front",
    ].map((piece) => ({ piece, size })),
  });
  expect(made.figures.pieces).toBe(wanted(c, "count_about"));
});

test("no surcharge up to a 3 in repeat (up-09, how-to article); bands as practised (up-10, common practice, no source)", () => {
  expect(repeatSurcharge(length('3"'), length('54"')).valueOf()).toBe(
    wanted(tradeCase("upholstery", "up-09"), "extra"),
  );
  const bands = (
    tradeCase("upholstery", "up-10").expected as unknown as {
      bands: { repeat_in: [number, number]; add_pct: number }[];
    }
  ).bands;
  for (const band of bands) {
    for (const inches of band.repeat_in) {
      expect(
        repeatSurcharge(Length.inches(inches), length('54"')).mul(100).valueOf(),
        `${inches} in`,
      ).toBe(band.add_pct);
    }
  }
  expect(repeatSurcharge(length('13 1/2"'), length('54"')).mul(100).valueOf()).toBe(15);
  expect(repeatSurcharge(length('24"'), length('51"')).mul(100).valueOf()).toBe(30);
  expect(repeatSurcharge(length('24"'), length("137 cm")).mul(100).valueOf()).toBe(20);
});

test("range by type as an estimate (up-03 published for a wing chair, 7 to 9 yd; up-11 the others, common practice, no source)", () => {
  const c = tradeCase("upholstery", "up-11");
  for (const [type, key] of [
    ["occasional", "occasional_chair"],
    ["club", "club_chair"],
    ["wing", "wing_chair"],
  ] as const) {
    const made = make({ type });
    expect([
      inUnit(made.byType?.low ?? Length.zero, "yd"),
      inUnit(made.byType?.high ?? Length.zero, "yd"),
    ]).toEqual(pair(c.expected[key]));
    expect(made.cuts).toEqual([]);
    expect(made.estimate).toContain("An estimate");
    expect(made.questions.join(" ")).toContain("estimate");
    expect(made.working.every((w) => w.what.includes("estimate"))).toBe(true);
  }
  expect(pair(tradeCase("upholstery", "up-03").expected.wing_chair)).toEqual([7, 9]);
});

test("8 yd plain at a 24 in repeat plan with 9.6 (example of up-10, common practice, no source)", () => {
  const print = clothFacts({
    id: "leaf",
    usableWidth: length('54"'),
    repeat: { up: length('24"'), across: length('27"'), match: "straight", fromSelvedge: null },
  });
  const made = make({ type: "club", cloth: "leaf" }, { cloths: [print] });
  expect(inUnit(made.handbook[0]?.length ?? Length.zero, "yd")).toBeCloseTo(9.6, 10);
});

test("covered cord takes 1 1/2 yd more in an estimate (up-03, how-to article, 2013)", () => {
  const made = make({ type: "club", welt: "fern" });
  expect(inUnit(made.handbook.find((h) => h.cloth === "fern")?.length ?? Length.zero, "yd")).toBe(
    wanted(tradeCase("upholstery", "up-03"), "extra_for_covered_cord"),
  );
});

test("rows of pieces, longest first (up-12, common practice, no source: 3.74 m, bought as 4.0)", () => {
  const c = tradeCase("upholstery", "up-12") as unknown as {
    inputs: { rows: { pieces_w_by_l_cm: [number, number][] }[] };
  };
  const pieces = c.inputs.rows
    .flatMap((r) => r.pieces_w_by_l_cm)
    .map(([w, l]) => ({ width: Length.cm(w), length: Length.cm(l) }));
  const rows = handbookRows(pieces, length("137 cm")) as Length;
  expect(inUnit(rows, "m")).toBe(wanted(tradeCase("upholstery", "up-12"), "length"));
  expect(inUnit(rows.upTo(length("50 cm")), "m")).toBe(
    wanted(tradeCase("upholstery", "up-12"), "buy"),
  );
});

test("a centred piece has a motif in its middle; back and seat share its column; arms are level with each other", () => {
  const made = make({
    cloth: "fern",
    pieces: [
      { piece: "inside-back", size: '22" x 28"', centred: "yes" },
      { piece: "seat", size: '22" x 24"' },
      { piece: "inside-arm", size: '20" x 20"' },
    ],
  });
  const [back, seat, arm] = made.cuts;
  expect(back?.across).toEqual({ how: "motif-at", fromLeft: Length.inches(13) });
  expect(back?.along).toEqual({ how: "motif-at", aboveFoot: Length.inches(16), joined: 0 });
  expect(seat?.across).toEqual({ how: "motif-at", fromLeft: Length.inches(13) });
  expect(seat?.along.how).toBe("free");
  expect(arm?.along).toMatchObject({ how: "level", joined: 0 });
  expect(arm?.count).toBe(2);
  expect(made.diagnostics).toEqual([]);
});

test("no pieces and no type: an error that says what to write", () => {
  const made = make({});
  expect(made.diagnostics[0]).toMatchObject({ code: "chair-not-measured", severity: "error" });
  expect(made.diagnostics[0]?.hint).toContain("type: club");
});

test("a motif on a piece too wide for it, and a piece wider than the cloth, say what would work", () => {
  const wide = make({
    cloth: "fern",
    pieces: [{ piece: "seat", size: '25" x 24"', centred: "yes" }],
  });
  // Motifs at 13 1/2 and 40 1/2 of 54 in: the widest centred piece is 27 in, so 23 with the pull taken off.
  expect(wide.diagnostics[0]).toMatchObject({
    code: "motif-does-not-fit",
    keyPath: "items[0].pieces.0.size",
  });
  expect(wide.diagnostics[0]?.expected).toContain("23″");
  expect(wide.diagnostics[0]?.hint).not.toContain("from-selvedge");
  const boxing = make({ cloth: "fern", pieces: [{ piece: "boxing", size: '90" x 5"' }] });
  expect(boxing.diagnostics[0]).toMatchObject({ code: "piece-wider-than-cloth" });
  expect(boxing.diagnostics[0]?.hint).toContain("may-turn: yes");
  expect(
    make({ cloth: "fern", pieces: [{ piece: "boxing", size: '90" x 5"', "may-turn": "yes" }] })
      .diagnostics,
  ).toEqual([]);
});

test("sewn pieces take two seams, not the pull", () => {
  const made = make({ pieces: [{ piece: "cushion-top", size: '18" x 18"' }] });
  // Box cushion plates are 1 in over the finished size (cu-03, sewing reference page).
  expect(inUnit(made.cuts[0]?.width ?? Length.zero, "in")).toBe(19);
});

test("welt without a measured length is an estimate and a question", () => {
  const made = make({ welt: "slub", pieces: [{ piece: "seat", size: '20" x 22"' }] });
  expect(made.estimate).toContain("welt");
  expect(made.questions.join(" ")).toContain("welt");
  const measured = make({
    welt: "slub",
    "welt-length": "9 yd",
    "seat-height": '18"',
    pieces: [{ piece: "seat", size: '20" x 22"' }],
  });
  expect(measured.estimate).toBeNull();
  expect(measured.questions).toEqual([]);
});

test("larger pieces never take less; counts multiply; metric agrees exactly", () => {
  const inch = fc.integer({ min: 8, max: 40 });
  fc.assert(
    fc.property(inch, inch, fc.integer({ min: 1, max: 4 }), (w, l, n) => {
      const one = make({ count: String(n), pieces: [{ piece: "seat", size: `${w}" x ${l}"` }] });
      const more = make({
        count: String(n),
        pieces: [{ piece: "seat", size: `${w}" x ${l + 1}"` }],
      });
      const h = (m: typeof one) => m.handbook[0]?.length ?? Length.zero;
      expect(h(more).compare(h(one))).toBeGreaterThan(0);
      expect(one.cuts[0]?.count).toBe(n);
      const metric = make({
        count: String(n),
        pieces: [{ piece: "seat", size: `${(w * 254) / 10} mm x ${(l * 254) / 10} mm` }],
      });
      expect(h(metric).equals(h(one))).toBe(true);
    }),
    { numRuns: 60 },
  );
});

test("what is seen leaves out the cushion's underside and the outside back", () => {
  const fields = fieldsOf(armchairSchema, {
    armchair: "Carver",
    cloth: "slub",
    size: '31" x 34" x 36"',
    pieces: [
      { piece: "seat", size: '10" x 10"' },
      { piece: "outside-back", size: '30" x 30"' },
    ],
  });
  const seen = armchairSeen(
    fields,
    makeArmchair(fields, contextFor(armchairAllowances, { cloths: [PLAIN] })),
  );
  expect(seen).toHaveLength(1);
  expect(seen[0]?.areaMm2).toBeCloseTo(254 * 254, 6);
});

test("a centred piece is not turned, and a wide boxing that may turn lies sideways in the handbook's rows", () => {
  const both = make({
    cloth: "fern",
    pieces: [{ piece: "seat", size: '20" x 20"', centred: "yes", "may-turn": "yes" }],
  });
  expect(both.diagnostics.map((d) => d.code)).toEqual(["centred-not-turned"]);
  expect(both.cuts[0]).toMatchObject({ mayTurn: false, across: { how: "motif-at" } });
  const boxing = make({ pieces: [{ piece: "boxing", size: '90" x 5"', "may-turn": "yes" }] });
  expect(inUnit(boxing.handbook[0]?.length ?? Length.zero, "in")).toBe(91);
});
