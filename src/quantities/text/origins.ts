import type { ClothFacts } from "../../items/itemKind.ts";
import type { ClothRecord } from "../../records/records.ts";
import type { UsedAllowance } from "../../room/allowances.ts";
import { printCloth, printLength, type UnitSystem } from "../../units/printLength.ts";
import { lossWords, type WashingLeft } from "./washWords.ts";

/** One line that says where a figure of a working came from. */
export interface Origin {
  /** `The studio's setting`, `Usual value taken`, `From its card`. */
  readonly from: string;
  readonly what: string;
  readonly value: string;
  readonly source: string;
}

const FROM: Readonly<Record<UsedAllowance["from"], string>> = {
  item: "Said for this item",
  maker: "The maker’s setting",
  studio: "The studio’s setting",
  usual: "Usual value taken",
};
const ORDER: readonly UsedAllowance["from"][] = ["item", "maker", "studio", "usual"];

/** Where each allowance of an item's arithmetic came from, what was said before what was only usual. */
export function allowanceOrigins(allowances: readonly UsedAllowance[]): Origin[] {
  return ORDER.flatMap((from) =>
    allowances
      .filter((each) => each.from === from)
      .map((each) => ({
        from: FROM[from],
        what: `${each.allowance}: ${each.description}`,
        value: each.text,
        source: each.source,
      })),
  );
}

/** Said once for all workings: what a figure is that none of the lines below it names. */
export const WRITTEN =
  "A figure with no origin below its sums is a measure, a size or a count as it is written in the room’s file or on a card, or the result of a line above it.";

/** Where a cloth's own figures come from: as it came, its card, or its photograph. */
export function clothOrigins(
  facts: ClothFacts,
  card: ClothRecord | null,
  came: boolean,
  units: UnitSystem,
  washing: WashingLeft = null,
): Origin[] {
  const p = (length: Parameters<typeof printLength>[0]) => printLength(length, units);
  const own = came
    ? {
        from: "As it came",
        source: "receipts in project.md, and its card for what they do not say",
      }
    : { from: "From its card", source: `cloths/${facts.id}.md` };
  const { repeat } = facts;
  const declared = card?.fields.repeat !== undefined;
  const seen = repeat
    ? [
        repeat.match === "free" && repeat.across ? "repeat" : `repeat ${p(repeat.up)} up,`,
        repeat.across ? `${p(repeat.across)} across,` : null,
        repeat.match === "free" ? "nothing to match along it" : repeat.match,
      ]
        .filter((word) => word !== null)
        .join(" ")
    : facts.repeatUnknown
      ? "repeat not known, reckoned as none: too little where it has to be matched"
      : "no repeat";
  const width = facts.usableWidth ? `${p(facts.usableWidth)} usable width` : "no width";
  const price = card?.fields.price;
  const by = price?.["sold-by"];
  const sold = by === undefined ? null : typeof by === "string" ? by : printCloth(by, units);
  const least = price?.minimum ? `, ${printCloth(price.minimum, units)} at least` : "";
  const loses =
    facts.washing && (!came || washing === "wash")
      ? `; washed first, less ${lossWords(facts.washing)}`
      : "";
  return [
    {
      ...own,
      what: "the cloth",
      value: `${declared || !repeat ? `${width}; ${seen}` : width}${loses}`,
    },
    ...(repeat && !declared
      ? [
          {
            from: "From its photograph",
            what: "the pattern",
            value: seen,
            source: "measured, to be confirmed",
          },
        ]
      : []),
    sold === null && least === ""
      ? {
          from: "Usual value taken",
          what: "how it is sold",
          value: "the usual step of cut cloth",
          source: "common practice, no source: the card does not say",
        }
      : {
          from: "From its card",
          what: "how it is sold",
          value: `by ${sold ?? "the usual step"}${least}`,
          source: `cloths/${facts.id}.md`,
        },
  ];
}

/** `The studio’s setting: hem: the bottom hem: 8″ (allowances in studio.md)`. */
export function originWords({ from, what, value, source }: Origin): string {
  return `${from}: ${what}: ${value} (${source})`;
}
