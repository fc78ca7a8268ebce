import { cpSync, readdirSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, test } from "vitest";
import type { PrintJob } from "../../src/press/print.ts";
import { BODY, job, page, pressForTests } from "./pressForTests.ts";

const press = pressForTests();
const { put, run, bytes, open } = press;

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
  const old = press.root;
  press.root = join(press.base, "elsewhere");
  cpSync(old, press.root, { recursive: true });
  rmSync(join(press.root, "quay/a.pdf"));
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
  const outside = join(press.base, "secret.svg");
  writeFileSync(outside, "<svg xmlns='http://www.w3.org/2000/svg'/>");
  symlinkSync(outside, join(press.root, "assets/link.svg"));
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
  expect(readdirSync(join(press.root, "quay")).filter((name) => !name.endsWith(".html"))).toEqual([
    "good.pdf",
  ]);
});

test("a PDF is taken from the cache until anything that it shows, or says, changes", async () => {
  const cache = press.cache();
  put("assets/mark.svg", "<svg xmlns='http://www.w3.org/2000/svg' width='10' height='10'/>");
  put("quay/a.html", page(`<img src="../assets/mark.svg" alt=""><p>one</p>`));
  const again = async (more: Partial<PrintJob> = {}) => {
    const { value } = await run([job("a", more)], { cache });
    return value?.printed[0]?.fromCache;
  };
  expect(await again()).toBe(false);
  const first = bytes();
  rmSync(join(press.root, "quay/a.pdf"));
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
  const cache = press.cache();
  put("quay/a.html", page("<p>one</p>"));
  await run([job("a")], { cache });
  const gone = { ...press.browser, program: "/nowhere/browser" };
  put("quay/b.html", page("<p>two</p>"));
  expect((await run([job("a")], { cache, browser: gone })).value?.printed).toHaveLength(1);
  const without = await run([job("a"), job("b")], { browser: gone });
  expect(without.diagnostics.map((one) => [one.code, one.file])).toEqual([
    ["browser-start", "quay/a.html"],
  ]);
});
