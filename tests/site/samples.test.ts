import { expect, test } from "vitest";
import type { SampleRow } from "../../src/documents/studio/sampleRows.ts";
import { computedFolder } from "./smallFolder.ts";

// The sample tray from files. Days and sums by hand; the scenario is made up, what is needed before an order is common practice, no source.

const card = (name: string, more: string) =>
  `cloth: ${name}\nwidth: 140 cm\nkind: plain\ncolours: [{ colour: "#8a7a66" }]\n${more}`;
const SOLD = "supplier: mill\nprice: { trade: 20, per: metre }";

const files = (project: string): Record<string, string> => ({
  "studio.md": `studio: Alder Lane Rooms
language: en-GB
units: centimetres
currency: GBP
paper: a3
makers:
  bench: { name: Bench, makes: [curtains, cushion], lead: 4 weeks }
suppliers:
  mill: { name: The mill, lead: 3 weeks }`,
  "cloths/linen.md": card(
    "Linen",
    `${SOLD}\nreference: L 12\nsample: { fee: 4.00, credited: yes, ordered: 2026-10-05, arrived: 2026-10-09, approved: 2026-10-21 }`,
  ),
  "cloths/oat.md": card("Oat", `${SOLD}\nsample: { fee: 2.50, credited: no, ordered: 2026-11-09 }`),
  "cloths/rye.md": card("Rye", `${SOLD}\nsample: { ordered: 2026-11-02, arrived: 2026-11-20 }`),
  "cloths/hemp.md": card("Hemp", ""),
  "cloths/jute.md": card(
    "Jute",
    `${SOLD}\nsample: { ordered: 2026-10-01, arrived: 2026-10-05, returned: 2026-10-20 }`,
  ),
  "cloths/wool.md": card("Wool", "sample: { fee: 9.00 }"),
  "cloths/sateen.md": card("Sateen", `type: lining\n${SOLD}`),
  "projects/quay/project.md": `project: Quay\nclient: { name: Nobody }\nstatus: proposed\nrevision: B\ndated: 2026-11-23\nfitting: 2027-03-08\n${project}`,
  "projects/quay/den.md": `room: Den
cloths: [linen, oat, rye, hemp, jute]
items:
  - curtains: Bay
    cloth: linen
    lining: sateen
    pole: 240 cm
    drop: 220 cm
    heading: pencil-pleat
  - cushion: One
    size: 50 cm x 50 cm
    options:
      - { option: In oat, cloth: oat }
      - { option: In rye, cloth: rye }
  - cushion: Two
    cloth: hemp
    size: 50 cm x 50 cm
  - cushion: Three
    cloth: wool
    size: 50 cm x 50 cm
    owner: client`,
});

async function tray(project = "") {
  const computed = await computedFolder(files(project));
  const page = computed.pages.find((p) => (p.model as { kind: string }).kind === "samples");
  const model = page?.model as unknown as {
    lead: string;
    approval: string;
    without: string;
    fees: string;
    groups: { name: string; rows: SampleRow[] }[];
  };
  const rows = model.groups.flatMap((g) => g.rows);
  return {
    page,
    model,
    row: (name: string) => rows.find((r) => r.name === name) as SampleRow,
    warned: computed.diagnostics.filter((d) => d.code === "ordered-unapproved"),
    errors: computed.diagnostics.filter((d) => d.severity === "error"),
  };
}

test("every cloth stands in the group of its sample's state, what is to be done first; the client's own is in none", async () => {
  const { model, errors, page } = await tray();
  expect(errors).toEqual([]);
  expect(model.groups.map((g) => [g.name, g.rows.map((r) => r.name)])).toEqual([
    ["To ask for", ["Hemp"]],
    ["On the way", ["Oat"]],
    ["Here, to be approved", ["Rye"]],
    ["Gone back unapproved", ["Jute"]],
    ["Approved", ["Linen"]],
  ]);
  expect(model.lead).toBe(
    "One of five samples is approved; one is to be asked for, one is on the way, one is here to be approved and one is gone back unapproved.",
  );
  expect(model.without).toBe("Linings without a sample: Sateen.");
  expect(page).toMatchObject({ reader: "studio", pdf: true });
});

test("days, how long it is waited for, fee, and the day by which it is ordered", async () => {
  const { row } = await tray();
  expect(row("Linen")).toMatchObject({
    from: "The mill, L 12",
    days: "Asked for 5 Oct 2026, came 9 Oct 2026 and approved 21 Oct 2026",
    fee: "£4.00, credited when it is ordered",
    order: "Order by Mon,\u00a018\u00a0Jan\u00a02027",
    needed: "",
  });
  // From 9 to 23 November, and from 20 to 23.
  expect(row("Oat")).toMatchObject({
    days: "Asked for 9 Nov 2026 (14 days ago)",
    fee: "£2.50, not credited",
  });
  expect(row("Rye").days).toBe("Asked for 2 Nov 2026 and came 20 Nov 2026 (3 days ago)");
  expect(row("Hemp")).toMatchObject({ days: "", fee: "No fee" });
});

