import { expect, test } from "vitest";
import { computedFolder, saidOf } from "./smallFolder.ts";

// The receiving slip from files: what is to be filled in is common practice, no source; the scenario is made up.

interface Box {
  readonly label: string;
  readonly value: { readonly html: string };
}
interface Block {
  readonly name: string;
  readonly amount: { readonly html: string };
  readonly maker: string;
  readonly from: string;
  readonly reference: string;
  readonly ordered: { readonly html: string };
  readonly says: { readonly html: string };
  readonly rows: readonly { measures: readonly Box[]; flaws: readonly (readonly Box[])[] }[];
  readonly paste: string;
  readonly isAll: boolean;
}

const files = (project: string, more = ""): Record<string, string> => ({
  "studio.md": `studio: Alder Lane Rooms
language: en-GB
units: centimetres
currency: GBP
paper: a3
makers:
  bench: { name: Bench, makes: [curtains] }
  frame: { name: Frame, makes: [cushion] }
  hanger: { name: Hanger, makes: [hanging] }
suppliers:
  mill: { name: The mill }
  press: { name: The press }`,
  "cloths/leaf, green.md": `cloth: Leaf
width: 137 cm
kind: large-print
runs: one-way
repeat: { up: 64 cm, across: 34 cm, match: half-drop, from-selvedge: 17 cm }
colours: [{ colour: "#8a7a66" }]
supplier: press
reference: L 12
price: { trade: 613.19, per: metre }
private: Zwtprivate`,
  "cloths/ticking.md": `cloth: Ticking\nwidth: 140 cm\nkind: stripe\nrepeat: { across: 6 cm }\ncolours: [{ colour: "#8a7a66" }]\nsupplier: mill`,
  "cloths/sateen.md": `cloth: Sateen\ntype: lining\nwidth: 137 cm\nkind: plain\ncolours: [{ colour: "#f0eadc" }]\nsupplier: mill`,
  "cloths/braid.md": `cloth: Rush braid\ntype: trim\nwidth: 2 cm\ncolours: [{ colour: "#8a7a66" }]\nsupplier: mill`,
  "cloths/boughs.md": `cloth: Boughs\ntype: wallcovering\nroll: { width: 52 cm, length: 10 m }\nkind: plain\ncolours: [{ colour: "#8a7a66" }]\nsupplier: press`,
  "projects/quay/project.md": `project: Quay\nclient: { name: Nobody }\nstatus: ordered\ndated: 2026-11-23\n${project}`,
  "projects/quay/den.md": `room: Den
height: 240 cm
floor: 300 cm x 300 cm
items:
  - curtains: Bay
    cloth: leaf, green
    lining: sateen
    edge: { trim: braid, where: leading }
    pole: 240 cm
    drop: 220 cm
    heading: pencil-pleat
    maker: bench
  - cushion: Seat
    cloth: ticking
    size: 50 cm x 50 cm
    edge: knife
    maker: frame
  - cushion: Bench
    cloth: leaf, green
    size: 50 cm x 50 cm
    edge: knife
    maker: frame
    owner: client
  - wallpaper: Walls
    cloth: boughs
    on: walls
    maker: hanger
${more}`,
});

async function slip(project = "") {
  const computed = await computedFolder(files(project));
  const page = computed.pages.find((p) => (p.model as { kind: string }).kind === "receiving");
  const blocks = (page?.model.blocks ?? []) as readonly Block[];
  return {
    page,
    blocks,
    block: (name: string, maker = "Bench") =>
      blocks.find((b) => b.name === name && b.maker === maker) as Block,
    said: saidOf(computed),
    computed,
  };
}

test("everything that comes has a block, what one supplier sends together, with what its card says", async () => {
  const { blocks, block, page, said } = await slip();
  expect(said).toEqual([]);
  expect(blocks.map((b) => [b.name, b.maker, b.from])).toEqual([
    ["Leaf", "Bench", "The press"],
    ["Boughs", "Hanger", "The press"],
    ["Sateen", "Bench", "The mill"],
    ["Ticking", "Frame", "The mill"],
    ["Rush braid", "Bench", "The mill"],
    ["Leaf", "Frame", ""],
  ]);
  expect(block("Leaf").says.html).toBe(
    "137\u202fcm wide, repeat 64\u202fcm × 34\u202fcm across, half-drop, first motif 17\u202fcm from the left, one way",
  );
  expect(block("Leaf").reference).toBe("L 12");
  expect(block("Leaf").ordered.html).toBe("Not ordered yet");
  expect(block("Leaf", "Frame").ordered.html).toBe("The client’s own");
  expect(page).toMatchObject({ reader: "studio", pdf: true });
});

