import { spawnSync } from "node:child_process";
import {
  appendFileSync,
  existsSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  symlinkSync,
} from "node:fs";
import { dirname, join } from "node:path";
import { expect, test } from "vitest";
import { archiveStudio } from "./archiveStudio.ts";
import { say } from "./smallStudio.ts";

// A finished project, archived and looked at as a stranger would.

const { home, bags, wiring, put, run, archive, listed } = archiveStudio();

test("a bag holds the files that the project was made from, its documents and its record, and nobody else's", async () => {
  const said = await archive();
  expect(said).toMatchObject({ exit: 0 });
  // `/` can stand in no name.
  const bag = join(bags, "quay-B-2");
  expect(said.out).toContain(`Archived in ${bag}:`);
  expect(readdirSync(bags)).toEqual(["quay-B-2"]);
  expect(listed(join(bag, "data/files"))).toEqual([
    "cloths/linen.md",
    "cloths/velvet.md",
    "objects/stool.md",
    "projects/quay/den.md",
    "projects/quay/notes.txt",
    "projects/quay/project.md",
    "studio.md",
  ]);
  expect(readdirSync(join(bag, "data")).sort()).toEqual([
    "documents",
    "files",
    "record.json",
    "record.txt",
  ]);
  const documents = listed(join(bag, "data/documents")).filter((path) => path.endsWith(".html"));
  expect(documents).toEqual(
    expect.arrayContaining([
      "client/quay/index.html",
      "client/quay/proposal.html",
      "makers/bench/quay/den.html",
      "studio/index.html",
      "studio/quay/orders.html",
    ]),
  );
  for (const path of documents)
    expect(readFileSync(join(bag, "data/documents", path), "utf8")).not.toContain("Secret Lane");
  // What is linked is there: the documents open from the bag.
  for (const path of documents) {
    const text = readFileSync(join(bag, "data/documents", path), "utf8");
    for (const [, link = ""] of text.matchAll(/(?:href|src)="([^"#:]+)"/g))
      expect(existsSync(join(bag, "data/documents", dirname(path), link)), `${path}: ${link}`).toBe(
        true,
      );
  }
  expect(readFileSync(join(bag, "bag-info.txt"), "utf8")).toMatch(
    /^Source-Organization: Alder Lane Rooms\nExternal-Identifier: quay, revision B\/2\nInternal-Sender-Description: Quay: .*For the studio alone.*\nBagging-Date: 2026-11-24\nBag-Software-Agent: roomcloth \d+\.\d+\.\d+\nPayload-Oxum: \d+\.\d+\n$/,
  );
});

test("the record answers in words and numbers: which cloth, which lot, how much, what it cost, what was approved", async () => {
  await archive();
  const data = join(bags, "quay-B-2/data");
  const text = readFileSync(join(data, "record.txt"), "utf8");
  const unbroken = text.replace(/\n {16}(?: {2})?(?=\S)/g, " ");
  for (const words of [
    "for the studio alone",
    "Client        Nobody, 1 Slip Street",
    "Supplier      Low Mill",
    "Their number  LM 7",
    "Used for      Den: Seat, pillow (face, back)",
    "Ordered       2 yd on October 23, 2026, number 0417",
    "Received      lot 0123: 2 1/8 yd; 53 3/4″ wide; came on November 2, 2026; slub from 1 yd, 3″ long",
    "Received      lot 0099: 2 yd; came on October 30, 2026; went back on October 31, 2026, for a replacement, another shade",
    "$10.00 a yard to the studio, $20.00 to the client",
    "Used for      nothing in the end: it was only looked at",
    "Client’s own  Stool (files/objects/stool.md)",
    "Measured      by Ada Wren, October 2, 2026",
    "Maker         The Bench",
    "Made          2 of them; size 20″ × 20″; edge knife",
    "Place         on the stool",
    "Bought ready  2 × feather pad, from Low Mill, ordered on October 23, 2026, came on November 2, 2026",
    "Approved      revision A by Ida Nobody on October 21, 2026, $80.00",
    "Paid          $40.00 on October 22, 2026, deposit",
    "CUTTING PLAN",
  ])
    expect(unbroken).toContain(words);
  expect(text).not.toMatch(/[\u00a0\u202f]|undefined|\[object|NaN/);
  for (const [line] of text.split("4. What it cost")[0]?.matchAll(/^.*$/gm) ?? [])
    expect(line.length, line).toBeLessThanOrEqual(110);
  const record = JSON.parse(readFileSync(join(data, "record.json"), "utf8"));
  const linen = record.cloths.find((each: { cloth: string }) => each.cloth === "linen");
  // An inch is 25.4 mm (ISO 31-1 and the international yard of 1959), a yard 36 of them.
  expect(linen).toMatchObject({
    used: true,
    supplierName: "Low Mill",
    reference: "LM 7",
    widthMm: 54 * 25.4,
    orders: [{ lengthMm: 2 * 914.4, on: "2026-10-23", number: "0417" }],
    receipts: [
      {
        lot: "0123",
        lengthMm: 2.125 * 914.4,
        flaws: [{ fromMm: 914.4, what: "slub" }],
        returned: null,
      },
      {
        lot: "0099",
        returned: { on: "2026-10-31", for: "replacement", because: "another shade" },
      },
    ],
    price: { trade: 1000, client: 2000, per: "yard" },
  });
  const money = await run("money", "quay", "--json");
  expect(record.money).toEqual(JSON.parse(money.out));
  const line = record.money.lines.filter((each: { cloth: string }) => each.cloth === "linen");
  expect(linen.cost.client).toBe(
    line.reduce((sum: number, each: { client: number }) => sum + each.client, 0),
  );
});

test("from the bag alone all can be made again", async () => {
  await archive();
  const files = join(bags, "quay-B-2/data/files");
  const again = await say(
    ["--content", files, "--out", join(home, "again"), "quantities", "quay", "--json"],
    wiring,
  );
  expect(again.exit).toBe(0);
  expect(JSON.parse(again.out)).toEqual(
    JSON.parse((await run("quantities", "quay", "--json")).out),
  );
});

test("two archives of the same files are the same, byte for byte", async () => {
  await archive();
  expect(await archive("--name", "second")).toMatchObject({ exit: 0 });
  const [one, two] = [join(bags, "quay-B-2"), join(bags, "second")];
  expect(listed(one)).toEqual(listed(two));
  for (const path of listed(one))
    expect(readFileSync(join(one, path)).equals(readFileSync(join(two, path))), path).toBe(true);
});

const coreutils = spawnSync("sha512sum", ["--version"]).status === 0;
test.skipIf(!coreutils)(
  "an independent reader, sha512sum, finds every file of it whole",
  async () => {
    await archive();
    const bag = join(bags, "quay-B-2");
    for (const list of ["manifest-sha512.txt", "tagmanifest-sha512.txt"]) {
      const checked = spawnSync("sha512sum", ["--strict", "--quiet", "-c", list], {
        cwd: bag,
        encoding: "utf8",
      });
      expect(checked.stdout + checked.stderr).toBe("");
      expect(checked.status).toBe(0);
    }
    const count = readFileSync(join(bag, "manifest-sha512.txt"), "utf8").trimEnd().split("\n");
    expect(count.length).toBe(listed(join(bag, "data")).length);
  },
);

test("verify finds it whole, and says what was changed, added or lost", async () => {
  await archive();
  const bag = join(bags, "quay-B-2");
  const sound = await run("verify", bag);
  expect(sound).toMatchObject({ exit: 0, err: "" });
  expect(sound.out).toContain("as it was made on 2026-11-24");
  expect(JSON.parse((await run("verify", bag, "--json")).out)).toEqual({
    bag,
    valid: true,
    problems: [],
  });
  appendFileSync(join(bag, "data/files/cloths/linen.md"), "\n");
  put("studio-archive/quay-B-2/data/more.txt", "x");
  rmSync(join(bag, "data/record.json"));
  symlinkSync("/etc/passwd", join(bag, "data/link"));
  const faulty = await run("verify", bag);
  expect(faulty).toMatchObject({ exit: 1, err: "" });
  for (const words of [
    "data/files/cloths/linen.md has been changed since it was archived.",
    "data/more.txt was added later: no list names it.",
    "data/record.json is missing.",
    "data/link is a link to another place",
  ])
    expect(faulty.out).toContain(words);
  const json = JSON.parse((await run("verify", bag, "--json")).out);
  expect(json.valid).toBe(false);
  expect(json.problems).toContainEqual({ file: "data/record.json", what: "is missing" });
});

test("a bag that was moved as a whole is still whole", async () => {
  await archive();
  const moved = join(home, "on another disk");
  renameSync(join(bags, "quay-B-2"), moved);
  expect(await run("verify", `${moved}/`)).toMatchObject({ exit: 0 });
  rmSync(moved, { recursive: true });
});

test("a folder with bags in it is none: they are named", async () => {
  await archive();
  const said = await run("verify", bags);
  expect(said).toMatchObject({ exit: 2, out: "" });
  expect(said.err).toContain(join(bags, "quay-B-2"));
});
