import { spawnSync } from "node:child_process";
import {
  appendFileSync,
  chmodSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  symlinkSync,
  utimesSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { afterAll, beforeAll, beforeEach, expect, test } from "vitest";
import type { Wiring } from "../../src/cli/wiring.ts";
import { diagnostic } from "../../src/diagnostics/diagnostic.ts";
import { compute } from "../../src/site/compute.ts";
import { makePictures } from "../../src/site/makePictures.ts";
import { say } from "./smallStudio.ts";

// A studio of the tests' own, archived and looked at as a stranger would. The scenario is made up.

const home = mkdtempSync(join(tmpdir(), "roomcloth-archive-"));
const content = join(home, "studio");
const bags = join(home, "studio-archive");
const DAY = 1_795_478_400; // 2026-11-24
const env = { SOURCE_DATE_EPOCH: String(DAY) };
const wiring = {
  compute,
  makePictures,
  layoutsDir: join(import.meta.dirname, "../../layouts"),
  pdfCache: () => null,
} as unknown as Wiring;

function put(path: string, text: string | Buffer): void {
  mkdirSync(dirname(join(home, path)), { recursive: true });
  writeFileSync(join(home, path), text);
}
const run = (...args: string[]) =>
  say(["--content", content, "--out", join(home, "out"), ...args], wiring, env);
const archive = (...args: string[]) => run("archive", "quay", "--no-pdf", ...args);
const listed = (folder: string): string[] =>
  readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name).slice(folder.length + 1))
    .sort();
const project = (more: string): void =>
  put(
    "studio/projects/quay/project.md",
    `---\nproject: Quay\nclient: { name: Nobody, address: 1 Slip Street }\ndated: 2026-11-20\n${more}---\n`,
  );
const FINISHED = `status: fitted
revision: B/2
approvals:
  - { revision: A, by: Ida Nobody, on: 2026-10-21, total: 80.00 }
payments:
  - { amount: 40.00, on: 2026-10-22, what: deposit }
orders:
  - { cloth: linen, length: 2 yd, on: 2026-10-23, number: 0417 }
receipts:
  - { cloth: linen, lot: 0123, length: 2 1/8 yd, width: 53 3/4", on: 2026-11-02, flaws: [{ from: 1 yd, length: 3", what: slub }] }
`;
const card = (name: string, more = ""): string =>
  `---\ncloth: ${name}\nwidth: 54"\nkind: plain\ncolours: [{ colour: "#8a7a66", name: oat }]\nsupplier: mill\nprice: { trade: 10, per: yard }\n${more}---\n`;

