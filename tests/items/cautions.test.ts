import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { CAUTION_CODES, cautionFor } from "../../src/items/common/cautions.ts";
import type { TradeCase } from "./tradeContext.ts";

const SAFETY = JSON.parse(
  readFileSync(new URL("../reference/trade/safety.json", import.meta.url), "utf8"),
) as TradeCase[];

test("every caution defers to local codes and licensed practice, and judges nothing", () => {
  for (const code of CAUTION_CODES) {
    for (const kind of [
      "curtains",
      "blind",
      "pelmet",
      "lampshade",
      "tieback",
      "cushion",
      "armchair",
      "wallpaper",
      "paint",
      "object",
    ]) {
      const caution = cautionFor(code, kind);
      expect(caution?.text, code).toMatch(
        /Local codes and licensed or tested practice decide; this is a reminder, not a judgement of compliance\.$/,
      );
      // The published cautions all end so (safety.json).
      expect(SAFETY.every((c) => c.caution?.includes("not a judgement of compliance"))).toBe(true);
      expect(caution?.text).not.toMatch(/\d+ ?(kg|lb|newton)/i);
    }
  }
  expect(cautionFor("bad-taste", "cushion")).toBeNull();
});

test("re-covering counts (sa-01, 16 CFR part 1640); scatter cushions are named (sa-03, SI 1988/1324)", () => {
  expect(cautionFor("fire", "armchair")?.text).toMatch(/Re-covering counts.*confirm in writing/);
  expect(cautionFor("fire", "cushion")?.text).toContain("scatter cushions");
});

test("old paint names 1978 and stops before sanding (sa-11, 40 CFR 745)", () => {
  const text = cautionFor("lead-paint", "paint")?.text ?? "";
  expect(text).toContain("1978");
  expect(text).toContain("never sand or burn old paint");
});

test("cords: cordless first, inner cords and loops (sa-08, sa-09, sa-10); small parts carry the sheet's line (sa-17, common practice, no source)", () => {
  expect(cautionFor("cords", "blind")?.text).toMatch(/Cordless.*loop.*back of a blind.*cots/);
  const smallParts = SAFETY.find((c) => c.id === "sa-17") as unknown as {
    expected: { sheet_line: string };
  };
  const line = smallParts.expected.sheet_line;
  expect(cautionFor("small-parts", "curtains")?.text.toLowerCase()).toContain(line);
});

test("a client is told what to watch at home, not how it is made up (common practice, no source)", () => {
  const toClient = (code: string) => cautionFor(code, "curtains", "client")?.text ?? "";
  expect(toClient("small-parts")).toMatch(/^Small parts: choking hazard/);
  expect(toClient("small-parts")).not.toContain("Sew ");
  expect(toClient("fire")).toContain("Ask us");
  expect(toClient("fire")).toMatch(/Local codes.*$/);
  // What is said to both is the same.
  expect(toClient("cords")).toBe(cautionFor("cords", "curtains")?.text);
});

test("heavy pieces: a competent fixer, never a rating (sa-13)", () => {
  expect(cautionFor("heavy-hanging", "object")?.text).toMatch(/competent fixer.*weight/);
});

test("heat belongs to lampshades, the way out to curtains at a door", () => {
  expect(cautionFor("lamp-heat", "lampshade")?.text).toMatch(/wattage.*licensed electrician/);
  expect(cautionFor("way-out", "curtains")?.text).toMatch(/door/);
  expect(cautionFor("cords", "tieback")?.text).toContain("unhooked at both ends");
});
