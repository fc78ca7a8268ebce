import { afterAll, beforeAll, expect, test } from "vitest";
import { computedFolder, saidOf } from "./smallFolder.ts";

// The reserve on the account's page and in the proposal, from files. Making 200 and a fee of 100, both at five per cent: 315; a tenth of it in
// reserve is 31.50, together 346.50. Sums by hand; the scenario is made up.

type Row = Record<string, string>;
interface Model {
  more: string;
  agreed: { today: Row; unused: Row | null; change: Row | null; remarks: { words: string }[] };
  due: { words: string; rows: Row[] };
  reserve: { kept: string; rows: Row[]; used: string; rest: Row; paste: string[] } | null;
  made: { whole: { rows: Row[] }; kinds: Row[]; total: Row };
}

const USED =
  "reserve-used:\n  - { what: Plasterer, amount: 10, on: 2026-11-12 }\n  - { what: Longer pole, amount: 5, on: 2026-11-14, kind: goods }";

// What is taken out of the reserve counts from its day on.
const outside = process.env.SOURCE_DATE_EPOCH;
beforeAll(() => {
  process.env.SOURCE_DATE_EPOCH = String(Date.parse("2026-12-01") / 1000);
});
afterAll(() => {
  if (outside === undefined) delete process.env.SOURCE_DATE_EPOCH;
  else process.env.SOURCE_DATE_EPOCH = outside;
});

async function pages(status: string, more = "", contingency = "contingency: 10") {
  const computed = await computedFolder({
    "studio.md": `studio: Alder Lane Rooms\nlanguage: en-US\nunits: inches\ncurrency: USD\npaper: tabloid\n${contingency}
tax: { goods: 8, services: 5, name: sales tax }\nmakers: { bench: { name: Bench, makes: [cushion] } }`,
    "cloths/linen.md": `cloth: Linen\nwidth: 54"\nkind: plain\ncolours: [{ colour: "#8a7a66" }]`,
    "projects/quay/project.md": `project: Quay\nclient: { name: Nobody }\nfees: { design: 100 }\ndated: 2026-11-20\nstatus: ${status}
instalments: [{ deposit: 50%, due: approval }, { balance: rest, due: fitting }]
approvals: [{ revision: A, by: Nobody, on: 2026-10-21, total: 346.50 }]\nrevision: A\n${more}`,
    "projects/quay/den.md": `room: Den\ncloths: [linen]\nitems:\n  - { cushion: Seat, cloth: linen, owner: client, size: 20" x 20", edge: knife, filling: feather, making: 200, maker: bench }`,
  });
  expect(saidOf(computed)).toEqual([]);
  const model = (path: string) => computed.pages.find((p) => p.path === path)?.model;
  const { budget } = model("client/quay/proposal.html") as unknown as {
    budget: { closing: Row[]; total: string };
  };
  return { account: model("studio/quay/account.html") as unknown as Model, budget };
}

test("while it is made the total holds the reserve, and the line is shown by which something is taken out of it", async () => {
  const { account, budget } = await pages("making");
  expect(account.agreed.today.total).toBe("346.50");
  expect(account.reserve).toMatchObject({
    kept: "31.50",
    rows: [],
    rest: { what: "Left, and in the total", sum: "31.50" },
  });
  expect(account.reserve?.paste[0]).toBe("reserve-used:");
  expect(budget.closing.at(-1)).toMatchObject({ what: "Kept in reserve for the unforeseen" });
  const used = await pages("making", USED);
  expect(used.account.agreed.today.total).toBe("346.50");
  expect(used.account.more).toContain(
    "Of the reserve of $31.50, $15.90 is used: what is not used of the other $15.60 comes off the balance.",
  );
});

test("the account lists what counts, each beside its own sum, whatever is dated ahead of it in the file", async () => {
  const ahead = USED.replace(
    "reserve-used:",
    "reserve-used:\n  - { what: Later, amount: 7, on: 2099-01-05 }",
  );
  const { account } = await pages("fitted", ahead);
  expect(account.reserve?.rows.map(({ what, sum }) => [what, sum])).toEqual([
    ["Plasterer", "10.50"],
    ["Longer pole", "5.40"],
  ]);
});

test("the last account charges what was used as what it was, and says what was not", async () => {
  const { account, budget } = await pages("fitted", USED);
  // Ten and five per cent are 10.50, five and eight per cent 5.40.
  expect(account.reserve).toEqual({
    kept: "31.50",
    rows: [
      { what: "Plasterer", on: "November 12, 2026", sum: "10.50" },
      { what: "Longer pole", on: "November 14, 2026", sum: "5.40" },
    ],
    used: "15.90",
    rest: { what: "Not used, and not charged", sum: "15.60" },
    paste: [],
  });
  expect(account.agreed.today.total).toBe("330.90");
  expect(account.agreed.unused?.sum).toBe("15.60");
  expect(account.agreed.change).toBeNull();
  expect(account.agreed.remarks.map((r) => r.words)).toEqual([
    "Today’s total is the one that was approved, less what was not used of the reserve.",
  ]);
  expect(account.due.rows.map((r) => r.sum)).toEqual(["173.25", "157.65"]);
  expect(account.due.words).toContain(
    "What was not used of the reserve, $15.60, is off the balance.",
  );
  expect(account.made.whole.rows.slice(-2)).toMatchObject([
    { what: "Plasterer, from the reserve", work: "10.00", tax: "0.50", sum: "10.50" },
    { what: "Longer pole, from the reserve", goods: "5.00", tax: "0.40", sum: "5.40" },
  ]);
  expect(account.made.kinds.at(-1)).toMatchObject({ what: "Used of the reserve", sum: "15.90" });
  expect(account.made.total.sum).toBe("330.90");
  expect(budget.closing.at(-1)).toMatchObject({ what: "Used of the reserve", sum: "15.90" });
});

test("where nothing was used the last account has no line of it and says so; without a reserve nothing is said", async () => {
  const { account, budget } = await pages("fitted");
  expect(account.agreed.today.total).toBe("315.00");
  expect(account.more).toContain(
    "Nothing was used of the reserve of $31.50, and none of it is charged.",
  );
  expect(account.made.kinds.map((k) => k.what)).not.toContain("Used of the reserve");
  expect(budget.closing.map((row) => row.what)).toEqual(["Design fee"]);
  const none = await pages("fitted", "", "");
  expect(none.account.reserve).toBeNull();
  expect(none.account.more).not.toContain("reserve");
});
