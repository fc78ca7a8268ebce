import type { Finding } from "../finding.ts";
import type { FindingInput } from "../findingInput.ts";
import { UPHOLSTERED } from "../satOn.ts";
import { finding, listed } from "./make.ts";

/** Fire: upholstery (in Britain scatter cushions too) in a cloth whose card says nothing of a fire test. A reminder, never a verdict. */
function fire(input: FindingInput): Finding[] {
  const { say } = input;
  const cushions = input.language === "en-GB" ? ["cushion", "seat-pad"] : [];
  const kinds = [...UPHOLSTERED, ...cushions];
  const ids = [
    ...new Set(
      input.uses
        .filter(
          (u) => kinds.includes(u.kind) && u.surface !== "lining" && u.surface !== "interlining",
        )
        .map((u) => u.cloth),
    ),
  ].filter((id) => input.cloths.has(id) && !input.cloths.get(id)?.fields.fire);
  if (ids.length === 0) return [];
  const names = ids.map((id) => input.cloths.get(id)?.fields.cloth ?? id);
  return [
    finding(
      input.room,
      "fire-unsaid",
      "worth-a-look",
      {
        message: say`Nothing is said of fire tests for what is upholstered: ${listed(names)}.`,
        reason: say`Re-covering counts as making under some rules (16 CFR part 1640; SI 1988/1324 as amended). Ask the supplier for the test evidence and the upholsterer which rule applies. Local codes and licensed practice decide.`,
      },
      { cloths: ids.length },
      ids,
      ["items"],
    ),
  ];
}

/** A blind that is worked by a cord or a chain. */
function cords(input: FindingInput): Finding[] {
  const { say } = input;
  return input.items
    .filter((i) => i.operation === "cord" || i.operation === "chain")
    .map((i) =>
      finding(
        input.room,
        "corded",
        "problem",
        {
          message: say`${i.title} is worked by a ${i.operation ?? ""}, which can strangle a young child.`,
          reason: say`Cordless is best in every home. Where there is a cord its end stays at least 1.6 m above the floor and every loop is held fast (guidance on EN 13120). Local codes decide.`,
        },
        { operation: i.operation ?? "" },
        [i.item],
        ["items"],
      ),
    );
}

/** Safety: reminders where work can hurt someone. Asked of every scheme, a free one too. */
export function safetyFindings(input: FindingInput): Finding[] {
  return [...fire(input), ...cords(input)];
}
