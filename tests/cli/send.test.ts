import { readdir, readFile } from "node:fs/promises";
import { join } from "node:path";
import { expect, test } from "vitest";
import { findBrowser } from "../../src/press/findBrowser.ts";
import { compute } from "../../src/site/compute.ts";
import { sendStudio } from "./sendStudio.ts";

// From the file that she writes to what the next proposal says. Sums by hand: 20 in cushions take their cloth, at ten dollars a yard
// twice over, and thirty dollars of making. The scenario is made up.

const { home, put, project, room, cushion, card, wiring, send, run, changes } = sendStudio();

test("what is sent is kept, and the next revision says what has changed since", async () => {
  expect(await changes()).toBeNull();
  const sent = await send();
  expect(sent).toMatchObject({ exit: 0 });
  expect(sent.out).toContain("Recorded revision A");
  expect(sent.out).toContain("PDF is not kept");
  const kept = await readFile(join(home(), "projects/quay/sent/A.json"), "utf8");
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
  expect(await readdir(join(home(), "projects/quay/sent"))).toEqual(["A.json", "B.json"]);
  expect(await readFile(join(home(), "projects/quay/sent/A.json"), "utf8")).toBe(kept);
  // Sent, it is still told from A.
  expect((await changes())?.head).toBe("What has changed since revision A");
});

test("the record adds up to what the proposal asks", async () => {
  await send();
  const record = JSON.parse(await readFile(join(home(), "projects/quay/sent/A.json"), "utf8"));
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
  const kept = await readFile(join(home(), "projects/quay/sent/A.json"), "utf8");
  const again = await send();
  expect(again).toMatchObject({ exit: 0 });
  expect(again.out).toContain("Nothing has changed since.");
  await room(cushion("Seat", "velvet"));
  const refused = await send();
  expect(refused.exit).toBe(1);
  expect(refused.err).toContain("project.md:5:1");
  expect(refused.err).toContain("has been changed since");
  expect(refused.err).toContain("revision: B");
  expect(await readFile(join(home(), "projects/quay/sent/A.json"), "utf8")).toBe(kept);
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
    expect(await readFile(join(home(), "projects/quay/sent/A.json"), "utf8")).toBe(text);
  },
);

test("the record of one project in another's folder is told", async () => {
  await send();
  const kept = await readFile(join(home(), "projects/quay/sent/A.json"), "utf8");
  await put("projects/quay/sent/C.json", kept);
  expect((await run("check")).err).toContain("Move it to projects/quay/sent/A.json.");
});

test("an approval without a total has that of the revision as it was sent", async () => {
  await send();
  const money = JSON.parse((await run("money", "quay", "--json")).out);
  await project("revision: B\napprovals: [{ revision: a, by: Nobody, on: 2026-11-21 }]");
  await room(cushion("Seat", "velvet") + cushion("Back", "linen"));
  const { pages } = await compute(home(), { only: null, useCache: false });
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
    const at = join(home(), "projects/quay/sent/A.pdf");
    expect(said.out).toContain(at);
    const kept = await readFile(at);
    expect(await run("build", "--only", "quay")).toMatchObject({ exit: 0 });
    expect(kept.equals(await readFile(join(home(), "out/client/quay/proposal.pdf")))).toBe(true);
    await project("revision: B");
    await room(cushion("Seat", "velvet"));
    expect(await run("send", "quay")).toMatchObject({ exit: 0 });
    expect((await readdir(join(home(), "projects/quay/sent"))).sort()).toEqual([
      "A.json",
      "A.pdf",
      "B.json",
      "B.pdf",
    ]);
    expect(kept.equals(await readFile(at))).toBe(true);
    expect(kept.equals(await readFile(join(home(), "projects/quay/sent/B.pdf")))).toBe(false);
  } finally {
    delete process.env.SOURCE_DATE_EPOCH;
  }
});

test("a file of hers under the proposal's name is never written over", async () => {
  await put("projects/quay/sent/A.pdf", "signed and scanned");
  const said = await run("send", "quay");
  expect(said.exit).toBe(1);
  expect(said.err).toContain("projects/quay/sent/A.pdf is there already, without its record.");
  expect(await readFile(join(home(), "projects/quay/sent/A.pdf"), "utf8")).toBe(
    "signed and scanned",
  );
  expect(await readdir(join(home(), "projects/quay/sent"))).toEqual(["A.pdf"]);
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
      await expect(readdir(join(home(), "projects/quay/sent"))).rejects.toThrow("ENOENT");
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
  const studio = await readFile(join(home(), "studio.md"), "utf8");
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
