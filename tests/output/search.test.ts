import { join } from "node:path";
import type { Page } from "puppeteer-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import type { BrowserSession } from "../../src/press/browserSession.ts";
import { type Built, buildStudio } from "./demo.ts";
import { openBrowser } from "./openBrowser.ts";

// The search of the studio's index, opened from a folder as she opens it; the demo's own scenario.

let demo: Built;
let session: BrowserSession;
let page: Page;
const faults: string[] = [];

beforeAll(async () => {
  demo = await buildStudio();
  session = await openBrowser();
  page = (await session.browser.newPage()) as unknown as Page;
  page.on("pageerror", (error) => faults.push(String(error)));
  await page.goto(`file://${join(demo.out, "studio/index.html")}`);
});
afterAll(async () => {
  await session?.close();
  await demo?.remove();
});

async function look(words: string): Promise<{ told: string; found: string[]; hrefs: string[] }> {
  await page.$eval("#asked", (input) => {
    (input as HTMLInputElement).value = "";
  });
  await page.type("#asked", words);
  return {
    told: await page.$eval(".search output", (p) => p.textContent ?? ""),
    found: await page.$$eval(".found a", (links) => links.map((link) => link.textContent ?? "")),
    hrefs: await page.$$eval(".found a", (links) =>
      links.map((link) => (link as HTMLAnchorElement).href),
    ),
  };
}

test.each([
  ["vestry", "Vestry"],
  // The supplier's own number, a maker with a kind of item, an accent left out, a letter too few.
  ["GP-1180", "Pomander"],
  ["tidewell drapery", "Drapery: Garden window"],
  ["quennel", "Gannet House and the flat"],
  ["guest bedroom", "Guest bedroom"],
])("%s is found: %s", async (words, wanted) => {
  const { told, found } = await look(words);
  expect(found).toContain(wanted);
  expect(told).toContain(" found");
});

test("a cloth of two projects is found in both, and every answer leads to a page that is there", async () => {
  const { hrefs } = await look("vestry");
  const pages = hrefs.map((href) => href.split(`${demo.out}/`)[1]);
  for (const each of pages) expect(demo.files).toContain(each);
  expect(pages.some((each) => each?.includes("gannet-house"))).toBe(true);
  expect(pages.some((each) => each?.includes("ropewalk-house"))).toBe(true);
});

test("what is not there is said so, and nothing asked shows nothing", async () => {
  expect(await look("zzzz")).toMatchObject({ told: "Nothing is found.", found: [] });
  expect(await look(" ")).toMatchObject({ told: "", found: [] });
  expect(faults).toEqual([]);
});

test("the index to search is in the studio's tree alone", () => {
  expect(demo.files).toContain("studio/assets/minisearch.js");
  const elsewhere = demo.files.filter(
    (name) => /minisearch/.test(name) && !name.startsWith("studio/"),
  );
  expect(elsewhere).toEqual([]);
});
