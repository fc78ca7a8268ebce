import { expect, test } from "vitest";
import { computedFolder, saidOf } from "./smallFolder.ts";

// What the order list says, from files. Sums by hand; the scenario is made up.

interface Orders {
  groups: {
    name: string;
    rows: {
      name: string;
      buy: { html: string };
      maker: string;
      sum: string;
      price: string;
      inAll: { html: string };
      ordered: string;
    }[];
  }[];
  pieces: {
    what: { html: string };
    count: string;
    supplier: string;
    state: string;
    sum: string;
    item: string;
    wait: string;
  }[];
}

/** A room's file as far as its curtains' heading. */
const BAY = `room: Den
cloths: [linen]
items:
  - curtains: Bay
    cloth: linen
    pole: 96"
    drop: 90"
    heading: pencil-pleat
`;

const files = (project: string) => ({
  "studio.md": `studio: Alder Lane Rooms
language: en-US
units: inches
currency: USD
paper: tabloid
markup: { cloth: 2, hardware: 1.5, objects: 1.5 }
makers:
  bench: { name: Bench, makes: [curtains], rates: { curtains: 50 per width } }
  frame: { name: Frame, makes: [cushion], rates: { cushion: 30 per item } }
suppliers: { mill: { name: The mill }, forge: { name: The forge } }`,
  "cloths/linen.md": `cloth: Linen\nwidth: 54"\nkind: plain\ncolours: [{ colour: "#8a7a66" }]\nsupplier: mill\nprice: { trade: 40, per: yard, bolt: { length: 20 yd, trade: 30 } }`,
  "objects/lamp.md": `object: Brass lamp\nshape: lamp\nsize: 12" x 12" x 24"\nsupplier: forge\nprice: { trade: 90 }`,
  "projects/quay/project.md": `project: Quay\nclient: { name: Nobody }\nstatus: proposed\ndated: 2026-11-20\n${project}`,
  "projects/quay/den.md": `${BAY}    maker: bench
    hardware: [{ what: iron pole, supplier: forge, trade: 60, count: 2 }]
  - cushion: Seat
    cloth: linen
    size: 20" x 20"
    edge: knife
    maker: frame
  - object: lamp
    count: 3`,
});

async function orders(project = "") {
  const computed = await computedFolder(files(project));
  expect(saidOf(computed)).toEqual([]);
  const page = computed.pages.find((p) => (p.model as { kind: string }).kind === "orders");
  const totals = computed.money("quay")?.json as {
    lines: { cloth: string; what: string; trade: number }[];
  };
  return { model: page?.model as unknown as Orders, lines: totals.lines };
}

test("hardware and objects that are bought ready stand beside the cloths, with their suppliers and sums", async () => {
  const { model } = await orders();
  expect(model.pieces.map((p) => [p.what.html, p.count, p.supplier, p.sum, p.item])).toEqual([
    ["iron pole, 96″", "2", "The forge", "$120.00", "Bay"],
    ["Brass lamp", "3", "The forge", "$270.00", "lamp"],
  ]);
});

test("what was ordered of them and what is here stands beside their names, and changes no price", async () => {
  const said = async (pole: string, lamp: string) => {
    const den = files("")["projects/quay/den.md"];
    const computed = await computedFolder({
      ...files(""),
      "projects/quay/den.md": den
        .replace("trade: 60,", `trade: 60, ${pole}`)
        .replace("count: 3", `count: 3${lamp}`),
    });
    expect(saidOf(computed)).toEqual([]);
    const page = computed.pages.find((p) => (p.model as { kind: string }).kind === "orders");
    const model = page?.model as unknown as Orders | undefined;
    return model?.pieces.map((p) => `${p.what.html}, ${p.sum}: ${p.state.replace(/\s/g, " ")}`);
  };
  expect(await said("", "")).toEqual(["iron pole, 96″, $120.00: ", "Brass lamp, $270.00: "]);
  expect(
    await said("ordered: 2026-11-19,", "\n    ordered: 2026-11-16\n    arrived: 2026-11-18"),
  ).toEqual([
    "iron pole, 96″, $120.00: Ordered on November 19, 2026",
    "Brass lamp, $270.00: Here since November 18, 2026",
  ]);
});

test("a cloth bought by the bolt is ordered in bolts, once for all its makers, at the price that the sums say", async () => {
  const cut = await orders();
  const rows = (o: Orders) => o.groups.find((g) => g.name === "The mill")?.rows ?? [];
  expect(
    rows(cut.model)
      .map((r) => r.sum)
      .every((s) => s.startsWith("$")),
  ).toBe(true);
  const bolt = await orders("by-the-bolt: [linen]");
  const [first, second] = rows(bolt.model);
  expect(first?.buy.html).toContain("1 whole bolt;");
  // 20 yd at 30.
  expect(first?.sum).toBe("$600.00");
  expect(second?.buy.html).toContain("from the same bolt:");
  expect(second?.sum).toBe("");
  const trade = bolt.lines.filter((l) => l.cloth === "linen" && l.what === "cloth");
  expect(trade.reduce((a, l) => a + l.trade, 0)).toBe(60_000);
});

test("what was ordered of a cloth for all its makers stands once, below the last of them", async () => {
  const { model } = await orders("orders: [{ cloth: linen, length: 40 yd, on: 2026-12-03 }]");
  const linen = model.groups
    .flatMap((g) => g.rows)
    .filter((r) => r.name === "Linen")
    .map((r) => r.ordered.slice(0, 14).replace(/\s/g, " "));
  expect(linen).toEqual(["", "Ordered: 40 yd"]);
});

