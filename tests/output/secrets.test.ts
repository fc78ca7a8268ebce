import { spawnSync } from "node:child_process";
import { readdir, rm } from "node:fs/promises";
import { join, resolve } from "node:path";
import sharp from "sharp";
import { afterAll, beforeAll, expect, test } from "vitest";
import { money, printMoney } from "../../src/units/money.ts";
import { type Built, buildStudio } from "./demo.ts";
import {
  DISCLOSED,
  NOT_FOR_MAKERS,
  plant,
  RATES,
  REPLACED_RATE,
  STUDIO_ONLY,
  UNSAID,
} from "./plantedStudio.ts";
import { said } from "./saidOf.ts";

// What each reader must never see is the project's own rule (README, "Who sees what"); no outside source.

const ROOT = resolve(import.meta.dirname, "../..");

let built: Built;
let content: string;

/** Capitals do not hide a secret: file names and addresses are often written small. */
function holds(text: string, secret: string): boolean {
  return text.toLowerCase().includes(secret.toLowerCase());
}

/** What the program itself says of a project's money, as documents print it. */
function totalsOf(project: string): { total: string; trade: string } {
  const said = spawnSync(
    process.execPath,
    [join(ROOT, "src/cli/roomcloth.mjs"), "--content", content, "--json", "money", project],
    { encoding: "utf8", cwd: ROOT },
  );
  const { totals } = JSON.parse(said.stdout) as { totals: { total: number; trade: number } };
  const print = (minor: number): string => printMoney(money(minor, "USD"), "en-US", true);
  return { total: print(totals.total), trade: print(totals.trade) };
}

const trees = new Map<string, string>();

/** Everything in a tree, names of files and folders too. */
async function tree(folder: string): Promise<string> {
  const known = trees.get(folder);
  if (known !== undefined) return known;
  const root = join(built.out, folder);
  const names = (await readdir(root, { recursive: true, withFileTypes: true })).filter((e) =>
    e.isFile(),
  );
  expect(names.length).toBeGreaterThan(2);
  const all: string[] = [];
  for (const entry of names) {
    const path = join(entry.parentPath, entry.name);
    all.push(path.slice(built.out.length), /\.woff2$/.test(entry.name) ? "" : await said(path));
  }
  const text = all.join("\n");
  trees.set(folder, text);
  return text;
}

beforeAll(async () => {
  content = await plant();
  // Without the cache: pictures and PDFs of an earlier program would hide a leak of this one.
  built = await buildStudio(content, ["--no-cache"]);
});
afterAll(async () => {
  await built?.remove();
  if (!process.env.KEEP) await rm(content, { recursive: true, force: true });
});

const CLIENTS = ["client/quillon", "client/varley"];
const MAKERS = [
  "makers/bench/quillon",
  "makers/bench/varley",
  "makers/frame/quillon",
  "makers/frame/varley",
  "makers/hook/quillon",
  "makers/hook/varley",
];

test.each([...CLIENTS, ...MAKERS])(
  "%s holds nothing that is the studio's alone",
  async (folder) => {
    const text = await tree(folder);
    for (const [what, secret] of Object.entries(STUDIO_ONLY))
      expect(holds(text, secret), what).toBe(false);
    // A rate that an agreed charge replaces is printed for nobody.
    expect(text.includes(REPLACED_RATE)).toBe(false);
  },
);

test.each(MAKERS)(
  "%s holds no price of the client's, no budget, no way to the client",
  async (folder) => {
    const text = await tree(folder);
    for (const [what, secret] of Object.entries(NOT_FOR_MAKERS))
      expect(holds(text, secret), what).toBe(false);
  },
);

test("a client reads who the supplier is only where the studio discloses it; a maker never", async () => {
  for (const folder of CLIENTS) {
    const text = await tree(folder);
    expect(holds(text, DISCLOSED.name), folder).toBe(true);
    expect(holds(text, DISCLOSED.account), folder).toBe(false);
    expect(holds(text, UNSAID), folder).toBe(false);
  }
  for (const folder of MAKERS) {
    const text = await tree(folder);
    for (const secret of [...Object.values(DISCLOSED), UNSAID])
      expect(holds(text, secret), folder).toBe(false);
  }
});

test.each(CLIENTS)("%s holds no maker's rate and no adverse finding", async (folder) => {
  const text = await tree(folder);
  for (const rate of Object.values(RATES)) expect(text.includes(rate)).toBe(false);
  for (const words of [
    "has no photograph yet",
    "no-photograph",
    "photo-shows-part",
    "worth-a-look",
    "common practice",
    "colour-once",
  ])
    expect(text.includes(words), words).toBe(false);
});

