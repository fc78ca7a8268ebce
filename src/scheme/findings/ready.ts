import { spelled } from "../../units/spelling.ts";
import type { Finding } from "../finding.ts";
import type { FindingInput } from "../findingInput.ts";
import { finding, listed } from "./make.ts";

/**
 * Goods that the studio buys ready and that no price is written for, once for a room, with the line to write. Which they are is handed
 * in; no sum is looked at here.
 */
export function readyFindings(input: FindingInput): Finding[] {
  const { say, language, unpriced } = input;
  const [first] = unpriced;
  if (!first) return [];
  const goods = listed(unpriced.map((u) => `${spelled(u.text, language)} (${u.title})`));
  const line = `hardware: [{ what: ${spelled(first.name, language)}, trade: …${first.count > 1 ? `, count: ${first.count}` : ""} }]`;
  const items = [...new Set(unpriced.map((u) => u.item))];
  const each = items.length > 1 ? ", and likewise at the others" : "";
  return [
    finding(
      input.room,
      "ready-unpriced",
      "worth-a-look",
      {
        message: say`Bought ready, and charged to nobody: ${goods}.`,
        reason: say`What is bought ready is charged as hardware of its item, and else given away. Write at ${first.title}${each}: ${line}. Write trade: 0 where the agreed making holds it.`,
      },
      { goods: unpriced.reduce((sum, u) => sum + u.count, 0) },
      items,
      ["items"],
    ),
  ];
}
