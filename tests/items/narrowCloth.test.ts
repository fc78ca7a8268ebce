import { expect, test } from "vitest";
import { ITEM_KINDS } from "../../src/items/kinds.ts";
import { clothFacts, fieldsOf, length } from "./tradeContext.ts";
import { hangingContext, windowFacts } from "./windowContext.ts";

const PLAIN = clothFacts({ id: "plain", usableWidth: length('54"') });
const NARROW = ['1/2"', '3/4"', '1"'].map((width, at) =>
  clothFacts({ id: `braid-${at}`, usableWidth: length(width) }),
);

/** What a kind says, as `code at its line`, of fields that name a braid for a cloth. */
function said(kind: string, raw: Record<string, unknown>): string[] {
  const found = ITEM_KINDS.find((each) => each.kind === kind);
  if (!found) throw new Error(kind);
  const context = hangingContext(found.allowances, {
    cloths: [PLAIN, ...NARROW],
    window: windowFacts('36"', '48"', '30"'),
    roomHeight: "9'",
  });
  const made = found.make(fieldsOf(found.schema, { [kind]: "It", ...raw }) as never, context);
  return made.diagnostics
    .filter((d) => d.severity === "error")
    .map((d) => `${d.code} at ${d.keyPath?.replace("items[0].", "")}`);
}

// A braid that is written where a cloth is wanted: no wider than the two turnings of a join (1/2 in each), or no wider than one.
test.each(NARROW.map((cloth) => cloth.id))(
  "%s, used up by its joins, is refused at its line",
  (braid) => {
    expect(said("throw", { cloth: braid, size: '50" x 70"' })).toContain(
      "cloth-narrower-than-joins at cloth",
    );
    expect(said("cushion", { cloth: braid, size: '20" x 20"', join: "both-sides" })).toContain(
      "piece-wider-than-cloth at size",
    );
    expect(said("blind", { cloth: "plain", drop: '48"', lining: braid })).toContain(
      "cloth-narrower-than-joins at lining",
    );
    expect(
      said("pelmet", { cloth: "plain", depth: '12"', "curtain-drop": '80"', lining: braid }),
    ).toContain("cloth-narrower-than-joins at lining");
  },
);
