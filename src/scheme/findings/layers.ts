import Fraction from "fraction.js";
import type { ClothRecord } from "../../records/records.ts";
import { canBeWashed } from "../../swatches/washedFacts.ts";
import type { Finding } from "../finding.ts";
import type { FindingInput } from "../findingInput.ts";
import { finding } from "./make.ts";

/** By so much of its length a face may shrink more or less than what is sewn behind it; common practice, no source. */
export const SHRINKS_APART = new Fraction(2, 100);

const BEHIND: ReadonlySet<string> = new Set(["lining", "interlining"]);

/**
 * Layers of one item that washing takes unevenly: a face and its lining or interlining whose cards say what they may lose along their
 * length, more than two hundredths apart. What is washed before it is cut has nothing left to lose.
 */
export function layerFindings(input: FindingInput): Finding[] {
  const { say } = input;
  const items = [...new Set(input.uses.map((u) => u.item))];
  return items.flatMap((item): Finding[] => {
    const uses = input.uses.filter((u) => u.item === item);
    const title = uses[0]?.title ?? item;
    const cards = (isLayer: (surface: string) => boolean): ClothRecord[] =>
      [...new Set(uses.filter((u) => isLayer(u.surface)).map((u) => u.cloth))].flatMap(
        (id) => input.cloths.get(id) ?? [],
      );
    const pairs = cards((surface) => surface === "face").flatMap((face) =>
      cards((surface) => BEHIND.has(surface)).map((behind) => ({ face, behind })),
    );
    return pairs.flatMap(({ face, behind }): Finding[] => {
      const [one, other] = [stillLoses(face), stillLoses(behind)];
      if (!one || !other || one.sub(other).abs().compare(SHRINKS_APART) <= 0) return [];
      const layer = behind.fields.type === "interlining" ? "interlining" : "lining";
      return [
        finding(
          input.room,
          "layers-shrink-apart",
          "worth-a-look",
          {
            message: say`When ${title} is washed, ${face.fields.cloth} ${lossWords(one)} and its ${layer} ${behind.fields.cloth} ${lossWords(other)}: one will hang below the other or pucker.`,
            reason: say`Layers that are sewn together have to shrink alike, to within ${percentOf(SHRINKS_APART)} (common practice, no source). Have both washed before they are cut (wash-first: yes on both cards), take another ${layer}, or have it dry cleaned and tell the client.`,
          },
          { face: percentOf(one), [layer]: percentOf(other), usual: percentOf(SHRINKS_APART) },
          [item, face.id, behind.id],
          ["items"],
        ),
      ];
    });
  });
}

/** What a cloth may still lose of its length when it is made up, a share of one; null where nobody said it, or it is not washed. */
function stillLoses({ fields }: ClothRecord): Fraction | null {
  const type = fields.type ?? (fields.roll ? "wallcovering" : "cloth");
  if (!canBeWashed({ type })) return null;
  return fields["wash-first"] ? new Fraction(0) : (fields.shrinkage ?? null);
}

function percentOf(share: Fraction): string {
  return `${share.mul(100).toString()} %`;
}

function lossWords(share: Fraction): string {
  return share.compare(0) === 0 ? "loses no more" : `may lose ${percentOf(share)} of its length`;
}
