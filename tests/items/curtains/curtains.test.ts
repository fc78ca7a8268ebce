import { expect, test } from "vitest";
import { curtainsAllowances } from "../../../src/items/curtains/allowances.ts";
import { curtainsSeen } from "../../../src/items/curtains/area.ts";
import { curtainsKind } from "../../../src/items/curtains/kind.ts";
import { curtainsSchema } from "../../../src/items/curtains/schema.ts";
import { curtainsSheet } from "../../../src/items/curtains/sheet.ts";
import { fieldsOf, inUnit, length } from "../tradeContext.ts";
import { hangingContext, windowFacts } from "../windowContext.ts";
import { BAY, IVORY, LARGE, make } from "./curtainsOf.ts";

const codes = (made: { diagnostics: readonly { code: string; keyPath: string | null }[] }) =>
  made.diagnostics.map((d) => `${d.code} at ${d.keyPath}`);

test("every line of the working can be followed with a pencil", () => {
  const { made } = make(
    { pole: `96"`, drop: `92"`, return: `3 1/2"`, "lowest-motif": `9"`, lining: "ivory" },
    { allowances: { hem: `10"` } },
  );
  const lines = made.working.map((line) =>
    `${line.what}: ${line.sum} = ${line.result}${line.rounded ? `, ${line.rounded}` : ""}`.replaceAll(
      "\u202f",
      " ",
    ),
  );
  expect(lines.slice(0, 12)).toEqual([
    "Coverage: 96″ pole + 2 × 3 1/2″ returns + 3″ overlap = 106″",
    "Flat width: 106″ × 2.5 fullness + 4 × 2″ side hems = 273″",
    "Cut, without repeat: 92″ drop + 8″ heading + 10″ hem = 110″",
    "Widths: 273″ ÷ 2 = 136 1/2″ a curtain; 3 × 54″ − 2 joins × 2 × 1/2″ = 160″ = 3 a curtain, 6 in all, up to the half width",
    "Cut length, with its repeat: 110″ ÷ 25 1/4″ repeat = 4.36; 5 × 25 1/4″ = 126 1/4″, up to whole repeats",
    "By the handbook: 6 × 126 1/4″ + 3 × 12 5/8″ for the half-drop = 795 3/8″",
    "Flat panel, hemmed: 160″ − 2 × 2″ side hems = 156″",
    "Finished, a curtain: 106″ coverage ÷ 2 = 53″",
    "Face of a curtain: 53″ finished − 3 1/2″ return − 1 1/2″ overlap = 48″",
    "Spaces a curtain: 48″ face ÷ 3 3/4″ = 13 of 3 11/16″, up to whole spaces",
    "Pleats a curtain: 13 spaces + 1 = 14",
    "Take-up a pleat: (156″ flat − 53″ finished) ÷ 14 = 7 3/8″",
  ]);
  // Six whole widths are fuller than was asked: the workroom is told, and asked.
  expect(made.questions.some((q) => q.startsWith("Each pleat takes up"))).toBe(true);
});

test("on the cloth a motif stands at its height above the hem and the whole hem allowance", () => {
  const { made } = make({
    pole: `78"`,
    drop: `92"`,
    fullness: "2",
    "lowest-motif": `9"`,
    hem: `10"`,
  });
  const face = made.cuts.filter((cut) => cut.surface === "face");
  expect(face.map((cut) => cut.along)).toEqual(
    [1, 0, 0, 1].map((joined) => ({ how: "motif-at", aboveFoot: expect.anything(), joined })),
  );
  for (const cut of face) {
    expect(cut.along.how === "motif-at" && inUnit(cut.along.aboveFoot, "in")).toBe(19);
    expect(inUnit(cut.height, "in")).toBe(92 + 8 + 10);
  }
});

test("a half-drop that falls inside the width shifts nothing at the joins, and is asked about", () => {
  const even = {
    ...LARGE,
    repeat: {
      up: length(`25 1/4"`),
      across: length(`13 1/2"`),
      match: "half-drop" as const,
      fromSelvedge: null,
    },
  };
  const { made } = make({ pole: `96"`, drop: `92"`, "lowest-motif": `9"` }, {}, even);
  expect(made.cuts.every((cut) => cut.along.how === "motif-at" && cut.along.joined === 0)).toBe(
    true,
  );
  expect(made.questions.some((q) => q.includes("falls inside the width"))).toBe(true);
});

