import type { Browser, HTTPRequest } from "puppeteer";
import { addressOf, OUTPUT_ORIGIN, pathOf, serveFile } from "./outputOrigin.ts";

/** A page as the browser printed it, or what was wrong with it. */
export interface PrintedPage {
  readonly bytes: Uint8Array;
  /** Hash of each file that it loaded, by path below the output root (the page itself too). */
  readonly loaded: ReadonlyMap<string, string>;
  /** Plain sentences, empty where all is well. Then the bytes are of no use. */
  readonly faults: readonly string[];
}

/** A tab that prints one page after another. */
export interface PrintTab {
  /** Prints the page at a path below the root. Rejects where the browser dies or the time limit passes. */
  print(path: string): Promise<PrintedPage>;
}

interface Job {
  readonly loaded: Map<string, string>;
  readonly faults: Set<string>;
}

const newJob = (): Job => ({ loaded: new Map(), faults: new Set() });

/**
 * Opens a tab that prints pages below `root` (a real path), with scripts off, as they are on paper from the start. Every request is
 * answered from `root`; a file that is missing, any other address, a font or a picture that did not load is a fault of the page. One
 * tab for all pages: a new one for each took a fifth of the time.
 */
export async function openTab(
  browser: Browser,
  root: string,
  timeoutMs: number,
): Promise<PrintTab> {
  const page = await browser.newPage();
  page.setDefaultTimeout(timeoutMs);
  await page.setJavaScriptEnabled(false);
  await page.emulateMediaType("print");
  await page.setRequestInterception(true);
  let job = newJob();
  page.on("request", (request) => {
    answer(request, root, job).catch(() => {
      // The tab was closed under the request; the printing itself reports that.
    });
  });
  return {
    async print(path) {
      job = newJob();
      const { loaded, faults } = job;
      await page.goto(addressOf(path), { waitUntil: "load", timeout: timeoutMs });
      // Taken as text: the function runs in the page, where the compiler's helpers do not exist.
      for (const fault of (await page.evaluate(PAGE_FAULTS)) as string[]) faults.add(fault);
      const bytes =
        faults.size > 0
          ? new Uint8Array()
          : await page.pdf({
              preferCSSPageSize: true,
              printBackground: true,
              tagged: true,
              outline: true,
              timeout: timeoutMs,
            });
      return { bytes, loaded, faults: [...faults].sort() };
    },
  };
}

/**
 * Running words at a page's head and foot are set only when the page is printed, too late to ask for a face that nothing else on the
 * page needs: such faces are loaded first.
 */
const RUNNING_FACES = `(() => {
  const words = [...document.querySelectorAll("style")].map((style) => style.textContent).join("");
  const letters = [...new Set(words)].map((letter) => letter.codePointAt(0)).filter((n) => n > 127);
  const has = (range) => {
    const [from, to] = range.trim().slice(2).split("-").map((n) => parseInt(n, 16));
    return letters.some((n) => n >= from && n <= (to ?? from));
  };
  const wanted = [...document.fonts].filter((font) => font.unicodeRange.split(",").some(has));
  return Promise.allSettled(wanted.map((font) => font.load()));
})()`;

const PAGE_FAULTS = `${RUNNING_FACES}.then(() => document.fonts.ready).then(() => [
  ...[...document.fonts]
    .filter((font) => font.status === "error")
    .map((font) => "The font " + font.family + " (" + font.weight + " " + font.style + ") did not load."),
  ...[...document.images]
    .filter((image) => image.complete && image.naturalWidth === 0)
    .map((image) => "The picture " + image.getAttribute("src") + " cannot be shown."),
])`;

async function answer(request: HTTPRequest, root: string, { loaded, faults }: Job): Promise<void> {
  const address = request.url();
  // Data written into the page itself never leaves it.
  if (address.startsWith("data:")) return request.continue();
  const path = request.method() === "GET" ? pathOf(address) : null;
  if (path === null) {
    faults.add(
      address.startsWith(`${OUTPUT_ORIGIN}/`)
        ? `It asks for ${address.slice(OUTPUT_ORIGIN.length + 1)}, which lies outside the output.`
        : `It asks for ${address}, and pages may only use files of the output folder.`,
    );
    return request.abort("blockedbyclient");
  }
  const file = await serveFile(root, path);
  if (file === null) {
    faults.add(`The file ${path} that it shows is missing.`);
    return request.respond({ status: 404, contentType: "text/plain", body: "" });
  }
  loaded.set(path, file.sha256);
  return request.respond({
    status: 200,
    contentType: file.contentType,
    // Fonts are only taken from another origin with leave; sandboxed frames have none of ours.
    headers: { "access-control-allow-origin": "*" },
    body: file.body,
  });
}
