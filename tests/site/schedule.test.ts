import { expect, test } from "vitest";
import type { ScheduleRow } from "../../src/documents/studio/scheduleRows.ts";
import { CUSHION, FITTING, files, schedule } from "./scheduleOf.ts";
import { computedFolder } from "./smallFolder.ts";

// Days counted by hand on a printed calendar of 2026 and 2027.

test("every day is reckoned back from the fitting with the studio's own times", async () => {
  const { said, warned, model, page } = await schedule();
  // Four weeks before 8 March is 8 February, three before that 18 January.
  expect(said("To come")).toEqual([
    "Mon, 18 Jan 2027: Client’s approval of revision B",
    "Mon, 18 Jan 2027: Sample approved",
    "Mon, 18 Jan 2027: Order from The mill",
    "Mon, 8 Feb 2027: Cloth is with Bench",
    "Mon, 8 Feb 2027: Work begins: Bench",
  ]);
  expect(model.lead).toBe(
    "On 23 November 2026 nothing is late. Next, by Mon, 18 Jan 2027: client’s approval of revision B.",
  );
  expect(warned).toEqual([]);
  expect(page).toMatchObject({ reader: "studio", pdf: true, path: "studio/quay/schedule.html" });
});

test("weeks as a bare number are the same; lead wins where both stand", async () => {
  const { said } = await schedule({ bench: "weeks: 4", mill: "weeks: 9, lead: 3 weeks" });
  expect(said("To come")).toEqual((await schedule()).said("To come"));
});

test("the time that the studio keeps between comes off each step, and a card's own lead wins over its supplier's", async () => {
  const { said } = await schedule({
    studio: "schedule: { ready: 2 working days, checking: 3 working days, ordering: 1 week }",
    card: "lead: 8 weeks",
  });
  // Ready Thu 4 March; begun Thu 4 February; there Mon 1 February; ordered 7 December, approved a week before.
  expect(said("To come")).toEqual([
    "Mon, 30 Nov 2026: Client’s approval of revision B",
    "Mon, 7 Dec 2026: Sample approved",
    "Mon, 7 Dec 2026: Order from The mill",
    "Mon, 1 Feb 2027: Cloth is with Bench",
    "Thu, 4 Feb 2027: Work begins: Bench",
  ]);
});

test("a day at the weekend is moved to the Friday before, and the row says from where; the fitting's own day stays", async () => {
  const { rows, model } = await schedule({
    bench: "lead: 10 days",
    project: "fitting: 2027-03-17",
  });
  const work = rows("To come").find((r) => r.what === "Work begins: Bench");
  expect(work).toMatchObject({ day: "Fri, 5 Mar 2027", moved: "moved from Sun, 7 Mar 2027" });
  expect(model.note).toContain("a weekend or on a closed day");
  const saturday = await schedule({ project: "fitting: 2027-03-13" });
  expect(saturday.page?.model.fitted).toBe("To be fitted on Saturday, 13 March 2027.");
});

test("a cloth of two makers is ordered for the first of them, and has no day while one of them has none", async () => {
  const both = await schedule({ item: CUSHION });
  // Frame needs five weeks: 1 February, and three before that 11 January.
  expect(both.said("To come")).toContain("Mon, 11 Jan 2027: Order from The mill");
  expect(both.rows("To come").find((r) => r.what.startsWith("Order"))?.whose).toBe(
    "for Bench and Frame",
  );
  const one = await schedule({ item: CUSHION, frame: "" });
  expect(one.said("To come").some((row) => row.includes("Order"))).toBe(false);
  expect(one.said("To come")).toContain("Mon, 8 Feb 2027: Cloth is with Bench");
  expect(one.model.missing).toMatchObject([
    { of: "Frame", where: "studio.md, makers, frame", line: "lead: … weeks" },
  ]);
  expect(one.model.openEnded).toContain("may be needed earlier");
});