test("the drop is found from the window: to the floor, the sill, below it, and from above the pole with eyelets", () => {
  const drop = (raw: Record<string, unknown>) => {
    const { made } = make({ at: "bay", ...raw }, { window: BAY, roomHeight: `105"` });
    expect(made.diagnostics).toEqual([]);
    return [
      inUnit(made.plan?.hung.drop ?? length("0"), "in"),
      Math.round((made.figures.hemAboveFloorMm as number) / 0.254) / 100,
    ];
  };
  expect(drop({ to: "floor", "pole-height": `96"` })).toEqual([94, 0.5]);
  expect(drop({ to: "sill", "pole-height": `96"` })).toEqual([64, 30.5]);
  expect(drop({ to: "below-sill", "pole-height": `96"` })).toEqual([70.5, 24]);
  expect(drop({ to: "floor", "pole-height": `96"`, heading: "eyelet" })).toEqual([97.5, 0.5]);
});

test("what the maker must know and nobody said is asked, as a full sentence", () => {
  const { made } = make({ at: "bay", to: "floor" }, { window: BAY });
  expect(made.questions.map((q) => q.replaceAll("\u202f", " "))).toEqual([
    "How long is the pole between its finials? 88″ is assumed, 8″ beyond the opening at each side.",
    "How high is the pole's middle above the floor? 96″ is assumed, and the drop rests on it.",
    "How far do the curtains return to the wall at each side? 3 1/2″ is assumed until the bracket is measured.",
    "How high above the hem does the middle of the lowest whole motif stand? Level across all widths is all that is known.",
  ]);
  const told = make(
    {
      at: "bay",
      pole: `96"`,
      "pole-height": `96"`,
      drop: `92"`,
      return: `4"`,
      "lowest-motif": `9"`,
      fullness: "2",
    },
    { window: BAY },
  );
  expect(told.made.questions).toEqual([]);
});

test("a track inside the recess goes down to what can be marked, and does not return", () => {
  const inches = make(
    { at: "bay", mount: "inside", to: "sill" },
    { window: windowFacts(`48 3/16"`, `60"`, `30"`, `5"`) },
  );
  expect((inches.made.figures.poleMm as number) / 25.4).toBe(47.625);
  expect(inches.made.plan?.coverage.returnEach.isZero()).toBe(true);
  const metric = make(
    { at: "bay", mount: "inside", to: "sill" },
    { units: "centimetres", window: windowFacts("122.47 cm", "150 cm", "76 cm", "12 cm") },
  );
  expect(metric.made.figures.poleMm).toBe(1214);
});

// Worked by hand: a pole of 245 cm less 4 under its rings and 1 above the floor; a track of 245 cm less 1, for the heading covers it.
test("what hangs from a track begins at it: no rings, so the drop is longer by as much", () => {
  const hung = (more: Record<string, unknown>) =>
    make(
      { at: "bay", to: "floor", pole: "300 cm", "pole-height": "245 cm", ...more },
      { units: "centimetres", window: windowFacts("240 cm", "150 cm", "60 cm", "12 cm") },
    );
  const pole = hung({});
  const track = hung({ "hangs-from": "track" });
  expect(pole.made.figures.finishedDropMm).toBe(2400);
  expect(track.made.figures.finishedDropMm).toBe(2440);
  expect([pole, track].map(({ made }) => made.figures.trackAboveFloorMm)).toEqual([
    undefined,
    2450,
  ]);
  expect(track.made.working.find((w) => w.what === "Finished drop")?.sum).toBe(
    "245\u00a0cm to the track − 1\u202fcm floor clearance",
  );
  // It returns to the wall as curtains on a pole do, unlike a track between two walls.
  expect(track.made.plan?.coverage.returnEach.isZero()).toBe(false);
  const context = hangingContext(curtainsAllowances, { units: "centimetres", cloths: [LARGE] });
  const sheet = curtainsSheet(track.fields, track.made, { ...context, language: "en-GB" });
  expect(JSON.stringify(sheet)).toContain("Track 300");
  expect(codes(hung({ "hangs-from": "track", heading: "eyelet" }).made)).toContain(
    "heading-hangs-otherwise at items[0].hangs-from",
  );
  expect(codes(hung({ "hangs-from": "pole", heading: "s-fold" }).made)).toContain(
    "heading-hangs-otherwise at items[0].hangs-from",
  );
  // Nothing said, and a track bought: the four centimetres would be missing at the floor.
  const hardware = [{ what: "White track 300 cm", trade: "58" }];
  const unsaid = hung({ hardware }).made.diagnostics;
  expect(unsaid.map((d) => [d.code, d.severity, d.keyPath])).toEqual([
    ["track-for-pole", "warning", "items[0].hardware.0.what"],
  ]);
  for (const more of [{ "hangs-from": "track" }, { "hangs-from": "pole" }, { heading: "s-fold" }])
    expect(codes(hung({ hardware, ...more }).made).join()).not.toContain("track-for-pole");
  expect(codes(hung({ hardware: [{ what: "iron pole" }] }).made)).toEqual([]);
  // A tension pole between the walls of a recess has rings as any other.
  const between = hung({ "hangs-from": "pole", mount: "inside", pole: "239 cm" });
  expect(between.made.figures.finishedDropMm).toBe(2400);
});

