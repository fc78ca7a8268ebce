import { join } from "node:path";
import { afterAll, beforeAll, expect, test } from "vitest";
import type { BrowserSession } from "../../src/press/browserSession.ts";
import { type Built, buildStudio } from "./demo.ts";
import { openBrowser } from "./openBrowser.ts";
import { type WorstStudio, worstStudio } from "./worstStudio.ts";

// The sizes that words keep on a screen are the house's own rule: common practice, no source.

let demo: Built;
let worst: WorstStudio;
let hard: Built;
let session: BrowserSession;

beforeAll(async () => {
  demo = await buildStudio();
  worst = await worstStudio("a3", "centimetres");
  hard = await buildStudio(worst.content);
  session = await openBrowser();
});
afterAll(async () => {
  await session?.close();
  await demo?.remove();
  await hard?.remove();
  worst?.remove();
});

/** The one file has the proposal's own markup (html.test.ts), and is looked at in the soak. */
const PROPOSAL = process.env.SOAK
  ? /^client\/[^/]+\/proposal(-to-send)?\.html$/
  : /^client\/[^/]+\/proposal\.html$/;
const proposalsOf = (studio: Built): string[] =>
  studio.files.filter((f) => PROPOSAL.test(f)).map((f) => join(studio.out, f));

const sheetsOf = (studio: Built): string[] =>
  studio.files
    .filter((f) => /^client\/.*\/index\.html$/.test(f) && f.split("/").length > 3)
    .map((f) => join(studio.out, f));

/**
 * Runs in the page: the size of the smallest words as they are seen, in drawings too, outside and inside the windows that are moved
 * sideways; and words of different blocks that lie over each other.
 */
const WORDS = `(() => {
  const seen = [];
  const walk = document.createTreeWalker(document.querySelector("main"), NodeFilter.SHOW_TEXT);
  for (let node = walk.nextNode(); node; node = walk.nextNode()) {
    const parent = node.parentElement;
    if (!node.data.trim() || parent.closest("title, desc, .look, .close-up, .skip")) continue;
    // A table's head that is kept for those who hear the page takes no room.
    const head = parent.closest("thead");
    if (head && getComputedStyle(head).clipPath !== "none") continue;
    const range = document.createRange();
    range.selectNodeContents(node);
    const drawing = parent.closest("svg");
    if (drawing?.closest(".mix-picture")) continue;
    const grown = drawing ? Math.abs(parent.getScreenCTM().a) || Math.abs(parent.getScreenCTM().b) : 1;
    const size = parseFloat(getComputedStyle(parent).fontSize) * grown;
    for (const rect of range.getClientRects())
      if (rect.width > 0) seen.push({ block: parent.closest(".at, text, p, dd, li, h2, h3") ?? parent, pan: parent.closest(".pan"), rect, words: node.data.trim().slice(0, 30), size });
  }
  const over = [];
  seen.forEach((a, at) => {
    for (const b of seen.slice(at + 1)) {
      if (a.block === b.block || a.pan !== b.pan) continue;
      const wide = Math.min(a.rect.right, b.rect.right) - Math.max(a.rect.left, b.rect.left);
      const high = Math.min(a.rect.bottom, b.rect.bottom) - Math.max(a.rect.top, b.rect.top);
      if (wide > 2 && high > Math.min(a.rect.height, b.rect.height) / 3) over.push(a.words + " / " + b.words);
    }
  });
  const least = (some) => Math.min(99, ...some.map((s) => s.size));
  return [least(seen.filter((s) => !s.pan)), least(seen.filter((s) => s.pan)), over];
})()`;

