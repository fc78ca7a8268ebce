import { existsSync } from "node:fs";
import { readFile } from "node:fs/promises";
import { dirname, join } from "node:path";
import { HtmlValidate } from "html-validate";
import { afterAll, beforeAll, expect, test } from "vitest";
import { contrastRatio } from "../../src/colour/contrast.ts";
import { type Built, buildStudio } from "./demo.ts";

let demo: Built;
const pages = new Map<string, string>();

beforeAll(async () => {
  demo = await buildStudio(undefined, ["--no-pdf"]);
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
    const report = await validator.validateString(html, name);
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
      if (target.startsWith("#")) continue;
      expect(target, name).not.toMatch(/^(?:[a-z]+:|\/)/);
      const path = join(dirname(name), target.split("#")[0] as string)
        .split("\\")
        .join("/");
      expect(existsSync(join(demo.out, path)), `${name} -> ${target}`).toBe(true);
      expect(path.startsWith(root), `${name} -> ${target}`).toBe(true);
    }
    expect(html, name).not.toMatch(/undefined|\[object Object\]|NaN/);
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

test("no page asks for a script, and every drawing has words for those who cannot see it", () => {
  for (const [name, html] of pages) {
    expect(html, name).not.toMatch(/<script/);
    for (const svg of html.matchAll(/<svg[^>]*role="img"[^>]*>/g))
      expect(svg[0], name).toMatch(/aria-labelledby=|aria-label=/);
  }
});
