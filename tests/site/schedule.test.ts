import { expect, test } from "vitest";
import type { ScheduleRow } from "../../src/documents/studio/scheduleRows.ts";
import { computedFolder } from "./smallFolder.ts";

// The schedule from files. Days counted by hand on a printed calendar of 2026 and 2027; the scenario is made up, the steps are common
// practice, no source.

interface Told {
  readonly studio?: string;
  readonly bench?: string;
  readonly frame?: string;
  readonly mill?: string;
  readonly card?: string;
  readonly project?: string;
  readonly status?: string;
  readonly item?: string;
  readonly maker?: string;
}

const FITTING = "fitting: 2027-03-08";
const LEADS = { bench: "lead: 4 weeks", frame: "lead: 5 weeks", mill: "lead: 3 weeks" };

function files(told: Told): Record<string, string> {
  const t = { ...LEADS, ...told };
  const more = (line: string | undefined) => (line ? `, ${line}` : "");
  return {
    "studio.md": `studio: Alder Lane Rooms
language: en-GB
units: centimetres
currency: GBP
paper: a3
${t.studio ?? ""}
makers:
  bench: { name: Bench, makes: [curtains]${more(t.bench)} }
  frame: { name: Frame, makes: [cushion]${more(t.frame)} }
suppliers:
  mill: { name: The mill${more(t.mill)} }`,
    "cloths/linen.md": `cloth: Linen\nwidth: 140 cm\nkind: plain\ncolours: [{ colour: "#8a7a66" }]\nsupplier: mill\n${t.card ?? ""}`,
    "projects/quay/project.md": `project: Quay\nclient: { name: Nobody }\nstatus: ${t.status ?? "proposed"}\nrevision: B\ndated: 2026-11-23\n${t.project ?? FITTING}`,
    "projects/quay/den.md": `room: Den
items:
  - curtains: Bay
    cloth: linen
    pole: 240 cm
    drop: 220 cm
    heading: pencil-pleat
${t.maker ?? "    maker: bench"}
${t.item ?? ""}`,
  };
}

async function schedule(told: Told = {}) {
  const computed = await computedFolder(files(told));
  const errors = computed.diagnostics.filter((d) => d.severity === "error");
  const page = computed.pages.find((p) => (p.model as { kind: string }).kind === "schedule");
  const model = page?.model as unknown as {
    lead: string;
    parts: { name: string; rows: ScheduleRow[] }[];
    missing: { of: string; where: string; line: string; stops: string }[];
    note: string;
    fitted: string;
    closed: string[];
    unwritten: string;
    openEnded: string;
  };
  const rows = (name: string) => model?.parts.find((p) => p.name === name)?.rows ?? [];
  return {
    errors,
    page,
    model,
    rows,
    said: (name: string) => rows(name).map((r) => `${r.day}: ${r.what}`),
    all: computed.diagnostics,
    warned: computed.diagnostics.filter((d) => d.code === "schedule-late"),
  };
}

const CUSHION = `  - cushion: Seat
    cloth: linen
    size: 50 cm x 50 cm
    edge: knife
    maker: frame`;

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
  // On the day itself it is not late.
  expect((await schedule({ project: "fitting: 2027-01-11" })).warned).toEqual([]);
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

const CHRISTMAS = "closed: [2026-12-25 Christmas Day, 2026-12-28, 2027-01-01 New Year]";

test("closed days of the studio move what falls on them, and are named once; what lies outside is not", async () => {
  const plain = await schedule({ project: "fitting: 2027-02-12" });
  // Four weeks before Fri 12 February is 15 January, three before that Christmas Day.
  expect(plain.said("To come")[2]).toBe("Fri, 25 Dec 2026: Order from The mill");
  expect(plain.model.closed).toEqual([]);
  expect(plain.model.unwritten).toContain("No closed days are written");
  const { said, rows, model, all } = await schedule({
    studio: CHRISTMAS.replace("]", ", 2026-10-05, 2027-02-13, 2027-04-02 Good Friday]"),
    project: "fitting: 2027-02-12",
  });
  expect(said("To come")).toEqual([
    "Thu, 24 Dec 2026: Client’s approval of revision B",
    "Thu, 24 Dec 2026: Sample approved",
    "Thu, 24 Dec 2026: Order from The mill",
    "Fri, 15 Jan 2027: Cloth is with Bench",
    "Fri, 15 Jan 2027: Work begins: Bench",
  ]);
  expect(rows("To come")[2]?.moved).toBe("moved from Fri, 25 Dec 2026");
  expect(model.closed).toEqual([
    "25 Dec 2026 (Christmas Day)",
    "28 Dec 2026",
    "1 Jan 2027 (New Year)",
  ]);
  expect(model.unwritten).toBe("");
  expect(all.map((d) => d.code)).not.toContain("fitting-closed");
});

