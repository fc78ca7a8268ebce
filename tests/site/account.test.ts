import { expect, test } from "vitest";
import { computedFolder, saidOf } from "./smallFolder.ts";

// The page of the account, from files. Sums by hand; the scenario is made up.

interface Remark {
  words: string;
  mark: boolean;
  paste: string[];
}
interface Model {
  title: string;
  lead: string;
  more: string;
  currency: string;
  agreed: {
    rows: Record<string, string>[];
    today: Record<string, string>;
    change: Record<string, string> | null;
    remarks: Remark[];
  };
  due: {
    words: string;
    rows: Record<string, string>[];
    total: Record<string, string>;
    paste: string[];
  };
  paid: {
    rows: Record<string, string>[];
    paid: string;
    rest: Record<string, string>;
    paste: string[];
  };
  made: {
    rooms: (Record<string, string> & { rows: Record<string, string>[] })[];
    whole: (Record<string, string> & { rows: Record<string, string>[] }) | null;
    total: Record<string, string>;
    kinds: Record<string, string>[];
    taxes: string[];
  };
  ways: { href: string }[];
}

const HEAD = "project: Quay\nclient: { name: Nobody }\nfees: { design: 100 }\ndated: 2026-11-20\n";
// Making two hundred, charged as agreed; the client's own cloth costs nothing; services at five per cent: 210 and 105, together 315.
const files = (project: string, room = "") => ({
  "studio.md": `studio: Alder Lane Rooms
language: en-US
units: inches
currency: USD
paper: tabloid
tax: { goods: 8, services: 5, name: sales tax }
makers: { bench: { name: Bench, makes: [cushion] } }`,
  "cloths/linen.md": `cloth: Linen\nwidth: 54"\nkind: plain\ncolours: [{ colour: "#8a7a66" }]`,
  "cloths/felt.md": `cloth: Felt\nwidth: 54"\nkind: plain\ncolours: [{ colour: "#5a7a66" }]`,
  "projects/quay/project.md": `${HEAD}${project}`,
  "projects/quay/den.md": `room: Den
cloths: [linen]
items:
  - cushion: Seat
    cloth: linen
    owner: client
    size: 20" x 20"
    edge: knife
    filling: feather
    making: 200
    maker: bench
${room}`,
});

async function account(project: string, room = "") {
  const computed = await computedFolder(files(project, room));
  expect(saidOf(computed)).toEqual([]);
  const page = computed.pages.find((p) => (p.model as { kind: string }).kind === "account");
  expect(page).toMatchObject({ reader: "studio", path: "studio/quay/account.html", pdf: true });
  const warned = computed.diagnostics
    .filter((d) => d.file.endsWith("quay/project.md"))
    .map((d) => d.code);
  return { model: page?.model as unknown as Model, warned, computed };
}
const PARTS = "instalments: [{ deposit: 50%, due: approval }, { balance: rest, due: fitting }]\n";

test("without approval and payment the page says what to write, and what it says can be written", async () => {
  const { model, warned } = await account(`status: proposed\nrevision: A\n`);
  expect(warned).toEqual([]);
  expect(model.title).toBe("Account");
  expect(model.lead).toBe("$315.00 is to be paid; nothing has come in yet.");
  expect(model.agreed.rows).toEqual([]);
  expect(model.agreed.today).toMatchObject({ by: "not approved", total: "315.00" });
  const [remark] = model.agreed.remarks;
  expect(remark?.words).toMatch(/^Nothing is approved yet\. Once the client has approved/);
  expect(remark?.paste).toEqual([
    "approvals:",
    expect.stringMatching(
      /^ {2}- \{ revision: A, by: Nobody, on: \d{4}-\d\d-\d\d, total: 315\.00 \}$/,
    ),
  ]);
  expect(model.paid.paste[1]).toMatch(/amount: 315\.00, on: \d{4}-\d\d-\d\d, what: payment/);
  const lines = [...(remark?.paste ?? []), ...model.paid.paste, ...model.due.paste];
  const after = await account(`status: approved\nrevision: A\n${lines.join("\n")}\n`);
  expect(after.warned).toEqual([]);
  expect(after.model.lead).toBe("All is paid: $315.00.");
  expect(after.model.agreed.remarks).toEqual([
    { words: "Today’s total is the one that was approved.", mark: false, paste: [] },
  ]);
  expect(after.model.due.rows.map((r) => [r.name, r.sum, r.paid, r.open])).toEqual([
    ["Deposit", "157.50", "157.50", "0.00"],
    ["Balance", "157.50", "157.50", "0.00"],
  ]);
});