test("no words are under 12 px on any screen, nor under 14 px on a telephone but in a drawing; none lie over each other", async () => {
  const page = await session.browser.newPage();
  const faults: string[] = [];
  for (const file of [...sheetsOf(demo), ...sheetsOf(hard)]) {
    await page.goto(`file://${file}`);
    await page.evaluate("document.fonts.ready.then(() => true)");
    for (const width of [360, 430, 820, 1024, 1240, 1366, 1440, 1580]) {
      await page.setViewport({ width, height: 900 });
      const [words, drawn, over] = (await page.evaluate(WORDS)) as [number, number, string[]];
      const where = `${file.split("/").slice(-2)[0]} at ${width}`;
      if (words < (width < 800 ? 14 : 11.99)) faults.push(`${where}: words of ${words} px`);
      if (drawn < 11.99) faults.push(`${where}: ${drawn} px in a drawing`);
      for (const pair of over) faults.push(`${where}: ${pair}`);
    }
  }
  await page.close();
  expect(faults).toEqual([]);
});

/**
 * Runs in the page, in a window in which the part is whole: words that something else is drawn over, outside the drawings that are moved sideways
 * and heads that are kept for those who hear the page.
 */
const hiddenIn = (part: string) => `(() => {
  const hidden = [];
  const walk = document.createTreeWalker(document.querySelector("${part}"), NodeFilter.SHOW_TEXT);
  for (let node = walk.nextNode(); node; node = walk.nextNode()) {
    const parent = node.parentElement;
    if (!node.data.trim() || parent.closest("svg, .pan, .wide, .look, .close-up, .skip, .budget-table thead")) continue;
    const range = document.createRange();
    range.selectNodeContents(node);
    for (const { left, top, width, height } of range.getClientRects()) {
      if (width === 0) continue;
      const hit = document.elementFromPoint(left + width / 2, top + height / 2);
      if (!hit || !(hit.contains(parent) || parent.contains(hit))) hidden.push(node.data.trim().slice(0, 40) + " under " + (hit?.tagName ?? "nothing"));
    }
  }
  return hidden;
})()`;

test("no words stand under a picture, of a proposal on a telephone and of its cover on any screen; the cover begins with the cloth and names the project", async () => {
  const page = await session.browser.newPage();
  const faults: string[] = [];
  for (const file of [...proposalsOf(demo), ...proposalsOf(hard)]) {
    await page.goto(`file://${file}`);
    await page.evaluate("document.fonts.ready.then(() => true)");
    for (const width of [360, 820, 1366, 1580]) {
      await page.setViewport({ width, height: 1200 });
      if (width < 800) {
        const height = (await page.evaluate("document.documentElement.scrollHeight")) as number;
        await page.setViewport({ width, height });
      }
      for (const words of (await page.evaluate(
        hiddenIn(width < 800 ? "main" : ".cover"),
      )) as string[])
        faults.push(`${file.split("/").slice(-2).join("/")} at ${width}: ${words}`);
    }
    await page.setViewport({ width: 360, height: 900 });
    const [cloth, title] = (await page.evaluate(
      `[".cover-picture", ".cover h1"].map((s) => document.querySelector(s).getBoundingClientRect()).map(({ left, right, top, bottom }) => ({ left, right, top, bottom }))`,
    )) as { left: number; right: number; top: number; bottom: number }[];
    expect(cloth?.left, file).toBeLessThanOrEqual(0.5);
    expect(cloth?.right, file).toBeGreaterThanOrEqual(359.5);
    expect(title?.top, file).toBeGreaterThan(100);
    expect(title?.bottom, file).toBeLessThan(700);
  }
  await page.close();
  expect(faults).toEqual([]);
});