/** The linen's rows, and the receiving slip's blocks of it, where its card is sold so. */
async function linenSold(price: string) {
  const card = files("")["cloths/linen.md"];
  const computed = await computedFolder({
    ...files(""),
    "cloths/linen.md": card.replace("per: yard", `per: yard, ${price}`),
  });
  expect(saidOf(computed)).toEqual([]);
  const modelOf = (kind: string) =>
    computed.pages.find((p) => (p.model as { kind: string }).kind === kind)?.model;
  const orders = modelOf("orders") as unknown as Orders;
  const slip = modelOf("receiving") as unknown as {
    blocks: { name: string; amount: { html: string }; maker: string; divided: { html: string } }[];
  };
  const money = computed.money("quay")?.json as { lines: { cloth: string; trade: number }[] };
  const sheets = JSON.stringify(
    computed.pages.filter((p) => p.path.startsWith("makers/")).map((p) => p.model),
  );
  return {
    rows: orders.groups.find((g) => g.name === "The mill")?.rows ?? [],
    blocks: slip.blocks,
    trade: money.lines.filter((l) => l.cloth === "linen").reduce((a, l) => a + l.trade, 0),
    sheets,
  };
}

// The cushion takes two faces of 21 in beside each other, 7/12 yd: 0.59 yd, up.
test("a cloth sold in whole bolts is one order for both makers: list, receiving slip and sums agree", async () => {
  const { rows, blocks, trade, sheets } = await linenSold("sold-by: bolt");
  expect(rows.map((r) => [r.maker, r.sum])).toEqual([
    ["Bench", "$600.00"],
    ["Frame", ""],
  ]);
  // The bolt's price, by which 20 yd come to the sum.
  expect(rows.map((r) => r.price)).toEqual(["$30.00 a yard", "$30.00 a yard"]);
  expect(rows[0]?.buy.html).toMatch(/^1 whole bolt;/);
  expect(rows[1]?.buy.html).toMatch(/^from the same bolt:/);
  expect(rows[0]?.inAll.html).toBe("");
  const divided = /one whole bolt of .*20.*yd.*: .* to Bench, .*0\.59.*yd.* to Frame; .* over/;
  expect(rows[1]?.inAll.html).toMatch(divided);
  expect(blocks.map((b) => b.maker)).toEqual(["Bench", "Frame"]);
  expect(blocks[0]?.divided.html).toMatch(divided);
  expect(blocks[1]?.divided.html).toBe("Its part of the same order");
  expect(blocks[1]?.amount.html).toContain("0.59");
  expect(trade).toBe(60_000);
  // Each maker's sheet says what comes to it, and nothing of the other.
  expect(sheets).not.toContain("whole bolt");
});

test("where each maker's is bought by itself the list adds them up", async () => {
  const { rows, blocks, trade } = await linenSold("sold-by: 1/4 yd");
  const sums = rows.map((r) => Number(r.sum.slice(1)));
  expect(sums[1]).toBe(30);
  expect(rows[0]?.inAll.html).toBe("");
  const all = ((sums[0] ?? 0) + 30).toFixed(2);
  expect(rows[1]?.inAll.html).toMatch(/^In all .*yd/);
  expect(rows[1]?.inAll.html.endsWith(`, $${all}.`)).toBe(true);
  expect(trade).toBe(100 * ((sums[0] ?? 0) + 30));
  expect(blocks.map((b) => b.divided.html)).toEqual(["", ""]);
});

test("a minimum of both makers together is one order: 16 yd, paid for once", async () => {
  const { rows, trade } = await linenSold("minimum: 16 yd");
  expect(rows.map((r) => r.sum)).toEqual(["$640.00", ""]);
  expect(rows[0]?.buy.html).toMatch(/^16.*yd.*; .* of it$/);
  expect(rows[1]?.buy.html).toMatch(/^from the same length: .*3\/4.* of it$/);
  expect(rows[1]?.inAll.html).toMatch(
    /^One order: 16.*the supplier’s minimum: .* to Bench, .* to Frame/,
  );
  expect(trade).toBe(64_000);
});

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

test("two pieces of one name at an item keep each its own count, supplier and sum", async () => {
  const all = files("");
  const den = all["projects/quay/den.md"].replace(
    "count: 2 }]",
    "count: 2 }, { what: iron pole, supplier: mill, trade: 5, count: 7 }]",
  );
  const computed = await computedFolder({ ...all, "projects/quay/den.md": den });
  const page = computed.pages.find((p) => (p.model as { kind: string }).kind === "orders");
  const model = page?.model as unknown as Orders;
  const pieces = model.pieces.filter((p) => p.what.html.startsWith("iron pole"));
  expect(pieces.map((p) => [p.count, p.supplier, p.sum])).toEqual([
    ["2", "The forge", "$120.00"],
    ["7", "The mill", "$35.00"],
  ]);
});

test("where a project has several rooms, what is bought ready says for which of them", async () => {
  const room = (name: string) =>
    `room: ${name}\ncloths: [linen]\nitems:\n  - cushion: Bed\n    cloth: linen\n    size: 20" x 20"\n    maker: frame`;
  const two = {
    ...files(""),
    "projects/quay/den.md": room("Den"),
    "projects/quay/loft.md": room("Loft"),
  };
  const page = (await computedFolder(two)).pages.find(
    (p) => (p.model as { kind: string }).kind === "orders",
  );
  const model = page?.model as unknown as {
    materials: { what: { html: string }; item: string }[];
  };
  const { materials } = model;
  const inserts = materials.filter((m) => m.what.html.startsWith("Feather insert"));
  expect(inserts.map((m) => m.item)).toEqual(["Bed, den", "Bed, loft"]);
});