test("what is still needed before an order is said: sample, choice, price, supplier; and the approval of the whole once, until it is there", async () => {
  const { row, model } = await tray();
  expect(row("Oat").needed).toBe(
    "Before it is ordered: the sample’s approval and the client’s choice: One.",
  );
  expect(row("Hemp").needed).toBe(
    "Before it is ordered: the sample’s approval, its price and who sells it.",
  );
  expect(row("Jute").needed).toBe("Not used yet; before it is ordered: the sample’s approval.");
  expect(model.approval).toBe("The client’s approval of revision B is still to come.");
  const approved = await tray("approvals: [{ revision: B, by: Nobody, on: 2026-11-02 }]");
  expect(approved.model.approval).toBe("");
});

test("fees are added up, with what of them is credited", async () => {
  expect((await tray()).model.fees).toBe(
    "Fees for samples: £6.50. £4.00 of it is credited as the cloths are ordered.",
  );
});

test("a cloth that is ordered while its sample is not approved is said on the tray and at the order; an approved one and a lining are not", async () => {
  const { row, warned } = await tray(`orders:
  - { cloth: linen, length: 30 m, on: 2026-11-10 }
  - { cloth: hemp, length: 2 m, on: 2026-11-11 }
  - { cloth: sateen, length: 30 m, on: 2026-11-11 }`);
  expect(row("Hemp")).toMatchObject({
    order: "Ordered: 2\u202fm on 11 November 2026",
    needed: expect.stringContaining("its sample is not approved"),
  });
  expect(row("Linen")).toMatchObject({ needed: "", fee: "£4.00, credited on its order" });
  expect(warned).toMatchObject([{ severity: "warning", keyPath: "orders[1].cloth", line: 10 }]);
  expect(warned[0]?.message).toBe(
    "Hemp was ordered on 2026-11-11, and its sample is not approved.",
  );
});

test("once it is fitted a sample that was never approved is no warning any more", async () => {
  const ordered = "orders: [{ cloth: hemp, length: 2 m, on: 2026-11-11 }]";
  const told = async (status: string) => {
    const all = files(ordered);
    const card = all["projects/quay/project.md"] as string;
    const { diagnostics } = await computedFolder({
      ...all,
      "projects/quay/project.md": card.replace("status: proposed", `status: ${status}`),
    });
    return diagnostics.filter((d) => d.code === "ordered-unapproved").length;
  };
  expect(await told("making")).toBe(1);
  expect(await told("fitted")).toBe(0);
});

test("once it is fitted no sample is to be asked for, waited for or approved any more", async () => {
  const all = files("");
  const card = all["projects/quay/project.md"] as string;
  const { pages } = await computedFolder({
    ...all,
    "projects/quay/project.md": card.replace("status: proposed", "status: fitted"),
  });
  const model = pages.find((page) => page.model.kind === "samples")?.model as unknown as {
    lead: string;
    groups: { name: string; rows: SampleRow[] }[];
  };
  expect(model.groups.map((g) => [g.name, g.rows.map((r) => r.name)])).toEqual([
    ["Approved", ["Linen"]],
    ["Not approved, and not needed any more", ["Hemp", "Oat", "Jute", "Rye"]],
  ]);
  expect(model.lead).toBe(
    "All is fitted: no sample is waited for. One of five samples was approved.",
  );
  const rows = model.groups.flatMap((g) => g.rows);
  expect(rows.map(({ needed, order }) => needed + order)).toEqual(["", "", "", "", ""]);
  expect(rows[2]?.days).toBe("Asked for 9 Nov 2026");
});

test("counts of one sentence are all in words, or all in figures where one is over twelve", async () => {
  const of = (many: number): Promise<unknown> => {
    const few = files("");
    const names = Array.from({ length: many }, (_, at) => `cloth-${at}`);
    for (const [at, name] of names.entries())
      few[`cloths/${name}.md`] = card(name, at < 2 ? "sample: { ordered: 2026-11-02 }" : "");
    few["projects/quay/den.md"] = `room: Den\ncloths: [${names.join(", ")}]\nitems: []`;
    return leadOf(few);
  };
  expect(await of(12)).toBe(
    "None of twelve samples is approved; ten are to be asked for and two are on the way.",
  );
  expect(await of(13)).toBe(
    "None of 13 samples is approved; 11 are to be asked for and 2 are on the way.",
  );
});

async function leadOf(few: Readonly<Record<string, string>>): Promise<unknown> {
  const { pages } = await computedFolder(few);
  return pages.find((page) => page.model.kind === "samples")?.model.lead;
}

test.each([
  ["", "None of two samples is approved; two are to be asked for."],
  [
    "sample: { ordered: 2026-11-02 }",
    "None of two samples is approved; one is to be asked for and one is on the way.",
  ],
])("where none is approved it is said so (%s)", async (sample, words) => {
  const few = files("");
  few["cloths/linen.md"] = card("Linen", SOLD);
  few["cloths/hemp.md"] = card("Hemp", sample);
  few["projects/quay/den.md"] = "room: Den\ncloths: [linen, hemp]\nitems: []";
  expect(await leadOf(few)).toBe(words);
});

test("one sample is spoken of as one", async () => {
  const few = files("");
  few["cloths/linen.md"] = card("Linen", `${SOLD}\nsample: { ordered: 2026-11-02 }`);
  few["projects/quay/den.md"] = "room: Den\ncloths: [linen]\nitems: []";
  expect(await leadOf(few)).toBe("The one sample is on the way.");
});