test("bad inputs are diagnostics at their place, with what would mend them", () => {
  expect(codes(make({ pole: `96"` }).made)).toEqual(["curtains-without-drop at items[0]."]);
  expect(codes(make({ drop: `92"` }).made)).toEqual(["curtains-without-pole at items[0]."]);
  expect(codes(make({ pole: `96"`, to: "sill" }).made)).toEqual([
    "drop-cannot-be-found at items[0].to",
  ]);
  expect(
    codes(make({ pole: `96"`, drop: `92"` }, {}, { ...LARGE, usableWidth: null }).made),
  ).toEqual(["cloth-without-width at items[0].cloth"]);
  expect(
    codes(make({ pole: `96"`, drop: `92"` }, {}, { ...LARGE, usableWidth: length(`1"`) }).made),
  ).toEqual(["cloth-narrower-than-joins at items[0].cloth"]);
  expect(codes(make({ pole: `96"`, drop: `92"`, railroad: "yes" }).made)).toEqual([
    "railroad-too-long at items[0].railroad",
  ]);
  expect(
    codes(make({ at: "bay", mount: "inside", pole: `80"`, drop: `58"` }, { window: BAY }).made),
  ).toEqual(["pole-longer-than-recess at items[0].pole"]);
  expect(
    codes(
      make({ at: "bay", to: "floor", "pole-height": `110"` }, { window: BAY, roomHeight: `105"` })
        .made,
    ),
  ).toEqual(["pole-above-ceiling at items[0].pole-height"]);
  expect(codes(make({ pole: `96"`, drop: `92"`, "lowest-motif": `30"` }).made)).toEqual([
    "lowest-motif-is-not at items[0].lowest-motif",
  ]);
  expect(
    codes(
      make(
        { pole: `96"`, drop: `92"`, lining: "ivory" },
        { cloths: [LARGE, { ...IVORY, usableWidth: null }] },
      ).made,
    ),
  ).toEqual(["cloth-without-width at items[0].lining"]);
  for (const { made } of [
    make({ pole: `96"` }),
    make({ pole: `96"`, drop: `92"` }, {}, { ...LARGE, usableWidth: null }),
  ]) {
    expect(made.plan).toBeNull();
    expect(made.cuts).toEqual([]);
    expect(made.diagnostics.every((d) => d.hint !== null)).toBe(true);
    expect(
      curtainsSeen(
        fieldsOf(curtainsSchema, { curtains: "Bay", cloth: "fern", heading: "eyelet" }),
        made,
      ),
    ).toEqual([]);
  }
});

test("a repeat longer than the drop is fine: each cut is one repeat", () => {
  const long = {
    ...LARGE,
    repeat: {
      up: length(`120"`),
      across: length(`27"`),
      match: "straight" as const,
      fromSelvedge: null,
    },
  };
  const { made } = make({ pole: `96"`, drop: `60"` }, {}, long);
  expect(made.diagnostics).toEqual([]);
  expect((made.figures.cutLengthMm as number) / 25.4).toBe(120);
  expect(made.figures.repeats).toBe(1);
});

test("two pairs take twice the cloth of one", () => {
  const one = make({ pole: `96"`, drop: `92"` }).made;
  const two = make({ pole: `96"`, drop: `92"`, count: "2" }).made;
  expect(two.cuts.every((cut) => cut.count === 2)).toBe(true);
  expect(two.handbook[0]?.length.equals(one.handbook[0]?.length.times(2) ?? length("0"))).toBe(
    true,
  );
  expect(two.makingCounts.width?.valueOf()).toBe(2 * (one.makingCounts.width?.valueOf() ?? 0));
});

test("seen drawn back less than closed; weights carry their caution", () => {
  const { fields, made } = make({ pole: `96"`, drop: `92"` });
  const area = (hung: "open" | "closed") => curtainsSeen(fields, made, hung)[0]?.areaMm2 ?? 0;
  expect(area("closed")).toBeCloseTo(96 * 92 * 25.4 ** 2, 3);
  expect(area("open")).toBeCloseTo(0.3 * area("closed"), 3);
  expect(curtainsKind.seen(fields, made)).toEqual(curtainsSeen(fields, made, "open"));
  expect(made.cautions).toContain("small-parts");
  const sheet = curtainsSheet(fields, made, {
    units: "inches",
    language: "en-US",
    cloth: () => LARGE,
    object: () => null,
  });
  const words = sheet.groups.flatMap((group) => group.lines).join(" ");
  expect(words).toContain("Small parts: choking hazard for young children");
  expect(sheet.checks.some((check) => check.text.includes("child-safety device"))).toBe(true);
});
