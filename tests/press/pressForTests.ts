import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { getDocument } from "pdfjs-dist/legacy/build/pdf.mjs";
import { afterAll, beforeAll, beforeEach } from "vitest";
import { type FoundBrowser, findBrowser } from "../../src/press/findBrowser.ts";
import { type PrintJob, type PrintOptions, printPages } from "../../src/press/print.ts";

const LIMIT = 60_000;
const require = createRequire(import.meta.url);
const FONT = require.resolve("@fontsource/eb-garamond/files/eb-garamond-latin-400-normal.woff2");

const STYLE = `@page{size:17in 11in;margin:0.5in}@font-face{font-family:G;src:url(../assets/garamond.woff2)}
@page card{size:210mm 297mm;margin:10mm}body{font-family:G}.card{page:card;break-before:page}`;

export function page(body: string, style = STYLE): string {
  return `<!doctype html><html lang="en-US"><head><meta charset="utf-8"><title>T</title><style>${style}</style></head><body>${body}</body></html>`;
}

export const BODY = `<h1>Dining room 8½</h1><p>Beside <a href="../quay/b.html#top">the other</a> and
<a href="https://example.org/x">a page</a> and <a href="#two">below</a>.</p>
<table><tr><th scope="col">Cloth</th><th scope="col">Yards</th></tr><tr><th scope="row">Fern</th><td>4</td></tr></table><h2 id="two" class="card">Card</h2>`;

export function job(name: string, more: Partial<PrintJob> = {}): PrintJob {
  return {
    html: `quay/${name}.html`,
    pdf: `quay/${name}.pdf`,
    title: "Dining room – board",
    language: "en-US",
    instant: "2026-10-02",
    ...more,
  };
}

/** A press for the tests of a file, in a folder of its own for each of them. */
export function pressForTests() {
  let count = 0;
  let browser: FoundBrowser;
  const press = {
    base: mkdtempSync(join(tmpdir(), "roomcloth-print-")),
    root: "",
    get browser() {
      return browser;
    },
    cache: () => join(press.root, "..", `cache ${count}`),
    put(path: string, content: string | Buffer): void {
      const target = join(press.root, path);
      mkdirSync(dirname(target), { recursive: true });
      writeFileSync(target, content);
    },
    run: (jobs: readonly PrintJob[], more: Partial<PrintOptions> = {}) =>
      printPages(jobs, { root: press.root, browser, timeoutMs: LIMIT, ...more }),
    bytes: (name = "a"): Buffer => readFileSync(join(press.root, `quay/${name}.pdf`)),
    open: (name = "a") =>
      getDocument({ data: new Uint8Array(press.bytes(name)), verbosity: 0 }).promise,
  };
  beforeAll(async () => {
    const found = await findBrowser();
    if (found.value === null) throw new Error(found.diagnostics[0]?.hint ?? "no browser");
    browser = found.value;
  });
  beforeEach(() => {
    count += 1;
    press.root = join(press.base, `root ${count} ½`);
    press.put("assets/garamond.woff2", readFileSync(FONT));
  });
  afterAll(() => rmSync(press.base, { recursive: true, force: true }));
  return press;
}