test("what is missing is listed with its line; with the number in place of the dots the day is there, and the dots alone are an error at their line", async () => {
  const none = await schedule({ bench: "", mill: "" });
  expect(none.model.parts).toEqual([]);
  expect(none.model.lead).toBe("Nothing can be reckoned yet: see what is missing.");
  expect(none.model.missing.map((m) => [m.where, m.line, m.stops])).toEqual([
    [
      "studio.md, makers, bench",
      "lead: … weeks",
      "the beginning of the work and the orders for it",
    ],
    ["studio.md, suppliers, mill", "lead: … weeks", "the order of Linen"],
  ]);
  const line = none.model.missing[0]?.line as string;
  const filled = await schedule({ bench: line.replace("…", "4") });
  expect(filled.said("To come")).toEqual((await schedule()).said("To come"));
  const pasted = await schedule({ bench: line });
  expect(pasted.errors).toMatchObject([
    { file: "studio.md", code: "duration-unreadable", keyPath: "makers.bench.lead" },
  ]);
});

test("without a day of fitting, without a supplier, without a maker the page says which line is missing", async () => {
  const day = await schedule({ project: "budget: 4000" });
  expect(day.model.missing).toMatchObject([
    { where: "projects/quay/project.md", line: "fitting: …" },
  ]);
  const rest = files({});
  const computed = await computedFolder({
    ...rest,
    "cloths/linen.md": `cloth: Linen\nwidth: 140 cm\nkind: plain\ncolours: [{ colour: "#8a7a66" }]`,
    "studio.md": (rest["studio.md"] as string).replace("makes: [curtains]", "makes: [blind]"),
    "projects/quay/den.md": (rest["projects/quay/den.md"] as string).replace("maker: bench", ""),
  });
  const page = computed.pages.find((p) => (p.model as { kind: string }).kind === "schedule");
  expect(page?.model.missing).toMatchObject([
    { where: "cloths/linen.md", line: "lead: … weeks", stops: "the order of Linen" },
    { where: "projects/quay/den.md, items, Bay", line: "maker: …", stops: "the order of Linen" },
  ]);
});

test("what is late comes first, with how late, and is a warning at the fitting's line; once it is fitted nothing is", async () => {
  const soon = "fitting: 2027-01-04";
  // Order by 16 November, approval as well; a week before the documents' date.
  const { model, rows, warned } = await schedule({ project: soon });
  expect(model.parts[0]?.name).toBe("Late");
  expect(rows("Late").map((r) => [r.what, r.state])).toEqual([
    ["Client’s approval of revision B", "7 days late"],
    ["Sample approved", "7 days late; to be asked for"],
    ["Order from The mill", "7 days late"],
  ]);
  expect(model.lead).toContain("three things are late. Next, by Mon, 7 Dec 2026: cloth is with");
  expect(warned.map((d) => [d.severity, d.line, d.keyPath])).toEqual(
    Array(3).fill(["warning", 7, "fitting"]),
  );
  expect(warned[2]?.message).toBe(
    "To be fitted on 2027-01-04, these were to be ordered by now: Linen (2026-11-16).",
  );
  const fitted = await schedule({ project: soon, status: "fitted" });
  expect(fitted.warned).toEqual([]);
  expect(fitted.model.parts.map((p) => p.name)).not.toContain("Late");
  // Nor is anything to come: a sample that nobody wrote as approved is not asked for any more.
  expect(fitted.model.parts.map((p) => p.name)).not.toContain("To come");
  expect(fitted.rows("Never written as done").map((r) => [r.what, r.state])).toEqual([
    ["Sample approved", ""],
  ]);
  // On the day itself it is not late.
  expect((await schedule({ project: "fitting: 2027-01-11" })).warned).toEqual([]);
});

