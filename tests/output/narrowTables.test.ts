import { join } from "node:path";
import { afterAll, beforeAll, expect, test } from "vitest";
import type { BrowserSession } from "../../src/press/browserSession.ts";
import { type Built, buildStudio } from "./demo.ts";
import { openBrowser } from "./openBrowser.ts";

let demo: Built;
let session: BrowserSession;

beforeAll(async () => {
  demo = await buildStudio();
  session = await openBrowser();
});
afterAll(async () => {
  await session?.close();
  await demo?.remove();
});

/** Runs in the page: what is wider than the window, and cells of tables in rows that do not say of which column they are. */
const FAULTS = `(() => {
  const faults = [];
  const main = document.querySelector("main");
  if (main.scrollWidth > main.clientWidth) faults.push("moves sideways by " + (main.scrollWidth - main.clientWidth) + " px");
  for (const table of document.querySelectorAll("table")) {
    const box = table.getBoundingClientRect();
    if (box.right > innerWidth + 0.5) faults.push("a table of " + box.width + " px");
  }
  for (const table of document.querySelectorAll(".by-rows")) {
    const heads = [...table.querySelectorAll("thead tr:last-child th")].map((th) => th.textContent.trim());
    for (const row of table.querySelectorAll("tbody tr:not(.wait)"))
      [...row.cells].forEach((cell, at) => {
        if (at > 0 && cell.dataset.of !== heads[at]) faults.push(heads[at] + " is called " + cell.dataset.of);
        const said = getComputedStyle(cell, "::before").content;
        if (at > 0 && cell.childNodes.length > 0 && !said.includes(heads[at])) faults.push(heads[at] + " is not said");
      });
    const sizes = [...table.querySelectorAll("tbody td")].map((td) => parseFloat(getComputedStyle(td).fontSize));
    if (Math.min(...sizes) < 14) faults.push("words of " + Math.min(...sizes) + " px");
  }
  return faults;
})()`;

test.each([
  "studio/gannet-house/orders.html",
  "studio/ropewalk-house/orders.html",
  "studio/gannet-house/account.html",
  "studio/ropewalk-house/account.html",
  "studio/gannet-house/findings.html",
  "studio/gannet-house/schedule.html",
  "studio/gannet-house/receiving.html",
  "studio/gannet-house/samples.html",
  "studio/gannet-house/pocket.html",
  "studio/index.html",
  "makers/corran/gannet-house/dining-room.html",
  "makers/tidewell/ropewalk-house/guest-bedroom.html",
])(
  "%s is read on a telephone without moving it sideways, each figure with its column's name",
  async (name) => {
    const page = await session.browser.newPage();
    for (const width of [320, 390]) {
      await page.setViewport({ width, height: 844 });
      await page.goto(`file://${join(demo.out, name)}`);
      await page.evaluate("document.fonts.ready.then(() => true)");
      expect(await page.evaluate(FAULTS), `${width} px`).toEqual([]);
    }
    await page.close();
  },
);

interface Node {
  readonly role: string;
  readonly name: string;
  readonly children: readonly Node[];
}

test("a list of orders whose rows are blocks is still a table for who hears it: heads, rows and cells, no head said twice", async () => {
  const page = await session.browser.newPage();
  await page.setViewport({ width: 390, height: 844 });
  await page.goto(`file://${join(demo.out, "studio/gannet-house/orders.html")}`);
  await page.evaluate("document.fonts.ready.then(() => true)");
  const client = await page.createCDPSession();
  const { nodes } = (await client.send("Accessibility.getFullAXTree")) as unknown as {
    nodes: readonly {
      nodeId: string;
      childIds?: readonly string[];
      role?: { value: string };
      name?: { value: string };
    }[];
  };
  const byId = new Map(nodes.map((n) => [n.nodeId, n]));
  const treeOf = (id: string): Node => {
    const n = byId.get(id);
    return {
      role: n?.role?.value ?? "",
      name: n?.name?.value ?? "",
      children: (n?.childIds ?? []).map(treeOf),
    };
  };
  const within = (node: Node, role: string): Node[] =>
    node.children.flatMap((c) => [...(c.role === role ? [c] : []), ...within(c, role)]);
  const tables = nodes.filter((n) => n.role?.value === "table").map((n) => treeOf(n.nodeId));
  await page.close();
  expect(tables.length).toBeGreaterThan(4);
  const orders = tables[0] as Node;
  expect(within(orders, "columnheader").map((h) => h.name)).toEqual([
    "Cloth",
    "Their number",
    "To order",
    "For",
    "Price",
    "Sample",
    "Lot",
    "Sum",
  ]);
  const rows = within(orders, "row").filter((row) => within(row, "cell").length === 8);
  expect(rows.length).toBeGreaterThan(3);
  for (const row of rows)
    for (const cell of within(row, "cell")) expect(cell.name).not.toMatch(/^(Price|For|Lot|Sum):/);
});
