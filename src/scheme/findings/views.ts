import type { Finding } from "../finding.ts";
import type { FindingInput } from "../findingInput.ts";
import { type ClothView, clothViews } from "../views.ts";
import { finding, listed } from "./make.ts";

/** What is seen from the door, the seat and in the hand: which patterns then read as plains, and of which colour; and whether the main cloth still tells. */
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
  const seats = views.filter((v) => v.plainFromSeat === true && v !== lost);
  const hands = views.filter((v) => v.plainInHand);
  const all = [...new Set([...others, ...seats, ...hands])];
  const reads = (v: ClothView, m: number | null): string =>
    say`${v.name}${m === null ? "" : ` (${metres(m)})`} reads as plain ${v.colourName ?? say`colour`}`;
  const sentences = [
    others.length > 0 ? say`From the door ${listed(others.map((v) => reads(v, v.doorM)))}.` : "",
    seats.length > 0 ? say`From the seat ${listed(seats.map((v) => reads(v, v.seatM)))}.` : "",
    hands.length > 0 ? say`Even in the hand ${listed(hands.map((v) => reads(v, null)))}.` : "",
  ].filter((s) => s !== "");
  if (all.length > 0)
    out.push(
      finding(
        room,
        "reads-plain",
        "works",
        { message: sentences.join(" "), reason },
        Object.fromEntries(all.map((v) => [v.cloth, v.readsPlainFromM ?? ""])),
        all.map((v) => v.cloth),
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
        { doorM: lost.doorM ?? 0, readsPlainFromM: lost.readsPlainFromM ?? 0 },
        [lost.cloth],
      ),
    );
  return out;
}