test("a workroom's closing begins its work earlier, a mill's its orders, and what is ordered comes later by it", async () => {
  const both = {
    bench: "lead: 4 weeks, closed: [2027-02-15 to 2027-02-19 half-term]",
    mill: "lead: 3 weeks, closed: [2026-12-24 to 2027-01-01]",
  };
  const { said, model } = await schedule({ ...both, studio: CHRISTMAS });
  // A week more: work from 1 February. Three weeks before that is 11 January: the mill's closing lies before it.
  expect(said("To come").slice(2)).toEqual([
    "Mon, 11 Jan 2027: Order from The mill",
    "Mon, 1 Feb 2027: Cloth is with Bench",
    "Mon, 1 Feb 2027: Work begins: Bench",
  ]);
  expect(model.closed).toEqual(["Bench 15 – 19 Feb 2027 (half-term)"]);
  expect(model.unwritten).toBe("After 1 Jan 2027 no closed day is written in studio.md.");
  // A cloth that takes six weeks: 21 December without the closing; from 24 December to 3 January the mill stands still, eleven days.
  const slow = await schedule({ ...both, card: "lead: 6 weeks" });
  expect(slow.said("To come")[2]).toBe("Thu, 10 Dec 2026: Order from The mill");
  const late = await schedule({
    ...both,
    bench: "lead: 4 weeks",
    project: "fitting: 2027-02-01\norders: [{ cloth: linen, length: 40 m, on: 2026-12-14 }]",
  });
  // Three weeks from 14 December are 4 January, and with the eleven days 15 January; it is needed on the 4th.
  expect(late.rows("Late").find((r) => r.what.startsWith("Cloth"))?.state).toBe(
    "11 days too late; expected Fri, 15 Jan 2027",
  );
  expect(late.warned.map((d) => d.message).join(" ")).toContain(
    "or come too late: Linen (2027-01-04)",
  );
});

test("what comes while its maker is closed is there when the maker is back", async () => {
  const { rows } = await schedule({
    bench: "lead: 4 weeks, closed: [2026-12-14 to 2026-12-18]",
    project: `${FITTING}\norders: [{ cloth: linen, length: 40 m, on: 2026-11-25 }]`,
  });
  // Three weeks from Wednesday 25 November are Wednesday 16 December.
  expect(rows("To come").find((r) => r.what.startsWith("Cloth"))?.state).toBe(
    "expected Mon, 21 Dec 2026",
  );
});

test("an order that a closing makes late is told by check", async () => {
  // Fri 15 January: work from 18 December, ordered by 27 November; with the week of the mill by the 20th, three days ago.
  const project = "fitting: 2027-01-15";
  expect((await schedule({ project })).warned).toEqual([]);
  const { warned, rows } = await schedule({
    project,
    mill: "lead: 3 weeks, closed: [2026-12-07 to 2026-12-11]",
  });
  expect(warned.map((d) => d.message).join(" ")).toContain(
    "these were to be ordered by now: Linen (2026-11-20)",
  );
  expect(rows("Late").find((r) => r.what.startsWith("Order"))?.state).toBe("3 days late");
});

test("a fitting on a closed day is a warning at its line, and stands on the page", async () => {
  const { all, model } = await schedule({ studio: "closed: [2027-03-08 Rose Monday]" });
  expect(all.filter((d) => d.code === "fitting-closed")).toMatchObject([
    {
      severity: "warning",
      line: 7,
      message: "The fitting is on 2027-03-08, which is a closed day: Rose Monday.",
    },
  ]);
  expect(model.fitted).toBe("To be fitted on Monday, 8 March 2027, which is a closed day.");
});

test("closed days that cannot be are errors at their line", async () => {
  const { errors } = await schedule({
    studio:
      "closed:\n  - 2027-02-31\n  - 2027-08-20 to 2027-08-02\n  - 2026-12-24 to 2027-12-31\n  - 2026-12-25: Christmas",
  });
  expect(errors.map((d) => `${d.line} ${d.code}`)).toEqual([
    "8 date-unreadable",
    "9 closed-ends-first",
    "10 closed-too-long",
    "11 words-wanted",
  ]);
  // The line that is offered for the last of them reads well.
  const mended = await schedule({ studio: 'closed:\n  - "2026-12-25: Christmas"' });
  expect(mended.errors).toEqual([]);
  const lone = await schedule({ studio: "closed: 2026-12-25" });
  expect(lone.errors.map((d) => `${d.line} ${d.code}`)).toEqual(["7 list-wanted"]);
});
