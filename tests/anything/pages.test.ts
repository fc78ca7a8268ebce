import { resolve } from "node:path";
import { expect, test, vi } from "vitest";
import { hasErrors } from "../../src/diagnostics/diagnostic.ts";
import { ITEM_KINDS } from "../../src/items/kinds.ts";
import { openLayouts } from "../../src/site/layouts.ts";
import { seeded } from "../cloth/made.ts";
import { STUDIO_CM, STUDIO_INCHES } from "../quantities/studioOf.ts";
import { computedFolder } from "../site/smallFolder.ts";
import { anyItem } from "./anyItem.ts";
import { anyCloths, NAMES, OBJECTS, ROOM } from "./anyRoom.ts";
import { pick } from "./anyValue.ts";

const RUNS = process.env.SOAK ? 200 : 4;
vi.setConfig({ testTimeout: process.env.SOAK ? 3_600_000 : 120_000 });

const KINDS = ITEM_KINDS.map(({ kind }) => kind).filter((kind) => kind !== "object");
const PROJECT = (status: string) =>
  `project: Any\nclient: { name: Nobody & <i>Co</i> }\nstatus: ${status}`;
/** What makes a card show on boards and in sums, where it has no photograph. */
const MORE = `colours: [{ colour: "#7d6a4f", share: 60 % }, { colour: "#e8dfc6", share: 40 % }]\nprice: { trade: 31.50, per: yard }`;

function files(items: string, random: () => number): Record<string, string> {
  const cards = (folder: string, all: Readonly<Record<string, string>>) =>
    Object.entries(all).map(([id, text]): [string, string] => [`${folder}/${id}.md`, text]);
  const makers = `makers: { bench: { name: The Bench, makes: [${KINDS.join(", ")}], rates: { curtains: 60 per width } }, hook: { name: The Hook, makes: [fitting] } }`;
  return {
    "studio.md": `${pick(random, [STUDIO_CM, STUDIO_INCHES])}\n${makers}`,
    ...Object.fromEntries(cards("cloths", anyCloths(random, MORE))),
    ...Object.fromEntries(cards("objects", OBJECTS)),
    "projects/any/project.md": PROJECT(pick(random, ["proposed", "approved", "ordered", "fitted"])),
    "projects/any/a.md": `${ROOM}anchor: stove\ncloths: [fern, slub]\nitems:\n${items}`,
  };
}

/** Items that the program takes, each tried by itself, with the client's and the workroom's own words in them. */
async function anyItems(count: number, random: () => number): Promise<string> {
  let items = "";
  for (let at = 0; at < count; ) {
    const title = `Item ${at} ${pick(random, ["of her own", "“old” & <i>new</i>"])}`;
    const item = anyItem(pick(random, KINDS), title, random, NAMES);
    if (!item || hasErrors((await computedFolder(files(item, seeded(at)))).diagnostics)) continue;
    items += item;
    at += 1;
  }
  return items;
}

test("whatever a room holds, all its documents are made, and nothing that was typed runs in them", async () => {
  const layouts = openLayouts(resolve("layouts"));
  let pages = 0;
  let rooms = 0;
  for (let seed = 1; rooms < RUNS; seed++) {
    const random = seeded(seed);
    const items = await anyItems(2 + Math.floor(random() * 3), random);
    const computed = await computedFolder(files(items, random));
    // Items that are each right may not be so together: one cloth that is the client's own for one and bought for the other.
    if (hasErrors(computed.diagnostics)) continue;
    rooms += 1;
    for (const page of computed.pages) {
      const made = layouts.render(page, "");
      expect(made, `${page.path}\n${items}`).toHaveProperty("html");
      const html = (made as { html: string }).html.replace(/<(style|script)[\s\S]*?<\/\1>/g, "");
      expect(html, `${page.path}\n${items}`).not.toMatch(/\b(NaN|undefined|Infinity)\b|\[object/);
      expect(html, page.path).not.toMatch(/<i>(new|Co)\b/);
      pages += 1;
    }
  }
  expect(pages).toBeGreaterThan(8 * RUNS);
});