test("what went back to be replaced is expected by its time from the day it went back", async () => {
  const ordered = `${FITTING}\norders: [{ cloth: linen, length: 40 m, on: 2026-11-04 }]`;
  const state = async (project: string) =>
    (await schedule({ project })).rows("To come").find((row) => /expected/.test(row.state))?.state;
  // Three weeks from the order; three weeks from the return.
  expect(await state(ordered)).toBe("expected Wed, 25 Nov 2026");
  const back = "receipts: [{ cloth: linen, lot: A, length: 40 m, returned: { on: 2026-11-26 } }]";
  expect(await state(`${ordered}\n${back}`)).toBe("expected Thu, 17 Dec 2026");
  // Credited it is not on its way: until it is ordered anew no day is expected, and then that order's.
  const credited = back.replace("2026-11-26", "2026-11-26, for: credit");
  expect(await state(`${ordered}\n${credited}`)).toBeUndefined();
  const anew = ordered.replace("]", ", { cloth: linen, length: 40 m, on: 2026-11-05 }]");
  expect(await state(`${anew}\n${credited}`)).toBe("expected Thu, 26 Nov 2026");
});

test("approval, sample, orders and receipts tell what is done, and too little is said", async () => {
  const done = await schedule({
    card: "sample: { ordered: 2026-10-01, approved: 2026-10-20 }",
    project: `${FITTING}
approvals: [{ revision: A, by: Nobody, on: 2026-10-01 }, { revision: B, by: Nobody, on: 2026-11-02 }]
orders: [{ cloth: linen, length: 40 m, on: 2026-11-04 }]`,
  });
  expect(done.said("Done")).toEqual([
    "Tue, 20 Oct 2026: Sample approved",
    "Mon, 2 Nov 2026: Client’s approval of revision B",
    "Wed, 4 Nov 2026: Order from The mill",
  ]);
  expect(done.rows("To come")[0]).toMatchObject({ state: "expected Wed, 25 Nov 2026" });
  const small = await schedule({
    project: `${FITTING}\napprovals: [{ revision: b, by: Nobody, on: 2026-11-02 }]`,
  });
  expect(small.said("Done")).toEqual(["Mon, 2 Nov 2026: Client’s approval of revision B"]);
  const old = await schedule({
    project: `${FITTING}\napprovals: [{ revision: A, by: Nobody, on: 2026-10-01 }]`,
  });
  expect(old.said("Done")).toEqual([]);
  const short = await schedule({
    project: `${FITTING}\norders: [{ cloth: linen, length: 2 m, on: 2026-11-04 }]`,
  });
  expect(short.rows("To come").find((r) => r.what.startsWith("Order"))?.state).toBe(
    "not enough was ordered",
  );
  const came = (length: string) =>
    schedule({
      project: `${FITTING}\nreceipts: [{ cloth: linen, lot: 7, maker: bench, length: ${length}, on: 2026-11-20 }]`,
    });
  expect((await came("40 m")).said("Done")).toEqual([
    "Fri, 20 Nov 2026: Cloth is with Bench",
    ": Order from The mill",
  ]);
  const little = (await came("2 m")).rows("To come").find((r) => r.what.startsWith("Cloth"));
  expect(little?.state).toBe("too little has come");
});

test("what was ordered and comes too late for its maker is late at once", async () => {
  const { rows, warned } = await schedule({
    project: "fitting: 2027-01-04\norders: [{ cloth: linen, length: 40 m, on: 2026-11-20 }]",
  });
  // Three weeks from Friday 20 November is Friday 11 December; it is needed on Monday the 7th.
  expect(rows("Late").find((r) => r.what.startsWith("Cloth"))?.state).toBe(
    "4 days too late; expected Fri, 11 Dec 2026",
  );
  expect(warned.map((d) => d.message).join(" ")).toContain("or come too late: Linen (2026-12-07)");
});

test("the client's own cloth is never ordered, and must be there all the same", async () => {
  const { said } = await schedule({ maker: "    maker: bench\n    owner: client" });
  expect(said("To come")).toEqual([
    "Mon, 8 Feb 2027: Client’s approval of revision B",
    "Mon, 8 Feb 2027: Cloth is with Bench",
    "Mon, 8 Feb 2027: Work begins: Bench",
  ]);
});

const POLE = (days = "") =>
  `    hardware: [{ what: iron pole, supplier: mill, trade: 50${days} }, { what: rings, supplier: mill, trade: 9${days} }, { what: hooks, trade: 1 }]`;
