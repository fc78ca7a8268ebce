import type { Finding } from "../finding.ts";
import type { FindingInput } from "../findingInput.ts";
import { finding, percent } from "./make.ts";

/** Below this share of plain surface a patterned room has nowhere to rest; common practice, no source. */
export const LEAST_PLAIN = 0.4;

/** Plain surface (paint, bare floor, plain cloth) as a share of all that is seen, with the curtains drawn back and closed. */
export function plainFindings(input: FindingInput): Finding[] {
  const { plainShare: share, plainClosed, say, room } = input;
  if (share === null || room.fields.approach === "free") return [];
  // Of a room without a pattern there is nothing to say of how much room its patterns have.
  if (Math.round(share * 100) === 100) return [];
  const short = share < LEAST_PLAIN;
  if (short && input.traditions.covers) return [];
  const closed =
    plainClosed !== null && Math.round(plainClosed * 100) !== Math.round(share * 100)
      ? say` With the curtains closed it is ${percent(plainClosed)}.`
      : "";
  return [
    finding(
      room,
      short ? "plain-short" : "plain-enough",
      short ? "worth-a-look" : "works",
      {
        message: short
          ? say`Only ${percent(share)} of what is seen is plain.${closed}`
          : say`${percent(share)} of what is seen is plain, so the patterns have room.${closed}`,
        reason: say`Patterns need plain surface between them; about ${percent(LEAST_PLAIN)} or more is usual (common practice). Walls, floor and plain cloths all count.`,
      },
      { plainShare: share, plainShareClosed: plainClosed ?? share, usual: LEAST_PLAIN },
      [],
      ["items"],
    ),
  ];
}
