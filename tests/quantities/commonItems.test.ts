import { expect, test } from "vitest";
import { scopeOf } from "../../src/cli/verbs/fitsOptions.ts";
import { ITEM_KINDS } from "../../src/items/kinds.ts";
import { commonItemsOf, commonProject } from "../../src/quantities/commonItems.ts";
import { clothFits } from "../../src/quantities/fits/clothFits.ts";
import { fitsJson, fitsText } from "../../src/quantities/fits/fitsReport.ts";
import type { ClothFits } from "../../src/quantities/fits/found.ts";
import type { ProjectRecord } from "../../src/records/records.ts";
import { clothFacts } from "../../src/swatches/clothFacts.ts";
import { Length } from "../../src/units/length.ts";
import { lookUpsOf, recordsOf, STUDIO_CM, STUDIO_INCHES } from "./studioOf.ts";

const CLOTHS = { plain: `cloth: Plain\nwidth: 54"\nkind: plain` };
const LIST = `allowances: { cushion: { seam: 1/2" } }
common-items:
  - { item: Small, kind: cushion, size: 17" x 17" }
  - { item: Large, kind: pillow, size: 25" x 25" }
  - { item: Pair, kind: cushion, size: 17" x 17", count: 2 }`;

function asked(studio: string, length: Length) {
  const records = recordsOf({ studio, cloths: CLOTHS, rooms: { a: "room: A\nitems: []" } });
  expect(records.diagnostics.filter((d) => d.file === "studio.md")).toEqual([]);
  const usual = commonItemsOf(records.studio);
  const project = commonProject(usual.items, "plain", ITEM_KINDS) as ProjectRecord;
  const facts = clothFacts(records.cloths.get("plain") as never, null);
  const remnant = { length, width: null, count: 1, holes: [], seams: [], firstMotif: null };
  const found = clothFits(records, [project], ITEM_KINDS, lookUpsOf(records), facts, remnant);
  const report = { rooms: null, common: found as ClothFits, isWashed: false, ownList: usual.own };
  return {
    found: found as ClothFits,
    project,
    text: fitsText("Plain", remnant, report, "inches"),
    json: fitsJson("plain", remnant, report) as { common: { isWashed: false; ownList: boolean } },
  };
}

// By hand: a cushion of 17 in is cut 18 in square; three stand across 54 in. The pair's four faces need two rows, 36 in.
test("the studio's own list: what just fits, and the nearest miss", () => {
  const studio = `${STUDIO_INCHES}\n${LIST}`;
  const exact = asked(studio, Length.inches(18));
  expect(exact.found.makes.map((m) => m.titles)).toEqual([["Small"]]);
  expect(exact.found.makes[0]?.needed.equals(Length.inches(18))).toBe(true);
  expect(exact.found.nearestMiss?.titles).toEqual(["Large"]);
  expect(exact.found.nearestMiss?.missing.toMm()).toBeCloseTo(8 * 25.4, 1);
  expect(exact.text).toContain("the studio's own list");
  expect(exact.json.common.ownList).toBe(true);
  const short = asked(studio, Length.inches("17.875"));
  expect(short.found.makes).toEqual([]);
  expect(short.found.nearestMiss?.titles).toEqual(["Small"]);
  expect(short.found.nearestMiss?.missing.toMm()).toBeCloseTo(25.4 / 8, 1);
  expect(short.text).toContain("Nearest to fitting: Small. It is 1/8″ too short.");
  const both = asked(studio, Length.inches(36)).found.makes.map((m) => m.titles.join("+"));
  expect(both).toEqual(expect.arrayContaining(["Small", "Large", "Pair"]));
});

test.each([STUDIO_INCHES, STUDIO_CM])(
  "usual sizes serve where the studio has no list, and are named as common practice",
  (studio) => {
    const { project, found, text } = asked(studio, Length.yards(5));
    expect(project.rooms[0]?.items).toHaveLength(10);
    const alone = found.makes.filter((m) => m.items.length === 1);
    expect(alone).toHaveLength(10);
    expect(found.nearestMiss).toBeNull();
    expect(text).toContain("common practice, no source");
  },
);

test("a project and the common items are two questions", () => {
  expect(() => scopeOf({ project: "a", common: true })).toThrow(/not both/);
  expect(scopeOf({ project: "a" })).toEqual({ project: "a", commonOnly: false });
});

test("cut from one remnant, two items' pieces are told apart", () => {
  const { found, text } = asked(`${STUDIO_INCHES}\n${LIST}`, Length.inches(60));
  const several = found.makes.find((m) => m.items.length > 1);
  expect(several).toBeDefined();
  for (const title of several?.titles ?? []) expect(text).toContain(`  ${title}, face`);
});

test("a box cushion without a thickness is asked for it at its line; nothing is taken in its place", () => {
  const studio = `${STUDIO_INCHES}\ncommon-items:\n  - { item: Box, kind: box-cushion, size: 20" x 20" }`;
  const { diagnostics } = recordsOf({ studio, cloths: CLOTHS, rooms: { a: "room: A\nitems: []" } });
  const [found] = diagnostics.filter((d) => d.file === "studio.md");
  expect(found).toMatchObject({ code: "no-thickness", severity: "error" });
  expect(found?.message).toBe("A box cushion needs its thickness.");
  expect(found?.line).toBeGreaterThan(1);
});