beforeAll(async () => {
  process.env.SOURCE_DATE_EPOCH = env.SOURCE_DATE_EPOCH;
  put(
    "studio/studio.md",
    "---\nstudio: Alder Lane Rooms\nlanguage: en-US\nunits: inches\ncurrency: USD\npaper: tabloid\nmarkup: { cloth: 2 }\nmakers: { bench: { name: The Bench, makes: [cushion], rates: { cushion: 30 per item } } }\nsuppliers: { mill: { name: Low Mill } }\n---\n",
  );
  put("studio/cloths/linen.md", card("Oat linen", "reference: LM 7\ncare: Wash cool.\n"));
  put("studio/cloths/velvet.md", card("Velvet"));
  put("studio/cloths/other.md", card("Unasked"));
  put("studio/objects/stool.md", "---\nobject: Stool\nowner: client\nstays: yes\n---\n");
  put("studio/objects/lamp.md", "---\nobject: Lamp\n---\n");
  put("studio/projects/quay/notes.txt", "The client rang.\n");
  put(
    "studio/projects/quay/den.md",
    '---\nroom: Den\nmeasured: { by: Ada Wren, on: 2026-10-02 }\ncloths: [linen, velvet]\nitems:\n  - object: stool\n  - cushion: Seat\n    cloth: linen\n    size: 20" x 20"\n    count: 2\n    edge: knife\n    maker: bench\n---\n',
  );
  put(
    "studio/projects/else/project.md",
    "---\nproject: Secret Lane\nclient: { name: Other }\nstatus: enquiry\n---\n",
  );
  put("studio/projects/else/hall.md", "---\nroom: Hall\nitems: []\n---\n");
  project(FINISHED);
});
beforeEach(() => {
  rmSync(bags, { recursive: true, force: true });
});
afterAll(() => {
  delete process.env.SOURCE_DATE_EPOCH;
  rmSync(home, { recursive: true, force: true });
});

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
  const unbroken = text.replace(/\n {16}(?=\S)/g, " ");
  for (const words of [
    "for the studio alone",
    "Client        Nobody, 1 Slip Street",
    "Supplier      Low Mill",
    "Their number  LM 7",
    "Used for      Den: Seat, pillow (face, back)",
    "Ordered       2 yd on October 23, 2026, number 0417",
    "Received      lot 0123: 2 1/8 yd; 53 3/4″ wide; came on November 2, 2026; slub from 1 yd, 3″ long",
    "$10.00 a yard to the studio, $20.00 to the client",
    "Used for      nothing in the end: it was only looked at",
    "Client’s own  Stool (files/objects/stool.md)",
    "Measured      by Ada Wren, October 2, 2026",
    "Maker         The Bench",
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
    receipts: [{ lot: "0123", lengthMm: 2.125 * 914.4, flaws: [{ fromMm: 914.4, what: "slub" }] }],
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

test("what an archive that was cut off has left is cleared away after a day, and not before", async () => {
  const name = (digit: string) => `.roomcloth-${digit.repeat(8)}-0000-4000-8000-000000000000.part`;
  for (const digit of ["1", "2"]) put(`studio-archive/${name(digit)}/data/x`, "x");
  put("studio-archive/.other.part", "x");
  utimesSync(join(bags, name("1")), new Date(0), new Date(0));
  await archive();
  expect(readdirSync(bags).sort()).toEqual([".other.part", name("2"), "quay-B-2"]);
});

test("an archive is never written over: another name is told", async () => {
  await archive();
  const before = readFileSync(join(bags, "quay-B-2/bag-info.txt"), "utf8");
  const refused = await archive();
  expect(refused).toMatchObject({ exit: 2, out: "" });
  expect(refused.err).toContain("is there already");
  expect(refused.err).toContain("--name quay-B-2-2");
  expect(readFileSync(join(bags, "quay-B-2/bag-info.txt"), "utf8")).toBe(before);
  expect(await archive("--name", "quay-B-2-2")).toMatchObject({ exit: 0 });
});

test("without a revision it bears the day, and what is not finished is said and archived all the same", async () => {
  project("status: proposed\n");
  try {
    const said = await archive();
    expect(said.exit).toBe(0);
    expect(said.err).toContain("archived while it is “proposed”");
    expect(readdirSync(bags)).toEqual(["quay-2026-11-24"]);
    const text = readFileSync(join(bags, "quay-2026-11-24/data/record.txt"), "utf8");
    expect(text).toContain("Not known: what was ordered, and which lots came.");
  } finally {
    project(FINISHED);
  }
});

test("a project with an error is refused with its line, and leaves nothing behind", async () => {
  project("status: fitted\norders:\n  - { cloth: lemon, length: 2 yd, on: 2026-10-23 }\n");
  try {
    const said = await archive();
    expect(said).toMatchObject({ exit: 1, out: "" });
    expect(said.err).toContain("There is no cloth called “lemon”.");
    expect(existsSync(bags)).toBe(false);
  } finally {
    project(FINISHED);
  }
});

test.each([
  [["archive", "key"], 'no project "key"'],
  [["archive", "quay/den"], "name no room"],
  [["archive", "quay", "--to", join(content, "kept")], "in the studio's folder"],
  [["archive", "quay", "--to", join(home, "out/kept")], "in the folder of the documents"],
  [["archive", "quay", "--to", join(content, "studio.md", "x")], "in the studio's folder"],
  [["archive", "quay", "--name", "../away"], "cannot be called"],
  [["archive", "quay", "--name", ".hidden"], "cannot be called"],
  [["verify", join(home, "nothing")], "There is no folder"],
  [["verify", join(content, "studio.md")], "is a file"],
  [["verify", content], "is no bag"],
])("%j is a mistake of the command line", async (args, words) => {
  const said = await run(...args);
  expect(said).toMatchObject({ exit: 2, out: "" });
  expect(said.err).toContain(words);
});

test("--to may not be a file", async () => {
  put("file", "x");
  const said = await archive("--to", join(home, "file"));
  expect(said).toMatchObject({ exit: 2, out: "" });
  expect(said.err).toContain("is a file");
});

test.skipIf(process.getuid?.() === 0)(
  "a folder that may not be written to is the machine's fault, status 3",
  async () => {
    mkdirSync(join(home, "locked"), { mode: 0o500 });
    const said = await archive("--to", join(home, "locked"));
    chmodSync(join(home, "locked"), 0o700);
    expect(said).toMatchObject({ exit: 3, out: "" });
    expect(said.err).toContain("--to");
  },
);

/** Runs a program that sees a disk of 300 kB at the folder, mounted so; only that process sees it. */
const onTinyDisk = (mounted: string, ...command: readonly string[]) =>
  spawnSync(
    "unshare",
    [
      "-rm",
      "sh",
      "-c",
      `mount -t tmpfs -o size=300k,${mounted} none "$0" && "$@"; s=$?; ls -A "$0" >&2; exit $s`,
      join(home, "tiny"),
      ...command,
    ],
    { encoding: "utf8", env: { ...process.env, ...env } },
  );
mkdirSync(join(home, "tiny"));
test.skipIf(onTinyDisk("rw", "true").status !== 0).each([
  ["rw", "There is no room left on the disk."],
  ["ro", "This folder or file cannot be written to."],
])(
  "on a disk that is full or read only (%s) it is said plainly, status 3, and nothing is left",
  (mounted, words) => {
    const program = join(import.meta.dirname, "../../src/cli/roomcloth.mjs");
    const place = ["--content", content, "--out", join(home, "out")];
    const asked = ["archive", "quay", "--no-pdf", "--to", join(home, "tiny", "kept")];
    const said = onTinyDisk(mounted, process.execPath, program, ...place, ...asked);
    expect(said).toMatchObject({ status: 3, stdout: "" });
    expect(said.stderr).toContain(words);
    expect(said.stderr).toContain("--to");
    expect(said.stderr).not.toMatch(/\.part|at .*\.ts:/);
  },
);

test("without a browser nothing is archived by half, and it is said how to go on", async () => {
  const place = { file: "", line: null, column: null, keyPath: null };
  const none = diagnostic(place, "no-browser", "There is no browser.", { hint: "Install one." });
  const said = await say(
    ["--content", content, "--out", join(home, "out"), "archive", "quay"],
    {
      ...wiring,
      findBrowser: async () => ({ value: null, diagnostics: [none] }),
    } as unknown as Wiring,
    env,
  );
  expect(said).toMatchObject({ exit: 3, out: "" });
  expect(said.err).toContain("--no-pdf");
  expect(existsSync(bags)).toBe(false);
});
