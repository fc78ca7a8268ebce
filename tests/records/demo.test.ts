import { fileURLToPath } from "node:url";
import { expect, test } from "vitest";
import { readContent } from "../../src/cli/content/readContent.ts";
import { ITEM_KINDS } from "../../src/items/kinds.ts";
import { readRecords } from "../../src/records/readRecords.ts";
import { line } from "./studio.ts";

test("the demo studio is without a fault and without a warning", async () => {
  const content = await readContent(fileURLToPath(new URL("../../content", import.meta.url)));
  const { diagnostics, stopped, projects } = readRecords({ ...content, items: ITEM_KINDS });
  expect(diagnostics.map(line)).toEqual([]);
  expect(stopped).toEqual([]);
  expect(projects.length).toBeGreaterThan(0);
});
