import type { Finding } from "../finding.ts";
import type { FindingInput } from "../findingInput.ts";
import { clothViews } from "../views.ts";
import { finding, listed } from "./make.ts";

/** What is seen from the door: which patterns read as plains from there, and of which colour; and whether the main cloth still tells. */
export function viewFindings(input: FindingInput): Finding[] {
  const { say, room } = input;
  if (room.fields.approach === "free") return [];
  const views = clothViews(input, input.roles);
  const plain = views.filter((v) => v.plainFromDoor === true);
  const reason = say`Reckoned from the contrast sensitivity of a good eye in good light (Watson and Ahumada 2005), within a factor of two; in dim light sooner.`;
  const metres = (m: number | null): string => say`${(m ?? 0).toFixed(1)} m`;
  const out: Finding[] = [];
  const main = input.roles.find((r) => r.role === "main");
  const lost = plain.find((v) => v.cloth === main?.cloth);
  const others = plain.filter((v) => v !== lost);
  if (others.length > 0)
    out.push(
      finding(
        room,
        "reads-plain",
        "works",
        {
          message: say`From the door ${listed(others.map((v) => say`${v.name} (${metres(v.doorM)}) reads as plain ${v.colourName ?? say`colour`}`))}.`,
          reason,
        },
        Object.fromEntries(others.map((v) => [v.cloth, v.readsPlainFromM])),
        others.map((v) => v.cloth),
      ),
    );
  if (lost)
    out.push(
      finding(
        room,
        "main-reads-plain",
        "worth-a-look",
        {
          message: say`From the door, ${metres(lost.doorM)} away, the main cloth ${lost.name} reads as plain ${lost.colourName ?? say`colour`}.`,
          reason,
        },
        { doorM: lost.doorM ?? 0, readsPlainFromM: lost.readsPlainFromM },
        [lost.cloth],
      ),
    );
  return out;
}
