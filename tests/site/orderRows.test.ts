import { expect, test } from "vitest";
import { BAY, files } from "./orderFiles.ts";
import { computedFolder, saidOf } from "./smallFolder.ts";

// What the order list says of each cloth, lining and trim: its row. Sums by hand; the scenario is made up.

const TRIMMED = (project: string, more = "") => ({
  ...files(project),
  "cloths/braid.md": `cloth: Rush braid\ntype: trim\nwidth: 1"\ncolours: [{ colour: "#8a7a66" }]\nsupplier: forge\nprice: { trade: 8, per: yard }`,
  "cloths/sateen.md": `cloth: Sateen\ntype: lining\nwidth: 54"\ncolours: [{ colour: "#f0eadc" }]\nsupplier: mill\nprice: { trade: 5, per: yard }`,
  "projects/quay/den.md": `${BAY}    lining: sateen
    edge: { trim: braid, where: leading }
    maker: bench
${more}`,
});

const plainText = (text: string | undefined) => text?.replace(/[\u00a0\u202f]/g, " ");

async function rowsOf(project: string, more = "") {
  const computed = await computedFolder(TRIMMED(project, more));
  const page = computed.pages.find((p) => (p.model as { kind: string }).kind === "orders");
  const model = page?.model as unknown as {
    groups: {
      name: string;
      rows: {
        name: string;
        buy: { html: string };
        sum: string;
        maker: string;
        wait: string;
        ordered: string;
        lot: string;
      }[];
    }[];
    materials: { what: { html: string }; text: { html: string } }[];
  };
  const money = computed.money("quay")?.json as {
    lines: { item: string; what: string; label: string; cloth: string }[];
  };
  const proposal = computed.pages.find((p) => (p.model as { kind: string }).kind === "proposal");
  return {
    model,
    money,
    proposal: JSON.stringify(proposal?.model),
    row: (name: string) => model.groups.flatMap((g) => g.rows).find((r) => r.name === name),
    said: saidOf(computed),
    warned: computed.diagnostics.filter((d) => d.code === "ordered-too-little"),
  };
}

// Two leading edges of 90 in, each with 2 in for its ends (common practice, no source): 184 in, 5.11 yd, up to 5 1/4 yd.
test("a trim is ordered by its name from its supplier, long enough for its turned ends", async () => {
  const { row, model, said } = await rowsOf("");
  expect(said).toEqual([]);
  expect(row("Rush braid")).toMatchObject({ sum: "$42.00", maker: "Bench, Bay" });
  expect(row("Rush braid")?.buy.html).toContain("1/4");
  expect(model.groups.find((g) => g.name === "The forge")?.rows).toHaveLength(1);
  expect(JSON.stringify(model.materials)).not.toContain("trim");
});

test("the client's own cloth is not to be ordered; its lining and its trim are, and are paid for", async () => {
  const { row, money, proposal } = await rowsOf("", "    owner: client");
  expect(proposal).toContain("your own Linen and Rush braid");
  expect(row("Linen")).toMatchObject({ sum: "" });
  expect(row("Linen")?.wait).toMatch(/^The client’s own: not to be ordered/);
  expect(row("Sateen")).toMatchObject({ wait: "" });
  expect(row("Sateen")?.sum).toMatch(/^\$\d/);
  expect(money.lines.filter((l) => l.what === "lining" || l.what === "trim")).toHaveLength(2);
  expect(money.lines.filter((l) => l.what === "cloth")).toEqual([]);
});

test("what was ordered stands on the list, and too little of it is said where it was written", async () => {
  const order = (length: string) =>
    `orders: [{ cloth: linen, length: ${length}, on: 2026-12-03, number: 0417 }]`;
  const enough = await rowsOf(order("40 yd"));
  expect(enough.warned).toEqual([]);
  expect(enough.row("Linen")?.ordered).toMatch(
    /^Ordered: 40\syd on December 3, 2026, number 0417\. Nothing more/,
  );
  expect(enough.row("Sateen")?.ordered).toBe("");
  const short = await rowsOf(order("12 yd"));
  expect(short.warned).toMatchObject([
    { severity: "warning", line: 6, keyPath: "orders[0].length" },
  ]);
  expect(short.warned[0]?.message).toMatch(/^Of Linen 12\syd was ordered; 14\.75\syd is needed/);
  expect(short.row("Linen")?.ordered).toMatch(/more is needed: ask for it from the same lot/);
});

test("what went back stands on the list: to be replaced nothing more is to be ordered, credited all of it is", async () => {
  const with40 = (back: string) =>
    rowsOf(
      `orders: [{ cloth: linen, length: 40 yd, on: 2026-12-03 }]\nreceipts: [{ cloth: linen, lot: 0123, length: 40 yd, on: 2026-12-10, returned: { on: 2026-12-12${back} } }]`,
    );
  const again = await with40("");
  expect(again.warned).toEqual([]);
  expect(plainText(again.row("Linen")?.ordered)).toBe(
    "Ordered: 40 yd on December 3, 2026. 40 yd of lot 0123 went back on December 12, 2026, for a replacement. Nothing more is to be ordered.",
  );
  const credited = await with40(", for: credit");
  expect(credited.warned).toEqual([]);
  expect(plainText(credited.row("Linen")?.ordered)).toMatch(
    /went back on December 12, 2026, for credit\. It is to be ordered anew\.$/,
  );
});

test("the lot of a trim that came stands on the list, as a cloth's does", async () => {
  expect((await rowsOf("")).row("Rush braid")?.lot).toBe("one lot");
  const came = "receipts: [{ cloth: braid, lot: 0815, length: 6 yd }]";
  expect((await rowsOf(came)).row("Rush braid")?.lot).toBe("0815");
});
