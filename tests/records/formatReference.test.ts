import { expect, test } from "vitest";
import { ITEM_KINDS } from "../../src/items/kinds.ts";
import { CARDS, cardSchemas } from "../../src/records/cardSchemas.ts";
import { formatReference } from "../../src/records/formatReference.ts";
import { jsonSchema } from "../../src/records/jsonSchema.ts";
import { fieldRows } from "../../src/records/reading/fieldRows.ts";

// Both are written anew by `npx vitest run tests/records/formatReference.test.ts -u`.

test("FORMAT.md says what the schemas say", async () => {
  await expect(formatReference(ITEM_KINDS)).toMatchFileSnapshot("../../src/records/FORMAT.md");
});

test.each(CARDS)("the editors' schema of a %s file says what its schema says", async (card) => {
  const text = `${JSON.stringify(jsonSchema(card, ITEM_KINDS), null, 1)}\n`;
  await expect(text).toMatchFileSnapshot(`../../src/records/editors/${card}.schema.json`);
});

test.each(CARDS)("every key of a %s file is explained", (card) => {
  const schema = cardSchemas(ITEM_KINDS)[card];
  const silent = fieldRows(schema)
    .filter((row) => !row.description)
    .map((row) => row.path);
  expect(silent).toEqual([]);
});

test.each(ITEM_KINDS.map((kind) => [kind.kind, kind] as const))(
  "every key of %s is explained",
  (_, kind) => {
    const silent = fieldRows(kind.schema)
      .filter((row) => !row.description)
      .map((row) => row.path);
    expect(silent).toEqual([]);
  },
);
