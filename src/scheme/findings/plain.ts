import type { Finding } from "../finding.ts";
import type { FindingInput } from "../findingInput.ts";
import { finding, percent } from "./make.ts";

/** Below this share of plain surface a patterned room has nowhere to rest; common practice, no source. */
export const LEAST_PLAIN = 0.4;

/** Plain surface (paint, bare floor, plain cloth) as a share of all that is seen. */
export function plainFindings(input: FindingInput): Finding[] {
  const share = input.plainShare;
  if (share === null || input.room.fields.approach === "free") return [];
  const short = share < LEAST_PLAIN;
  return [
    finding(
      input.room,
      short ? "plain-short" : "plain-enough",
      short ? "worth-a-look" : "works",
      {
        message: short
          ? `Only ${percent(share)} of what is seen is plain.`
          : `${percent(share)} of what is seen is plain, so the patterns have room.`,
        reason: `Patterns need plain surface between them; about ${percent(LEAST_PLAIN)} or more is usual (common practice). Walls, floor and plain cloths all count.`,
      },
      { plainShare: share, usual: LEAST_PLAIN },
      [],
      ["items"],
    ),
  ];
}
