import { mkdir, mkdtemp, readdir, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { afterEach, beforeEach, expect, test } from "vitest";
import { main } from "../../src/cli/main.ts";
import type { Wiring } from "../../src/cli/wiring.ts";
import type { ChangesBlock } from "../../src/documents/proposal/changesBlock.ts";
import { findBrowser } from "../../src/press/findBrowser.ts";
import { compute } from "../../src/site/compute.ts";
import { makePictures } from "../../src/site/makePictures.ts";

// From the file that she writes to what the next proposal says. Sums by hand: 20 in cushions take their cloth, at ten dollars a yard
// twice over, and thirty dollars of making. The scenario is made up.

let dir = "";
const put = async (path: string, text: string): Promise<void> => {
  await mkdir(dirname(join(dir, path)), { recursive: true });
  await writeFile(join(dir, path), text);
};
const project = (revision: string): Promise<void> =>
  put(
    "projects/quay/project.md",
    `---\nproject: Quay\nclient: { name: Nobody }\nstatus: proposed\n${revision}\ndated: 2026-11-20\nfees: { design: 200 }\n---\n`,
  );
const room = (items: string): Promise<void> =>
  put("projects/quay/den.md", `---\nroom: Den\nitems:\n${items}---\n`);
const cushion = (title: string, cloth: string): string =>
  `  - cushion: ${title}\n    cloth: ${cloth}\n    size: 20" x 20"\n    edge: knife\n    maker: bench\n`;
const card = (name: string, trade: number): string =>
  `---\ncloth: ${name}\nwidth: 54"\nkind: plain\ncolours: [{ colour: "#8a7a66" }]\nprice: { trade: ${trade}, per: yard }\n---\n`;

/** What the verb needs: all but a starter; the press where a test prints. */
const wiring = {
  compute,
  makePictures,
  findBrowser: () => findBrowser(),
  layoutsDir: join(import.meta.dirname, "../../layouts"),
  pdfCache: () => null,
} as unknown as Wiring;
const send = (...args: string[]) => run("send", "quay", "--no-pdf", ...args);

async function run(...args: string[]): Promise<{ exit: number; out: string; err: string }> {
  let [out, err] = ["", ""];
  const exit = await main(["--content", dir, "--out", join(dir, "out"), ...args], wiring, {
    out: { write: (text: string) => (out += text) },
    err: { write: (text: string) => (err += text) },
    env: {},
    ended: new Promise<void>(() => {}),
  });
  return { exit, out, err };
}
async function changes(): Promise<ChangesBlock | null> {
  const { pages } = await compute(dir, { only: null, useCache: false });
  const proposal = pages.find((page) => page.path === "client/quay/proposal.html");
  if (!proposal) throw new Error("no proposal");
  return (proposal.model as unknown as { changes: ChangesBlock | null }).changes;
}

beforeEach(async () => {
  dir = await mkdtemp(join(tmpdir(), "roomcloth-send-"));
  await put(
    "studio.md",
    "---\nstudio: Alder Lane Rooms\nlanguage: en-US\nunits: inches\ncurrency: USD\npaper: tabloid\nmarkup: { cloth: 2 }\nmakers: { bench: { name: Bench, makes: [cushion], rates: { cushion: 30 per item } } }\n---\n",
  );
  await put("cloths/linen.md", card("Linen", 10));
  await put("cloths/velvet.md", card("Velvet", 40));
  await project("revision: A");
  await room(cushion("Seat", "linen") + cushion("Back", "linen"));
});
afterEach(async () => {
  await rm(dir, { recursive: true, force: true });
});

test("what is sent is kept, and the next revision says what has changed since", async () => {
  expect(await changes()).toBeNull();
  const sent = await send();
  expect(sent).toMatchObject({ exit: 0 });
  expect(sent.out).toContain("Recorded revision A");
  expect(sent.out).toContain("PDF is not kept");
  const kept = await readFile(join(dir, "projects/quay/sent/A.json"), "utf8");
  // Revision A is not compared with itself.
  expect(await changes()).toBeNull();

  await project("revision: B");
  expect(await changes()).toMatchObject({ head: "What has changed since revision A", rows: [] });
  await room(cushion("Seat", "velvet") + cushion("Stool", "linen"));
  const found = await changes();
  expect(found?.rows.map(({ what, how }) => [what, how.html])).toEqual([
    ["Pillow, stool", "new, in Linen"],
    ["Pillow, seat", "in Velvet, before in Linen"],
    ["Pillow, back", "no longer in it"],
  ]);
  expect(found?.rows.map(({ before, now }) => [before === "–", now === "–"])).toEqual([
    [true, false],
    [false, false],
    [false, true],
  ]);
  expect(await send()).toMatchObject({ exit: 0 });
  expect(await readdir(join(dir, "projects/quay/sent"))).toEqual(["A.json", "B.json"]);
  expect(await readFile(join(dir, "projects/quay/sent/A.json"), "utf8")).toBe(kept);
  // Sent, it is still told from A.
  expect((await changes())?.head).toBe("What has changed since revision A");
});

test("what is made otherwise is told with what it was, in the studio's words, and no maker or price of the studio's", async () => {
  const lined = (more: string) => `${cushion("Seat", "linen").trimEnd()}\n${more}`;
  await room(lined("    count: 4\n    motif: centred\n    making: 30\n    note: For the bench\n"));
  await send();
  const kept = await readFile(join(dir, "projects/quay/sent/A.json"), "utf8");
  expect(kept).not.toMatch(/making|note|For the bench|maker/);
  await project("revision: B");
  await room(
    lined("    count: 5\n    motif: as-it-falls\n    making: 30\n    note: Other words\n"),
  );
  const rows = async () => (await changes())?.rows.map(({ how }) => how.html);
  expect(await rows()).toEqual(["5 of them, before 4; motif as it falls, before centered"]);
  // A record of before this was kept tells the price alone, and says what that means.
  const file = "projects/quay/sent/A.json";
  await rm(join(dir, file));
  const old = JSON.parse(kept);
  for (const each of old.items) delete each.made;
  await put(file, JSON.stringify(old));
  expect(await rows()).toEqual([""]);
  expect((await changes())?.sentence).toContain("the price alone is another");
});

test("a welt, a piece, a place, a lining and what comes ready are told with what they were; no price, no supplier", async () => {
  await put(
    "studio.md",
    (await readFile(join(dir, "studio.md"), "utf8")).replace(
      "makers: { bench: { name: Bench, makes: [cushion]",
      "suppliers: { saltings: { name: Saltings } }\nmakers: { bench: { name: Bench, makes: [cushion, ottoman]",
    ),
  );
  const made = (edge: string, at: string, pole: string, front: string) => `  - cushion: Seat
    cloth: linen
    size: 20" x 20"
    edge: ${edge}
    at: ${at}
    maker: bench
    private: velvet
    hardware: [{ what: ${pole}, supplier: saltings, trade: 12.34 }]
  - ottoman: Long
    cloth: linen
    size: 40" x 20" x 16"
    making: 90
    pieces:
      - { piece: top, size: 40" x 20" }
      - { piece: front, size: ${front}, join: both-sides }
      - { piece: front, size: 40" x 15" }
`;
  await room(made("{ welt: linen, cut: bias }", `{ floor: 3' x 4' }`, "feather pad", `40" x 15"`));
  expect(await send()).toMatchObject({ exit: 0 });
  const kept = await readFile(join(dir, "projects/quay/sent/A.json"), "utf8");
  expect(kept).toContain("with feather pad");
  // Though a cloth is called as what the studio wrote for itself.
  expect(kept).not.toMatch(/saltings|1234|12\.34|bench|velvet|private|maker/i);
  await project("revision: B");
  expect((await changes())?.rows).toEqual([]);
  await room(made("knife", "{ on: ottoman-long }", "fibre pad", `40" x 14 1/2"`));
  const rows = async () => (await changes())?.rows.map(({ what, how }) => [what, how.html]);
  expect(await rows()).toEqual([
    [
      "Pillow, seat",
      "edge knife, before welt Linen, cut bias; on the ottoman (long), before 3′ from the west wall, 4′ from the north wall; with fiber pad, before with feather pad",
    ],
    [
      "Ottoman, long",
      expect.stringMatching(
        /^front 40″ × 14.*, join both sides, before 40″ × 15″, join both sides$/,
      ),
    ],
  ]);
  // Of a record of before this was kept nothing is told that may have stood there all along.
  const file = "projects/quay/sent/A.json";
  await rm(join(dir, file));
  const old = JSON.parse(kept);
  for (const each of old.items) delete each.parts;
  await put(file, JSON.stringify(old));
  await room(made("{ welt: linen, cut: bias }", `{ floor: 5' x 4' }`, "fibre pad", `40" x 15"`));
  expect(await rows()).toEqual([]);
});

test("a maker's sheet says what of its items is another since the last revision, and what is no longer to be made; of prices nothing", async () => {
  await room(cushion("Seat", "linen") + cushion("Back", "linen") + cushion("Stool", "linen"));
  expect(await send()).toMatchObject({ exit: 0 });
  await project("revision: B");
  interface Told {
    readonly gone: string;
    readonly blocks: readonly { readonly item: { heading: string; since: string } | null }[];
  }
  const sheet = async () => {
    const { pages } = await compute(dir, { only: null, useCache: false });
    const model = pages.find((p) => p.path === "makers/bench/quay/den.html")?.model as unknown as
      | Told
      | undefined;
    const items = (model?.blocks ?? []).flatMap(({ item }) => item ?? []);
    return { since: items.map((each) => `${each.heading}: ${each.since}`), gone: model?.gone };
  };
  expect(await sheet()).toEqual({
    since: ["Pillow: Seat: ", "Pillow: Back: ", "Pillow: Stool: "],
    gone: "",
  });
  await put("cloths/linen.md", card("Linen", 12));
  await room(
    cushion("Seat", "linen").replace('20" x 20"', '20" x 18"') +
      cushion("Back", "linen") +
      cushion("Rug", "velvet"),
  );
  const { since, gone } = await sheet();
  expect(since[0]?.replace(/\s/g, " ")).toBe(
    "Pillow: Seat: Changed since revision A: size 20″ × 18″, before 20″ × 20″.",
  );
  expect(since.slice(1)).toEqual(["Pillow: Back: ", "Pillow: Rug: New since revision A."]);
  expect(gone).toBe("No longer in this room since revision A: pillow, stool. Do not make it.");
  // Where two could have been asked to make it, neither reads of what may have been the other's.
  await put(
    "studio.md",
    (await readFile(join(dir, "studio.md"), "utf8")).replace(
      "makers: {",
      "makers: { other: { name: Other, makes: [cushion] },",
    ),
  );
  expect((await sheet()).gone).toBe("");
});

test("when a piece was ordered and came is no change that a client reads", async () => {
  await put(
    "objects/lamp.md",
    `---\nobject: Lamp\nshape: lamp\nsize: 12" x 12" x 24"\nprice: { trade: 90 }\n---\n`,
  );
  const items = (pole: string, lamp: string) =>
    `  - cushion: Seat\n    cloth: linen\n    size: 20" x 20"\n    hardware: [{ what: pad, trade: 9${pole} }]\n  - object: lamp\n    at: { floor: 3' x 4' }\n${lamp}`;
  await room(items("", ""));
  expect(await send()).toMatchObject({ exit: 0 });
  await project("revision: B");
  await room(
    items(
      ", ordered: 2026-11-02, arrived: 2026-11-09",
      "    ordered: 2026-11-02\n    arrived: 2026-11-09\n",
    ),
  );
  expect((await changes())?.rows).toEqual([]);
});

test("the record adds up to what the proposal asks", async () => {
  await send();
  const record = JSON.parse(await readFile(join(dir, "projects/quay/sent/A.json"), "utf8"));
  const money = await run("money", "quay", "--json");
  expect(record.totalMinor).toBe(
    JSON.parse(money.out).totals.client + JSON.parse(money.out).totals.tax,
  );
  const sum = [...record.items, ...record.others].reduce((s, each) => s + each.sumMinor, 0);
  expect(sum).toBe(record.totalMinor);
  // Nothing of what the studio pays, nor of whom: the client's own side alone.
  expect(JSON.stringify(record)).not.toMatch(/trade|supplier|Bench/);
});

test("while a price is still to come the sum is not said as the whole", async () => {
  expect((await send()).out).toMatch(/: \$\d[\d.,]*\. It is kept/);
  await project("revision: B");
  await put("cloths/linen.md", card("Linen", 10).replace(/price.*\n/, ""));
  expect((await send()).out).toContain("so far, prices still to come. It is kept");
});

test("sent again unchanged it says so; changed, it is refused and nothing is written over", async () => {
  await send();
  const kept = await readFile(join(dir, "projects/quay/sent/A.json"), "utf8");
  const again = await send();
  expect(again).toMatchObject({ exit: 0 });
  expect(again.out).toContain("Nothing has changed since.");
  await room(cushion("Seat", "velvet"));
  const refused = await send();
  expect(refused.exit).toBe(1);
  expect(refused.err).toContain("project.md:5:1");
  expect(refused.err).toContain("has been changed since");
  expect(refused.err).toContain("revision: B");
  expect(await readFile(join(dir, "projects/quay/sent/A.json"), "utf8")).toBe(kept);
});

test.each([
  ["", "has no revision"],
  ['revision: "B/2"', "cannot be called"],
])("without a name that can be kept it is refused: %j", async (revision, words) => {
  await project(revision);
  const said = await send();
  expect(said.exit).toBe(1);
  expect(said.err).toContain(words);
});

test.each([
  ["send quay/den", "name no room"],
  ["send key", 'no project "key"'],
])("%s is a mistake of the command line", async (line, words) => {
  const said = await run(...line.split(" "));
  expect(said).toMatchObject({ exit: 2, out: "" });
  expect(said.err).toContain(words);
});

test.each(["not a record", '{"form":1}'])(
  "a record that was spoilt (%s) is told, compared with nothing and never written over",
  async (text) => {
    await put("projects/quay/sent/A.json", text);
    const check = await run("check");
    expect(check.err).toContain("projects/quay/sent/A.json");
    expect(check.exit).toBe(0);
    await project("revision: B");
    expect(await changes()).toBeNull();
    await project("revision: A");
    const said = await send();
    expect(said.exit).toBe(1);
    expect(said.err).toContain("cannot be read as what was sent");
    expect(await readFile(join(dir, "projects/quay/sent/A.json"), "utf8")).toBe(text);
  },
);

test("the record of one project in another's folder is told", async () => {
  await send();
  const kept = await readFile(join(dir, "projects/quay/sent/A.json"), "utf8");
  await put("projects/quay/sent/C.json", kept);
  expect((await run("check")).err).toContain("Move it to projects/quay/sent/A.json.");
});

test("an approval without a total has that of the revision as it was sent", async () => {
  await send();
  const money = JSON.parse((await run("money", "quay", "--json")).out);
  await project("revision: B\napprovals: [{ revision: a, by: Nobody, on: 2026-11-21 }]");
  await room(cushion("Seat", "velvet") + cushion("Back", "linen"));
  const { pages } = await compute(dir, { only: null, useCache: false });
  const page = pages.find(({ path }) => path === "studio/quay/account.html");
  if (!page) throw new Error("no account");
  expect(JSON.stringify(page.model)).toContain("is listed on the proposal");
  const now = JSON.parse((await run("money", "quay", "--json")).out);
  const sum = (of: typeof money) => of.totals.client + of.totals.tax;
  expect(now.account.change).toBe(sum(now) - sum(money));
});

test("the proposal is kept as it was printed, the same as a build makes, and touched by nothing that comes later", async () => {
  process.env.SOURCE_DATE_EPOCH = "1795478400";
  try {
    const said = await run("send", "quay");
    expect(said).toMatchObject({ exit: 0 });
    const at = join(dir, "projects/quay/sent/A.pdf");
    expect(said.out).toContain(at);
    const kept = await readFile(at);
    expect(await run("build", "--only", "quay")).toMatchObject({ exit: 0 });
    expect(kept.equals(await readFile(join(dir, "out/client/quay/proposal.pdf")))).toBe(true);
    await project("revision: B");
    await room(cushion("Seat", "velvet"));
    expect(await run("send", "quay")).toMatchObject({ exit: 0 });
    expect((await readdir(join(dir, "projects/quay/sent"))).sort()).toEqual([
      "A.json",
      "A.pdf",
      "B.json",
      "B.pdf",
    ]);
    expect(kept.equals(await readFile(at))).toBe(true);
    expect(kept.equals(await readFile(join(dir, "projects/quay/sent/B.pdf")))).toBe(false);
  } finally {
    delete process.env.SOURCE_DATE_EPOCH;
  }
}, 120_000);

test("a file of hers under the proposal's name is never written over", async () => {
  await put("projects/quay/sent/A.pdf", "signed and scanned");
  const said = await run("send", "quay");
  expect(said.exit).toBe(1);
  expect(said.err).toContain("projects/quay/sent/A.pdf is there already, without its record.");
  expect(await readFile(join(dir, "projects/quay/sent/A.pdf"), "utf8")).toBe("signed and scanned");
  expect(await readdir(join(dir, "projects/quay/sent"))).toEqual(["A.pdf"]);
});

test.each([null, "/nowhere/browser"])(
  "where nothing can print (%s), nothing is recorded, and it is said how to record it all the same",
  async (setting) => {
    const missing = wiring.findBrowser;
    Object.assign(wiring, { findBrowser: () => findBrowser(setting, undefined, async () => null) });
    try {
      const said = await run("send", "quay");
      expect(said.exit).toBeGreaterThan(0);
      expect(said.err).toContain("`--no-pdf` records it without its PDF.");
      expect(said.err).not.toContain("pages");
      await expect(readdir(join(dir, "projects/quay/sent"))).rejects.toThrow("ENOENT");
    } finally {
      Object.assign(wiring, { findBrowser: missing });
    }
  },
);

test("a proposal without any price is recorded as one, and no sum of nothing is told", async () => {
  const unpriced = (name: string): string => card(name, 0).replace(/price: .*\n/, "");
  await put(
    "projects/quay/project.md",
    "---\nproject: Quay\nclient: { name: Nobody }\nstatus: proposed\nrevision: A\ndated: 2026-11-20\n---\n",
  );
  await put("cloths/linen.md", unpriced("Linen"));
  const studio = await readFile(join(dir, "studio.md"), "utf8");
  await put("studio.md", studio.replace(", rates: { cushion: 30 per item }", ""));
  const sent = await send();
  expect(sent.out).toMatch(/Recorded revision A as sent on [\d-]+: no price is in it yet\./);
  // The cloth has its price now, the making has not: twenty dollars a yard to the client.
  await put("cloths/linen.md", card("Linen", 10));
  const again = await send();
  expect(again.exit).toBe(1);
  expect(again.err).toMatch(
    /was sent on [\d-]+, without a price, and has been changed since: it now comes to \$\d+\.\d\d so far, prices still to come\./,
  );
  await put(
    "projects/quay/project.md",
    "---\nproject: Quay\nclient: { name: Nobody }\nstatus: proposed\nrevision: B\ndated: 2026-11-20\n---\n",
  );
  const block = await changes();
  expect(block?.before).toBe("to come *");
  expect(block?.now).toMatch(/^\d+\.\d\d \*$/);
});
