import { type Diagnostic, diagnostic } from "../../diagnostics/diagnostic.ts";
import type { ProjectRecord } from "../../records/records.ts";
import { Length } from "../../units/length.ts";
import { printLike } from "../../units/printLike.ts";
import type { ArrivedLot } from "./receiptsFor.ts";

/** Flaws that do not lie on the length or the width that came, each said at its line. */
export function flawFaults(
  project: ProjectRecord,
  index: number,
  clothName: string,
  width: Length | null,
): Diagnostic[] {
  const receipt = project.fields.receipts?.[index];
  const say = (length: Length) => length.typed ?? printLike(length);
  return (receipt?.flaws ?? []).flatMap((flaw, at) => {
    const place = (key: string) => project.place(["receipts", index, "flaws", at, key]);
    const found: Diagnostic[] = [];
    const end = flaw.from.plus(flaw.length);
    if (receipt && end.isMoreThan(receipt.length)) {
      found.push(
        diagnostic(
          place("length"),
          "flaw-beyond-length",
          `This flaw of ${say(flaw.length)}, from ${say(flaw.from)} on, reaches beyond the ${say(receipt.length)} of ${clothName} that came.`,
          {
            severity: "warning",
            actual: say(flaw.length),
            hint: "Measure it again from the outer end, or correct the length that came. Until then the plan keeps clear of it to the very end.",
          },
        ),
      );
    }
    const right = (flaw["from-left"] ?? Length.zero).plus(flaw.width ?? Length.zero);
    if (width && (flaw["from-left"] || flaw.width) && right.isMoreThan(width)) {
      found.push(
        diagnostic(
          place(flaw.width ? "width" : "from-left"),
          "flaw-beyond-width",
          `This flaw reaches ${say(right)} from the left selvedge; ${clothName} is ${say(width)} wide.`,
          {
            severity: "warning",
            hint: "Measure it again from the left selvedge, the pattern upright before you.",
          },
        ),
      );
    }
    return found;
  });
}

/** A lot that came with two repeats: its lengths are not planned on together, and the figure that differs is said at its line. */
export function repeatFaults(
  project: ProjectRecord,
  lots: readonly ArrivedLot[],
  clothName: string,
): Diagnostic[] {
  const say = (length: Length) => length.typed ?? printLike(length);
  const byReceipt = [...lots].sort(
    (a, b) => (a.receipts[0]?.index ?? 0) - (b.receipts[0]?.index ?? 0),
  );
  return byReceipt.flatMap((lot, at): Diagnostic[] => {
    const first = byReceipt.slice(0, at).find((each) => each.lot === lot.lot);
    const measured = lot.receipts.find(({ receipt }) => receipt.repeat);
    if (!first?.repeat || !lot.repeat || !measured) return [];
    return [
      diagnostic(
        project.place(["receipts", measured.index, "repeat"]),
        "lot-repeats-differ",
        `Lot ${lot.lot} of ${clothName} came with a repeat of ${say(first.repeat)} and with one of ${say(lot.repeat)}: what meets or is centred is not cut from both.`,
        {
          severity: "warning",
          actual: say(lot.repeat),
          expected: say(first.repeat),
          hint: "Measure both again, from motif to motif over several repeats, and write the same figure where they are one. Else ask the supplier whether they are of one printing.",
        },
      ),
    ];
  });
}
