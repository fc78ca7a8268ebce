import fc from "fast-check";
import { expect, test } from "vitest";
import { blindSeen } from "../../../src/items/blind/area.ts";
import { chooseSections } from "../../../src/items/blind/sections.ts";
import { blindSheet } from "../../../src/items/blind/sheet.ts";
import { planStrips } from "../../../src/items/common/join/joinStrips.ts";
import { Length } from "../../../src/units/length.ts";
import { clothFacts, inUnit, length } from "../tradeContext.ts";
import { windowFacts } from "../windowContext.ts";
import { codes, make, PLAIN } from "./madeBlind.ts";

test("strips and whole widths join to the cut width, never with a seam in the middle", () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 100, max: 8000 }),
      fc.integer({ min: 900, max: 3000 }),
      fc.integer({ min: 0, max: 30 }),
      (cut, usable, join) => {
        const s = planStrips(Length.mm(cut), Length.mm(usable), Length.mm(join));
        if (s.strip === null) {
          expect(cut).toBeLessThanOrEqual(usable);
          return;
        }
        expect(s.wholes % 2).toBe(1);
        const joined = Length.mm(usable)
          .times(s.wholes)
          .plus(s.strip.times(2))
          .minus(Length.mm(join).times(2 * s.joins));
        expect(joined.equals(Length.mm(cut))).toBe(true);
        expect(s.strip.isMoreThan(Length.mm(usable))).toBe(false);
        // As many whole widths as need be and no more: with two fewer the strips would be wider than the cloth.
        if (s.wholes > 1)
          expect(s.strip.plus(Length.mm(usable - 2 * join)).isMoreThan(Length.mm(usable))).toBe(
            true,
          );
      },
    ),
    { numRuns: 200 },
  );
});

test("sections are odd and add back to the drop, whatever the drop", () => {
  fc.assert(
    fc.property(fc.integer({ min: 100, max: 4000 }), (drop) => {
      const s = chooseSections(Length.mm(drop), Length.mm(80), Length.mm(180), Length.mm(250));
      expect(s.sections % 2).toBe(1);
      expect(s.section.times(s.sections).plus(Length.mm(80)).equals(Length.mm(drop))).toBe(true);
      const topRod = s.rodHeights.at(-1);
      expect(topRod ? topRod.plus(s.topRodFromTop).equals(Length.mm(drop)) : s.sections === 1).toBe(
        true,
      );
    }),
    { numRuns: 100 },
  );
});

test("a blind never fills its recess, is never less than a step under it", () => {
  fc.assert(
    fc.property(fc.integer({ min: 16 * 12, max: 16 * 120 }), (sixteenths) => {
      const width = Length.inches(`${sixteenths}/16`);
      const window = { ...windowFacts(`60"`, `60"`, `30"`, `5"`), width };
      const size = make({ at: "bay" }, { window }).made.plan?.size.width as Length;
      const left = width.minus(size).minus(length(`1/2"`));
      expect(left.isNegative()).toBe(false);
      expect(left.isLessThan(length(`1/8"`))).toBe(true);
    }),
    { numRuns: 60 },
  );
});

test("bad inputs are diagnostics at their place", () => {
  const window = windowFacts(`48"`, `60"`, `30"`, `5"`);
  expect(codes(make({}).made)).toEqual([
    "blind-without-width at items[0].",
    "blind-without-drop at items[0].",
  ]);
  expect(codes(make({ at: "bay", width: `48 1/2"` }, { window }).made)).toEqual([
    "blind-wider-than-recess at items[0].width",
  ]);
  expect(codes(make({ at: "bay", width: `47 3/4"` }, { window }).made)).toEqual([
    "blind-without-clearance at items[0].width",
  ]);
  expect(make({ at: "bay", width: `47 1/2"` }, { window }).made.diagnostics).toEqual([]);
  expect(codes(make({ at: "bay", drop: `61"` }, { window }).made)).toEqual([
    "blind-longer-than-recess at items[0].drop",
  ]);
  expect(codes(make({ at: "bay", mount: "outside", width: `40"` }, { window }).made)).toEqual([
    "blind-narrower-than-opening at items[0].width",
  ]);
  expect(
    codes(make({ width: `40"`, drop: `60"` }, {}, { ...PLAIN, usableWidth: null }).made),
  ).toEqual(["cloth-without-width at items[0].cloth"]);
  expect(codes(make({ width: `40"`, drop: `2"` }).made)).toEqual([
    "blind-shorter-than-headrail at items[0].drop",
  ]);
  const none = make({}).made;
  expect([none.plan, none.cuts, none.figures]).toEqual([null, [], {}]);
});