test("no price and no private note lies on the cutting table", async () => {
  const { page } = await slip();
  const all = JSON.stringify(page?.model);
  expect(all).not.toContain("Zwtprivate");
  expect(all).not.toContain("613");
});

test("each is asked what can be measured of it: no repeat of a plain or a stripe, the batch of a paper", async () => {
  const { block } = await slip();
  const labels = (b: Block) => b.rows[0]?.measures.map((x) => x.label);
  expect(labels(block("Leaf"))).toEqual([
    "Lot",
    "Length",
    "Width",
    "Repeat",
    "First motif",
    "Came on",
    "Checked by",
  ]);
  expect(labels(block("Ticking", "Frame"))).toEqual([
    "Lot",
    "Length",
    "Width",
    "Came on",
    "Checked by",
  ]);
  expect(labels(block("Boughs", "Hanger"))?.slice(0, 3)).toEqual([
    "Batch",
    "Length, all rolls",
    "Rolls",
  ]);
  const empty = [block("Leaf"), block("Boughs", "Hanger")].flatMap((b) =>
    b.rows.flatMap((r) => [...r.measures, ...r.flaws.flat()]),
  );
  expect(empty.every((box) => box.value.html === "")).toBe(true);
});

const VALUES: Readonly<Record<string, string>> = {
  lot: "0123",
  length: "90 m",
  width: "137 cm",
  repeat: "64 cm",
  "first-motif": "20 cm",
  on: "2026-11-20",
};

test("the lines, filled in, are receipts that the program reads without a fault; a dot that is left is an error at its line", async () => {
  const { blocks } = await slip();
  const lines = blocks.map((b) => b.paste);
  expect(lines[0]).toBe(
    "- { cloth: 'leaf, green', maker: bench, lot: …, length: …, width: …, repeat: …, first-motif: …, on: … }",
  );
  const fill = (line: string) =>
    line.replace(/([a-z-]+): …/g, (_, key: string) => `${key}: ${VALUES[key]}`);
  const receipts = (all: readonly string[]) => `receipts:\n${all.map((l) => `  ${l}`).join("\n")}`;
  const filled = await slip(receipts(lines.map(fill)));
  expect(filled.said).toEqual([]);
  expect(filled.blocks.map((b) => [b.isAll, b.paste])).toEqual(Array(6).fill([true, ""]));
  const left = await computedFolder(files(receipts([lines[0] as string])));
  expect(left.diagnostics.filter((d) => d.severity === "error").map((d) => d.code)).toContain(
    "length-unreadable",
  );
});

test("a cloth that came narrower is planned so, and its card is quoted as it stands", async () => {
  const came = (width: string) =>
    slip(
      `receipts: [{ cloth: "leaf, green", maker: bench, lot: 0123, length: 60 m, width: ${width}, on: 2026-11-20 }]`,
    );
  const { block } = await came("136 cm");
  expect(block("Leaf").isAll).toBe(true);
  expect(block("Leaf").says.html).toMatch(/^137.cm wide/);
});

test("what came is filled in with its flaws, and boxes stand empty for the rest while more is to come", async () => {
  const { block } =
    await slip(`orders: [{ cloth: "leaf, green", length: 12 m, on: 2026-11-02, number: 0417 }]
receipts:
  - { cloth: "leaf, green", maker: bench, lot: 0123, length: 3 m, width: 136 cm, repeat: 64 cm, on: 2026-11-20, flaws: [{ from: 1 m, length: 4 cm, what: slub }] }`);
  const leaf = block("Leaf");
  expect(leaf.ordered.html).toBe("Ordered: 12\u202fm on 2 November 2026, number 0417");
  expect(leaf.isAll).toBe(false);
  expect(leaf.rows).toHaveLength(2);
  const values = (boxes: readonly Box[] | undefined) => boxes?.map((box) => box.value.html);
  expect(values(leaf.rows[0]?.measures)).toEqual([
    "0123",
    "3\u00a0m",
    "136\u00a0cm",
    "64\u00a0cm",
    "",
    "20 Nov 2026",
    "",
  ]);
  expect(values(leaf.rows[0]?.flaws[0])).toEqual(["1\u00a0m", "4\u00a0cm", "", "", "slub"]);
  expect(values(leaf.rows[1]?.measures)?.join("")).toBe("");
  expect(leaf.paste).toContain("lot: …");
});
