import { type Diagnostic, diagnostic } from "../diagnostics/diagnostic.ts";
import type { Rate } from "../fields/amountField.ts";
import type { ItemRecord, StudioRecord } from "../records/records.ts";
import type { PricedItem } from "./purchase.ts";

/** A warning where the making of an item has no charge: nobody makes it yet, its maker has no rate for it, or one that it cannot be counted by. */
export function makingWithoutRate(
  item: ItemRecord,
  priced: PricedItem,
  rate: Rate | null,
  /** What the making can be counted by. */
  by: string,
  studio: StudioRecord,
): Diagnostic {
  const { kind, maker } = priced;
  const name = maker === null ? null : (studio.fields.makers?.[maker]?.name ?? maker);
  const rates = `\`rates: { ${kind}: … per ${rate ? by : "item"} }\``;
  const add =
    name === null
      ? `Nobody makes it yet: add one who makes it to \`makers\` in studio.md, with \`makes: [${kind}]\` and ${rates}`
      : `${rate ? "Write" : "Add"} ${rates} ${rate ? "at" : "to"} ${name} in studio.md`;
  return diagnostic(
    item.place([]),
    "making-without-rate",
    rate
      ? `The making of ${kind}: ${item.title} cannot be counted by the ${rate.per}, as ${name} has it.`
      : `There is no making charge for ${kind}: ${item.title}.`,
    {
      severity: "warning",
      expected: rate
        ? `a rate that can be counted, not one per ${rate.per}`
        : name === null
          ? `a maker of it with a rate for ${kind}, or a charge of its own`
          : `a rate for ${kind} at ${name}`,
      hint: `${add}, or \`making: …\` to the item. Until then the line stands as “price to come”.`,
    },
  );
}
