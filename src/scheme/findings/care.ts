import { cleaningCode, strictest } from "../cardFigures.ts";
import type { Finding } from "../finding.ts";
import type { FindingInput } from "../findingInput.ts";
import { SAT_ON } from "../satOn.ts";
import { finding, listed } from "./make.ts";

/** Care: a seat or cushion that can only be brushed, and layers of one item that no one cleaner serves. */
export function careFindings(input: FindingInput): Finding[] {
  const { say } = input;
  const items = [...new Set(input.uses.map((u) => u.item))];
  return items.flatMap((item): Finding[] => {
    const uses = input.uses.filter((u) => u.item === item);
    const title = uses[0]?.title ?? item;
    const coded = [...new Set(uses.map((u) => u.cloth))].flatMap((id) => {
      const card = input.cloths.get(id);
      const code = cleaningCode(card?.fields.care);
      return card && code ? [{ id, name: card.fields.cloth, code }] : [];
    });
    const seat = uses.some((u) => SAT_ON.has(u.kind));
    const brushed = coded.filter((c) => c.code === "X");
    const out: Finding[] = [];
    if (seat && brushed.length > 0)
      out.push(
        finding(
          input.room,
          "care-hard",
          "worth-a-look",
          {
            message: say`${listed(brushed.map((c) => c.name))} can only be brushed or vacuumed, and is sat on: ${title}.`,
            reason: say`Code X bears neither water nor solvent. What is sat on every day wants a cloth that can be cleaned.`,
          },
          { code: "X" },
          [item, ...brushed.map((c) => c.id)],
          ["items"],
        ),
      );
    const wet = strictest(coded.map((c) => c.code));
    const bearing = coded.filter((c) => c.code !== "X");
    if (brushed.length === 0 && bearing.length > 1 && !wet.water && !wet.solvent)
      out.push(
        finding(
          input.room,
          "care-conflict",
          "problem",
          {
            message: say`No one way of cleaning serves all of ${title}: ${listed(coded.map((c) => `${c.name} ${c.code}`))}.`,
            reason: say`A made-up item takes the strictest care of all its layers: W bears only water, S only solvent. Change one of them, or tell the client.`,
          },
          { codes: coded.map((c) => c.code).join(", ") },
          [item, ...coded.map((c) => c.id)],
          ["items"],
        ),
      );
    return out;
  });
}
