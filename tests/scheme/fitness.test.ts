import { readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import {
  cleaningCode,
  gramsPerM2,
  martindale,
  strictest,
  wyzenbeek,
} from "../../src/scheme/cardFigures.ts";
import { LEAST_AT_WINDOW, LEAST_ELSEWHERE } from "../../src/scheme/findings/fastness.ts";
import {
  LEAST_MARTINDALE,
  LEAST_WYZENBEEK,
  standsRubs,
} from "../../src/scheme/findings/fitness.ts";
import { PICTURE_HIGH_MM, PICTURE_LOW_MM, RUG_MARGIN_MM } from "../../src/scheme/findings/sizes.ts";
import { codesOf, findingOf, type MadeCloth, type MadeRoom, schemeOf } from "./roomOf.ts";

// Against tests/reference/trade: durability.json (Association for Contract Textiles; ISO 105-B02; blue wool advice common practice),
// care.json (cleaning codes; strictest-care rule common practice, no source), safety.json, rugs-art.json. Each case names its source.
// biome-ignore lint/suspicious/noExplicitAny: cases of several shapes
const cases = (name: string): Map<string, any> =>
  new Map(
    JSON.parse(readFileSync(join(import.meta.dirname, "../reference/trade", name), "utf8")).map(
      (c: { id: string }) => [c.id, c],
    ),
  );
const durability = cases("durability.json");
const care = cases("care.json");
const safety = cases("safety.json");
const rugs = cases("rugs-art.json");

const CREAM = "#efe4cb";
const used = (card: string, kind: string, more: Partial<MadeRoom> = {}): MadeRoom => ({
  cloths: { linen: { kind: "plain", colours: { [CREAM]: 1 }, card } },
  seen: [
    {
      item: "thing",
      title: "Thing",
      kind,
      cloth: "linen",
      zone: kind === "curtains" ? "window" : "seat",
      areaMm2: 1e6,
    },
  ],
  language: "en-US",
  ...more,
  room: `approach: free\n${more.room ?? ""}`,
});
const codesFor = (card: string, kind: string) =>
  codesOf(schemeOf(used(`fire: passes\n${card}`, kind)));

test("abrasion: the guideline's own thresholds (du-01, du-03); either test is enough, and they do not convert", () => {
  expect(LEAST_MARTINDALE).toBe(durability.get("du-01").expected.martindale_min.value);
  expect(LEAST_WYZENBEEK).toBe(durability.get("du-03").expected.low_traffic_min.value);
  expect(martindale("25,000 martindale")).toBe(25_000);
  expect(martindale("25 000 Martindale")).toBe(25_000);
  expect(martindale("30000 wyzenbeek")).toBeNull();
  expect(wyzenbeek("30,000 double rubs")).toBe(30_000);
  expect(standsRubs("19999 martindale")).toBe(false);
  expect(standsRubs("20000 martindale")).toBe(true);
  expect(standsRubs("14999 wyzenbeek")).toBe(false);
  expect(standsRubs("15000 wyzenbeek")).toBe(true);
  expect(standsRubs("very hard wearing")).toBeNull();
  expect(codesFor("rubs: 12000 martindale", "armchair")).toContain("rubs-low");
  expect(codesFor("rubs: 12000 wyzenbeek", "armchair")).toContain("rubs-low");
  expect(codesFor("rubs: 16000 wyzenbeek", "armchair")).not.toContain("rubs-low");
  expect(codesFor("rubs: 12000 martindale", "curtains")).not.toContain("rubs-low");
});

test("weight: units (du-05, sa-04), and a cloth as light as dress cloth on a seat, one too heavy to hang", () => {
  expect(gramsPerM2("6 oz/yd2")).toBeCloseTo(durability.get("du-05").recomputed["6oz_yd2_gsm"], 1);
  expect(gramsPerM2("21 oz/yd2")).toBeCloseTo(safety.get("sa-04").recomputed["21oz_yd2_gsm"], 0);
  expect(gramsPerM2("290 g/m2")).toBe(290);
  expect(gramsPerM2("290 gsm")).toBe(290);
  expect(gramsPerM2("1,290 g/m²")).toBe(1290);
  expect(gramsPerM2("12 oz")).toBeNull();
  const level = (card: string, kind: string) =>
    findingOf(schemeOf(used(`fire: passes\n${card}`, kind)), "weight-unsuited")?.level;
  expect(level("weight: 120 g/m2", "armchair")).toBe("problem");
  expect(level("weight: 220 g/m2", "armchair")).toBe("worth-a-look");
  expect(level("weight: 220 g/m2\nrubs: 30000 martindale", "armchair")).toBeUndefined();
  expect(level("weight: 320 g/m2", "armchair")).toBeUndefined();
  expect(level("weight: 420 g/m2", "curtains")).toBe("worth-a-look");
  expect(level("weight: 280 g/m2", "curtains")).toBeUndefined();
  expect(level("weight: 420 g/m2", "blind")).toBe("worth-a-look");
});

test("fastness to light: blue wool 5 at a window, 4 elsewhere (du-15)", () => {
  expect(LEAST_AT_WINDOW).toBe(durability.get("du-15").expected.blue_wool_min.value);
  expect(durability.get("du-15").formula).toContain(`${LEAST_ELSEWHERE} for cushions`);
  const level = (grade: number, kind: string) =>
    findingOf(schemeOf(used(`fire: passes\nlight: ${grade}`, kind)), "light-low")?.level;
  expect(level(3, "curtains")).toBe("problem");
  expect(level(4, "curtains")).toBe("worth-a-look");
  expect(level(5, "curtains")).toBeUndefined();
  expect(level(3, "cushion")).toBe("worth-a-look");
  expect(level(4, "cushion")).toBeUndefined();
});

test("care: codes as the reference has them, the strictest care of all layers, and layers that no cleaner serves", () => {
  for (const id of ["ca-01", "ca-02", "ca-04"]) {
    const { inputs, expected } = care.get(id);
    const code = cleaningCode(inputs.code);
    expect(code).toBe(inputs.code);
    const bears = strictest([code as "W"]);
    expect(bears.solvent).toBe(!expected.not.includes("solvent"));
    expect(bears.water).toBe(!expected.not.includes("water") && code === "W");
  }
  for (const typed of ["WS", "SW", "W-S", "w/s"]) expect(cleaningCode(typed)).toBe("WS");
  const words: [string, ReturnType<typeof cleaningCode>][] = [
    ["Dry clean only.", "S"],
    ["Dry-clean only. Steam from the back.", "S"],
    ["Wash cool, iron damp.", "WS"],
    ["Machine wash 30. Do not dry clean.", "W"],
    ["Do not wash, do not dry clean.", "X"],
    ["Dry clean, or wash cool before making up.", "WS"],
    ["Vacuum or brush only", "X"],
    ["Do not wash. Dry clean.", "S"],
    ["Sponge lightly with a barely damp cloth.", null],
    ["Ask the supplier", null],
    ["unwashed linen look", null],
  ];
  for (const [said, code] of words) expect(cleaningCode(said), said).toBe(code);
  // The reference's own case ca-11: washed layers and one that is dry cleaned only are dry cleaned.
  const layers = ["wash 30", "wash 40", "dry clean only"].map((c) => cleaningCode(c));
  expect(strictest(layers.filter((c) => c !== null))).toEqual({ water: false, solvent: true });
  expect(strictest(["WS", "S"])).toEqual({ water: false, solvent: true });
  expect(codesFor("care: X", "armchair")).toContain("care-hard");
  expect(codesFor("care: X", "curtains")).not.toContain("care-hard");
  const layered = (lining: string) =>
    schemeOf({
      ...used("care: W", "curtains"),
      cloths: {
        linen: { kind: "plain", colours: { [CREAM]: 1 }, card: "care: W" },
        sateen: { kind: "plain", colours: { [CREAM]: 1 }, card: `type: lining\ncare: ${lining}` },
      },
      uses: [
        { item: "thing", title: "Thing", kind: "curtains", surface: "lining", cloth: "sateen" },
      ],
    });
  expect(findingOf(layered("S"), "care-conflict")).toMatchObject({
    level: "problem",
    of: ["thing", "linen", "sateen"],
  });
  expect(codesOf(layered("WS"))).not.toContain("care-conflict");
});

// That layers sewn together must shrink alike to within two hundredths: common practice, no source.
test("shrinkage: a face and its lining that washing takes unevenly, and silence where both are washed first or nobody said", () => {
  const lined = (face: string, lining: string, type = "lining") =>
    findingOf(
      schemeOf({
        ...used("", "curtains"),
        cloths: {
          linen: { kind: "plain", colours: { [CREAM]: 1 }, card: face },
          sateen: { kind: "plain", colours: { [CREAM]: 1 }, card: `type: ${type}\n${lining}` },
        },
        uses: [
          { item: "thing", title: "Thing", kind: "curtains", surface: "face", cloth: "linen" },
          { item: "thing", title: "Thing", kind: "curtains", surface: type, cloth: "sateen" },
        ],
      }),
      "layers-shrink-apart",
    );
  const [three, five, washed] = ["shrinkage: 3 %", "shrinkage: 5 %", "\nwash-first: yes"];
  expect(lined(five, "shrinkage: 2.9 %")).toMatchObject({
    level: "worth-a-look",
    of: ["thing", "linen", "sateen"],
    message: expect.stringContaining(
      "linen may lose 5 % of its length and its lining sateen may lose 2.9 % of its length",
    ),
  });
  expect(lined(five, three)).toBeUndefined();
  expect(lined("shrinkage: 1 %", "shrinkage: 3.1 %", "interlining")?.message).toContain(
    "its interlining sateen may lose 3.1 %",
  );
  // One is washed first, and has nothing left to lose; the other has.
  expect(lined(five + washed, three)?.message).toContain("linen loses no more and its lining");
  expect(lined(five + washed, "shrinkage: 2 %")).toBeUndefined();
  expect(lined(five + washed, three + washed)).toBeUndefined();
  expect(lined(five, "")).toBeUndefined();
  expect(lined(five, "care: wash", "trim")).toBeUndefined();
});

test("fire: a reminder where a card says nothing, of cushions too under the British rules (sa-01, sa-03)", () => {
  expect(safety.get("sa-01").expected.covers).toContain("reupholstered");
  expect(safety.get("sa-03").expected.covers).toContain("scatter cushions and seat pads");
  const says = (kind: string, language: string, card = "") =>
    codesOf(schemeOf({ ...used(card, kind), language })).includes("fire-unsaid");
  expect(says("armchair", "en-US")).toBe(true);
  expect(says("armchair", "en-US", "fire: passes with an interliner")).toBe(false);
  expect(says("cushion", "en-US")).toBe(false);
  expect(says("cushion", "en-GB")).toBe(true);
  expect(says("curtains", "en-GB")).toBe(false);
});

test("cords: a blind on a cord or a chain is a problem in any scheme (sa-10); cordless and motor are not", () => {
  const worked = (operation: string | null) =>
    schemeOf({ ...used("", "blind"), items: [{ item: "thing", operation }] });
  expect(findingOf(worked("cord"), "corded")?.reason).toContain(
    `${safety.get("sa-10").expected.cord_end_height.value} m`,
  );
  expect(codesOf(worked("chain"))).toContain("corded");
  expect(codesOf(worked("cordless"))).not.toContain("corded");
  expect(codesOf(worked(null))).not.toContain("corded");
});

test("sizes: a dining rug's margin (ra-03) and the height of a picture's middle (ra-01, ra-02)", () => {
  expect(RUG_MARGIN_MM).toBeCloseTo(rugs.get("ra-03").inputs.margin.value * 25.4, 6);
  expect(PICTURE_LOW_MM).toBeCloseTo(
    rugs.get("ra-02").expected.acceptable_centre.value[0] * 25.4,
    6,
  );
  expect(PICTURE_HIGH_MM).toBeCloseTo(rugs.get("ra-01").recomputed.in * 25.4, 6);
  const plain: MadeCloth = { kind: "plain", colours: { [CREAM]: 1 } };
  const judged = (leastMarginMm: number, centreMm: number) =>
    codesOf(
      schemeOf({
        cloths: { plain },
        seen: [],
        sizes: {
          rugs: [
            { rug: "rug", rugTitle: "Rug", table: "table", tableTitle: "Table", leastMarginMm },
          ],
          pictures: [{ item: "sea", title: "Sea", centreMm }],
        },
      }),
    );
  expect(judged(500, 1500)).toContain("rug-small");
  expect(judged(610, 1500)).not.toContain("rug-small");
  expect(judged(610, 1300)).toContain("picture-height");
  expect(judged(610, 1750)).toContain("picture-height");
  expect(judged(610, 1448)).not.toContain("picture-height");
});

// Common practice, no source: which cloths are usual for bedding and table linen.
test("bedding and table linen ask for cloth that suits them; curtain cloth serves for a coverlet, not for a tablecloth", () => {
  const unsuited = (suits: string, kind: string) =>
    codesFor(`suits: [${suits}]`, kind).includes("not-suited");
  for (const kind of ["coverlet", "bed-skirt", "runner", "throw"]) {
    expect(unsuited("bedding", kind), kind).toBe(false);
    expect(unsuited("walls", kind), kind).toBe(true);
  }
  expect(unsuited("curtains", "coverlet")).toBe(false);
  expect(unsuited("curtains", "tablecloth")).toBe(true);
  expect(unsuited("table-linen", "tablecloth")).toBe(false);
  expect(unsuited("upholstery", "table-skirt")).toBe(true);
  expect(unsuited("curtains", "lampshade")).toBe(false);
  expect(unsuited("upholstery", "lampshade")).toBe(true);
});

// Common practice, no source: what covers a chair covers a cushion too, and a loose cover asks for less than a fixed one.
test("a roller blind asks for a cloth that is sold for blinds, as a Roman one does", () => {
  for (const kind of ["blind", "roller-blind"]) {
    expect(codesFor("suits: [blinds]", kind), kind).not.toContain("not-suited");
    expect(codesFor("suits: [upholstery]", kind), kind).toContain("not-suited");
  }
});

test("what is sold for upholstery suits cushions; what is sold for loose covers suits a loose cover alone", () => {
  const unsuited = (suits: string, kind: string, isLoose = false) =>
    codesOf(
      schemeOf(
        used(`fire: passes\nsuits: [${suits}]`, kind, { items: [{ item: "thing", isLoose }] }),
      ),
    ).includes("not-suited");
  expect(unsuited("upholstery", "cushion")).toBe(false);
  expect(unsuited("curtains", "cushion")).toBe(true);
  expect(unsuited("loose-covers", "sofa", true)).toBe(false);
  expect(unsuited("loose-covers", "sofa")).toBe(true);
  expect(unsuited("upholstery", "sofa", true)).toBe(false);
  expect(unsuited("cushions", "sofa", true)).toBe(true);
});
