import { expect, test } from "vitest";
import { FITTING, schedule } from "./scheduleOf.ts";

// The schedule round closed days, counted by hand on a printed calendar of 2026 and 2027.

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
