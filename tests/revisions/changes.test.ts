import fc from "fast-check";
import { expect, test } from "vitest";
import { changesBetween, isRoundingAlone, lastBefore } from "../../src/revisions/changes.ts";
import { nextRevision } from "../../src/revisions/nextRevision.ts";
import {
  isSame,
  readSent,
  type SentItem,
  type SentRevision,
  writeSent,
} from "../../src/revisions/sentRevision.ts";

// Identities of bookkeeping: what was, and what each change adds or takes away, make what is. No outside source.

const item = fc.record({
  item: fc.constantFrom("a", "b", "c", "d", "e"),
  cloths: fc.subarray(["Vestry", "Hayrick", "Mizzle"]),
  way: fc.constantFrom(null, "In damask", "In check"),
  sumMinor: fc.integer({ min: 0, max: 500_000 }),
  open: fc.boolean(),
});
const other = fc.record({
  what: fc.constantFrom("Design fee", "Fitting", "Freight"),
  sumMinor: fc.integer({ min: 1, max: 90_000 }),
  open: fc.constant(false),
});
const state = fc
  .record({
    items: fc.uniqueArray(item, { selector: (i) => i.item }),
    others: fc.uniqueArray(other, { selector: (o) => o.what }),
  })
  .map(({ items, others }): SentRevision => {
    const all = items.map((i): SentItem => ({ room: "den", roomName: "Den", what: i.item, ...i }));
    const sum = [...items, ...others].reduce((total, each) => total + each.sumMinor, 0);
    return {
      form: 1,
      project: "quay",
      revision: "A",
      sent: "2026-11-02",
      dated: "2026-11-01",
      currency: "USD",
      items: all,
      others,
      totalMinor: sum,
    };
  });

test("what was and all changes together make what is", () => {
  fc.assert(
    fc.property(state, state, (before, now) => {
      const c = changesBetween(before, now);
      const sum = (all: readonly SentItem[]) => all.reduce((s, each) => s + each.sumMinor, 0);
      const moved =
        sum(c.added) -
        sum(c.removed) +
        c.changed.reduce((s, each) => s + each.now.sumMinor - each.before.sumMinor, 0) +
        c.others.reduce((s, each) => s + each.nowMinor - each.beforeMinor, 0);
      expect(c.beforeMinor + moved).toBe(c.nowMinor);
    }),
  );
});

test("what is new one way is gone the other, and nothing differs from itself", () => {
  fc.assert(
    fc.property(state, state, (one, two) => {
      const there = changesBetween(one, two);
      const back = changesBetween(two, one);
      expect(back.removed).toEqual(there.added);
      expect(back.added).toEqual(there.removed);
      expect(back.changed.length).toBe(there.changed.length);
      const same = changesBetween(one, one);
      expect([same.added, same.removed, same.changed, same.others].flat()).toEqual([]);
    }),
  );
});

test("a record comes back from its file as it was; another text is none", () => {
  fc.assert(
    fc.property(state, (one) => {
      expect(readSent(writeSent(one))).toEqual(one);
      expect(isSame(one, { ...one, sent: "2030-01-01" })).toBe(true);
      expect(isSame(one, { ...one, totalMinor: one.totalMinor + 1 })).toBe(false);
    }),
  );
  for (const text of ["", "{", "[]", '{"form":2}', '{"form":1,"project":"quay"}'])
    expect(readSent(text)).toBeNull();
});

test("a state is compared with the latest of another revision, in its own currency", () => {
  const of = (revision: string, sent: string, currency = "USD"): SentRevision => ({
    form: 1,
    project: "quay",
    revision,
    sent,
    dated: sent,
    currency,
    items: [],
    others: [],
    totalMinor: 0,
  });
  const all = [
    of("A", "2026-10-01"),
    of("B", "2026-11-01"),
    of("C", "2026-11-01"),
    of("D", "2026-12-01", "EUR"),
  ];
  expect(lastBefore(all, of("D", ""))?.revision).toBe("C");
  expect(lastBefore(all, of("C", ""))?.revision).toBe("B");
  expect(lastBefore(all.slice(0, 1), of("A", ""))).toBeNull();
});

test.each([
  ["A", "B"],
  ["c", "d"],
  ["9", "10"],
  ["Z", null],
  ["Spring", null],
])("after %s comes %s", (one, next) => {
  expect(nextRevision(one)).toBe(next);
});

test("a cent or two of shared tax is no change to tell; three are, and so is anything else beside them", () => {
  const thing = (sumMinor: number, made?: Record<string, string>): SentItem => ({
    room: "den",
    roomName: "Den",
    item: "curtains-bay",
    what: "Drapery, bay",
    cloths: ["Vestry"],
    way: null,
    sumMinor,
    open: false,
    ...(made ? { made } : {}),
  });
  const alone = (before: SentItem, now: SentItem) =>
    changesBetween(revisionOf([before]), revisionOf([now])).changed.map(isRoundingAlone);
  expect(alone(thing(1000), thing(1002))).toEqual([true]);
  expect(alone(thing(1000), thing(1003))).toEqual([false]);
  expect(alone(thing(1000, { drop: "90 in" }), thing(1001, { drop: "92 in" }))).toEqual([false]);
  // What was not kept then is not held against what is known now.
  expect(alone(thing(1000), thing(1000, { drop: "92 in" }))).toEqual([]);
  const one = revisionOf([thing(1000)]);
  expect(isSame(one, revisionOf([thing(1000, { drop: "92 in" })]))).toBe(true);
  expect(
    isSame(
      revisionOf([thing(1000, { drop: "90 in" })]),
      revisionOf([thing(1000, { drop: "92 in" })]),
    ),
  ).toBe(false);
});

function revisionOf(items: SentItem[]): SentRevision {
  const totalMinor = items.reduce((sum, each) => sum + each.sumMinor, 0);
  const day = "2026-11-02";
  return {
    form: 1,
    project: "quay",
    revision: "A",
    sent: day,
    dated: day,
    currency: "USD",
    items,
    others: [],
    totalMinor,
  };
}
