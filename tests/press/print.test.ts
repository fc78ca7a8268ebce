import { spawnSync } from "node:child_process";
import {
  cpSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from "node:fs";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { getDocument } from "pdfjs-dist/legacy/build/pdf.mjs";
import { afterAll, beforeAll, beforeEach, expect, test } from "vitest";
import { type FoundBrowser, findBrowser } from "../../src/press/findBrowser.ts";
import { type PrintJob, type PrintOptions, printPages } from "../../src/press/print.ts";

const LIMIT = 60_000;
const require = createRequire(import.meta.url);
const FONT = require.resolve("@fontsource/eb-garamond/files/eb-garamond-latin-400-normal.woff2");
const base = mkdtempSync(join(tmpdir(), "roomcloth-print-"));
let browser: FoundBrowser;
let root = "";
let count = 0;

beforeAll(async () => {
  const found = await findBrowser();
  if (found.value === null) throw new Error(found.diagnostics[0]?.hint ?? "no browser");
  browser = found.value;
});
beforeEach(() => {
  count += 1;
  root = join(base, `root ${count} ½`);
  put("assets/garamond.woff2", readFileSync(FONT));
});
afterAll(() => rmSync(base, { recursive: true, force: true }));

function put(path: string, content: string | Buffer): void {
  const target = join(root, path);
  mkdirSync(dirname(target), { recursive: true });
  writeFileSync(target, content);
}

const STYLE = `@page{size:17in 11in;margin:0.5in}@font-face{font-family:G;src:url(../assets/garamond.woff2)}
@page card{size:210mm 297mm;margin:10mm}body{font-family:G}.card{page:card;break-before:page}`;

function page(body: string, style = STYLE): string {
  return `<!doctype html><html lang="en-US"><head><meta charset="utf-8"><title>T</title><style>${style}</style></head><body>${body}</body></html>`;
}

const BODY = `<h1>Dining room 8½</h1><p>Beside <a href="../quay/b.html#top">the other</a> and
<a href="https://example.org/x">a page</a> and <a href="#two">below</a>.</p>
<table><tr><th scope="col">Cloth</th><th scope="col">Yards</th></tr><tr><th scope="row">Fern</th><td>4</td></tr></table><h2 id="two" class="card">Card</h2>`;

function job(name: string, more: Partial<PrintJob> = {}): PrintJob {
  return {
    html: `quay/${name}.html`,
    pdf: `quay/${name}.pdf`,
    title: "Dining room – board",
    language: "en-US",
    instant: "2026-10-02",
    ...more,
  };
}

const run = (jobs: readonly PrintJob[], more: Partial<PrintOptions> = {}) =>
  printPages(jobs, { root, browser, timeoutMs: LIMIT, ...more });
const bytes = (name = "a"): Buffer => readFileSync(join(root, `quay/${name}.pdf`));
const open = (name = "a") =>
  getDocument({ data: new Uint8Array(bytes(name)), verbosity: 0 }).promise;

test("prints exact sheets, tagged, with outline, title, language and date", async () => {
  put("quay/a.html", page(BODY));
  const result = await run([job("a")]);
  expect(result.diagnostics).toEqual([]);
  const pdf = await open();
  expect(pdf.numPages).toBe(2);
  // Chromium rounds a sheet to 1/300 inch; half a point is the allowance of the house.
  const sheets = [
    [1224, 792],
    [595.28, 841.89],
  ];
  for (const [at, [width, height]] of sheets.entries()) {
    const [, , w, h] = (await pdf.getPage(at + 1)).view;
    expect(Math.abs((w ?? 0) - (width ?? 0))).toBeLessThan(0.5);
    expect(Math.abs((h ?? 0) - (height ?? 0))).toBeLessThan(0.5);
  }
  const { info, metadata } = await pdf.getMetadata();
  expect(info).toMatchObject({
    Title: "Dining room – board",
    Language: "en-US",
    CreationDate: "D:20261002000000+00'00'",
    ModDate: "D:20261002000000+00'00'",
    Creator: "roomcloth",
    Producer: "roomcloth",
  });
  expect(metadata?.get("dc:title")).toBe("Dining room – board");
  expect((await pdf.getMarkInfo())?.Marked).toBe(true);
  expect((await pdf.getOutline()).map((one) => one.title)).toEqual(["Dining room 8½"]);
  const tree = JSON.stringify(await (await pdf.getPage(1)).getStructTree());
  for (const role of ["H1", "P", "Link", "Table", "TH"]) expect(tree).toContain(`"role":"${role}"`);
});

test("links to our documents are relative, others stay, and no folder's name is inside", async () => {
  put("quay/a.html", page(BODY));
  await run([job("a")]);
  const links = (await (await (await open()).getPage(1)).getAnnotations())
    .filter((one) => one.subtype === "Link")
    .map((one) => one.unsafeUrl ?? (one.dest ? "inside" : "?"));
  expect(links).toEqual(["b.html#top", "https://example.org/x", "inside"]);
  const text = bytes().toString("latin1");
  for (const word of [
    tmpdir(),
    "root",
    "roomcloth.invalid",
    "Skia",
    "Chromium",
    "HeadlessChrome",
  ]) {
    expect(text).not.toContain(word);
  }
});

test("two prints from two folders by two browsers are the same bytes", async () => {
  put("quay/a.html", page(BODY));
  await run([job("a")]);
  const first = bytes();
  const old = root;
  root = join(base, "elsewhere");
  cpSync(old, root, { recursive: true });
  rmSync(join(root, "quay/a.pdf"));
  await run([job("a")]);
  expect(bytes().equals(first)).toBe(true);
  await run([job("a", { instant: null })]);
  expect((await (await open()).getMetadata()).info).not.toHaveProperty("CreationDate");
});

test("scripts do not run", async () => {
  put("quay/a.html", page(`<p>kept</p><script>document.body.textContent = "lost"</script>`));
  await run([job("a")]);
  const text = await (await (await open()).getPage(1)).getTextContent();
  expect(JSON.stringify(text.items)).toContain("kept");
});

test("a page may only use files of the output: each breach is named, and other pages are printed", async () => {
  const outside = join(base, "secret.svg");
  writeFileSync(outside, "<svg xmlns='http://www.w3.org/2000/svg'/>");
  symlinkSync(outside, join(root, "assets/link.svg"));
  put("quay/net.html", page(`<img src="https://example.org/a.jpg" alt="">`));
  put("quay/file.html", page(`<img src="file://${outside}" alt="">`));
  put("quay/link.html", page(`<img src="../assets/link.svg" alt="">`));
  put("quay/up.html", page(`<img src="../..%2fsecret.svg" alt="">`));
  put("quay/lost.html", page(`<img src="lost.jpg" alt="">`));
  put(
    "quay/font.html",
    page("<p>x</p>", "@font-face{font-family:Q;src:url(lost.woff2)}p{font-family:Q}"),
  );
  put(
    "quay/broken.html",
    page("<p>x</p>", "@font-face{font-family:Q;src:url(../assets/bad.woff2)}p{font-family:Q}"),
  );
  put("assets/bad.woff2", "no font");
  put("quay/away.html", page(`<meta http-equiv="refresh" content="0;url=https://example.org/">`));
  put("quay/good.html", page("<p>fine</p>"));
  const names = ["net", "file", "link", "up", "lost", "font", "broken", "away", "good"];
  const result = await run(names.map((name) => job(name)));
  const faulty = new Map<string, string>();
  for (const one of result.diagnostics) {
    faulty.set(one.file, `${faulty.get(one.file) ?? ""} ${one.message}`);
  }
  expect([...faulty.keys()].sort()).toEqual(
    names
      .slice(0, -1)
      .map((name) => `quay/${name}.html`)
      .sort(),
  );
  expect(faulty.get("quay/net.html")).toContain("https://example.org/a.jpg");
  expect(faulty.get("quay/link.html")).toContain("assets/link.svg");
  expect(faulty.get("quay/lost.html")).toContain("quay/lost.jpg");
  expect(faulty.get("quay/font.html")).toContain("quay/lost.woff2");
  expect(faulty.get("quay/broken.html")).toContain("The font Q");
  expect(result.value?.printed.map((one) => one.pdf)).toEqual(["quay/good.pdf"]);
  expect(readdirSync(join(root, "quay")).filter((name) => !name.endsWith(".html"))).toEqual([
    "good.pdf",
  ]);
});

test("a PDF is taken from the cache until anything that it shows, or says, changes", async () => {
  const cache = join(root, "..", `cache ${count}`);
  put("assets/mark.svg", "<svg xmlns='http://www.w3.org/2000/svg' width='10' height='10'/>");
  put("quay/a.html", page(`<img src="../assets/mark.svg" alt=""><p>one</p>`));
  const again = async (more: Partial<PrintJob> = {}) => {
    const { value } = await run([job("a", more)], { cache });
    return value?.printed[0]?.fromCache;
  };
  expect(await again()).toBe(false);
  const first = bytes();
  rmSync(join(root, "quay/a.pdf"));
  expect(await again()).toBe(true);
  expect(bytes().equals(first)).toBe(true);
  put("assets/mark.svg", "<svg xmlns='http://www.w3.org/2000/svg' width='11' height='10'/>");
  expect(await again()).toBe(false);
  expect(await again()).toBe(true);
  expect(await again({ title: "Another" })).toBe(false);
  put("quay/a.html", page(`<img src="../assets/mark.svg" alt=""><p>two</p>`));
  expect(await again()).toBe(false);
  for (const entry of readdirSync(cache, { recursive: true, withFileTypes: true })) {
    if (entry.isFile()) writeFileSync(join(entry.parentPath, entry.name), "damaged");
  }
  expect(await again()).toBe(false);
});

test("an unchanged studio needs no browser at all", async () => {
  const cache = join(root, "..", `cache ${count}`);
  put("quay/a.html", page("<p>one</p>"));
  await run([job("a")], { cache });
  const gone = { ...browser, program: "/nowhere/browser" };
  put("quay/b.html", page("<p>two</p>"));
  expect((await run([job("a")], { cache, browser: gone })).value?.printed).toHaveLength(1);
  const without = await run([job("a"), job("b")], { browser: gone });
  expect(without.diagnostics.map((one) => [one.code, one.file])).toEqual([
    ["browser-start", "quay/a.html"],
  ]);
});

test("side by side pages come out as one after another, and are told in the order in which they were asked for", async () => {
  const names = ["a", "b", "c", "d", "e"];
  for (const [at, name] of names.entries()) put(`quay/${name}.html`, page(BODY.repeat(5 - at)));
  const jobs = names.map((name) => job(name));
  const alone = await run(jobs, { atOnce: 1 });
  const one = names.map((name) => bytes(name));
  const together = await run(jobs, { atOnce: 2 });
  expect(together).toEqual(alone);
  expect(together.value?.printed.map(({ pdf }) => pdf)).toEqual(jobs.map(({ pdf }) => pdf));
  for (const [at, name] of names.entries())
    expect(bytes(name).equals(one[at] as Buffer), name).toBe(true);
});

test.skipIf(process.platform === "win32")(
  "where a second browser does not start, the first prints all",
  async () => {
    const names = ["a", "b", "c"];
    for (const name of names) put(`quay/${name}.html`, page(`<p>${name}</p>`));
    // A program that starts the browser once, and never again.
    const once = join(root, "once.sh");
    writeFileSync(
      once,
      `#!/bin/sh\nmkdir "${join(root, "begun")}" 2>/dev/null || exit 1\nexec "${browser.program}" "$@"\n`,
      { mode: 0o755 },
    );
    const result = await run(
      names.map((name) => job(name)),
      { atOnce: 2, browser: { ...browser, program: once } },
    );
    expect(result.diagnostics).toEqual([]);
    expect(result.value?.printed.map(({ pdf }) => pdf)).toEqual(
      names.map((name) => `quay/${name}.pdf`),
    );
  },
);

test("a page that takes too long is reported by name, and the next is printed", async () => {
  // Noise over many sheets, which is reckoned only when they are printed, keeps the renderer busy for longer than any limit.
  const noise = `<svg width="0" height="0"><filter id="f"><feTurbulence baseFrequency="0.05" numOctaves="400"/></filter></svg>`;
  const sheet = `<div style="width:700px;height:900px;filter:url(#f);background:#888"></div>`;
  put("quay/slow.html", page(noise + sheet.repeat(300)));
  put("quay/fast.html", page("<p>x</p>"));
  const result = await run([job("slow"), job("fast")], { timeoutMs: 4_000, atOnce: 1 });
  expect(result.diagnostics.map((one) => [one.code, one.file])).toEqual([
    ["print-timeout", "quay/slow.html"],
  ]);
  expect(result.value?.printed.map((one) => one.pdf)).toEqual(["quay/fast.pdf"]);
});

test.skipIf(process.platform !== "linux")(
  "a browser that dies is replaced once, and nothing is left running",
  async () => {
    put("quay/a.html", page("<p>x</p>"));
    put("quay/b.html", page("<p>y</p>"));
    let killed = 0;
    const result = await run([job("a"), job("b")], {
      atOnce: 1,
      onProgress: (done) => {
        // Before the second page: end our own browser under the press.
        if (done === 1) {
          for (const pid of ourBrowsers()) {
            process.kill(pid, "SIGKILL");
            killed += 1;
          }
        }
      },
    });
    expect(killed).toBeGreaterThan(0);
    expect(result.diagnostics).toEqual([]);
    expect(result.value?.printed).toHaveLength(2);
    expect(ourBrowsers()).toEqual([]);
    expect(
      readdirSync(tmpdir()).filter(
        (name) => name.startsWith("roomcloth-profile-") && ours.has(name),
      ),
    ).toEqual([]);
  },
);

const ours = new Set<string>();
/** Browsers that are children of this very process. */
function ourBrowsers(): number[] {
  const list = spawnSync("ps", ["-eo", "pid=,ppid=,stat=,args="], { encoding: "utf8" }).stdout;
  return list.split("\n").flatMap((line) => {
    const [, pid, parent, state, args] = /^\s*(\d+)\s+(\d+)\s+(\S+)\s+(.*)$/.exec(line) ?? [];
    if (
      Number(parent) !== process.pid ||
      state?.startsWith("Z") ||
      !args?.includes("roomcloth-profile-")
    )
      return [];
    const profile = /roomcloth-profile-\w+/.exec(args)?.[0];
    if (profile) ours.add(profile);
    return [Number(pid)];
  });
}