test("no client finds another client, and no maker another project or another maker's work", async () => {
  for (const folder of [...CLIENTS, ...MAKERS]) {
    const text = await tree(folder);
    const [mine, other] = folder.endsWith("quillon")
      ? ["quillon", "varley"]
      : ["varley", "quillon"];
    expect(text.toLowerCase().includes(mine), folder).toBe(true);
    expect(text.toLowerCase().includes(other), folder).toBe(false);
    if (folder.startsWith("makers/bench")) {
      expect(text.includes("Carver"), folder).toBe(false);
      expect(text.includes(RATES.frame), folder).toBe(false);
      expect(text.includes("Frame and Daughter"), folder).toBe(false);
    }
    if (folder.startsWith("makers/frame")) {
      expect(text.includes(`Bay ${mine}`), folder).toBe(false);
      expect(text.includes(RATES.bench), folder).toBe(false);
      expect(text.includes("Bench Street"), folder).toBe(false);
    }
    // Who fits reads what others made as far as it goes up, and what nobody else is paid.
    if (folder.startsWith("makers/hook")) {
      expect(text.includes(`Bay ${mine}`), folder).toBe(true);
      expect(text.includes("Carver"), folder).toBe(false);
      expect(text.includes(RATES.hook), folder).toBe(true);
      expect(text.includes(RATES.bench), folder).toBe(false);
      expect(text.includes(RATES.frame), folder).toBe(false);
    } else expect(text.includes(RATES.hook), folder).toBe(false);
  }
});

test("pictures carry no place, no camera and no photographer, only the sRGB profile", async () => {
  const pictures = built.files.filter((name) => name.endsWith(".jpg"));
  expect(pictures.length).toBeGreaterThan(3);
  for (const name of pictures) {
    const { exif, xmp, iptc, icc } = await sharp(join(built.out, name)).metadata();
    expect([exif, xmp, iptc], name).toEqual([undefined, undefined, undefined]);
    // The profile's description is UTF-16.
    expect(icc?.toString("latin1").replaceAll("\0", ""), name).toContain("sRGB");
  }
});

test("schedule, sample tray and receiving slip are the studio's alone; the slip, which lies with a maker, says no price and nothing private", async () => {
  const pages = built.files.filter((name) => /\/(?:schedule|receiving|samples)\./.test(name));
  expect(pages.map((name) => name.split("/")[0])).toEqual(Array(12).fill("studio"));
  for (const name of pages.filter((page) => page.includes("/receiving."))) {
    const text = await said(join(built.out, name));
    expect(holds(text, STUDIO_ONLY.reference), name).toBe(true);
    for (const secret of [
      STUDIO_ONLY.tradePrice,
      STUDIO_ONLY.samplePrice,
      STUDIO_ONLY.clothPrivate,
    ])
      expect(holds(text, secret), name).toBe(false);
    for (const secret of Object.values(NOT_FOR_MAKERS)) expect(holds(text, secret)).toBe(false);
  }
  const page = await said(join(built.out, "studio/quillon/schedule.html"));
  expect(page).toContain(`Order from ${STUDIO_ONLY.supplier}`);
  expect(await said(join(built.out, "studio/quillon/samples.html"))).toContain(
    STUDIO_ONLY.samplePrice,
  );
});

test("each does find what is theirs", async () => {
  expect(await tree("client/quillon")).toContain("Ottoline Quillon");
  expect(await tree("client/quillon")).toContain("Sprig");
  expect(await tree("makers/bench/quillon")).toContain(RATES.bench);
  // An agreed charge stands on the sheet in the rate's place.
  expect(await tree("makers/frame/varley")).toContain("$943.27 for this item");
  expect(await tree("makers/frame/varley")).not.toContain("$611.11");
  const studio = await tree("studio");
  expect(studio).toContain(STUDIO_ONLY.supplier);
  expect(studio).toContain(STUDIO_ONLY.reference);
  expect(studio).toContain(STUDIO_ONLY.tradePrice);
  for (const project of ["quillon", "varley"]) {
    const account = await said(join(built.out, `studio/${project}/account.html`));
    for (const what of ["approver", "approvedTotal", "payment", "paidFor"] as const)
      expect(account, what).toContain(STUDIO_ONLY[what]);
    expect(account).not.toContain(STUDIO_ONLY.tradePrice);
    expect(account).not.toContain(totalsOf(project).trade);
  }
});

test("the client's total is on the client's proposal and on no maker's sheet; the trade total is the studio's", async () => {
  for (const project of ["quillon", "varley"]) {
    const { total, trade } = totalsOf(project);
    expect(total).toMatch(/^\$\d/);
    expect(await tree(`client/${project}`)).toContain(total);
    expect(await tree(`client/${project}`)).not.toContain(trade);
    for (const maker of ["bench", "frame"]) {
      const text = await tree(`makers/${maker}/${project}`);
      expect(text).not.toContain(total);
      expect(text).not.toContain(trade);
    }
  }
  expect(await tree("studio")).toContain(totalsOf("quillon").trade);
});

test("the search finds what lies in a PDF's packed text and in a picture's metadata", async () => {
  const board = built.files.find((name) => name === "client/quillon/proposal.pdf") as string;
  expect((await said(join(built.out, board))).replace(/\s/g, "")).toContain("OttolineQuillon");
  expect(await said(join(content, `cloths/${STUDIO_ONLY.photoFile}.jpg`))).toContain(
    STUDIO_ONLY.camera,
  );
});
