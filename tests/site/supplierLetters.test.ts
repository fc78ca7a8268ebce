import { expect, test } from "vitest";
import { computedFolder, saidOf } from "./smallFolder.ts";

// The letters that order from suppliers, from files. Sums by hand; the scenario is made up. What a letter must say is common practice, no
// source.

interface Letter {
  readonly supplier: { readonly name: string; readonly account: string };
  readonly early: string;
  readonly lines: readonly {
    readonly reference: string;
    readonly name: { readonly html: string };
    readonly amount: { readonly html: string };
    readonly price: string;
    readonly sum: string;
    readonly note: string;
  }[];
  readonly goods: string;
  readonly wishes: readonly string[];
  readonly deliver: string;
}

interface Told {
  readonly status?: string;
  readonly project?: string;
  readonly items?: string;
}

const CURTAINS = `  - curtains: Bay
    cloth: linen
    pole: 96"
    drop: 90"
    heading: pencil-pleat
    maker: bench
    hardware: [{ what: iron pole, supplier: forge, trade: 60, client: 4321, count: 2 }]
`;

async function letters({ project = "", items = CURTAINS, status = "proposed" }: Told = {}) {
  const computed = await computedFolder({
    "studio.md": `studio: Alder Lane Rooms
address: 1 Alder Lane
language: en-US
units: inches
currency: USD
paper: tabloid
markup: { cloth: 2, hardware: 1.5, objects: 1.5 }
schedule: { ready: 2 working days }
makers:
  bench: { name: Bench, makes: [curtains, cushion], lead: 4 weeks, rates: { curtains: 50 per width, cushion: 30 per item } }
suppliers:
  mill: { name: The mill, account: M-1, lead: 3 weeks }
  forge: { name: The forge, lead: 2 weeks }`,
    "cloths/linen.md": `cloth: Linen\nreference: L 7\nwidth: 54"\nkind: plain\ncolours: [{ colour: "#8a7a66" }]\nsupplier: mill\nprice: { trade: 40, client: 99.99, per: yard }`,
    "cloths/felt.md": `cloth: Felt\nwidth: 54"\nkind: plain\ncolours: [{ colour: "#445566" }]\nsupplier: mill\nprice: { trade: 10, per: yard }`,
    "projects/quay/project.md": `project: Quay\nclient: { name: Zwtnobody, address: Zwtstreet }\nstatus: ${status}\ndated: 2026-11-20\nfitting: 2027-03-08\n${project}`,
    "projects/quay/den.md": `room: Den\ncloths: [linen]\nitems:\n${items}`,
  });
  expect(saidOf(computed)).toEqual([]);
  const pages = computed.pages.filter((p) => p.path.startsWith("studio/quay/orders/"));
  const of = (key: string) =>
    pages.find((p) => p.path.endsWith(`/${key}.html`))?.model as unknown as Letter | undefined;
  return { pages, of, text: JSON.stringify(pages) };
}

/** `14 <span class="frac">3/4</span> yd` as 14.75. */
function yardsIn(html: string | undefined): number {
  const [, whole = "0", over = "0", under = "1"] =
    /^(\d+)?\s*(?:(\d+)\/(\d+))? yd$/.exec(plain(html?.replace(/<[^>]+>/g, "")) ?? "") ?? [];
  return Number(whole) + Number(over) / Number(under);
}

const plain = (text: string | undefined) => text?.replace(/[\u00a0\u202f]/g, " ");

test("each supplier has a letter with what is bought there, at the trade price, by when and where to", async () => {
  const { pages, of } = await letters();
  expect(pages.map((p) => [p.path, p.reader, p.pdf])).toEqual([
    ["studio/quay/orders/forge.html", "studio", true],
    ["studio/quay/orders/mill.html", "studio", true],
  ]);
  const mill = of("mill");
  expect(mill?.supplier).toMatchObject({ name: "The mill", account: "M-1" });
  const [line] = mill?.lines ?? [];
  expect(line).toMatchObject({ reference: "L 7", price: "$40.00 a yard", note: "" });
  expect(line?.name.html).toBe("Linen");
  const yards = yardsIn(line?.amount.html);
  expect(line?.sum).toBe(`$${(40 * yards).toFixed(2)}`);
  expect(mill?.goods).toBe(line?.sum);
  // Four weeks before Thursday, 4 March is 4 February.
  expect(mill?.wishes.join(" ")).toContain("It must be there by Thursday, February 4, 2027.");
  expect(mill?.wishes.join(" ")).toContain("one dye lot");
  expect(mill?.deliver).toBe("1 Alder Lane");
  const forge = of("forge");
  expect(forge?.lines.map((l) => [plain(l.name.html), l.amount.html, l.sum])).toEqual([
    ["iron pole, 96″", "2", "$120.00"],
  ]);
  expect(forge?.wishes.join(" ")).toContain("Thursday, March 4, 2027");
  expect(forge?.wishes.join(" ")).not.toContain("lot");
});

test("a supplier reads of no client, of no client's price, and of no other supplier", async () => {
  const { text, of } = await letters();
  expect(text).not.toMatch(/Zwt|99\.99|4,?321|bench/i);
  expect(JSON.stringify(of("mill"))).not.toContain("forge");
  expect(JSON.stringify(of("forge"))).not.toMatch(/mill|M-1|Linen/i);
});