test("a total that has changed is marked, and the change stands in the balance", async () => {
  const { model, warned } = await account(
    `status: ordered\nrevision: B\n${PARTS}fitting: 2099-02-01
approvals: [{ revision: A, by: Nobody, on: 2026-10-01 }, { revision: B, by: Nobody, on: 2026-10-08, total: 300 }]
payments: [{ amount: 20, on: 2026-10-02 }, { amount: 130.00, on: 2026-10-09, what: deposit }, { amount: 5, on: 2026-10-10 }]`,
  );
  expect(warned).toEqual(["approved-total-differs"]);
  expect(model.lead).toBe("$160.00 remains to be paid of $315.00.");
  expect(model.more).toContain("Nothing of it is due yet.");
  expect(model.agreed.rows.map((r) => [r.what, r.total])).toEqual([
    ["Revision A", "not written"],
    ["Revision B", "300.00"],
  ]);
  expect(model.agreed.change).toEqual({ what: "More than approved", sum: "15.00" });
  expect(model.agreed.remarks).toMatchObject([
    { mark: true, words: expect.stringContaining("$15.00 more than was approved") },
  ]);
  expect(model.due.rows).toMatchObject([
    {
      name: "Deposit",
      when: "On approval, October 8, 2026",
      sum: "150.00",
      state: "paid October 9, 2026",
    },
    {
      name: "Balance",
      when: "At the fitting, February 1, 2099",
      sum: "165.00",
      paid: "5.00",
      open: "160.00",
      state: "part paid, not due yet",
    },
  ]);
  expect(model.due.words).toBe(
    "The parts stand as they were approved with revision B, of $300.00. Today’s total is $15.00 more: it is in the balance.",
  );
  expect(model.paid.rest).toEqual({ what: "Remains to be paid", sum: "160.00" });
});

test("what was approved without its total cannot be compared: the line to complete is there, with the sum only where nothing changed", async () => {
  const without = "approvals: [{ revision: A, by: Nobody, on: 2026-10-01 }]";
  const same = await account(`status: approved\nrevision: A\n${without}`);
  expect(same.model.agreed.change).toBeNull();
  expect(same.model.agreed.remarks[0]?.paste).toEqual([
    "  - { revision: A, by: Nobody, on: 2026-10-01, total: 315.00 }",
  ]);
  const next = await account(`status: proposed\nrevision: B\n${without}`);
  expect(next.warned).toEqual([]);
  expect(next.model.agreed.remarks.map((r) => r.paste[0])).toEqual([
    "  - { revision: A, by: Nobody, on: 2026-10-01, total: … }",
    expect.stringMatching(/revision: B, by: Nobody, on: [\d-]+, total: 315\.00/),
  ]);
  // Dots that were left are refused, not taken for nothing.
  const computed = await computedFolder(
    files(`status: proposed\napprovals:\n${next.model.agreed.remarks[0]?.paste[0]}`),
  );
  expect(saidOf(computed)).toEqual(["project.md:8 amount-unreadable"]);
});

