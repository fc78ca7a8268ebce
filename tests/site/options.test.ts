import { expect, test } from "vitest";
import { computedFolder, saidOf } from "./smallFolder.ts";

// From the file that she writes to what is ordered, cut and charged. Sums by hand; the scenario is made up.

const cloth = (name: string, trade: number) =>
  `cloth: ${name}\nwidth: 54"\nkind: plain\ncolours: [{ colour: "#8a7a66" }]\nprice: { trade: ${trade}, per: yard }`;
const files = (options: string) => ({
  "studio.md": `studio: Alder Lane Rooms
language: en-US
units: inches
currency: USD
paper: tabloid
markup: { cloth: 2 }
makers: { bench: { name: Bench, makes: [cushion], rates: { cushion: 30 per item } } }`,
  "cloths/linen.md": cloth("Linen", 10),
  "cloths/velvet.md": cloth("Velvet", 40),
  "projects/quay/project.md": `project: Quay
client: { name: Nobody }
status: proposed
dated: 2026-11-20
receipts: [{ cloth: linen, lot: "01", maker: bench, length: 3 yd }]`,
  "projects/quay/den.md": `room: Den
measured: { by: studio, on: 2026-10-02, checked: 2026-10-20 }
cloths: [linen]
items:
  - cushion: Seat
    size: 20" x 20"
    edge: knife
    maker: bench
    options:
${options}`,
});
const LINEN = "{ option: In linen, cloth: linen";
const VELVET = "{ option: In velvet, cloth: velvet";
const ways = (linen: string, velvet: string) =>
  files(`      - ${LINEN}${linen} }\n      - ${VELVET}${velvet} }\n`);

interface Quantities {
  cloths: {
    cloth: string;
    buy: { text: string; waits: string[] };
    plan: { forCutting: boolean; notForCutting: string[] };
  }[];
}
interface Sums {
  lines: { what: string; client: number; unchosen: boolean }[];
  totals: { client: number; unchosen: number };
  alternatives: { title: string; stands: boolean; client: number; more: number }[];
}
async function worked(linen: string, velvet: string) {
  const computed = await computedFolder(ways(linen, velvet));
  expect(saidOf(computed)).toEqual([]);
  const model = (kind: string) =>
    JSON.stringify(
      computed.pages.find((p) => (p.model as { kind: string }).kind === kind)?.model ?? null,
    );
  return {
    quantities: computed.quantities("quay")?.json as Quantities,
    money: computed.money("quay")?.json as Sums,
    text: computed.money("quay")?.text ?? "",
    orders: model("orders"),
    proposal: model("proposal"),
    sheet: model("sheet"),
  };
}

test("while it is open the first way is drawn and reckoned, and nothing is ordered or cut", async () => {
  const open = await worked("", "");
  // 3/4 yd at 10 x 2 is 15.00; making 30.00.
  expect(open.money.totals).toMatchObject({ client: 4500, unchosen: 4500 });
  expect(open.money.alternatives.map((a) => [a.title, a.stands, a.client, a.more])).toEqual([
    ["In linen", true, 4500, 0],
    ["In velvet", false, 9000, 4500],
  ]);
  expect(open.text).toContain("Of it $45.00 is for what the client has not chosen yet");
  expect(open.quantities.cloths.map((c) => [c.cloth, c.buy.waits])).toEqual([
    ["linen", ["den/cushion-seat"]],
  ]);
  // The linen has arrived and the room was measured again: only the choice keeps the shears away.
  expect(open.quantities.cloths[0]?.plan.notForCutting).toEqual([
    "The client has not chosen yet how Seat is made.",
  ]);
  expect(open.orders).toContain(
    "Not to be ordered yet: the client has still to choose about Seat.",
  );
  expect(open.sheet).toContain("Do not begin yet");
  expect(open.proposal).toContain("In velvet");
  expect(open.proposal).toContain("Adds $45 to the total.");
});

test("a way that was refused is not shown, and the other one waits for its yes", async () => {
  const refused = await worked(", answer: no", ", answer: open");
  expect(refused.money.totals).toMatchObject({ client: 9000, unchosen: 9000 });
  expect(refused.money.alternatives.map((a) => a.title)).toEqual(["In velvet"]);
  expect(refused.proposal).not.toContain("In linen");
  expect(refused.proposal).toContain("In velvet");
  expect(refused.quantities.cloths.map((c) => [c.cloth, c.buy.waits])).toEqual([
    ["velvet", ["den/cushion-seat"]],
  ]);
});

test("with a yes it is ordered, cut and charged, and the client is asked no more", async () => {
  const linen = await worked(", answer: yes", "");
  expect(linen.quantities.cloths.map((c) => [c.cloth, c.buy.waits, c.plan.forCutting])).toEqual([
    ["linen", [], true],
  ]);
  expect(linen.money.totals).toMatchObject({ client: 4500, unchosen: 0 });
  expect(linen.orders).not.toContain("Not to be ordered");
  expect(linen.sheet).not.toContain("Do not begin yet");
  expect(linen.proposal).not.toContain("In velvet");
  const velvet = await worked(", answer: no", ", answer: yes");
  expect(velvet.money.totals).toMatchObject({ client: 9000, unchosen: 0 });
  expect(velvet.quantities.cloths.map((c) => c.cloth)).toEqual(["velvet"]);
});

test("a cloth that only another way needs waits too: it comes from one lot", async () => {
  const both = ways("", "");
  const room = both["projects/quay/den.md"] as string;
  const computed = await computedFolder({
    ...both,
    "projects/quay/den.md": `${room}  - cushion: Bench\n    cloth: velvet\n    size: 16" x 16"\n    edge: knife\n    maker: bench\n`,
  });
  const found = computed.quantities("quay")?.json as Quantities | undefined;
  expect(found?.cloths.map((c) => [c.cloth, c.buy.waits])).toEqual([
    ["linen", ["den/cushion-seat"]],
    ["velvet", ["den/cushion-seat"]],
  ]);
});