test("on a telephone a drawing is seen whole, then in a window with a name that keys reach and move, and nothing of it is cut off", async () => {
  const page = await session.browser.newPage();
  await page.setViewport({ width: 360, height: 740 });
  for (const file of [...sheetsOf(demo), ...sheetsOf(hard)]) {
    await page.goto(`file://${file}`);
    await page.evaluate("document.fonts.ready.then(() => true)");
    const faults = (await page.evaluate(`(() => {
      const faults = [];
      const pans = [...document.querySelectorAll(".pan")];
      if (pans.length < 2) faults.push("only " + pans.length + " drawings");
      for (const pan of pans) {
        const name = pan.getAttribute("aria-label");
        if (pan.getAttribute("role") !== "region" || pan.tabIndex !== 0 || !name) faults.push(name + " is not reached");
        if (getComputedStyle(pan).overflowX !== "auto") faults.push(name + " does not move");
        if (pan.getBoundingClientRect().right > innerWidth + 0.5) faults.push(name + " leaves the window");
        const all = pan.querySelector(".pan-sheet").getBoundingClientRect();
        for (const words of pan.querySelectorAll(".at > *, svg text")) {
          const box = words.getBoundingClientRect();
          if (box.width > 0 && (box.left < all.left - 1 || box.right > all.right + 1 || box.top < all.top - 1 || box.bottom > all.bottom + 1))
            faults.push(name + " cuts off: " + words.textContent.slice(0, 40));
        }
      }
      for (const whole of document.querySelectorAll(".glance")) {
        const box = whole.getBoundingClientRect();
        if (box.height < 60 || box.right > innerWidth + 0.5) faults.push("a glance of " + box.width + " x " + box.height);
      }
      return faults;
    })()`)) as string[];
    expect(faults, file).toEqual([]);
  }
  await page.goto(`file://${sheetsOf(demo)[0]}`);
  await page.evaluate("document.fonts.ready.then(() => true)");
  await page.focus(".pan");
  // A browser passes over keys until a page is drawn for the first time.
  await page.evaluate(
    "new Promise((drawn) => requestAnimationFrame(() => requestAnimationFrame(drawn)))",
  );
  await page.keyboard.press("ArrowRight");
  await page.waitForFunction("document.querySelector('.pan').scrollLeft > 0");
  await page.close();
});

test("the studio's own pages are read on a telephone without moving them sideways, and no words lie over each other", async () => {
  const page = await session.browser.newPage();
  await page.setViewport({ width: 360, height: 740 });
  for (const studio of [demo, hard])
    for (const name of studio.files.filter((f) => /^studio\/.*findings\.html$/.test(f))) {
      await page.goto(`file://${join(studio.out, name)}`);
      await page.evaluate("document.fonts.ready.then(() => true)");
      const [words, , over] = (await page.evaluate(WORDS)) as [number, number, string[]];
      const wide = await page.evaluate("document.querySelector('main').scrollWidth");
      expect(over, name).toEqual([]);
      expect(words, name).toBeGreaterThanOrEqual(11.99);
      expect(wide, name).toBeLessThanOrEqual(360);
    }
  await page.close();
});

test("the drawings of a maker's sheet keep their size on a telephone, and are moved by themselves", async () => {
  const page = await session.browser.newPage();
  await page.setViewport({ width: 390, height: 844 });
  await page.goto(`file://${join(demo.out, "makers/tidewell/gannet-house/dining-room.html")}`);
  await page.evaluate("document.fonts.ready.then(() => true)");
  const [smallest, stuck, wide] = (await page.evaluate(`(() => {
    const sizes = [...document.querySelectorAll("svg text")].map((t) => {
      const m = t.getScreenCTM();
      return parseFloat(getComputedStyle(t).fontSize) * Math.hypot(m.a, m.b);
    });
    const stuck = [...document.querySelectorAll(".wide")].filter((w) => w.scrollWidth > w.clientWidth + 1 && (getComputedStyle(w).overflowX !== "auto" || w.tabIndex !== 0 || !w.getAttribute("aria-label"))).length;
    return [Math.min(...sizes), stuck, document.querySelector("main").scrollWidth];
  })()`)) as [number, number, number];
  await page.close();
  expect(smallest).toBeGreaterThanOrEqual(12);
  expect(stuck).toBe(0);
  expect(wide).toBeLessThanOrEqual(390);
});
