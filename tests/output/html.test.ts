import { existsSync } from "node:fs";
import { readFile, stat } from "node:fs/promises";
import { dirname, join } from "node:path";
import { HtmlValidate } from "html-validate";
import { afterAll, beforeAll, expect, test } from "vitest";
import { contrastRatio } from "../../src/colour/contrast.ts";
import { type Built, buildStudio } from "./demo.ts";

let demo: Built;
const pages = new Map<string, string>();
/** Pictures and fonts that are written into a page are no part of its words and grammar. */
const bare = (html: string): string =>
  html.replace(/data:[a-z0-9/]+;base64,[A-Za-z0-9+/=]+/g, "data:,");

beforeAll(async () => {
  demo = await buildStudio();
  for (const name of demo.files.filter((file) => file.endsWith(".html")))
    pages.set(name, await readFile(join(demo.out, name), "utf8"));
});
afterAll(() => demo.remove());

test("every page is valid HTML", async () => {
  const validator = new HtmlValidate({
    extends: ["html-validate:standard"],
    rules: {
      // Places on a sheet are numbers of the view model; a style sheet cannot know them.
      "no-inline-style": "off",
      // White space and the order of attributes are no fault of a document.
      "no-trailing-whitespace": "off",
      "attr-quotes": "off",
      // A board's title is the second heading where a proposal holds several boards.
      "heading-level": "off",
      // Ids of drawings hold the names of items.
      "valid-id": "off",
      "long-title": "off",
      // Telephone numbers and sizes stand in running text.
      "tel-non-breaking": "off",
    },
  });
  const faults: string[] = [];
  for (const [name, html] of pages) {
    const report = await validator.validateString(bare(html), name);
    for (const result of report.results)
      for (const m of result.messages)
        if (m.severity === 2) faults.push(`${name}:${m.line} ${m.ruleId}: ${m.message}`);
  }
  expect([...new Set(faults.map((f) => f.replace(/^[^ ]+ /, "")))]).toEqual([]);
});

test("links and pictures lead to files of the same tree, and to nothing outside", () => {
  for (const [name, html] of pages) {
    const root = name.startsWith("studio/")
      ? ""
      : name
          .split("/")
          .slice(0, name.startsWith("makers/") ? 3 : 2)
          .join("/");
    for (const found of html.matchAll(/\b(?:href|src)="([^"]+)"/g)) {
      const target = found[1] as string;
      if (/^(?:#|data:(?:image\/jpeg|font\/woff2);base64,)/.test(target)) continue;
      expect(target, name).not.toMatch(/^(?:[a-z]+:|\/)/);
      const path = join(dirname(name), target.split("#")[0] as string)
        .split("\\")
        .join("/");
      expect(existsSync(join(demo.out, path)), `${name} -> ${target}`).toBe(true);
      expect(path.startsWith(root), `${name} -> ${target}`).toBe(true);
    }
    expect(bare(html), name).not.toMatch(/undefined|\[object Object\]|NaN/);
    expect(html, name).toMatch(/<html lang="en-US">/);
  }
});

test("the house's inks are legible on paper (WCAG 2.2, 1.4.3: 4.5 to 1)", async () => {
  const css = await readFile(join(demo.out, "studio/assets/house.css"), "utf8");
  for (const name of ["ink", "second", "accent"]) {
    const hex = new RegExp(`--${name}: (#[0-9a-f]{6})`).exec(css)?.[1];
    expect(contrastRatio(hex as string, "#ffffff"), name).toBeGreaterThanOrEqual(4.5);
  }
});

test("the only scripts are the house's own, and every drawing has words for those who cannot see it", async () => {
  const own = await readFile(join(demo.out, "client/gannet-house/assets/screen.js"), "utf8");
  const search = await readFile(join(demo.out, "studio/assets/search.js"), "utf8");
  for (const script of [own, search])
    expect(script).not.toMatch(/fetch|XMLHttpRequest|import\(|https?:/);
  for (const [name, html] of pages) {
    for (const [tag, , text] of html.matchAll(/<script([^>]*)>([\s\S]*?)<\/script>/g)) {
      // The studio's index has its entries with it, and what looks for them.
      if (name === "studio/index.html") {
        if (text?.trim()) expect(JSON.parse(text), name).toBeInstanceOf(Array);
        else expect(tag, name).toMatch(/ src="[./]*assets\/(?:minisearch|search)\.js"/);
      } else if (text?.trim()) expect(text.trim(), name).toBe(own.trim());
      else expect(tag, name).toMatch(/^<script src="[./]*assets\/screen\.js"><\/script>$/);
    }
    for (const svg of html.matchAll(/<svg[^>]*role="img"[^>]*>/g))
      expect(svg[0], name).toMatch(/aria-labelledby=|aria-label=/);
  }
});

test("the proposal to send is one file that asks for nothing, and is no heavier than a letter-box takes", async () => {
  const name = "client/gannet-house/proposal-to-send.html";
  const html = pages.get(name) as string;
  const outside = [...html.matchAll(/(?:\b(?:href|src)=|url\()"([^"]+)"/g)]
    .map((found) => found[1] as string)
    .filter((target) => !/^(?:#|data:)/.test(target));
  expect(outside).toEqual([]);
  // A letter carries an attachment as base64, a third more; most letter-boxes take 20 MB.
  expect((await stat(join(demo.out, name))).size * (4 / 3)).toBeLessThan(16e6);
  // Each picture is kept once, however often a drawing shows it.
  const kept = [...html.matchAll(/<image [^>]*href="(data:[^"]{200,})"/g)].map((m) => m[1]);
  expect(new Set(kept).size).toBe(kept.length);
  expect(kept.length).toBeGreaterThan(20);
  const words = (text: string): string =>
    text
      .replace(/<(style|script|nav)[\s\S]*?<\/\1>/g, "")
      .replace(/<[^>]+>/g, " ")
      .replace(/\s+/g, " ");
  const whole = pages.get("client/gannet-house/proposal.html") as string;
  expect(words(html)).toBe(words(whole));
});