test("what went back and was credited is ordered again as if for the first time; what is to be replaced is not", async () => {
  const back = (why: string, length = "40 yd") =>
    letters({
      project: `orders: [{ cloth: linen, length: 40 yd, on: 2026-11-02 }]\nreceipts: [{ cloth: linen, lot: 0123, length: ${length}, returned: { on: 2026-11-09${why} } }]`,
    });
  const first = (await letters()).of("mill")?.lines[0];
  expect((await back(", for: credit")).of("mill")?.lines[0]).toEqual(first);
  // By the tape a bolt is a little longer or shorter than its order: as much is ordered again as is needed, no more and no less.
  for (const tape of ["40 1/2 yd", "39 1/4 yd"])
    expect((await back(", for: credit", tape)).of("mill")?.lines[0], tape).toEqual(first);
  const held = await back("");
  expect(held.pages.map((page) => page.path)).not.toContain("studio/quay/orders/mill.html");
});

test("what was ordered is in no letter; of what was too little the rest is, with what was ordered before", async () => {
  const all = await letters({
    project: "orders: [{ cloth: linen, length: 40 yd, on: 2026-11-02 }]",
    items: CURTAINS.replace("count: 2", "count: 2, ordered: 2026-11-02"),
  });
  expect(all.pages).toEqual([]);
  const need = yardsIn((await letters()).of("mill")?.lines[0]?.amount.html);
  const { of } = await letters({
    project: `orders: [{ cloth: linen, length: ${need - 2} yd, on: 2026-11-02, number: 0417 }]`,
  });
  const [line] = of("mill")?.lines ?? [];
  expect(plain(line?.amount.html)).toBe("2 yd");
  expect(line?.sum).toBe("$80.00");
  expect(plain(line?.note)?.replace(/^Ordered: [^y]+/, "Ordered: ")).toBe(
    `Ordered: yd on November 2, 2026, number 0417. This is more of it: please send it from the same lot.`,
  );
});

test("what the client has still to choose, and the client's own cloth, is ordered in no letter", async () => {
  const open = await letters({
    items: CURTAINS.replace(
      "    cloth: linen\n",
      "    options:\n      - { option: In linen, cloth: linen }\n      - { option: In felt, cloth: felt }\n",
    ),
  });
  expect(open.pages).toEqual([]);
  const own = await letters({
    items: CURTAINS.replace("maker: bench", "maker: bench\n    owner: client"),
  });
  expect(own.of("mill")).toBeUndefined();
  expect(own.of("forge")).toBeDefined();
});

test("once it is being made nothing is ordered any more", async () => {
  const { pages } = await letters({ status: "making" });
  expect(pages).toEqual([]);
});

test("before the client has approved, the page says not to send it", async () => {
  expect((await letters()).of("mill")?.early).toContain("not approved");
  const approved =
    "approvals: [{ revision: A, by: Zwtnobody, on: 2026-11-18, total: 10 }]\nrevision: A";
  const { of } = await letters({ project: approved });
  expect(of("mill")?.early).toBe("");
});

test("samples that are still to be asked for stand in a letter of their own, with their fees; those under way do not", async () => {
  const ask = async (sample: string) => {
    const computed = await computedFolder({
      "studio.md": `studio: Alder Lane Rooms\naddress: 1 Alder Lane\nlanguage: en-GB\nunits: centimetres\ncurrency: GBP\npaper: a3\nsuppliers: { mill: { name: The mill }, loom: { name: The loom } }`,
      "cloths/linen.md": `cloth: Linen\nreference: L 7\nwidth: 140 cm\nkind: plain\ncolours: [{ colour: "#8a7a66" }]\nsupplier: mill\nprice: { trade: 40, client: 99.99, per: metre }\n${sample}`,
      "projects/quay/project.md":
        "project: Quay\nclient: { name: Zwtnobody }\nstatus: proposed\ndated: 2026-11-20",
      "projects/quay/den.md": `room: Den\ncloths: [linen]\nitems:\n  - cushion: Seat\n    cloth: linen\n    size: 50 cm x 50 cm`,
    });
    expect(saidOf(computed)).toEqual([]);
    const pages = computed.pages.filter((p) => p.path.startsWith("studio/quay/samples/"));
    return { pages, letter: pages[0]?.model as unknown as Letter | undefined };
  };
  const { pages, letter } = await ask("sample: { fee: 3.50, credited: yes }");
  expect(pages.map((p) => p.path)).toEqual(["studio/quay/samples/mill.html"]);
  expect(letter?.lines.map((l) => [l.reference, l.name.html, l.price, l.sum])).toEqual([
    ["L 7", "Linen", "with the order", "£3.50"],
  ]);
  expect(letter?.wishes.join(" ")).toContain("20\u00a0cm square at least");
  expect(letter?.deliver).toBe("1 Alder Lane");
  expect(JSON.stringify(pages)).not.toMatch(/Zwt|99\.99|40\.00|loom/);
  expect((await ask("sample: { ordered: 2026-11-10 }")).pages).toEqual([]);
});