test("a motif is centred where one can be, and asked about where none can", () => {
  const repeat = {
    up: length(`24"`),
    across: length(`27"`),
    match: "straight" as const,
    fromSelvedge: length(`13 1/2"`),
  };
  const narrow = make({ width: `20"`, drop: `60"` }, {}, { ...PLAIN, repeat }).made;
  const across = narrow.cuts[0]?.across;
  expect(across?.how === "motif-at" && inUnit(across.fromLeft, "in")).toBe(12);
  const broad = make({ width: `40"`, drop: `60"` }, {}, { ...PLAIN, repeat }).made;
  expect(broad.cuts[0]?.across).toEqual({ how: "free" });
  expect(
    broad.questions.some((q) => q.startsWith("No motif of Print can stand in the middle")),
  ).toBe(true);
});

test("cordless where nothing is said; cords always carry their caution and their check", () => {
  const { fields, made } = make({ width: `40"`, drop: `60"` });
  expect(made.plan?.operation).toBe("cordless");
  expect(made.cautions).toContain("cords");
  const context = {
    units: "inches",
    language: "en-GB",
    cloth: () => PLAIN,
    object: () => null,
  } as const;
  const text = (sheet: ReturnType<typeof blindSheet>) =>
    sheet.groups.flatMap((group) => group.lines).join(" ");
  expect(text(blindSheet(fields, made, context))).toContain(
    "Inner cords at the back shrouded or restrained.",
  );
  const chain = make({ width: `40"`, drop: `60"`, operation: "chain" });
  expect(text(blindSheet(chain.fields, chain.made, context))).toContain(
    "no free loop; cordless is safer",
  );
  expect(chain.made.questions.some((q) => q.startsWith("At which side is the chain"))).toBe(true);
  expect(
    blindSheet(fields, made, context).checks.some((check) => check.text.includes("no free loop")),
  ).toBe(true);
});

test("seen let down it is all of its face, raised its stack", () => {
  const { fields, made } = make({ width: `40"`, drop: `60"` });
  const area = (hung: "open" | "closed" | "half") =>
    (blindSeen(fields, made, hung)[0]?.areaMm2 ?? 0) / 25.4 ** 2;
  expect(area("closed")).toBeCloseTo(2400, 6);
  expect(area("open")).toBeCloseTo(40 * ((60 - 3) / (made.figures.sections as number) + 3), 6);
  expect(area("half")).toBeGreaterThan(area("open"));
  expect(area("half")).toBeLessThan(area("closed"));
});

test("a lining whose card gives no width is asked for, not taken to need no join", () => {
  const bare = clothFacts({ id: "ivory", type: "lining", usableWidth: null });
  const { made } = make(
    { mount: "outside", width: "200 cm", drop: "150 cm", lining: "ivory" },
    { units: "centimetres", cloths: [PLAIN, bare] },
  );
  expect(made.diagnostics.map((d) => [d.code, d.severity, d.keyPath])).toContainEqual([
    "cloth-without-width",
    "error",
    "items[0].lining",
  ]);
  expect(made.cuts.some((cut) => cut.surface === "lining")).toBe(false);
});
