import { expect, test } from "vitest";
import { findingOf, type MadeCloth, type MadeRoom, schemeOf } from "./roomOf.ts";

// How old a price may be before it is asked for again: common practice, no source.

/** A room with curtains of some cloths, by the further lines of their cards. */
function roomWith(cards: Readonly<Record<string, string>>, more: Partial<MadeRoom> = {}) {
  const made = (card: string): MadeCloth => ({ kind: "plain", colours: { "#efe4cb": 1 }, card });
  return schemeOf({
    ...more,
    cloths: Object.fromEntries(Object.entries(cards).map(([id, card]) => [id, made(card)])),
    seen: [],
    uses: Object.keys(cards).map((cloth) => ({
      item: "thing",
      title: "Thing",
      kind: "curtains",
      surface: "face",
      cloth,
    })),
    room: `approach: free\n${more.room ?? ""}`,
  });
}

test("a price is old after half a year, and one without a date is said to have none; the day comes as a value", () => {
  const priced = (on: string, today: string) =>
    findingOf(
      roomWith({ fern: `price: { trade: 10, per: yard${on} }` }, { on: today }),
      "price-old",
    );
  expect(priced(", on: 2026-01-01", "2026-06-30")).toBeUndefined();
  expect(priced(", on: 2026-01-01", "2026-07-01")?.message).toContain("181 days old");
  expect(priced("", "2026-07-01")?.message).toContain("has no date");
  expect(findingOf(roomWith({ fern: "" }), "price-old")).toBeUndefined();
});

test("up to two old prices are told by themselves, more in one finding; what a waiver names stays apart", () => {
  const ids = ["fern", "moss", "reed", "sedge"];
  const told = (count: number, room = "") =>
    roomWith(
      Object.fromEntries(
        ids
          .slice(0, count)
          .map((id) => [
            id,
            `price: { trade: 10, per: yard${id === "moss" ? "" : ", on: 2026-01-01"} }`,
          ]),
      ),
      { on: "2026-07-01", room },
    );
  const old = (count: number, room = "") =>
    told(count, room).findings.filter(({ code }) => code === "price-old");
  expect(old(2).map(({ of }) => of)).toEqual([["fern"], ["moss"]]);
  expect(old(3)).toMatchObject([
    {
      message:
        "3 prices are to be asked for again: fern (181 days), moss (no date) and reed (181 days).",
      of: ["fern", "moss", "reed"],
      evidence: { prices: 3, days: 181 },
      pasteLine: "  - { finding: price-old, of: [fern, moss, reed], because: … }",
    },
  ]);
  const one = "accept: [{ finding: price-old, of: [reed], because: Asked for. }]";
  expect(old(4, one).map(({ of, accepted }) => [of, accepted])).toEqual([
    [["reed"], "Asked for."],
    [["fern", "moss", "sedge"], null],
  ]);
  const three = one.replace("[reed]", "[reed, fern, moss]");
  expect(old(4, three).map(({ of, accepted }) => [of, accepted])).toEqual([
    [["fern", "moss", "reed"], "Asked for."],
    [["sedge"], null],
  ]);
  expect(told(4, three).diagnostics).toEqual([]);
  expect(old(4, "accept: [{ finding: price-old, because: Asked for. }]")).toHaveLength(1);
});
