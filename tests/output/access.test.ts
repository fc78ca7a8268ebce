import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { join } from "node:path";
import { afterAll, beforeAll, expect, test } from "vitest";
import { type BrowserSession, openSession } from "../../src/press/browserSession.ts";
import { type FoundBrowser, findBrowser } from "../../src/press/findBrowser.ts";
import { type Built, buildStudio } from "./demo.ts";

// axe-core tests the rules of WCAG 2.2 and its own best practices.
const AXE = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
const WIDTHS = [390, 1024, 1600];

let demo: Built;
let session: BrowserSession;

beforeAll(async () => {
  demo = await buildStudio(undefined, ["--no-pdf"]);
  const found = (await findBrowser()).value as FoundBrowser;
  session = await openSession(found, {
    timeoutMs: 60_000,
    withoutSandbox: process.getuid?.() === 0,
  });
});
afterAll(async () => {
  await session?.close();
  await demo?.remove();
});

interface Violation {
  readonly id: string;
  readonly nodes: readonly { readonly html: string }[];
}

test("no page of the demo breaks a rule of access, from a telephone to a wide screen, and none runs out of its window", async () => {
  const page = await session.browser.newPage();
  const faults: string[] = [];
  for (const name of demo.files.filter((file) => file.endsWith(".html"))) {
    for (const width of WIDTHS) {
      await page.setViewport({ width, height: 900 });
      await page.goto(`file://${join(demo.out, name)}`);
      const over = await page.evaluate("document.documentElement.scrollWidth - innerWidth");
      if (Number(over) > 0) faults.push(`${name} at ${width}: ${over} px too wide`);
      await page.evaluate(AXE);
      const { violations } = (await page.evaluate("axe.run()")) as {
        violations: readonly Violation[];
      };
      for (const v of violations)
        faults.push(`${name} at ${width}: ${v.id} ${v.nodes[0]?.html.slice(0, 100)}`);
    }
  }
  await page.close();
  expect(faults).toEqual([]);
});
