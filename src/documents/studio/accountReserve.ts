import { payable } from "../../money/payable.ts";
import { type Reserve, reserveUses } from "../../money/reserve.ts";
import type { Money } from "../../units/money.ts";
import type { ProjectData } from "../projectData.ts";
import { pens } from "./accountPens.ts";

const isThere = ({ kept, used }: Reserve): boolean => kept.minor !== 0n || used.minor !== 0n;

/** What is to be known of the reserve at once; empty where there is none. */
export function reserveLead(reserve: Reserve, print: (sum: Money) => string): string {
  const { kept, used, left, isFinal } = reserve;
  if (!isThere(reserve)) return "";
  if (left.minor === 0n)
    return kept.minor === 0n ? "" : `All of the reserve of ${print(kept)} was used.`;
  if (isFinal)
    return used.minor === 0n
      ? `Nothing was used of the reserve of ${print(kept)}, and none of it is charged.`
      : `Of the reserve of ${print(kept)}, ${print(used)} was used and is charged; ${print(left)} was not, and is not charged.`;
  return used.minor === 0n
    ? `The total holds ${print(left)} in reserve: what is not used of that comes off the balance.`
    : `Of the reserve of ${print(kept)}, ${print(used)} is used: what is not used of the other ${print(left)} comes off the balance.`;
}

/** What was taken out of the reserve, with what is left of it; null where there is none. */
export function reservePart(data: ProjectData) {
  const { account, money, project } = data;
  const { reserve } = account;
  if (!isThere(reserve) || account.pricesIn === "none") return null;
  const { bare, day, star } = pens(data);
  const uses = reserveUses(project, account.asOf);
  // In the order of the file.
  const lines = money.lines.filter((l) => l.what === "reserve-used");
  const { kept, used, left, isFinal } = reserve;
  const isMore = used.minor > kept.minor;
  const over = { ...used, minor: used.minor - kept.minor };
  return {
    kept: star(bare(kept)),
    rows: uses.map(({ use }, at) => ({
      what: use.what,
      on: day(use.on),
      sum: bare(payable(lines.slice(at, at + 1), money.taxIncluded, money.currency)),
    })),
    used: bare(used),
    rest: isMore
      ? { what: "More than there was, and charged", sum: bare(over) }
      : {
          what: isFinal ? "Not used, and not charged" : "Left, and in the total",
          sum: star(bare(left)),
        },
    paste:
      uses.length > 0 || isFinal
        ? []
        : [
            "reserve-used:",
            `  - { what: Plasterer at the window, amount: …, on: ${account.asOf} }`,
          ],
  };
}