test("the last account: in credit, by room and by kind, every column adding up", async () => {
  const { model, computed } = await account(
    `status: fitted\nrevision: A\napprovals: [{ revision: A, by: Nobody, on: 2026-10-01, total: 315 }]
payments: [{ amount: 320, on: 2026-10-02 }, { amount: -2, on: 2026-10-03 }, { amount: 9, on: 2099-01-01 }]`,
  );
  expect(model.title).toBe("Final account");
  expect(model.lead).toBe("The client is $3.00 in credit: $318.00 is paid of $315.00.");
  expect(model.paid.rows.map((r) => [r.sum, r.note])).toEqual([
    ["320.00", ""],
    ["−2.00", "given back"],
    ["(9.00)", "dated ahead, not counted"],
  ]);
  expect(model.paid.rest).toEqual({ what: "In credit", sum: "3.00" });
  expect(model.made.rooms).toMatchObject([
    { what: "Den", goods: "", work: "200.00", tax: "10.00", sum: "210.00" },
  ]);
  expect(model.made.rooms[0]?.rows).toMatchObject([{ what: "Pillow, seat", sum: "210.00" }]);
  expect(model.made.whole?.rows).toMatchObject([
    { what: "Design fee", work: "100.00", tax: "5.00", sum: "105.00" },
  ]);
  expect(model.made.total).toMatchObject({ work: "300.00", tax: "15.00", sum: "315.00" });
  expect(model.made.kinds).toEqual([
    { what: "Making", net: "200.00", tax: "10.00", sum: "210.00" },
    { what: "Fees and fitting", net: "100.00", tax: "5.00", sum: "105.00" },
  ]);
  expect(model.made.taxes).toEqual(["Sales tax on services: 5% of $300.00, $15.00."]);
  const json = computed.money("quay")?.json as { account: { remaining: number } };
  expect(json.account.remaining).toBe(-300);
  expect(computed.money("quay")?.text).toMatch(
    /Paid \$318\.00 \(1 dated ahead, not counted\); \$3\.00 in credit\.\n$/,
  );
});

test("a price that is to come is starred and named, and the total is called no whole", async () => {
  const { model } = await account(
    "status: proposed\n",
    `  - cushion: Back\n    cloth: felt\n    size: 20" x 20"\n    edge: knife\n    filling: feather\n    making: 10\n    maker: bench\n`,
  );
  expect(model.more).toContain("The total is not the whole yet. Price to come: Felt.");
  expect(model.made.rooms[0]?.sum).toMatch(/ \*$/);
  expect(model.agreed.remarks[0]?.words).toContain(
    "approved the proposal and everything has its price",
  );
});

test("the account is one step from the studio's index, the order list and the findings", async () => {
  const { computed } = await account("status: proposed\n");
  for (const kind of ["orders", "findings", "schedule", "studio-index"]) {
    const page = computed.pages.find((p) => (p.model as { kind: string }).kind === kind);
    expect(JSON.stringify(page?.model), kind).toMatch(/"href":"(?:quay\/)?account\.html"/);
  }
});

test("where the tax is a cent off the product of the sums beside it, the page says why", async () => {
  const taxes = async (fee: string, project: string, held: string) => {
    const computed = await computedFolder({
      ...files(""),
      "studio.md": files("")["studio.md"].replace("services: 5,", `services: 5,${held}`),
      "projects/quay/project.md": `${HEAD.replace("design: 100", `design: ${fee}`)}status: proposed\n${project}`,
    });
    const page = computed.pages.find((p) => (p.model as { kind: string }).kind === "account");
    const model = page?.model as unknown as Model;
    return model.made.taxes;
  };
  // 5 % of 300.10 is 15.005, and of 0.10 half a cent: a cent each; 5 % of 300.20 would be 15.01.
  const used = "reserve-used: [{ what: Nails, amount: 0.10, on: 2026-11-10 }]\n";
  expect(await taxes("100.10", used, "")).toEqual([
    "Sales tax on services: 5% of $300.20, $15.02, with what was used of the reserve rounded by itself.",
  ]);
  // Out of 211.99 is 10.0948, 10.09; 5 % of 201.90 would be 10.095, 10.10.
  expect(await taxes("11.99", "", " included: yes,")).toEqual([
    "Sales tax on services: 5% of $201.90, $10.09, taken out of $211.99. The prices on the proposal hold it.",
  ]);
});
