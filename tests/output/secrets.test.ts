import { spawnSync } from "node:child_process";
import { cp, mkdir, mkdtemp, readdir, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { deflateSync, inflateSync } from "node:zlib";
import { getDocument } from "pdfjs-dist/legacy/build/pdf.mjs";
import sharp from "sharp";
import { afterAll, beforeAll, expect, test } from "vitest";
import { money, printMoney } from "../../src/units/money.ts";
import { type Built, buildStudio } from "./demo.ts";

// What each reader must never see is the project's own rule (README, "Who sees what"); no outside source.

const ROOT = resolve(import.meta.dirname, "../..");
const CONTENT = join(ROOT, "content");

/** A supplier whom the client may know, and that supplier's account, which nobody may; one of whom nothing was said. */
const DISCLOSED = { name: "Zwtsupplieropen", account: "Zwtopenaccount" } as const;
const UNSAID = "Zwtsupplierunsaid";

/** Words and sums planted where only the studio may look; each is found nowhere else. */
const STUDIO_ONLY = {
  studioPrivate: "Zwtstudioprivate",
  clothPrivate: "Zwtclothprivate",
  objectPrivate: "Zwtobjectprivate",
  projectPrivate: "Zwtprojectprivate",
  roomPrivate: "Zwtroomprivate",
  itemPrivate: "Zwtitemprivate",
  supplier: "Zwtsupplierhidden",
  account: "Zwtaccount",
  supplierMail: "zwtsuppliermail",
  reference: "Zwtreference",
  photoFile: "zwtphotofile",
  objectPhotoFile: "zwtobjectfile",
  camera: "Zwtcamera",
  artist: "Zwtphotographer",
  tradePrice: "731.57",
  samplePrice: "613.19",
  waiver: "Zwtwaiverreason",
  approver: "Zwtapprover",
  approvedTotal: "77,341.29",
  payment: "6,173.41",
  paidFor: "Zwtpaidfor",
} as const;

/** The price of a yard, what it is multiplied by, and what else is money of the studio's: for no maker's eyes. */
const NOT_FOR_MAKERS = {
  budget: "48,123",
  projectBudget: "97,531",
  clientMail: "zwtclientmail",
  clientPhone: "555-0177",
  clientAddress: "Zwtclientaddress",
  clientPrice: "1,463.14",
  designFee: "3,377",
} as const;

/** A maker's rate for work whose charge is agreed otherwise. */
const REPLACED_RATE = "611.11";

/** As they are printed; a bare number could stand in a drawing. */
const RATES = { bench: "$87.31", frame: "$943.27", hook: "$59.43" } as const;

let built: Built;
let content: string;

async function plant(): Promise<string> {
  const dir = await mkdtemp(join(tmpdir(), "roomcloth-secrets-"));
  await mkdir(join(dir, "cloths"), { recursive: true });
  await mkdir(join(dir, "objects"), { recursive: true });
  const s = STUDIO_ONLY;
  const m = NOT_FOR_MAKERS;
  await sharp(join(CONTENT, "cloths/caraway.jpg"))
    .withExif({
      IFD0: { Make: s.camera, Artist: s.artist, ImageDescription: s.camera },
      IFD3: { GPSLatitudeRef: "N", GPSLatitude: "51/1 30/1 3230/100" },
    })
    .jpeg()
    .toFile(join(dir, `cloths/${s.photoFile}.jpg`));
  await cp(
    join(CONTENT, "objects/harbour-picture.jpg"),
    join(dir, `objects/${s.objectPhotoFile}.jpg`),
  );
  await writeFile(
    join(dir, "studio.md"),
    `---
studio: Alder Lane Rooms
language: en-US
units: inches
currency: USD
paper: tabloid
markup: { cloth: 2, making: 1.5 }
makers:
  bench: { name: Bench Street Workroom, makes: [curtains, cushion], lead: 4 weeks, rates: { curtains: ${RATES.bench.slice(1)} per width, cushion: 20 per item } }
  frame: { name: Frame and Daughter, makes: [armchair], rates: { armchair: ${REPLACED_RATE} per item } }
  hook: { name: Hook Fitting, makes: [fitting], rates: { fitting: ${RATES.hook.slice(1)} per hour } }
suppliers:
  hidden: { name: ${s.supplier}, disclose: no, account: ${s.account}, lead: 97 days, email: ${s.supplierMail}@mill.example }
  open: { name: ${DISCLOSED.name}, disclose: yes, account: ${DISCLOSED.account} }
  unsaid: { name: ${UNSAID} }
private: ${s.studioPrivate}
---
`,
  );
  const cloth = (name: string, more: string): string =>
    `---\ncloth: ${name}\nwidth: 54"\n${more}---\n`;
  await writeFile(
    join(dir, "cloths/sprig.md"),
    cloth(
      "Sprig",
      `photo: { file: ${s.photoFile}.jpg, shows: 9" }\nkind: small-print\nrepeat: { up: 2 5/8", across: 1 1/8", match: straight }\nsupplier: hidden\nreference: ${s.reference}\nprice: { trade: ${s.tradePrice}, per: yard }\nsample: { fee: ${s.samplePrice}, credited: no }\nprivate: ${s.clothPrivate}\n`,
    ),
  );
  await writeFile(
    join(dir, "cloths/plain.md"),
    cloth(
      "Plain",
      'kind: plain\ncolours:\n  - { colour: "#8a7a66" }\nsupplier: open\nprice: { trade: 10, per: yard }\n',
    ),
  );
  await writeFile(
    join(dir, "objects/view.md"),
    `---\nobject: The view\nshape: picture\nphoto: { file: ${s.objectPhotoFile}.jpg, shows: 24" }\nsize: 24" x 18"\nowner: client\nprivate: ${s.objectPrivate}\n---\n`,
  );
  const project = async (id: string, client: string, room: string, more: string): Promise<void> => {
    await mkdir(join(dir, "projects", id), { recursive: true });
    await writeFile(
      join(dir, "projects", id, "project.md"),
      `---\nproject: House of ${id}\nclient: { name: ${client}, address: ${m.clientAddress}${id}, email: ${m.clientMail}${id}@post.example, phone: ${m.clientPhone} }\ndelivery: The workroom door\nstatus: proposed\ndated: 2026-11-20\nfitting: 2027-09-13\nfees: { design: "${m.designFee}" }\nbudget: ${m.projectBudget}\napprovals: [{ revision: A, by: ${s.approver}, on: 2026-11-01, total: "${s.approvedTotal}" }]\npayments: [{ amount: "${s.payment}", on: 2026-11-02, what: ${s.paidFor} }]\nprivate: ${s.projectPrivate}\n---\n`,
    );
    await writeFile(
      join(dir, "projects", id, `${room}.md`),
      `---\nroom: ${room} ${id}\nheight: 8' 6"\nfloor: 14' x 12'\nanchor: view\nbudget: ${m.budget}\ncloths: [sprig, plain]\nprivate: ${s.roomPrivate}\naccept:\n  - { finding: no-photograph, of: [plain], because: ${s.waiver} }\nitems:\n  - object: view\n    at: { wall: south, from-left: 3', height: 50" }\n  - curtains: Bay ${id}\n    cloth: sprig\n    pole: 80"\n    drop: 80"\n    heading: pencil-pleat\n    maker: bench\n    private: ${s.itemPrivate}\n  - armchair: Carver ${id}\n    cloth: plain\n    size: 30" x 30" x 36"\n    pieces: [{ piece: seat, size: 22" x 22" }]\n    making: ${RATES.frame.slice(1)}\n    maker: frame\n${more}---\nThe words for ${client}.\n`,
    );
  };
  await project("quillon", "Ottoline Quillon", "den", "");
  await project("varley", "Barnaby Varley", "hall", "");
  return dir;
}

/** The packed streams of a PDF, unpacked; a stream that is not deflated is searched as its bytes are. */
function inflatedStreams(bytes: Buffer): string[] {
  const out: string[] = [];
  let from = bytes.indexOf("stream");
  while (from >= 0) {
    const start = bytes[from + 6] === 13 ? from + 8 : from + 7;
    const end = bytes.indexOf("endstream", start);
    if (end < 0) break;
    try {
      out.push(inflateSync(bytes.subarray(start, end)).toString("latin1"));
    } catch {
      // Not a deflated stream.
    }
    from = bytes.indexOf("stream", end + 9);
  }
  return out;
}

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

/** All that a file says to anyone who looks: bytes, inflated streams, text, metadata. */
async function said(path: string): Promise<string> {
  const bytes = await readFile(path);
  const parts = [bytes.toString("latin1"), bytes.toString("utf8")];
  if (path.endsWith(".pdf")) {
    parts.push(...inflatedStreams(bytes));
    const document = await getDocument({ data: new Uint8Array(bytes), verbosity: 0 }).promise;
    parts.push(JSON.stringify(await document.getMetadata()));
    for (let at = 1; at <= document.numPages; at++) {
      const text = await (await document.getPage(at)).getTextContent();
      parts.push(text.items.map((item) => ("str" in item ? item.str : "")).join(""));
    }
    await document.loadingTask.destroy();
  }
  if (path.endsWith(".jpg")) {
    const { exif, xmp, iptc, icc } = await sharp(path).metadata();
    parts.push(...[exif, xmp, iptc, icc].map((block) => block?.toString("latin1") ?? ""));
  }
  return parts.join("\n");
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
}, 180_000);

test("the search unpacks a deflated stream, with either line end", () => {
  for (const end of ["\n", "\r\n"]) {
    const file = Buffer.concat([
      Buffer.from(`%PDF-1.7\n1 0 obj\n<</Filter/FlateDecode>>\nstream${end}`),
      deflateSync("(Zwtinside) Tj"),
      Buffer.from("\nendstream\nendobj\n"),
    ]);
    expect(file.toString("latin1")).not.toContain("Zwtinside");
    expect(inflatedStreams(file).join("")).toContain("Zwtinside");
  }
});

test("the search finds what lies in a PDF's packed text and in a picture's metadata", async () => {
  const board = built.files.find((name) => name === "client/quillon/proposal.pdf") as string;
  expect((await said(join(built.out, board))).replace(/\s/g, "")).toContain("OttolineQuillon");
  expect(await said(join(content, `cloths/${STUDIO_ONLY.photoFile}.jpg`))).toContain(
    STUDIO_ONLY.camera,
  );
});
