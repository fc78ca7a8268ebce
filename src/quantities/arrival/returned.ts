import { type Diagnostic, diagnostic } from "../../diagnostics/diagnostic.ts";
import type { ProjectRecord } from "../../records/records.ts";
import { Length } from "../../units/length.ts";

/** One receipt of a project's file. */
export type Receipt = NonNullable<ProjectRecord["fields"]["receipts"]>[number];

/** The receipts of what is here, without what went back to its supplier. */
export function keptReceipts({ fields }: Pick<ProjectRecord, "fields">): Receipt[] {
  return (fields.receipts ?? []).filter(({ returned }) => returned === undefined);
}

/** What of a card went back, in the order of the file. */
export function returnedOf(card: string, { fields }: Pick<ProjectRecord, "fields">): Receipt[] {
  return (fields.receipts ?? []).filter((each) => each.cloth === card && each.returned);
}

/** What is left of an order by the tape alone: pieces come cut a little long or short (from memory). */
const BY_THE_TAPE = "0.1";

/**
 * How much of a card counts as ordered: its orders, less what went back and was credited. Never below nothing; and nothing where none of
 * it was kept and less than a tenth is left, since a receipt has its length by the tape, and the order was credited whole.
 */
export function countsAsOrdered(card: string, project: Pick<ProjectRecord, "fields">): Length {
  const own = (all: readonly { readonly cloth: string; readonly length: Length }[]) =>
    Length.sum(all.filter((each) => each.cloth === card).map((each) => each.length));
  const ordered = own(project.fields.orders ?? []);
  const credited = own(
    returnedOf(card, project).filter(({ returned }) => returned?.for === "credit"),
  );
  if (credited.isZero()) return ordered;
  const left = Length.max(Length.zero, ordered.minus(credited));
  const isKept = keptReceipts(project).some(({ cloth }) => cloth === card);
  return isKept || left.isMoreThan(ordered.times(BY_THE_TAPE)) ? left : Length.zero;
}

/** A warning where a cloth is released to cut that went back, or where it went back before it came. */
export function returnFaults(project: ProjectRecord): Diagnostic[] {
  return (project.fields.receipts ?? []).flatMap(({ returned, released, on, cloth }, at) => {
    const fault = (path: readonly string[], code: string, message: string, hint: string) =>
      diagnostic(project.place(["receipts", at, ...path]), code, message, {
        severity: "warning",
        hint,
      });
    if (!returned) return [];
    return [
      ...(released
        ? [
            fault(
              ["released"],
              "returned-and-released",
              `This length of ${cloth} went back on ${returned.on}, and is released to cut as well.`,
              "Take one of the two out: nothing is planned on what went back.",
            ),
          ]
        : []),
      ...(on !== undefined && returned.on < on
        ? [
            fault(
              ["returned", "on"],
              "days-out-of-order",
              `This went back on ${returned.on}, before it came, on ${on}.`,
              "Look which of the two days is wrong; often it is the year.",
            ),
          ]
        : []),
    ];
  });
}