const READY = { studio: "schedule: { ready: 2 working days }" };
const bought = (rows: readonly ScheduleRow[]) =>
  rows
    .filter((row) => row.pieces.length > 0)
    .map((row) => [row.day, row.what, row.pieces.join(", "), row.state]);

// Ready on Thursday 4 March, two working days before Monday the 8th; three weeks before that is Thursday 11 February.
test("what is bought ready stands with the day on which it must be ordered, as far as its supplier's time is written", async () => {
  const told = { ...READY, item: POLE() };
  const { rows, errors, warned } = await schedule(told);
  expect(errors).toEqual([]);
  expect(bought(rows("To come"))).toEqual([
    ["Thu, 11 Feb 2027", "Order from The mill, bought ready", "iron pole, rings", ""],
  ]);
  expect(warned).toEqual([]);
  const none = async (more: object) => {
    const { model } = await schedule({ ...told, ...more });
    expect(model.parts.flatMap((part) => bought(part.rows))).toEqual([]);
  };
  await none({ mill: "" });
  const { model } = await schedule({ ...told, mill: "" });
  expect(model.missing.find((m) => m.of === "The mill")).toMatchObject({
    line: "lead: … weeks",
    stops: "the order of Linen, the order of iron pole and the order of rings",
  });
  await none({ status: "fitted" });
  await none({ item: "" });
});

test("what was ordered of it must be there when all else is ready; what came is done", async () => {
  const ordered = await schedule({ ...READY, item: POLE(", ordered: 2026-11-20") });
  expect(bought(ordered.rows("Done"))).toEqual([
    ["Fri, 20 Nov 2026", "Order from The mill, bought ready", "iron pole, rings", ""],
  ]);
  expect(bought(ordered.rows("To come"))).toEqual([
    ["Thu, 4 Mar 2027", "Here from The mill", "iron pole, rings", "expected Fri, 11 Dec 2026"],
  ]);
  const here = await schedule({
    ...READY,
    item: POLE(", ordered: 2026-11-20, arrived: 2026-11-23"),
    status: "fitted",
  });
  expect(bought(here.rows("Done")).map(([day, what]) => `${day}: ${what}`)).toEqual([
    "Fri, 20 Nov 2026: Order from The mill, bought ready",
    "Mon, 23 Nov 2026: Here from The mill",
  ]);
});

test("what is bought ready is late once its day is past, and where it comes after the day on which it is needed", async () => {
  // As of 23 November, to be fitted on 7 December: three weeks before that was 16 November.
  const told = { mill: "lead: 3 weeks", bench: "lead: 1 day", card: "lead: 1 day" };
  const soon = { ...told, project: "fitting: 2026-12-07" };
  const late = await schedule({ ...soon, item: POLE() });
  expect(bought(late.rows("Late"))).toEqual([
    ["Mon, 16 Nov 2026", "Order from The mill, bought ready", "iron pole, rings", "7 days late"],
  ]);
  expect(late.warned.map((d) => d.message)).toContain(
    "To be fitted on 2026-12-07, these pieces that are bought ready were to be ordered by now: iron pole (2026-11-16), rings (2026-11-16).",
  );
  // Ordered on 20 November it comes on 11 December, four days after.
  const comes = await schedule({ ...soon, item: POLE(", ordered: 2026-11-20") });
  expect(bought(comes.rows("Late"))).toEqual([
    [
      "Mon, 7 Dec 2026",
      "Here from The mill",
      "iron pole, rings",
      "4 days too late; expected Fri, 11 Dec 2026",
    ],
  ]);
});

test("the client approves before anything is ordered, a pole too", async () => {
  const { said } = await schedule({
    item: POLE().replace("iron pole, supplier: mill", "iron pole, supplier: forge"),
    mill: "lead: 3 weeks }\n  forge: { name: The forge, lead: 12 weeks",
  });
  expect(said("To come").slice(0, 2)).toEqual([
    "Mon, 14 Dec 2026: Client’s approval of revision B",
    "Mon, 14 Dec 2026: Order from The forge, bought ready",
  ]);
});
